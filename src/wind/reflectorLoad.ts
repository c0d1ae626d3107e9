/** Force of the wind on a reflector, and the moment at the foot of its mast. A load, never a verdict. */

import { inRange, positive } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';

/** What a structural engineer decides and this library does not: said with each load. */
export type LeftToEngineer =
  | 'fixings-and-wall'
  | 'roof-load'
  | 'uplift'
  | 'gust-response-and-fatigue'
  | 'ice'
  | 'roof-edge-and-hill'
  | 'local-code';

const LEFT: readonly LeftToEngineer[] = [
  'fixings-and-wall',
  'roof-load',
  'uplift',
  'gust-response-and-fatigue',
  'ice',
  'roof-edge-and-hill',
  'local-code',
];

/** Load of the wind. */
export interface ReflectorLoad {
  /** Force along the wind in newtons. */
  readonly forceN: number;
  /** Moment at the foot of the mast in newton metres: force times the height of the reflector's centre above the foot. */
  readonly footMomentNm: number;
  /** Force coefficient that was used, a ratio. */
  readonly forceCoefficientRatio: number;
  /** What is not in the load and is for a structural engineer. */
  readonly leftToEngineer: readonly LeftToEngineer[];
}

const REFLECTOR_LOAD_REFLECTOR_KEYS = {
  diameterM: true,
  pressurePa: true,
  heightAboveFootM: true,
  forceCoefficientRatio: true,
} satisfies Keys<Parameters<typeof reflectorLoad>[0]>;

/**
 * Force of the wind full on a round solid reflector, F = coefficient x pressure x area, and the moment at the mast's foot.
 *
 * The default coefficient of 1.3 is common practice for a solid dish (1.2 to 1.4 are in use); a flat plate has 1.8. Wind from the
 * side or from behind loads less and is not computed. The answer is a load: whether a mount, a wall or a roof bears it is for a
 * structural engineer.
 *
 * @param reflector  Diameter in metres, above 0 to 5 (beyond, ask the maker: the coefficient no longer holds); pressure in pascals, 0 to
 *   5000; height of its centre above the mast's foot in metres, 0 to 20, default 0; coefficient, 1 to 2, default 1.3.
 * @throws {@link DomainError} naming the field that is missing or outside the stated range.
 * Source: EN 1991-1-4:2005, 5.3 (form of the force); coefficient by common practice of the trade. Accuracy: of the coefficient, about 10 %.
 * @example
 * ```ts
 * import { reflectorLoad } from 'slantpath/wind';
 * const load = reflectorLoad({ diameterM: 0.9, pressurePa: 846.8244, heightAboveFootM: 1.2 });
 * load.forceN.toFixed(0); // => '700'
 * load.footMomentNm.toFixed(0); // => '840'
 * ```
 */
export function reflectorLoad(reflector: {
  readonly diameterM: number;
  readonly pressurePa: number;
  readonly heightAboveFootM?: number;
  readonly forceCoefficientRatio?: number;
}): ReflectorLoad {
  const given = knownOnly('reflector', reflector, REFLECTOR_LOAD_REFLECTOR_KEYS);
  const diameter = inRange(
    'diameterM',
    positive('diameterM', given.diameterM),
    0,
    5,
    'is it in cm?',
  );
  const pressure = inRange('pressurePa', given.pressurePa, 0, 5000);
  const height = inRange('heightAboveFootM', given.heightAboveFootM ?? 0, 0, 20);
  const coefficient = inRange(
    'forceCoefficientRatio',
    given.forceCoefficientRatio ?? 1.3,
    1,
    2,
    'a coefficient below 1 is for a reflector under a radome',
  );
  const forceN = (coefficient * pressure * Math.PI * diameter * diameter) / 4;
  return {
    forceN,
    footMomentNm: forceN * height,
    forceCoefficientRatio: coefficient,
    leftToEngineer: LEFT,
  };
}

/** Mass that holds a mount on a flat roof, by each of the two ways it can go. */
export interface Ballast {
  /** Total mass in kilograms against sliding. */
  readonly slidingKg: number;
  /** Total mass in kilograms against overturning about one edge of the base. */
  readonly overturningKg: number;
  /** The larger of the two: what the load asks for, mount included. */
  readonly neededKg: number;
  /** What is not in it and is for a structural engineer, the roof's bearing first of all. */
  readonly leftToEngineer: readonly LeftToEngineer[];
}

/** Standard acceleration of gravity, m/s^2. Source: ISO 80000-3, exact. */
const GRAVITY_M_PER_S2 = 9.80665;

const BALLAST_MOUNT_KEYS = {
  forceN: true,
  leverM: true,
  baseM: true,
  frictionRatio: true,
  safetyRatio: true,
} satisfies Keys<Parameters<typeof ballast>[0]>;

/**
 * Total mass that a free-standing mount needs against sliding and overturning.
 *
 * Uplift is not in it: wind under a roof's edge lifts, and asks for more. Friction of 0.4 (rubber mat on a wet roof) to 0.6 is common
 * practice.
 *
 * @param mount  Force of the wind in newtons; height of its line above the base and width of the base across the wind in metres; friction
 *   0.1 to 0.8, default 0.4; safety factor 1 to 3, default 1.5.
 * @throws {@link DomainError} naming the field.
 * Source: statics; factor by common practice (EN 1990 uses 1.5 on wind and 0.9 on weight, from memory). Accuracy: of the friction.
 * @example
 * ```ts
 * import { ballast } from 'slantpath/wind';
 * const needed = ballast({ forceN: 600, leverM: 0.9, baseM: 1.2 });
 * needed.neededKg.toFixed(0); // => '229'
 * ```
 */
export function ballast(mount: {
  readonly forceN: number;
  readonly leverM: number;
  readonly baseM: number;
  readonly frictionRatio?: number;
  readonly safetyRatio?: number;
}): Ballast {
  const given = knownOnly('mount', mount, BALLAST_MOUNT_KEYS);
  const force = inRange('forceN', given.forceN, 0, 1e5);
  const lever = inRange('leverM', given.leverM, 0, 20);
  const base = inRange('baseM', positive('baseM', given.baseM), 0.1, 20);
  const friction = inRange('frictionRatio', given.frictionRatio ?? 0.4, 0.1, 0.8);
  const safety = inRange('safetyRatio', given.safetyRatio ?? 1.5, 1, 3);
  const slidingKg = (safety * force) / (friction * GRAVITY_M_PER_S2);
  const overturningKg = (safety * force * lever) / ((base / 2) * GRAVITY_M_PER_S2);
  return {
    slidingKg,
    overturningKg,
    neededKg: Math.max(slidingKg, overturningKg),
    leftToEngineer: LEFT,
  };
}

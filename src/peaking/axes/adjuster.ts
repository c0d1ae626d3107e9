/** Turns of an adjuster to degrees: the thread's pitch and the lever it works on. */

import { DomainError, inRange, oneOf, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import {
  acosDeg,
  atan2Deg,
  cosDeg,
  DEGREES_PER_RADIAN,
  sinDeg,
  tanDeg,
} from '../../numeric/angle.js';

/** An adjuster: a thread that turns an axis through a lever. */
export type Adjuster =
  | {
      /** The thread pushes along a line at right angles to the lever at zero turns. */
      readonly kind: 'push';
      /** Travel of one turn in metres, above 0; 0.00175 for an M12 thread. */
      readonly threadPitchM: number;
      /** Distance from the axis to the line of the thread in metres, above 0. */
      readonly leverArmM: number;
    }
  | {
      /** The thread lengthens a strut between two pivots: a triangle with the axis. */
      readonly kind: 'strut';
      /** Travel of one turn in metres, above 0. */
      readonly threadPitchM: number;
      /** Distance from the axis to the moving pivot in metres, above 0. */
      readonly leverArmM: number;
      /** Distance from the axis to the fixed pivot in metres, above 0. */
      readonly baseArmM: number;
      /** Length of the strut at zero turns in metres, between difference and sum of the arms. */
      readonly strutLengthM: number;
    };

const ADJUSTER_KEYS = {
  kind: true,
  threadPitchM: true,
  leverArmM: true,
  baseArmM: true,
  strutLengthM: true,
} satisfies Keys<Adjuster>;

/** The axis at a number of turns. */
export interface AdjusterAngle {
  /** Angle turned from zero turns in degrees, in the sense of the turns. */
  readonly angleDeg: number;
  /** Degrees for one more turn at that place. */
  readonly degPerTurn: number;
}

function checked(adjuster: Adjuster): Adjuster {
  known('adjuster', adjuster, ADJUSTER_KEYS);
  oneOf('kind', adjuster.kind, ['push', 'strut']);
  const small = 'metres, not millimetres?';
  const pitch = positive('threadPitchM', adjuster.threadPitchM);
  inRange('threadPitchM', pitch, 1e-6, 0.1, small);
  const arm = inRange('leverArmM', positive('leverArmM', adjuster.leverArmM, small), 1e-4, 100);
  if (adjuster.kind === 'push') return adjuster;
  const base = inRange('baseArmM', positive('baseArmM', adjuster.baseArmM, small), 1e-4, 100);
  inRange('strutLengthM', adjuster.strutLengthM, Math.abs(arm - base), arm + base);
  return adjuster;
}

/**
 * Angle of the axis after some turns, and what one more turn does there.
 *
 * Push: angle = atan(turns pitch / arm). Strut: angle from the law of cosines, with the length
 * grown by turns times pitch.
 *
 * @param turns  From the zero place, positive as the thread pushes out.
 * @throws {@link DomainError} naming the field that is wrong, or `turns` where the strut does not reach.
 *
 * Source: plane geometry. An azimuth axis moves the beam less on the sky: see {@link azimuthOnSkyDeg}.
 * @example
 * ```ts
 * import { adjusterAngle } from 'slantpath/peaking';
 * const screw = { kind: 'push', threadPitchM: 0.00175, leverArmM: 0.12 } as const;
 * adjusterAngle(screw, 1).angleDeg.toFixed(3); // => '0.836'
 * ```
 */
export function adjusterAngle(adjuster: Adjuster, turns: number): AdjusterAngle {
  const input = checked(adjuster);
  const travelM = inRange('turns', turns, -1e5, 1e5) * input.threadPitchM;
  if (input.kind === 'push') {
    const perTurn =
      (DEGREES_PER_RADIAN * input.threadPitchM * input.leverArmM) /
      (input.leverArmM ** 2 + travelM ** 2);
    return { angleDeg: atan2Deg(travelM, input.leverArmM), degPerTurn: perTurn };
  }
  const { leverArmM, baseArmM, strutLengthM } = input;
  const lengthM = strutLengthM + travelM;
  if (lengthM <= Math.abs(leverArmM - baseArmM) || lengthM >= leverArmM + baseArmM)
    throw new DomainError({
      code: 'out-of-range',
      parameter: 'turns',
      received: turns,
      allowed: `from ${(Math.abs(leverArmM - baseArmM) - strutLengthM) / input.threadPitchM} to ${(leverArmM + baseArmM - strutLengthM) / input.threadPitchM}, ends excluded, for the strut to reach`,
    });
  const corner = (length: number) =>
    acosDeg((leverArmM ** 2 + baseArmM ** 2 - length ** 2) / (2 * leverArmM * baseArmM));
  const angle = corner(lengthM);
  return {
    angleDeg: angle - corner(strutLengthM),
    degPerTurn:
      (DEGREES_PER_RADIAN * input.threadPitchM * lengthM) / (leverArmM * baseArmM * sinDeg(angle)),
  };
}

/**
 * Turns that turn the axis by `angleDeg` from zero turns: the inverse of {@link adjusterAngle}.
 *
 * @throws {@link DomainError} naming the field that is wrong, or `angleDeg` where the adjuster does not reach.
 * @example
 * ```ts
 * import { adjusterTurns } from 'slantpath/peaking';
 * const screw = { kind: 'push', threadPitchM: 0.00175, leverArmM: 0.12 } as const;
 * adjusterTurns(screw, 1).toFixed(2); // => '1.20'
 * ```
 */
export function adjusterTurns(adjuster: Adjuster, angleDeg: number): number {
  const input = checked(adjuster);
  if (input.kind === 'push')
    return (input.leverArmM * tanDeg(inRange('angleDeg', angleDeg, -80, 80))) / input.threadPitchM;
  const { leverArmM, baseArmM, strutLengthM } = input;
  const squares = leverArmM ** 2 + baseArmM ** 2;
  const twice = 2 * leverArmM * baseArmM;
  const zeroDeg = acosDeg((squares - strutLengthM ** 2) / twice);
  const corner = inRange('angleDeg', angleDeg, -zeroDeg, 180 - zeroDeg) + zeroDeg;
  const lengthM = Math.sqrt(Math.max(0, squares - twice * cosDeg(corner)));
  return (lengthM - strutLengthM) / input.threadPitchM;
}

const AZIMUTH_ON_SKY_DEG_TURN_KEYS = { azimuthDeg: true, elevationDeg: true } satisfies Keys<
  Parameters<typeof azimuthOnSkyDeg>[0]
>;

/**
 * Angle on the sky, in degrees, of a small turn of the azimuth axis: its cosine share at the elevation.
 *
 * @param turn  `azimuthDeg` within 10; `elevationDeg` -90 to 90.
 * @throws {@link DomainError} naming `azimuthDeg` or `elevationDeg`.
 *
 * Source: great-circle distance of two directions of equal elevation, sin(d/2) = sin(turn/2) cos(elevation).
 * @example
 * ```ts
 * import { azimuthOnSkyDeg } from 'slantpath/peaking';
 * azimuthOnSkyDeg({ azimuthDeg: 1, elevationDeg: 60 }).toFixed(3); // => '0.500'
 * ```
 */
export function azimuthOnSkyDeg(turn: {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
}): number {
  const input = knownOnly('turn', turn, AZIMUTH_ON_SKY_DEG_TURN_KEYS);
  const azimuthDeg = inRange('azimuthDeg', input.azimuthDeg, -10, 10);
  const elevationDeg = inRange('elevationDeg', input.elevationDeg, -90, 90);
  return (
    2 * DEGREES_PER_RADIAN * Math.asin(sinDeg(azimuthDeg / 2) * Math.abs(cosDeg(elevationDeg)))
  );
}

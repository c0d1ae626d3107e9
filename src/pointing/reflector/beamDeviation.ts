/** The hand formulas behind several slots: beam deviation factor and the feed's step aside. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { tanDeg } from '../../numeric/angle.js';

/** What {@link beamDeviationFactor} is asked. */
export interface BeamDeviationInput {
  /** Focal length over diameter (ratio), 0.25 to 3. */
  readonly focalRatio: number;
  /** Lo's illumination constant (ratio), 0 to 1; 0.36 when left out, for the usual edge taper of about 10 dB. */
  readonly illuminationRatio?: number;
}

const BEAM_DEVIATION_INPUT_KEYS = {
  focalRatio: true,
  illuminationRatio: true,
} satisfies Keys<BeamDeviationInput>;

/**
 * Beam deviation factor of a paraboloid with the feed on its axis: beam angle over feed angle (ratio), below 1.
 *
 * (1 + k (D / 4 f)^2) / (1 + (D / 4 f)^2). `severalSlots` computes its own from ray lengths, also for offset reflectors, where the distance
 * from the focus to the middle of the reflector takes the place of the focal length.
 *
 * @throws {@link DomainError} naming `focalRatio` or `illuminationRatio`.
 *
 * Source: Y. T. Lo, IRE Trans. AP-8, 1960, in the closed form common to handbooks (from memory, about 95 % sure).
 * Accuracy: 0.005 against the least-squares factor of `severalSlots` for a taper of 10 dB.
 * @example
 * ```ts
 * import { beamDeviationFactor } from 'slantpath/pointing';
 * beamDeviationFactor({ focalRatio: 0.6 }).toFixed(3); // => '0.905'
 * ```
 */
export function beamDeviationFactor(input: BeamDeviationInput): number {
  const { focalRatio, illuminationRatio } = knownOnly('input', input, BEAM_DEVIATION_INPUT_KEYS);
  const depth = (1 / (4 * inRange('focalRatio', focalRatio, 0.25, 3))) ** 2;
  const k = inRange('illuminationRatio', illuminationRatio ?? 0.36, 0, 1);
  return (1 + k * depth) / (1 + depth);
}

/** What {@link feedStepAside} is asked. */
export interface FeedStepInput {
  /** Angle of the beam from the boresight in degrees, -40 to 40. */
  readonly beamOffsetDeg: number;
  /** Distance from the focus to the middle of the reflector in metres, 0.01 to 100; the focal length where the feed is on the axis. */
  readonly focusToMiddleM: number;
  /** Beam angle over feed angle (ratio), 0.5 to 1. */
  readonly beamDeviationFactorRatio: number;
}

const FEED_STEP_INPUT_KEYS = {
  beamOffsetDeg: true,
  focusToMiddleM: true,
  beamDeviationFactorRatio: true,
} satisfies Keys<FeedStepInput>;

/**
 * How far a feed must step aside for a beam beside the boresight, in metres, to the side opposite to the beam's.
 *
 * Distance x tan(beam angle) / beam deviation factor, the formula of the handbooks.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: definition of the beam deviation factor.
 * Accuracy: 1 % of the step up to 10 degrees; `severalSlots` gives the exact place.
 * @example
 * ```ts
 * import { feedStepAside } from 'slantpath/pointing';
 * feedStepAside({ beamOffsetDeg: 5, focusToMiddleM: 0.647, beamDeviationFactorRatio: 0.944 }).toFixed(3); // => '0.060'
 * ```
 */
export function feedStepAside(input: FeedStepInput): number {
  const given = knownOnly('input', input, FEED_STEP_INPUT_KEYS);
  const offsetDeg = inRange('beamOffsetDeg', given.beamOffsetDeg, -40, 40);
  const distanceM = inRange(
    'focusToMiddleM',
    given.focusToMiddleM,
    0.01,
    100,
    'is the distance in metres?',
  );
  const factor = inRange('beamDeviationFactorRatio', given.beamDeviationFactorRatio, 0.5, 1);
  return (distanceM * tanDeg(offsetDeg)) / factor + 0;
}

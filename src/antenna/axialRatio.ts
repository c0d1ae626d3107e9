/** Circular polarization that is not quite round: axial ratio, discrimination, and the loss between two such antennas. */

import { inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { cosDeg } from '../numeric/angle.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';

/** Axial ratio as a ratio of fields, 1 or more. */
const fieldRatio = (axialRatioDb: number): number => dbToRatio(axialRatioDb / 2);

/**
 * Cross-polar discrimination in dB of a wave or antenna with an axial ratio: 20 log10((r + 1) / (r - 1)).
 *
 * @param axialRatioDb  Axial ratio in dB, 0 (round, held at 200 dB of discrimination) to 60.
 * @throws {@link DomainError} naming `axialRatioDb`.
 * Source: definition of the polarization ellipse; open tables give 34.15 dB for a ratio of 1.04. Accuracy: rounding only.
 * @example
 * ```ts
 * import { discriminationFromAxialRatio } from 'slantpath/antenna';
 * discriminationFromAxialRatio(1.5).toFixed(1); // => '21.3'
 * ```
 */
export function discriminationFromAxialRatio(axialRatioDb: number): number {
  const ratio = fieldRatio(inRange('axialRatioDb', axialRatioDb, 0, 60));
  return Math.min(200, 2 * ratioToDb((ratio + 1) / Math.max(ratio - 1, 1e-11))) + 0;
}

/**
 * Axial ratio in dB of a wave or antenna with a cross-polar discrimination.
 *
 * @param discriminationDb  Discrimination in dB, 0.1 to 200.
 * @throws {@link DomainError} naming `discriminationDb`.
 * Source: `discriminationFromAxialRatio`, solved. Accuracy: rounding only.
 * @example
 * ```ts
 * import { axialRatioFromDiscrimination } from 'slantpath/antenna';
 * axialRatioFromDiscrimination(25).toFixed(2); // => '0.98'
 * ```
 */
export function axialRatioFromDiscrimination(discriminationDb: number): number {
  const q = fieldRatio(inRange('discriminationDb', discriminationDb, 0.1, 200));
  return 2 * ratioToDb((q + 1) / (q - 1));
}

/** Two elliptical antennas that face each other. */
export interface EllipticalPair {
  /** Axial ratio of the first in dB, 0 (round) to 60 (all but linear). */
  readonly firstAxialRatioDb: number;
  /** Axial ratio of the second in dB, 0 to 60. */
  readonly secondAxialRatioDb: number;
  /** Whether both turn the same way. */
  readonly hands: 'same' | 'opposite';
  /** Angle between the long axes of the two ellipses in degrees, any; default the one that loses most. */
  readonly tiltBetweenDeg?: number;
}

const ELLIPTICAL_PAIR_KEYS = {
  firstAxialRatioDb: true,
  secondAxialRatioDb: true,
  hands: true,
  tiltBetweenDeg: true,
} satisfies Keys<EllipticalPair>;

/**
 * Loss of polarization between two elliptical antennas in dB, 0 or more; 200 where nothing passes.
 *
 * @throws {@link DomainError} naming the field.
 * Source: product of two polarization ellipses (from memory; checked against field vectors). Accuracy: 1e-9 dB below 60 dB of loss.
 * @example
 * ```ts
 * import { ellipticalMismatchLoss } from 'slantpath/antenna';
 * const pair = { firstAxialRatioDb: 3, secondAxialRatioDb: 2, hands: 'same', tiltBetweenDeg: 90 } as const;
 * ellipticalMismatchLoss(pair).toFixed(2); // => '0.35'
 * ```
 */
export function ellipticalMismatchLoss(pair: EllipticalPair): number {
  const given = knownOnly('pair', pair, ELLIPTICAL_PAIR_KEYS);
  const first = fieldRatio(inRange('firstAxialRatioDb', given.firstAxialRatioDb, 0, 60));
  const second = fieldRatio(inRange('secondAxialRatioDb', given.secondAxialRatioDb, 0, 60));
  const sense = oneOf('hands', given.hands, ['same', 'opposite']) === 'same' ? 1 : -1;
  const tilt = inRange('tiltBetweenDeg', given.tiltBetweenDeg ?? 90, -1e6, 1e6);
  const a = first * first;
  const b = second * second;
  const passed =
    ((1 + a) * (1 + b) + 4 * sense * first * second + (1 - a) * (1 - b) * cosDeg(2 * tilt)) /
    (2 * (1 + a) * (1 + b));
  return -ratioToDb(Math.min(1, Math.max(passed, 1e-20))) + 0;
}

const LINEAR_ON_ELLIPTICAL_LOSS_WAVE_KEYS = { axialRatioDb: true, angleDeg: true } satisfies Keys<
  Parameters<typeof linearOnEllipticalLoss>[0]
>;

/**
 * Loss in dB of a linear antenna on an elliptical wave: 3.01 on a round one, more across its long axis, less along it.
 *
 * @param wave  Axial ratio in dB, 0 to 60; angle of the linear antenna from the long axis in degrees, any; default 90, the worst.
 * @throws {@link DomainError} naming the field.
 * Source: projection of the polarization ellipse. Accuracy: rounding only.
 * @example
 * ```ts
 * import { linearOnEllipticalLoss } from 'slantpath/antenna';
 * linearOnEllipticalLoss({ axialRatioDb: 1 }).toFixed(2); // => '3.54'
 * ```
 */
export function linearOnEllipticalLoss(wave: {
  readonly axialRatioDb: number;
  readonly angleDeg?: number;
}): number {
  const given = knownOnly('wave', wave, LINEAR_ON_ELLIPTICAL_LOSS_WAVE_KEYS);
  const square = fieldRatio(inRange('axialRatioDb', given.axialRatioDb, 0, 60)) ** 2;
  const along = cosDeg(inRange('angleDeg', given.angleDeg ?? 90, -1e6, 1e6)) ** 2;
  return -ratioToDb((square * along + 1 - along) / (1 + square)) + 0;
}

const AXIAL_RATIO_READ_READINGS_KEYS = {
  by: true,
  highestDbm: true,
  lowestDbm: true,
} satisfies Keys<Parameters<typeof axialRatioRead>[0]>;

/**
 * Axial ratio and discrimination from two readings.
 *
 * A linear probe that is turned reads a highest and a lowest level: their difference is the axial ratio. Two receiving hands in turn read the
 * wanted and the unwanted hand: their difference is the discrimination, of wave and receiving antenna together.
 *
 * @param readings  How it was read; the higher and the lower level in dBm, or in any one logarithmic unit.
 * @throws {@link DomainError} naming the field; the lower level may not be above the higher one.
 * Source: definitions. Accuracy: the readings'.
 * @example
 * ```ts
 * import { axialRatioRead } from 'slantpath/antenna';
 * const probe = { by: 'turned-linear-probe', highestDbm: -41.2, lowestDbm: -42.3 } as const;
 * axialRatioRead(probe).discriminationDb.toFixed(1); // => '24.0'
 * ```
 */
export function axialRatioRead(readings: {
  readonly by: 'turned-linear-probe' | 'both-hands';
  readonly highestDbm: number;
  readonly lowestDbm: number;
}): { readonly axialRatioDb: number; readonly discriminationDb: number } {
  const given = knownOnly('readings', readings, AXIAL_RATIO_READ_READINGS_KEYS);
  const by = oneOf('by', given.by, ['turned-linear-probe', 'both-hands']);
  const highest = inRange('highestDbm', given.highestDbm, -200, 200);
  const least = by === 'both-hands' ? highest - 0.1 : highest;
  const difference = highest - inRange('lowestDbm', given.lowestDbm, highest - 60, least);
  return by === 'turned-linear-probe'
    ? { axialRatioDb: difference, discriminationDb: discriminationFromAxialRatio(difference) }
    : { axialRatioDb: axialRatioFromDiscrimination(difference), discriminationDb: difference };
}

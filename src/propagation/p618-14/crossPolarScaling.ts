/** Recommendation ITU-R P.618-14, section 4.3: cross-polar discrimination from one frequency and tilt to another. */

import { finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { cosDeg } from '../../numeric/angle.js';
import { checkedFrequencyGHz, namesOutside } from '../inputs.js';
import { EDITION } from './edition.js';

/** Cross-polar discrimination carried to another frequency and tilt. */
export interface ScaledCrossPolarDiscrimination {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Discrimination at the second frequency and tilt, dB. */
  readonly discriminationDb: number;
  /** Names of inputs outside the stated range (4 to 30 GHz). */
  readonly outsideStatedRange: readonly string[];
}

const SCALED_CROSS_POLAR_DISCRIMINATION_INPUT_KEYS = {
  discriminationDb: true,
  fromGHz: true,
  fromTiltDeg: true,
  toGHz: true,
  toTiltDeg: true,
} satisfies Keys<Parameters<typeof scaledCrossPolarDiscrimination>[0]>;

/**
 * Cross-polar discrimination carried to another frequency and polarization tilt.
 *
 * XPD2 = XPD1 - 20 log(f2 sqrt(1 - 0.484 (1 + cos 4 tilt2)) / (f1 sqrt(1 - 0.484 (1 + cos 4 tilt1)))).
 *
 * @param input  Discrimination in dB, both frequencies in GHz (stated range 4 to 30) and tilts in degrees.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 4.3.
 * @example
 * ```ts
 * import { scaledCrossPolarDiscrimination } from 'slantpath/propagation';
 * const xpd = scaledCrossPolarDiscrimination({
 *   discriminationDb: 30,
 *   fromGHz: 12,
 *   fromTiltDeg: 0,
 *   toGHz: 14,
 *   toTiltDeg: 0,
 * });
 * xpd.discriminationDb.toFixed(2); // => '28.66'
 * ```
 */
export function scaledCrossPolarDiscrimination(input: {
  readonly discriminationDb: number;
  readonly fromGHz: number;
  readonly fromTiltDeg: number;
  readonly toGHz: number;
  readonly toTiltDeg: number;
}): ScaledCrossPolarDiscrimination {
  knownOnly('input', input, SCALED_CROSS_POLAR_DISCRIMINATION_INPUT_KEYS);
  const discriminationDb = inRange('discriminationDb', input.discriminationDb, -100, 200);
  const fromGHz = checkedFrequencyGHz(input.fromGHz, undefined, 'fromGHz');
  const toGHz = checkedFrequencyGHz(input.toGHz, undefined, 'toGHz');
  const from = fromGHz * Math.sqrt(tiltFactor(finite('fromTiltDeg', input.fromTiltDeg)));
  const to = toGHz * Math.sqrt(tiltFactor(finite('toTiltDeg', input.toTiltDeg)));
  return {
    edition: EDITION,
    discriminationDb: discriminationDb - 20 * Math.log10(to / from),
    outsideStatedRange: namesOutside(['fromGHz', fromGHz, 4, 30], ['toGHz', toGHz, 4, 30]),
  };
}

/** 1 - 0.484 (1 + cos 4 tilt): how much a tilt couples into the other polarization, 0.032 to 1. */
export function tiltFactor(tiltDeg: number): number {
  return 1 - 0.484 * (1 + cosDeg(4 * tiltDeg));
}

/** What the unevenness of a reflector's surface takes away. */

import { SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { checkedFrequencyGHz } from './guards.js';

/** Ruze's loss: 10 log10(e) (4 pi error / wavelength)^2, both lengths in the same unit. */
export function ruzeLossDb(errorM: number, wavelengthM: number): number {
  const phase = (4 * Math.PI * errorM) / wavelengthM;
  return 10 * Math.LOG10E * phase * phase;
}

const SURFACE_LOSS_SURFACE_KEYS = { surfaceErrorMm: true, frequencyGHz: true } satisfies Keys<
  Parameters<typeof surfaceLoss>[0]
>;

/**
 * Loss of gain by random unevenness of the reflector (Ruze), in dB, 0 or more.
 *
 * loss = 10 log10(e) (4 pi s / wavelength)^2 = 685.8 (s / wavelength)^2, with s the root-mean-square
 * departure of the surface from its ideal shape, small against the wavelength and uncorrelated over distances
 * well below the diameter.
 *
 * @param surface  `surfaceErrorMm` root-mean-square in millimetres, 0 to 100; `frequencyGHz` 0.1 to 400.
 * @throws {@link DomainError} naming `surfaceErrorMm` or `frequencyGHz`.
 *
 * Source: J. Ruze, Antenna tolerance theory - a review, Proc. IEEE 54 (1966), p. 633.
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { surfaceLoss } from 'slantpath/antenna';
 * surfaceLoss({ surfaceErrorMm: 0.5, frequencyGHz: 12 }).toFixed(4); // => '0.2747'
 * ```
 */
export function surfaceLoss(surface: {
  readonly surfaceErrorMm: number;
  readonly frequencyGHz: number;
}): number {
  const input = knownOnly('surface', surface, SURFACE_LOSS_SURFACE_KEYS);
  const errorM = inRange('surfaceErrorMm', input.surfaceErrorMm, 0, 100) / 1000;
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (checkedFrequencyGHz(input.frequencyGHz) * 1e9);
  return ruzeLossDb(errorM, wavelengthM);
}

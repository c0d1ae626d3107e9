/** Half-power beamwidth of a reflector. */

import { SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { checkedDiameterM, checkedFrequencyGHz } from './guards.js';

/** A reflector for {@link halfPowerBeamwidth}. */
export interface BeamwidthInput {
  /** Diameter of the aperture in metres, 0.05 to 100, in the plane of the cut. */
  readonly diameterM: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /**
   * Degrees of beamwidth at one wavelength of diameter, 50 to 150; default 70, the usual figure for a
   * feed that lights the rim about 10 dB below the centre. Even illumination gives 58.957.
   */
  readonly beamwidthFactorDeg?: number;
}

const BEAMWIDTH_INPUT_KEYS = {
  diameterM: true,
  frequencyGHz: true,
  beamwidthFactorDeg: true,
} satisfies Keys<BeamwidthInput>;

/**
 * Half-power (3 dB) beamwidth in degrees: factor times wavelength over diameter.
 *
 * @throws {@link DomainError} naming `diameterM`, `frequencyGHz` or `beamwidthFactorDeg`.
 *
 * Source: practice of the trade for the factor 70 (Maini and Agrawal, Satellite Communication, Wiley India 2010,
 * Example 4.12); the factor of a given illumination comes from {@link illuminatedAperture}.
 * Accuracy: the factor, about 10 %, unless the illumination is known.
 * @example
 * ```ts
 * import { halfPowerBeamwidth } from 'slantpath/antenna';
 * halfPowerBeamwidth({ diameterM: 0.9, frequencyGHz: 11.7 }).toFixed(2); // => '1.99'
 * ```
 */
export function halfPowerBeamwidth(antenna: BeamwidthInput): number {
  const input = knownOnly('antenna', antenna, BEAMWIDTH_INPUT_KEYS);
  const diameterM = checkedDiameterM(input.diameterM);
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const factorDeg = inRange('beamwidthFactorDeg', input.beamwidthFactorDeg ?? 70, 50, 150);
  return Math.min(180, (factorDeg * SPEED_OF_LIGHT_M_PER_S) / (frequencyGHz * 1e9 * diameterM));
}

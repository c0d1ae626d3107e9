/** Where the far field of a reflector begins. */

import { SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { type Keys, knownOnly } from '../keys.js';
import { checkedDiameterM, checkedFrequencyGHz } from './guards.js';

const FAR_FIELD_DISTANCE_ANTENNA_KEYS = { diameterM: true, frequencyGHz: true } satisfies Keys<
  Parameters<typeof farFieldDistance>[0]
>;

/**
 * Distance in metres from which a pattern may be measured: 2 D^2 / wavelength, where the phase over the
 * aperture is within 22.5 degrees.
 *
 * @param antenna  `diameterM` 0.05 to 100; `frequencyGHz` 0.1 to 400.
 * @throws {@link DomainError} naming `diameterM` or `frequencyGHz`.
 *
 * Source: IEEE Std 145 (far-field region); the exposure estimate uses 0.6 D^2 / wavelength instead.
 * Accuracy: a convention.
 * @example
 * ```ts
 * import { farFieldDistance } from 'slantpath/antenna';
 * farFieldDistance({ diameterM: 0.9, frequencyGHz: 11.7 }).toFixed(1); // => '63.2'
 * ```
 */
export function farFieldDistance(antenna: {
  readonly diameterM: number;
  readonly frequencyGHz: number;
}): number {
  const input = knownOnly('antenna', antenna, FAR_FIELD_DISTANCE_ANTENNA_KEYS);
  const diameterM = checkedDiameterM(input.diameterM);
  return (
    (2 * diameterM ** 2 * checkedFrequencyGHz(input.frequencyGHz) * 1e9) / SPEED_OF_LIGHT_M_PER_S
  );
}

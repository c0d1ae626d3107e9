/** ITU-R P.839-4: the height to which rain reaches, from the height of the 0 degree Celsius isotherm. */

import { inRange } from '../errors.js';

/** Mean annual rain height. */
export interface RainHeight {
  /** The recommendation implemented. */
  readonly edition: 'P.839-4';
  /** Mean annual height of the 0 degree Celsius isotherm above mean sea level, km. */
  readonly isothermHeightKm: number;
  /** Mean annual rain height above mean sea level, km. */
  readonly rainHeightKm: number;
}

/**
 * Mean annual rain height from the mean annual height of the 0 degree Celsius isotherm (P.839-4).
 *
 * @param isothermHeightKm  Height of the isotherm above mean sea level in kilometres, -5 to 10
 *   (`climateAt` in `slantpath/climate` gives it for any place).
 * @returns Rain height in kilometres above mean sea level: 0.36 km above the isotherm.
 * @throws {@link DomainError} naming `isothermHeightKm`.
 *
 * Source: ITU-R P.839-4, Annex 1, equation 1.
 * Accuracy: exact.
 * @example
 * ```ts
 * import { rainHeight } from 'slantpath/propagation';
 * rainHeight(2.69).rainHeightKm.toFixed(2); // => '3.05'
 * ```
 */
export function rainHeight(isothermHeightKm: number): RainHeight {
  const checked = inRange(
    'isothermHeightKm',
    isothermHeightKm,
    -5,
    10,
    'is the height in kilometres?',
  );
  return { edition: 'P.839-4', isothermHeightKm: checked, rainHeightKm: checked + 0.36 };
}

/** Decibels and power ratios, and the one way in which levels are added: by their powers. */

import { DomainError, finite, list } from '../errors.js';
import { inRow, valueAt } from './columns.js';

/** Power ratio of a difference in decibels: 10^(dB/10). */
export function dbToRatio(differenceDb: number): number {
  return 10 ** (differenceDb / 10);
}

/** Difference in decibels of a power ratio above zero: 10 log10(ratio). */
export function ratioToDb(ratio: number): number {
  return 10 * Math.log10(ratio);
}

/**
 * Level of the sum of incoherent signals, in the unit of the given levels (dBm in, dBm out).
 *
 * @param levelsDbm  Levels in dBm, at least one; one level is returned as it is.
 * @throws {@link DomainError} `empty` for no level, `not-finite` or `not-a-number` with the index of a bad one.
 * @example
 * ```ts
 * import { sumPowerDbm } from 'slantpath';
 * sumPowerDbm([-30, -30]).toFixed(2); // => '-26.99'
 * ```
 */
export function sumPowerDbm(levelsDbm: ArrayLike<number>): number {
  const { length } = list('levelsDbm', levelsDbm);
  if (length === 0) {
    throw new DomainError({
      code: 'empty',
      parameter: 'levelsDbm',
      received: levelsDbm,
      allowed: 'at least one level',
    });
  }
  let highest = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < length; index++) {
    const level = finite('levelsDbm', inRow(levelsDbm, index), undefined, index);
    if (level > highest) highest = level;
  }
  // Relative to the highest level, so that very low levels neither underflow nor lose digits.
  let sum = 0;
  for (let index = 0; index < length; index++)
    sum += dbToRatio(valueAt(levelsDbm, index) - highest);
  return highest + ratioToDb(sum);
}

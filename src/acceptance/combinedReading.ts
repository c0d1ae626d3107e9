/** Repeated readings combined: mean, standard uncertainty, and the interval by Student's t (JCGM 100:2008). */

import { DomainError, finite, inRange, object } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { valueAt } from '../numeric/columns.js';
import { studentCoverageFactor } from '../numeric/student.js';

/** Repeated readings of one quantity. */
export interface RepeatedReadings {
  /** The readings, all in one unit; at least one, at least two where the instrument's uncertainty is left out. */
  readonly readings: ArrayLike<number>;
  /** Standard uncertainty that all readings share (calibration of the instrument), in their unit; 0 by default. */
  readonly instrumentStandardUncertainty?: number;
  /** Coverage of the interval, 0.5 to 0.9999; 0.95 by default. */
  readonly coverageRatio?: number;
}

const REPEATED_READINGS_KEYS = {
  readings: true,
  instrumentStandardUncertainty: true,
  coverageRatio: true,
} satisfies Keys<RepeatedReadings>;

/** The mean with its uncertainty, all in the unit of the readings. */
export interface CombinedReading {
  /** Count of readings. */
  readonly count: number;
  /** Mean of the readings. */
  readonly mean: number;
  /** Experimental standard deviation of one reading; `null` for a single one. */
  readonly standardDeviation: number | null;
  /** Standard uncertainty of the mean from repetition, s / sqrt n; `null` for a single reading. */
  readonly repeatability: number | null;
  /** Standard uncertainty with that of the instrument: the root of the sum of squares. */
  readonly standardUncertainty: number;
  /** Effective degrees of freedom by Welch and Satterthwaite; `null` where they have no limit. */
  readonly degreesOfFreedom: number | null;
  /** Student's t for the coverage. */
  readonly coverageFactor: number;
  /** Coverage factor times standard uncertainty. */
  readonly expandedUncertainty: number;
  /** Mean less and plus the expanded uncertainty. */
  readonly interval: { readonly from: number; readonly to: number };
}

/**
 * Mean of repeated readings with its uncertainty and coverage interval.
 *
 * s = sqrt(sum (x - mean)^2 / (n - 1)), u = s / sqrt n with n - 1 degrees of freedom; with the instrument's
 * share u_c = sqrt(u^2 + u_i^2) and nu = u_c^4 / (u^4 / (n - 1)).
 *
 * @throws {@link DomainError} `empty`, `too-few` for one reading without an instrument's uncertainty, `not-finite`.
 *
 * Source: JCGM 100:2008, 4.2, G.3 and G.4.
 * Accuracy: 1e-12 relative.
 * @example
 * ```ts
 * import { combinedReading } from 'slantpath/acceptance';
 * const level = combinedReading({ readings: [52.1, 51.6, 52.4] });
 * level.mean.toFixed(2); // => '52.03'
 * level.expandedUncertainty.toFixed(2); // => '1.00'
 * ```
 */
export function combinedReading(repeated: RepeatedReadings): CombinedReading {
  known('repeated', repeated, REPEATED_READINGS_KEYS);
  object('readings', repeated.readings);
  const instrument = inRange(
    'instrumentStandardUncertainty',
    repeated.instrumentStandardUncertainty ?? 0,
    0,
    1e100,
  );
  const coverageRatio = inRange(
    'coverageRatio',
    repeated.coverageRatio ?? 0.95,
    0.5,
    0.9999,
    'is it given in percent?',
  );
  const count = repeated.readings.length;
  if (!(count >= 1) || (count === 1 && instrument === 0))
    throw new DomainError({
      code: count === 1 ? 'too-few' : 'empty',
      parameter: 'readings',
      received: repeated.readings,
      allowed:
        'at least two readings, or one with the standard uncertainty of the instrument above 0',
    });
  const values = Array.from(repeated.readings, (value, index) => {
    finite('readings', value, undefined, index);
    return inRange('readings', value, -1e100, 1e100, undefined, index);
  });
  // Relative to the first reading, so that a large common part costs no digits.
  const first = valueAt(values, 0);
  const mean = first + values.reduce((sum, value) => sum + (value - first), 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const standardDeviation = count === 1 ? null : Math.sqrt(squares / (count - 1));
  const repeatability = standardDeviation === null ? null : standardDeviation / Math.sqrt(count);
  const standardUncertainty = Math.hypot(repeatability ?? 0, instrument);
  const share = repeatability === null ? 0 : repeatability / (standardUncertainty || 1);
  const freedom = share === 0 ? null : (count - 1) / share ** 4;
  const degreesOfFreedom = freedom !== null && freedom < 1e6 ? freedom : null;
  const coverageFactor = studentCoverageFactor(
    coverageRatio,
    degreesOfFreedom ?? Number.POSITIVE_INFINITY,
  );
  const expandedUncertainty = coverageFactor * standardUncertainty;
  return {
    count,
    mean,
    standardDeviation,
    repeatability,
    standardUncertainty,
    degreesOfFreedom,
    coverageFactor,
    expandedUncertainty,
    interval: { from: mean - expandedUncertainty, to: mean + expandedUncertainty },
  };
}

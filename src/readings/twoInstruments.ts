/** Two instruments on one point: how far apart they read, and how sure that is. */

import { DomainError, inRange, list } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { valueAt } from '../numeric/columns.js';
import { studentCoverageFactor } from '../numeric/student.js';

/** How far one instrument reads above the other. */
export interface InstrumentDifference {
  /** Mean of the first less mean of the second, in the unit of the readings (dB). */
  readonly differenceDb: number;
  /** Standard uncertainty of the difference in dB. */
  readonly standardUncertaintyDb: number;
  /** Degrees of freedom of that uncertainty, 1 or more. */
  readonly degreesOfFreedom: number;
  /** Half width of the 95 % interval in dB: Student's factor times the standard uncertainty. */
  readonly halfWidth95Db: number;
  /** Standard deviation of one reading in dB: of both instruments pooled, or of one pair. */
  readonly standardDeviationDb: number;
}

/** Readings as numbers, at least two. */
function readings(parameter: string, values: ArrayLike<number>): number[] {
  const given = Array.from(list(parameter, values));
  if (given.length < 2)
    throw new DomainError({
      code: 'too-few',
      parameter,
      received: values,
      allowed: 'at least 2 readings',
    });
  return given.map((value, index) => inRange(parameter, value, -1e9, 1e9, undefined, index));
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Sum of squared departures from the mean. */
const squares = (values: readonly number[]): number => {
  const middle = mean(values);
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
};

function difference(
  differenceDb: number,
  standardUncertaintyDb: number,
  degreesOfFreedom: number,
  standardDeviationDb: number,
): InstrumentDifference {
  return {
    differenceDb: differenceDb + 0,
    standardUncertaintyDb,
    degreesOfFreedom,
    halfWidth95Db: studentCoverageFactor(0.95, degreesOfFreedom) * standardUncertaintyDb,
    standardDeviationDb,
  };
}

const DIFFERENCE_OF_INSTRUMENTS_BOTH_KEYS = { firstDb: true, secondDb: true } satisfies Keys<
  Parameters<typeof differenceOfInstruments>[0]
>;

/**
 * Difference of two instruments that read the same point several times each, not in pairs.
 *
 * Each instrument keeps its own scatter (Welch): u = sqrt(s1^2/n1 + s2^2/n2), degrees of freedom after Satterthwaite.
 *
 * @param both  Readings of the first and of the second instrument in dB, at least two each.
 * @throws {@link DomainError} `too-few`, or naming the reading that is not finite.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1. Accuracy: rounding; Welch's degrees of freedom are an
 * approximation, good to a few percent of the interval.
 * @example
 * ```ts
 * import { differenceOfInstruments } from 'slantpath/readings';
 * const apart = differenceOfInstruments({
 *   firstDb: [68.2, 68.4, 68.1, 68.3, 68.3],
 *   secondDb: [66.9, 67.3, 67.0, 67.2, 66.9],
 * });
 * apart.differenceDb.toFixed(2); // => '1.20'
 * apart.halfWidth95Db.toFixed(2); // => '0.23'
 * ```
 */
export function differenceOfInstruments(both: {
  readonly firstDb: ArrayLike<number>;
  readonly secondDb: ArrayLike<number>;
}): InstrumentDifference {
  knownOnly('both', both, DIFFERENCE_OF_INSTRUMENTS_BOTH_KEYS);
  const first = readings('firstDb', both?.firstDb);
  const second = readings('secondDb', both.secondDb);
  const n1 = first.length;
  const n2 = second.length;
  const v1 = squares(first) / (n1 - 1) / n1;
  const v2 = squares(second) / (n2 - 1) / n2;
  const degrees =
    v1 + v2 > 0 ? (v1 + v2) ** 2 / (v1 ** 2 / (n1 - 1) + v2 ** 2 / (n2 - 1)) : n1 + n2 - 2;
  const pooled = Math.sqrt((squares(first) + squares(second)) / (n1 + n2 - 2));
  return difference(mean(first) - mean(second), Math.sqrt(v1 + v2), degrees, pooled);
}

const PAIRED_DIFFERENCE_BOTH_KEYS = { firstDb: true, secondDb: true } satisfies Keys<
  Parameters<typeof pairedDifference>[0]
>;

/**
 * Difference of two instruments that read the same points in pairs: what differs from point to point falls out.
 *
 * @param both  Readings in dB, the first and the second instrument point by point; at least two pairs.
 * @throws {@link DomainError} `too-few`, `length-mismatch`, or naming the reading that is not finite.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1.1 (paired observations). Accuracy: rounding only.
 * @example
 * ```ts
 * import { pairedDifference } from 'slantpath/readings';
 * const apart = pairedDifference({
 *   firstDb: [61.2, 55.0, 70.3, 48.8, 66.1],
 *   secondDb: [60.1, 54.2, 69.0, 47.9, 65.2],
 * });
 * `${apart.differenceDb.toFixed(2)} ± ${apart.halfWidth95Db.toFixed(2)}`; // => '1.00 ± 0.25'
 * ```
 */
export function pairedDifference(both: {
  readonly firstDb: ArrayLike<number>;
  readonly secondDb: ArrayLike<number>;
}): InstrumentDifference {
  knownOnly('both', both, PAIRED_DIFFERENCE_BOTH_KEYS);
  const first = readings('firstDb', both?.firstDb);
  const second = readings('secondDb', both.secondDb);
  if (first.length !== second.length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'secondDb',
      received: second,
      allowed: `of the same length as firstDb (${first.length})`,
    });
  const apart = first.map((value, index) => value - valueAt(second, index));
  const n = apart.length;
  const deviation = Math.sqrt(squares(apart) / (n - 1));
  return difference(mean(apart), deviation / Math.sqrt(n), n - 1, deviation);
}

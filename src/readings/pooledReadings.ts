/** Several readings of one quantity, each with its own uncertainty, made into one. */

import { DomainError, inRange, objects, positive } from '../errors.js';
import { known } from '../keys.js';
import { valueAt } from '../numeric/columns.js';

/** A reading with its standard uncertainty. */
export interface UncertainReading {
  /** Value in dB (or any one unit). */
  readonly valueDb: number;
  /** Standard uncertainty in the same unit, above 0. */
  readonly standardUncertaintyDb: number;
}

/** Readings pooled. */
export interface PooledReading {
  /** Weighted mean in dB. */
  readonly valueDb: number;
  /** Standard uncertainty from the stated ones alone. */
  readonly statedUncertaintyDb: number;
  /** Sum of the squared departures over their variances; about the number of readings less one where the stated ones are right. */
  readonly chiSquared: number;
  /** Root of that sum over its expectation: above 1, the readings scatter more than they state. */
  readonly birgeRatio: number;
  /** Stated uncertainty, widened by the Birge ratio where that is above 1. */
  readonly standardUncertaintyDb: number;
}

function checked(readings: readonly UncertainReading[]): UncertainReading[] {
  if (!Array.isArray(readings) || readings.length < 2)
    throw new DomainError({
      code: Array.isArray(readings) ? 'too-few' : 'malformed',
      parameter: 'readings',
      received: readings,
      allowed: 'an array of at least 2 readings',
    });
  return objects<UncertainReading>('readings', readings).map((reading, index) => {
    const at = known(`readings[${index}]`, reading, { valueDb: true, standardUncertaintyDb: true });
    return {
      valueDb: inRange(`readings[${index}].valueDb`, at.valueDb, -1e9, 1e9),
      standardUncertaintyDb: inRange(
        `readings[${index}].standardUncertaintyDb`,
        positive(`readings[${index}].standardUncertaintyDb`, at.standardUncertaintyDb),
        1e-9,
        1000,
      ),
    };
  });
}

/** Mean weighted by `weights`, and the sum of the weights. */
function weighted(
  readings: readonly UncertainReading[],
  weights: readonly number[],
): readonly [meanDb: number, sum: number] {
  let sum = 0;
  let total = 0;
  readings.forEach(({ valueDb }, index) => {
    sum += valueAt(weights, index);
    total += valueAt(weights, index) * valueDb;
  });
  return [total / sum, sum];
}

const inverseVariances = (readings: readonly UncertainReading[]): number[] =>
  readings.map(({ standardUncertaintyDb }) => 1 / standardUncertaintyDb ** 2);

const departures = (
  readings: readonly UncertainReading[],
  weights: readonly number[],
  meanDb: number,
): number =>
  readings.reduce(
    (sum, { valueDb }, index) => sum + valueAt(weights, index) * (valueDb - meanDb) ** 2,
    0,
  );

/**
 * Weighted mean of readings of the same quantity: weights 1/u^2, widened where the readings scatter more than they state.
 *
 * Widening by the Birge ratio takes all stated uncertainties to be wrong by one factor; where the readings come from different
 * instruments, `meanOfDifferingReadings` fits better.
 *
 * @throws {@link DomainError} `too-few`, or naming the field of the reading.
 * Source: JCGM 100:2008, 5.1; R. T. Birge (1932), widening as by the Particle Data Group. Accuracy: rounding only.
 * @example
 * ```ts
 * import { pooledReading } from 'slantpath/readings';
 * const pooled = pooledReading([
 *   { valueDb: 1.4, standardUncertaintyDb: 0.2 },
 *   { valueDb: 0.9, standardUncertaintyDb: 0.3 },
 *   { valueDb: 1.1, standardUncertaintyDb: 0.25 },
 * ]);
 * `${pooled.valueDb.toFixed(2)} ± ${pooled.standardUncertaintyDb.toFixed(2)}`; // => '1.20 ± 0.14'
 * ```
 */
export function pooledReading(readings: readonly UncertainReading[]): PooledReading {
  const given = checked(readings);
  const weights = inverseVariances(given);
  const [valueDb, sum] = weighted(given, weights);
  const chiSquared = departures(given, weights, valueDb);
  const birgeRatio = Math.sqrt(chiSquared / (given.length - 1));
  const statedUncertaintyDb = Math.sqrt(1 / sum);
  return {
    valueDb,
    statedUncertaintyDb,
    chiSquared,
    birgeRatio,
    standardUncertaintyDb: statedUncertaintyDb * Math.max(1, birgeRatio),
  };
}

/** Readings of instruments that differ among themselves, pooled. */
export interface DifferingReadings {
  /** Mean in dB. */
  readonly valueDb: number;
  /** Standard uncertainty in dB, the instruments' own differences counted in. */
  readonly standardUncertaintyDb: number;
  /** Standard deviation among the instruments in dB, 0 where their stated uncertainties explain the scatter. */
  readonly betweenDb: number;
  /** Share of the scatter that the stated uncertainties do not explain, 0 to 1. */
  readonly unexplainedRatio: number;
}

/**
 * Mean of readings by instruments that differ among themselves by more than they state.
 *
 * Method of DerSimonian and Laird: the excess of the scatter becomes a variance between instruments, added to each.
 *
 * @throws {@link DomainError} `too-few`, or naming the field of the reading.
 * Source: R. DerSimonian and N. Laird, Controlled Clinical Trials 7 (1986), 177-188. Accuracy: rounding; with fewer than five
 * instruments the variance between them is itself known to a factor of two at best.
 * @example
 * ```ts
 * import { meanOfDifferingReadings } from 'slantpath/readings';
 * const offsets = [0.9, 1.3, 1.6, 0.7, 1.2];
 * const uncertainties = [0.15, 0.2, 0.25, 0.15, 0.2];
 * const mean = meanOfDifferingReadings(
 *   offsets.map((valueDb, i) => ({ valueDb, standardUncertaintyDb: uncertainties[i] ?? 0 })),
 * );
 * `${mean.valueDb.toFixed(2)} ± ${mean.standardUncertaintyDb.toFixed(2)}`; // => '1.10 ± 0.15'
 * ```
 */
export function meanOfDifferingReadings(readings: readonly UncertainReading[]): DifferingReadings {
  const given = checked(readings);
  const fixed = inverseVariances(given);
  const [commonDb, sum] = weighted(given, fixed);
  const scatter = departures(given, fixed, commonDb);
  const degrees = given.length - 1;
  const squareSum = fixed.reduce((total, weight) => total + weight * weight, 0);
  const variance = Math.max(0, (scatter - degrees) / (sum - squareSum / sum));
  const weights = given.map(
    ({ standardUncertaintyDb }) => 1 / (standardUncertaintyDb ** 2 + variance),
  );
  const [valueDb, weightSum] = weighted(given, weights);
  return {
    valueDb,
    standardUncertaintyDb: Math.sqrt(1 / weightSum),
    betweenDb: Math.sqrt(variance),
    unexplainedRatio: scatter > degrees ? 1 - degrees / scatter : 0,
  };
}

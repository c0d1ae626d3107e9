/** Scatter of an average of readings that follow each other faster than the flicker. */

import { DomainError, inRange, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';

/** Readings to be averaged. */
export interface Averaging {
  /** Standard deviation of one reading in dB. */
  readonly standardDeviationDb: number;
  /** How many readings are averaged, 1 to 100000. */
  readonly readings: number;
  /** Time from one reading to the next in seconds. */
  readonly spacingS: number;
  /** Time in seconds after which the flicker's correlation has fallen to 1/e; default 0 (each reading new). */
  readonly correlationTimeS?: number;
}

const AVERAGED_SCATTER_AVERAGING_KEYS = {
  standardDeviationDb: true,
  readings: true,
  spacingS: true,
  correlationTimeS: true,
} satisfies Keys<Averaging>;

/**
 * Standard deviation of the average, and to how many independent readings it amounts.
 *
 * With a correlation r between neighbours that falls exponentially,
 * var = s^2 / n (1 + 2 sum over k of (1 - k/n) r^k).
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: variance of a sum, e.g. G. E. P. Box and G. M. Jenkins, Time Series Analysis, ch. 2.
 * @example
 * ```ts
 * import { averagedScatter } from 'slantpath/peaking';
 * const average = averagedScatter({ standardDeviationDb: 0.4, readings: 10, spacingS: 1, correlationTimeS: 2 });
 * average.standardDeviationDb.toFixed(2); // => '0.23'
 * average.independentReadings.toFixed(1); // => '3.0'
 * ```
 */
export function averagedScatter(averaging: Averaging): {
  /** Standard deviation of the average in dB. */
  readonly standardDeviationDb: number;
  /** Number of independent readings with the same average scatter. */
  readonly independentReadings: number;
} {
  knownOnly('averaging', averaging, AVERAGED_SCATTER_AVERAGING_KEYS);
  if (typeof averaging !== 'object' || averaging === null)
    throw new DomainError({
      code: 'missing',
      parameter: 'averaging',
      received: averaging,
      allowed: 'an object',
    });
  const standardDeviationDb = inRange('standardDeviationDb', averaging.standardDeviationDb, 0, 50);
  const n = Math.round(inRange('readings', averaging.readings, 1, 100_000));
  const spacingS = positive('spacingS', averaging.spacingS);
  const correlationTimeS = inRange('correlationTimeS', averaging.correlationTimeS ?? 0, 0, 1e9);
  const r = correlationTimeS === 0 ? 0 : Math.exp(-spacingS / correlationTimeS);
  let sum = 1;
  let power = 1;
  for (let k = 1; k < n; k++) {
    power *= r;
    if (power < 1e-18) break;
    sum += 2 * (1 - k / n) * power;
  }
  return {
    standardDeviationDb: standardDeviationDb * Math.sqrt(sum / n),
    independentReadings: n / sum,
  };
}

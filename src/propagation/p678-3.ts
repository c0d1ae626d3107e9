/**
 * ITU-R P.678-3: how much the percentage of time of a fade (or a rain rate) moves from one year to the next.
 *
 * Two variances add: a single year is a short sample of correlated minutes, and years differ in climate.
 */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';

/** Year-to-year spread of a long-term percentage. */
export interface YearToYear {
  /** The recommendation implemented. */
  readonly edition: 'P.678-3';
  /** Long-term percentage, of an average year. */
  readonly exceededPercent: number;
  /** Standard deviation that a year's short sample alone gives, as a part of the percentage. */
  readonly samplingRatio: number;
  /** Standard deviation from year to year of the climate, as a part of the percentage (r_c). */
  readonly climaticRatio: number;
  /** Standard deviation of single years about the long-term percentage, as a part of it. */
  readonly standardDeviationRatio: number;
}

/** Minutes in a year, the samples of the recommendation. */
const SAMPLES = 525960;
const SAMPLE_S = 60;
const A = 0.0265;
const B1 = -0.0396;
const B2 = 0.286;
/** Terms summed one by one; the smooth rest is integrated. */
const DIRECT = 64;
const PANELS = 200;

/** Sum of the correlation over all lags of a year, 1 + 2 sum exp(-a t^b). */
function correlationSum(b: number): number {
  const term = (lag: number): number => Math.exp(-A * (SAMPLE_S * lag) ** b);
  const slope = (lag: number): number => (-term(lag) * A * b * (SAMPLE_S * lag) ** b) / lag;
  let sum = 0;
  for (let lag = 1; lag < DIRECT; lag++) sum += term(lag);
  // Euler and Maclaurin for the rest, the integral by Simpson's rule in the logarithm of the lag.
  const last = SAMPLES - 1;
  const width = Math.log(last / DIRECT) / PANELS;
  let integral = 0;
  for (let panel = 0; panel <= PANELS; panel++) {
    const lag = DIRECT * Math.exp(panel * width);
    const weight = panel === 0 || panel === PANELS ? 1 : panel % 2 === 1 ? 4 : 2;
    integral += weight * term(lag) * lag;
  }
  sum += (integral * width) / 3 + (term(DIRECT) + term(last)) / 2;
  sum += (slope(last) - slope(DIRECT)) / 12;
  return 1 + 2 * sum;
}

const YEAR_TO_YEAR_INPUT_KEYS = { exceededPercent: true, climaticRatio: true } satisfies Keys<
  Parameters<typeof yearToYear>[0]
>;

/**
 * Standard deviation of single years about a long-term percentage of time (P.678-3).
 *
 * @param input  `exceededPercent`, 0.0001 to 50, and `climaticRatio`, 0 to 2: the recommendation has a map of it that
 *   is not carried here, so it must be given; 0.2 is a usual size, 0 leaves only the sampling of one year.
 * @throws {@link DomainError} naming `exceededPercent` or `climaticRatio`.
 *
 * Source: ITU-R P.678-3, Annex 1, equations 1 to 6, as read in an open implementation of the recommendation.
 * Accuracy: the sum over lags to 2e-8 relative.
 * @example
 * ```ts
 * import { yearToYear } from 'slantpath/propagation';
 * yearToYear({ exceededPercent: 0.01, climaticRatio: 0.2 }).standardDeviationRatio.toFixed(2); // => '0.52'
 * ```
 */
export function yearToYear(input: {
  readonly exceededPercent: number;
  readonly climaticRatio: number;
}): YearToYear {
  knownOnly('input', input, YEAR_TO_YEAR_INPUT_KEYS);
  const exceededPercent = inRange('exceededPercent', input.exceededPercent, 0.0001, 50);
  const climaticRatio = inRange('climaticRatio', input.climaticRatio, 0, 2);
  const part = exceededPercent / 100;
  const sum = correlationSum(B1 * Math.log(part) + B2);
  const samplingRatio = Math.sqrt(((1 - part) * sum) / (part * SAMPLES));
  return {
    edition: 'P.678-3',
    exceededPercent,
    samplingRatio,
    climaticRatio,
    standardDeviationRatio: Math.sqrt(samplingRatio ** 2 + climaticRatio ** 2),
  };
}

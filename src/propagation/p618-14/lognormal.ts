/** Recommendation ITU-R P.618-14, section 2.2.4.1: lognormal fit of rain attenuation on a path. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';
import { EDITION } from './edition.js';
import { type RainPath, rainAttenuation } from './rain.js';

/** Percentages of time at which the recommendation suggests to take the attenuation. */
const SUGGESTED_PERCENT = [0.01, 0.02, 0.03, 0.05, 0.1, 0.2, 0.3, 0.5, 1, 2, 3, 5, 10] as const;

/** Input of {@link rainAttenuationLognormal}. */
export interface RainAttenuationLognormalInput extends RainPath {
  /** Probability of rain in percent of an average year, 0.0201 to 100. */
  readonly rainProbabilityPercent: number;
}

const RAIN_ATTENUATION_LOGNORMAL_INPUT_KEYS = {
  rainProbabilityPercent: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
} satisfies Keys<RainAttenuationLognormalInput>;

/** Lognormal distribution of rain attenuation while it rains. */
export interface RainAttenuationLognormal {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Mean of ln A, A in dB. */
  readonly logMean: number;
  /** Standard deviation of ln A. */
  readonly logDeviation: number;
  /** Probability of rain in percent, to which the distribution belongs. */
  readonly rainProbabilityPercent: number;
  /** How many percentages were fitted. */
  readonly fitted: number;
}

/**
 * Lognormal fit of the attenuation by rain: ln A = deviation times the inverse Q of p over the probability of
 * rain, plus mean, by least squares over the suggested percentages below the probability of rain.
 *
 * @param input  The path and the probability of rain (P.837-7).
 * @returns Mean and standard deviation of ln A.
 * @throws {@link DomainError} naming the field that is out of its domain; `inconsistent` for a path without
 *   attenuation, which has no logarithm.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.4.1, steps 1 to 4.
 * @example
 * ```ts
 * import { rainAttenuationLognormal } from 'slantpath/propagation';
 * const fit = rainAttenuationLognormal({
 *   latitudeDeg: 51.5,
 *   heightM: 30,
 *   rainHeightKm: 2.45,
 *   rainRate001MmPerH: 26.5,
 *   frequencyGHz: 14.25,
 *   elevationDeg: 31.1,
 *   tiltDeg: 0,
 *   rainProbabilityPercent: 5.36,
 * });
 * fit.logDeviation.toFixed(2); // => '0.95'
 * ```
 */
export function rainAttenuationLognormal(
  input: RainAttenuationLognormalInput,
): RainAttenuationLognormal {
  known('input', input, RAIN_ATTENUATION_LOGNORMAL_INPUT_KEYS);
  const probability = inRange(
    'rainProbabilityPercent',
    input.rainProbabilityPercent,
    0.0201,
    100,
    'is it in percent?',
  );
  const percents = SUGGESTED_PERCENT.filter((percent) => percent < probability);
  const points = percents.map((exceededPercent) => {
    const { attenuationDb } = rainAttenuation({ ...input, exceededPercent });
    if (!(attenuationDb > 0))
      throw new DomainError({
        code: 'inconsistent',
        parameter: 'rainHeightKm',
        received: input.rainHeightKm,
        allowed: 'above the station, with rain',
      });
    return {
      x: normalExceedanceQuantile(exceededPercent / probability),
      y: Math.log(attenuationDb),
    };
  });
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const slope =
    points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) /
    points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  return {
    edition: EDITION,
    logMean: meanY - slope * meanX,
    logDeviation: slope,
    rainProbabilityPercent: probability,
    fitted: points.length,
  };
}

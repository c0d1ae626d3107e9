/** Recommendation ITU-R P.618-14, section 2.2.1.2: probability of any rain attenuation on a slant path. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { cosDeg, sinDeg } from '../../numeric/angle.js';
import { bivariateNormalExceedance } from '../../numeric/bivariateNormal.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';

import { checkedElevationDeg, checkedHeightM, checkedRainHeightKm } from '../inputs.js';
import { EDITION } from './edition.js';
import { rainAbove, slantPathKm } from './rainSteps.js';

/** Input of {@link rainAttenuationProbability}. */
export interface RainAttenuationProbabilityInput {
  /** Height of the station above mean sea level in metres, -500 to 10 000. */
  readonly heightM: number;
  /** Mean annual rain height above mean sea level in kilometres (P.839-4). */
  readonly rainHeightKm: number;
  /** Elevation of the path in degrees, 0 to 90. */
  readonly elevationDeg: number;
  /** Probability of rain at the station in percent of an average year, 0 to 70 (P.837-7). */
  readonly rainProbabilityPercent: number;
}

const RAIN_ATTENUATION_PROBABILITY_INPUT_KEYS = {
  heightM: true,
  rainHeightKm: true,
  elevationDeg: true,
  rainProbabilityPercent: true,
} satisfies Keys<RainAttenuationProbabilityInput>;

/** Probability of rain attenuation on a path with its terms. */
export interface RainAttenuationProbability {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Normal value that rain exceeds at the station; 0 where it never rains. */
  readonly normalValueRatio: number;
  /** Horizontal reach of the path under the rain height, km. */
  readonly horizontalProjectionKm: number;
  /** Correlation of rain over that reach. */
  readonly correlationRatio: number;
  /** Probability of rain at both ends of the path, percent. */
  readonly bothEndsPercent: number;
  /** Probability of rain somewhere on the path, percent of an average year. */
  readonly attenuationProbabilityPercent: number;
}

/** Correlation of rain at two places `distanceKm` apart along a path; step 3. */
function correlationAt(distanceKm: number): number {
  return 0.59 * Math.exp(-distanceKm / 31) + 0.41 * Math.exp(-distanceKm / 800);
}

/**
 * Probability that there is any rain attenuation on a slant path: it rains somewhere along the path, not
 * only at the station.
 *
 * @param input  Heights, elevation and probability of rain at the station.
 * @returns Probability in percent of an average year with its terms; 0 for a station above the rain.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.1.2, steps 1 to 5.
 * Accuracy: the printed digits of the ITU-R validation examples.
 * @example
 * ```ts
 * import { rainAttenuationProbability } from 'slantpath/propagation';
 * const rain = rainAttenuationProbability({
 *   heightM: 31.382984,
 *   rainHeightKm: 2.4527,
 *   elevationDeg: 31.077,
 *   rainProbabilityPercent: 5.3615096,
 * });
 * rain.attenuationProbabilityPercent.toFixed(2); // => '7.34'
 * ```
 */
export function rainAttenuationProbability(
  input: RainAttenuationProbabilityInput,
): RainAttenuationProbability {
  known('input', input, RAIN_ATTENUATION_PROBABILITY_INPUT_KEYS);
  const rainAboveKm = rainAbove(
    checkedRainHeightKm(input.rainHeightKm),
    checkedHeightM(input.heightM),
  );
  const elevationDeg = checkedElevationDeg(input.elevationDeg);
  const station =
    inRange('rainProbabilityPercent', input.rainProbabilityPercent, 0, 70, 'is it in percent?') /
    100;
  if (station === 0 || rainAboveKm === 0)
    return {
      edition: EDITION,
      normalValueRatio: 0,
      horizontalProjectionKm: 0,
      correlationRatio: 1,
      bothEndsPercent: 100 * station,
      attenuationProbabilityPercent: 0,
    };
  const horizontalProjectionKm =
    slantPathKm(rainAboveKm, elevationDeg, sinDeg(elevationDeg)) * cosDeg(elevationDeg);
  const normalValue = normalExceedanceQuantile(station);
  const correlation = correlationAt(horizontalProjectionKm);
  const both = bivariateNormalExceedance(normalValue, normalValue, correlation);
  const share = Math.max(0, (both - station * station) / (station * (1 - station)));
  return {
    edition: EDITION,
    normalValueRatio: normalValue,
    horizontalProjectionKm,
    correlationRatio: correlation,
    bothEndsPercent: 100 * both,
    attenuationProbabilityPercent: 100 * (1 - (1 - station) * share ** station),
  };
}

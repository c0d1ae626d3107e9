/** Recommendation ITU-R P.618-14, section 2.2.4.1: two sites against rain. */

import { inRange, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { bivariateNormalExceedance } from '../../numeric/bivariateNormal.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';
import { EDITION } from './edition.js';
import { rainAttenuationLognormal } from './lognormal.js';
import type { RainPath } from './rain.js';

/** One of two sites. */
export interface DiversitySite extends RainPath {
  /** Probability of rain at the site in percent of an average year (P.837-7). */
  readonly rainProbabilityPercent: number;
  /** Attenuation that the site can bear, dB; above it the site is out. */
  readonly attenuationDb: number;
}

const DIVERSITY_SITE_KEYS = {
  rainProbabilityPercent: true,
  attenuationDb: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
} satisfies Keys<DiversitySite>;

/** Joint outage of two sites with its terms. */
export interface SiteDiversity {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Correlation of rain between the sites. */
  readonly rainCorrelationRatio: number;
  /** Probability that it rains at both sites, percent. */
  readonly rainAtBothPercent: number;
  /** Correlation of attenuation between the sites. */
  readonly attenuationCorrelationRatio: number;
  /** Probability that both attenuations are exceeded while it rains at both, percent. */
  readonly bothExceededInRainPercent: number;
  /** Percent of an average year in which both sites are out at once. */
  readonly jointOutagePercent: number;
}

const SITE_DIVERSITY_INPUT_KEYS = { first: true, second: true, distanceKm: true } satisfies Keys<
  Parameters<typeof siteDiversity>[0]
>;

/**
 * Percent of an average year in which both of two sites suffer more attenuation than they can bear.
 *
 * @param input  Both sites, and the distance between them in kilometres, 0 to 20000.
 * @returns Joint outage in percent with its terms.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.4.1.
 * @example
 * ```ts
 * import { siteDiversity } from 'slantpath/propagation';
 * const site = {
 *   latitudeDeg: 46.4,
 *   heightM: 400,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   tiltDeg: 45,
 *   rainProbabilityPercent: 6,
 *   attenuationDb: 9,
 * };
 * siteDiversity({ first: site, second: site, distanceKm: 20 }).jointOutagePercent.toFixed(4); // => '0.0011'
 * ```
 */
export function siteDiversity(input: {
  readonly first: DiversitySite;
  readonly second: DiversitySite;
  readonly distanceKm: number;
}): SiteDiversity {
  const { first, second } = knownOnly('input', input, SITE_DIVERSITY_INPUT_KEYS);
  const d = inRange('distanceKm', input.distanceKm, 0, 20040, 'was it given in metres?');
  const ends = [
    known('first', first, DIVERSITY_SITE_KEYS),
    known('second', second, DIVERSITY_SITE_KEYS),
  ].map((site) => {
    const fit = rainAttenuationLognormal(site);
    return {
      rain: normalExceedanceQuantile(Math.min(1 - 1e-12, fit.rainProbabilityPercent / 100)),
      attenuation:
        (Math.log(positive('attenuationDb', site.attenuationDb)) - fit.logMean) / fit.logDeviation,
    };
  });
  const [one, two] = ends as [(typeof ends)[0], (typeof ends)[0]];
  const rainCorrelation = 0.7 * Math.exp(-d / 60) + 0.3 * Math.exp(-((d / 700) ** 2));
  const attenuationCorrelation = 0.94 * Math.exp(-d / 30) + 0.06 * Math.exp(-((d / 500) ** 2));
  const rain = bivariateNormalExceedance(one.rain, two.rain, rainCorrelation);
  const both = bivariateNormalExceedance(one.attenuation, two.attenuation, attenuationCorrelation);
  return {
    edition: EDITION,
    rainCorrelationRatio: rainCorrelation,
    rainAtBothPercent: 100 * rain,
    attenuationCorrelationRatio: attenuationCorrelation,
    bothExceededInRainPercent: 100 * both,
    jointOutagePercent: 100 * rain * both,
  };
}

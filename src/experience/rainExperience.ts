/** Predicted outage by rain against what the years really brought. */

import { DomainError, inRange, objects } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { normalExceedance } from '../numeric/normal.js';

/** One site over one year. */
export interface SiteYear {
  /** Outage predicted for an average year in minutes, above 0. */
  readonly predictedMin: number;
  /** Outage that the site had in minutes, 0 or more; Sun outages and faults taken off. */
  readonly observedMin: number;
}

const SITE_YEAR_KEYS = { predictedMin: true, observedMin: true } satisfies Keys<SiteYear>;

/** What the years say of the prediction. */
export interface RainExperience {
  /** Site-years compared. */
  readonly siteYears: number;
  /** All observed over all predicted minutes; above 1 where it rains more than predicted. */
  readonly observedOverPredictedRatio: number;
  /** Lower end of its 95 % interval. */
  readonly fromRatio: number;
  /** Upper end. */
  readonly toRatio: number;
  /** Probability of a ratio at least as far from 1 if the prediction were right on average, 0 to 1. */
  readonly chanceProbabilityRatio: number;
}

const RAIN_EXPERIENCE_SEEN_KEYS = {
  years: true,
  logScatter: true,
  weatherGroups: true,
  leastNoticedMin: true,
} satisfies Keys<Parameters<typeof rainExperience>[0]>;

/**
 * Whether outages by rain were as predicted, over many site-years.
 *
 * Outages of single years scatter about the average year like a lognormal variable; site-years of one region and one year share their weather, so
 * they count as one where `shareWeather` is set.
 *
 * @param seen  2 to 100,000 site-years; standard deviation of the logarithm of one year's outage, 0.1 to 2, default 0.6 (a factor of 1.8); how many
 *   groups of common weather they fall into, 1 to their number, default their number; least outage that was noticed in minutes, default 1.
 * @throws {@link DomainError} naming the field.
 * Source: lognormal scatter from year to year (ITU-R P.678-3 treats it in full: `singleYearProbability` of `slantpath/propagation`); the default from
 * memory. Accuracy: of that scatter.
 * @example
 * ```ts
 * import { rainExperience } from 'slantpath/experience';
 * const years = [60, 150, 90, 200].map((observedMin) => ({
 *   predictedMin: 100,
 *   observedMin,
 * }));
 * rainExperience({ years }).observedOverPredictedRatio.toFixed(2); // => '1.25'
 * ```
 */
export function rainExperience(seen: {
  readonly years: readonly SiteYear[];
  readonly logScatter?: number;
  readonly weatherGroups?: number;
  readonly leastNoticedMin?: number;
}): RainExperience {
  const given = knownOnly('seen', seen, RAIN_EXPERIENCE_SEEN_KEYS);
  if (!Array.isArray(given.years) || given.years.length < 2 || given.years.length > 100_000)
    throw new DomainError({
      code: Array.isArray(given.years) && given.years.length < 2 ? 'too-few' : 'malformed',
      parameter: 'years',
      received: given.years,
      allowed: 'an array of 2 to 100000 site-years',
    });
  const years = objects<SiteYear>('years', given.years);
  const scatter = inRange('logScatter', given.logScatter ?? 0.6, 0.1, 2);
  const groups = inRange('weatherGroups', given.weatherGroups ?? years.length, 1, years.length);
  const least = inRange('leastNoticedMin', given.leastNoticedMin ?? 1, 0.01, 1e6);
  let predicted = 0;
  let observed = 0;
  years.forEach((year, index) => {
    const at = known(`years[${index}]`, year, SITE_YEAR_KEYS);
    predicted += inRange(`years[${index}].predictedMin`, at.predictedMin, 0.01, 527_040);
    const seenHere = inRange(`years[${index}].observedMin`, at.observedMin, 0, 527_040);
    // A year without a noticed outage counts as half of what would have been noticed.
    observed += Math.max(seenHere, least / 2);
  });
  // The sum over the groups scatters about its mean by the lognormal's relative deviation over the root of their number.
  const relative = Math.sqrt(Math.expm1(scatter * scatter) / groups);
  const u = Math.sqrt(Math.log1p(relative * relative));
  const ratio = observed / predicted;
  const centre = Math.log(ratio);
  return {
    siteYears: years.length,
    observedOverPredictedRatio: ratio,
    fromRatio: Math.exp(centre - 1.96 * u),
    toRatio: Math.exp(centre + 1.96 * u),
    chanceProbabilityRatio: Math.min(1, 2 * normalExceedance(Math.abs(centre) / u)),
  };
}

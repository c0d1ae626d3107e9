/** What a percentage of time means in hours, in the worst month, and in how many outages of what length. */

import { checkedFrequencyGHz } from '../../antenna/internal.js';
import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { worstMonthPercent } from '../../propagation/p841-6.js';
import { fadeDuration } from '../../propagation/p1623-1.js';
import { checkedPercent } from './fade.js';

/** Hours in an average year of 365.25 days. */
const YEAR_H = 8766;

/** Input of {@link outages}. */
export interface OutageInput {
  /** Percent of an average year for which the link is out, 0.0001 to 100. */
  readonly exceededPercent: number;
  /** Frequency in GHz; stated range 10 to 50. */
  readonly frequencyGHz: number;
  /** Elevation in degrees, 0.1 to 90; stated range 5 to 60. */
  readonly elevationDeg: number;
  /** Attenuation at which the link goes out, in dB, above 0. */
  readonly attenuationDb: number;
  /** Only outages longer than this are counted, in seconds, 1 or more; default 10. */
  readonly longerThanS?: number;
}

const OUTAGE_INPUT_KEYS = {
  exceededPercent: true,
  frequencyGHz: true,
  elevationDeg: true,
  attenuationDb: true,
  longerThanS: true,
} satisfies Keys<OutageInput>;

/** How a time out is made up. */
export interface Outages {
  /** Hours of an average year. */
  readonly outageHPerYear: number;
  /** Percent of the worst month (P.841-6). */
  readonly worstMonthPercent: number;
  /** Hours of the worst month. */
  readonly worstMonthH: number;
  /** Number of outages a year longer than asked (P.1623-1). */
  readonly outagesPerYear: number;
  /** Their mean length in minutes; 0 where there are none. */
  readonly meanDurationMin: number;
  /** Hours of an average year that such outages make up. */
  readonly countedHPerYear: number;
  /** Names of inputs outside the stated ranges of the recommendations. */
  readonly outsideStatedRange: readonly string[];
}

/**
 * Outages of a link per year and in the worst month, their number and mean length.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: ITU-R P.841-6 (worst month, values for planning anywhere) and P.1623-1 (number and length of fades).
 * Accuracy: that of the recommendations; single years differ by a factor of two.
 * @example
 * ```ts
 * import { outages } from 'slantpath/link';
 * const out = outages({ exceededPercent: 0.05, frequencyGHz: 19.7, elevationDeg: 36, attenuationDb: 8 });
 * out.outageHPerYear.toFixed(2); // => '4.38'
 * ```
 */
export function outages(input: OutageInput): Outages {
  const given = knownOnly('input', input, OUTAGE_INPUT_KEYS);
  const percent = checkedPercent(given.exceededPercent);
  const outageHPerYear = (percent / 100) * YEAR_H;
  const worst = worstMonthPercent(percent);
  const fades = fadeDuration({
    frequencyGHz: checkedFrequencyGHz(given.frequencyGHz),
    elevationDeg: given.elevationDeg,
    attenuationDb: given.attenuationDb,
    durationS: inRange('longerThanS', given.longerThanS ?? 10, 1, 1e6, 'is it in seconds?'),
    totalFadeTimeS: outageHPerYear * 3600,
  });
  const countedHPerYear = fades.timeInFadesS / 3600;
  return {
    outageHPerYear,
    worstMonthPercent: worst.worstMonthPercent,
    worstMonthH: ((worst.worstMonthPercent / 100) * YEAR_H) / 12,
    outagesPerYear: fades.fades,
    meanDurationMin: fades.fades > 0 ? (countedHPerYear * 60) / fades.fades : 0,
    countedHPerYear,
    outsideStatedRange: [
      ...worst.outsideStatedRange.map(() => 'exceededPercent'),
      ...fades.outsideStatedRange,
    ],
  };
}

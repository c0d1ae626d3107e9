/** Margin and availability: how much margin a share of the time needs, and what share a margin keeps. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { bracketedRoot } from '../../numeric/root.js';
import {
  type PreparedLink,
  preparedLink,
  requiredDb,
  totalEsN0Db,
} from '../budget/preparedLink.js';
import {
  checkedFade,
  checkedPercent,
  checkedPercents,
  type FadeDistribution,
  type FadingLink,
  fadeWeather,
  type PercentRange,
} from './fade.js';
import { weatherLoss } from './weatherLoss.js';

/** What share of the time a margin keeps. */
export type Availability =
  | {
      readonly kind: 'available';
      /** Percent of an average year for which the margin does not suffice. */
      readonly exceededPercent: number;
      /** 100 less that. */
      readonly availabilityPercent: number;
    }
  | {
      /** `better-than`: the margin suffices even at the rarest percentage asked. `worse-than`: not even at the commonest. */
      readonly kind: 'better-than' | 'worse-than';
      /** The percentage at that end of the range. */
      readonly exceededPercent: number;
      /** 100 less that. */
      readonly availabilityPercent: number;
    };

/** What a fade takes from a link. */
export interface FadeMargin {
  /** Margin in clear weather that is used up at that percentage: fade and the rise of noise together, in dB. */
  readonly marginDb: number;
  /** Of that, the attenuation beyond clear weather, in dB. */
  readonly attenuationDb: number;
  /** Of that, the rise of noise (and what impairments hide of both), in dB. */
  readonly noiseRiseDb: number;
  /** What this link has left at that percentage, in dB; negative where it is out. */
  readonly remainingDb: number;
}

/** Availability of a percentage outside or inside the range. */
export function availabilityAt(kind: Availability['kind'], exceededPercent: number): Availability {
  return { kind, exceededPercent, availabilityPercent: 100 - exceededPercent };
}

/** Percentage at which `lossDb(percent)`, falling with the percentage, comes down to `marginDb`. */
export function percentOfMargin(
  lossDb: (percent: number) => number,
  marginDb: number,
  range: { readonly from: number; readonly to: number },
): Availability {
  // Written so that a loss without a number counts as out.
  if (!(lossDb(range.to) <= marginDb)) return availabilityAt('worse-than', range.to);
  if (lossDb(range.from) <= marginDb) return availabilityAt('better-than', range.from);
  const percentAt = (x: number): number => Math.min(range.to, Math.max(range.from, Math.exp(x)));
  // In the logarithm of the percentage attenuation is nearly a straight line, so few steps are enough.
  const root = bracketedRoot((x) => lossDb(percentAt(x)) - marginDb, {
    from: Math.log(range.from),
    to: Math.log(range.to),
    tolerance: 1e-13,
  });
  // The ends were tried above, so there is a root; should rounding hide it, the commoner end is the safe answer.
  return availabilityAt('available', percentAt(root ?? Math.log(range.to)));
}

/** What a fade takes from clear weather, against the percentage. */
export function fadeLoss(
  link: PreparedLink,
  fade: FadeDistribution,
): (exceededPercent: number) => number {
  // What does not change with the weather is worked out once: a search asks for many percentages.
  const loss = weatherLoss(link);
  return (percent) => loss(fadeWeather(fade(percent), link.weather.clearDb));
}

const MARGIN_FOR_AVAILABILITY_FADING_KEYS = {
  link: true,
  fade: true,
  exceededPercent: true,
} satisfies Keys<Parameters<typeof marginForAvailability>[0]>;

/**
 * Margin in clear weather that a link needs so that it lasts for all but `exceededPercent` of an average year:
 * the fade of that percentage and the noise that it brings.
 *
 * @param fading  `link` in clear weather; `fade` its distribution; `exceededPercent` 0.0001 to 100.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definition; noise rise as D. Roddy, Satellite Communications, 3rd ed., section 12.9.2.
 * Accuracy: that of the distribution.
 * @example
 * ```ts
 * import { dvbMode, marginForAvailability } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * };
 * const fade = (exceededPercent: number) => ({ attenuationDb: 3 * (0.01 / exceededPercent) ** 0.5 });
 * marginForAvailability({ link, fade, exceededPercent: 0.01 }).marginDb.toFixed(2); // => '6.95'
 * ```
 */
export function marginForAvailability(
  fading: Omit<FadingLink, keyof PercentRange> & { readonly exceededPercent: number },
): FadeMargin {
  const input = knownOnly('fading', fading, MARGIN_FOR_AVAILABILITY_FADING_KEYS);
  const link = preparedLink(input.link);
  const percent = checkedPercent(input.exceededPercent);
  const faded = fadeWeather(checkedFade(input.fade)(percent), link.weather.clearDb);
  const marginDb = weatherLoss(link)(faded);
  // Beyond clear weather only: what the clear sky takes is in the budget already.
  const attenuationDb =
    faded.clearDb -
    link.weather.clearDb +
    (faded.rainDb - link.weather.rainDb) +
    (faded.scintillationDb - link.weather.scintillationDb);
  return {
    marginDb,
    attenuationDb,
    noiseRiseDb: marginDb - attenuationDb,
    remainingDb: totalEsN0Db(link, link.weather) - marginDb - requiredDb(link),
  };
}

const AVAILABILITY_FOR_MARGIN_FADING_KEYS = {
  link: true,
  fade: true,
  fromPercent: true,
  toPercent: true,
  marginDb: true,
} satisfies Keys<Parameters<typeof availabilityForMargin>[0]>;

/**
 * Share of an average year that a margin in clear weather keeps: the inverse of {@link marginForAvailability}.
 *
 * @param fading  `link`, `fade`, range of percentages; `marginDb` within 1000, default the margin that the link has.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: as {@link marginForAvailability}. Accuracy: 1e-9 percent as an inverse.
 * @example
 * ```ts
 * import { availabilityForMargin, dvbMode } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * };
 * const fade = (exceededPercent: number) => ({ attenuationDb: 3 * (0.01 / exceededPercent) ** 0.5 });
 * availabilityForMargin({ link, fade }).availabilityPercent.toFixed(4); // => '99.9979'
 * ```
 */
export function availabilityForMargin(
  fading: FadingLink & { readonly marginDb?: number },
): Availability {
  const input = knownOnly('fading', fading, AVAILABILITY_FOR_MARGIN_FADING_KEYS);
  const link = preparedLink(input.link);
  const fade = checkedFade(input.fade);
  const clearMarginDb = totalEsN0Db(link, link.weather) - requiredDb(link);
  const marginDb = inRange('marginDb', input.marginDb ?? clearMarginDb, -1000, 1000);
  return percentOfMargin(fadeLoss(link, fade), marginDb, checkedPercents(input));
}

/**
 * Percent of time exceeded from an availability: 100 less it.
 *
 * @param availabilityPercent  0 to 100.
 * @throws {@link DomainError} naming `availabilityPercent`.
 * Source: definition.
 * @example
 * ```ts
 * import { availabilityToExceeded } from 'slantpath/link';
 * availabilityToExceeded(99.5); // => 0.5
 * ```
 */
export function availabilityToExceeded(availabilityPercent: number): number {
  return 100 - inRange('availabilityPercent', availabilityPercent, 0, 100);
}

/**
 * Availability in percent from the percent of time exceeded: 100 less it.
 *
 * @param exceededPercent  0 to 100.
 * @throws {@link DomainError} naming `exceededPercent`.
 * Source: definition.
 * @example
 * ```ts
 * import { exceededToAvailability } from 'slantpath/link';
 * exceededToAvailability(0.5); // => 99.5
 * ```
 */
export function exceededToAvailability(exceededPercent: number): number {
  return 100 - inRange('exceededPercent', exceededPercent, 0, 100);
}

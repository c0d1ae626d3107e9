/** The whole question in one call: the budget, the fade of a percentage, the availability and the outages. */

import { type Keys, known, knownOnly } from '../../keys.js';
import type { LinkBudget } from '../budget/budgetOf.js';
import { linkBudget } from '../budget/linkBudget.js';
import type { LinkBudgetInput } from '../budget/linkBudgetInput.js';
import { DOWNLINK_KEYS, LINK_BUDGET_INPUT_KEYS } from '../budget/linkBudgetInput.js';
import {
  type Availability,
  availabilityForMargin,
  type FadeMargin,
  marginForAvailability,
} from './availability.js';
import { checkedPercent, fadedBudget } from './fade.js';
import { type Outages, outages } from './outages.js';
import { type TotalPath, totalFade } from './rainFades.js';

/** A path through the weather of a place; frequency and antenna are those of the link. */
export type WeatherPath = Omit<TotalPath, 'frequencyGHz' | 'diameterM' | 'efficiencyRatio'>;

const WEATHER_PATH_KEYS = {
  gasDb: true,
  cloudDb: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  elevationDeg: true,
  tiltDeg: true,
  wetRefractivityNUnits: true,
  turbulenceHeightM: true,
} satisfies Keys<WeatherPath>;

/** Input of {@link linkBudgetWithAvailability}. */
export interface BudgetInWeather {
  /** The link; its clear attenuation is the path's gas where it is not given. */
  readonly link: LinkBudgetInput;
  /** The path and its weather. */
  readonly path: WeatherPath;
  /** Percent of an average year that may be lost, 0.0001 to 100; default 0.1. */
  readonly exceededPercent?: number;
}

const BUDGET_IN_WEATHER_KEYS = {
  link: true,
  path: true,
  exceededPercent: true,
} satisfies Keys<BudgetInWeather>;

/** Outcome of {@link linkBudgetWithAvailability}. */
export interface BudgetWithAvailability {
  /** Budget in clear weather. */
  readonly clear: LinkBudget;
  /** Budget in the fade that is exceeded for the percentage asked. */
  readonly faded: LinkBudget;
  /** What that fade takes. */
  readonly fadeMargin: FadeMargin;
  /** The share of the time that the link lasts. */
  readonly availability: Availability;
  /** How the time out is made up; null where it lies outside the range of the recommendation. */
  readonly outages: Outages | null;
}

/**
 * Budget of a link in clear weather and in the fade of a percentage, its availability, and its outages.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: as {@link linkBudget}; ITU-R P.618-14, section 2.5; P.841-6; P.1623-1. Accuracy: that of the recommendations.
 * @example
 * ```ts
 * import { dvbMode, linkBudgetWithAvailability } from 'slantpath/link';
 * const result = linkBudgetWithAvailability({
 *   link: {
 *     carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', 'QPSK 3/4') },
 *     downlink: { eirpDbw: 52, frequencyGHz: 19.7, slantRangeKm: 38000 },
 *     receiver: { diameterM: 0.9, noiseFigureDb: 1.2 },
 *   },
 *   path: {
 *     latitudeDeg: 46.4,
 *     heightM: 1900,
 *     rainHeightKm: 2.9,
 *     rainRate001MmPerH: 35,
 *     elevationDeg: 36,
 *     tiltDeg: 45,
 *     wetRefractivityNUnits: 45,
 *     gasDb: 0.4,
 *     cloudDb: 0.6,
 *   },
 * });
 * result.availability.availabilityPercent.toFixed(2); // => '99.99'
 * ```
 */
export function linkBudgetWithAvailability(input: BudgetInWeather): BudgetWithAvailability {
  const { link: given, path, exceededPercent } = knownOnly('input', input, BUDGET_IN_WEATHER_KEYS);
  const percent = checkedPercent(exceededPercent ?? 0.1);
  const weather = known('path', path, WEATHER_PATH_KEYS);
  const { downlink, receiver } = known('link', given, LINK_BUDGET_INPUT_KEYS);
  const link: LinkBudgetInput = {
    ...given,
    downlink: { clearAttenuationDb: weather.gasDb, ...known('downlink', downlink, DOWNLINK_KEYS) },
  };
  const clear = linkBudget(link);
  const { frequencyGHz } = link.downlink;
  const fade = totalFade({
    ...weather,
    frequencyGHz,
    diameterM: receiver.diameterM,
    efficiencyRatio: receiver.efficiencyRatio ?? 0.65,
  });
  const availability = availabilityForMargin({ link, fade });
  return {
    clear,
    faded: fadedBudget(link, { fade, exceededPercent: percent }),
    fadeMargin: marginForAvailability({ link, fade, exceededPercent: percent }),
    availability,
    outages:
      availability.kind === 'available'
        ? outages({
            exceededPercent: availability.exceededPercent,
            frequencyGHz,
            elevationDeg: weather.elevationDeg,
            attenuationDb: Math.max(1e-3, fade(availability.exceededPercent).attenuationDb),
          })
        : null,
  };
}

/** How often a path fades by how much, and the budget in such a fade. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import type { LinkBudget } from '../budget/budgetOf.js';
import { budgetOf } from '../budget/budgetOf.js';
import type { LinkBudgetInput } from '../budget/linkBudgetInput.js';
import { preparedLink, type Weather } from '../budget/preparedLink.js';

/**
 * A fade in dB with as many of its causes as are known; the results of `rainAttenuation` and `totalAttenuation` are such.
 */
export interface PathFade {
  /** All together, in dB, 0 or more. */
  readonly attenuationDb: number;
  /** Gas within it. Where it is named it takes the place of the link's clear attenuation; otherwise the fade comes on top of that. */
  readonly gasDb?: number;
  /** Rain within it. Where it is not named, all that is not gas counts as rain, which absorbs and radiates. */
  readonly rainDb?: number;
  /** Cloud within it. */
  readonly cloudDb?: number;
}

const PATH_FADE_KEYS = {
  attenuationDb: true,
  gasDb: true,
  rainDb: true,
  cloudDb: true,
} satisfies Keys<PathFade>;

/**
 * Fade that is exceeded for a percentage of an average year; it must not grow with the percentage. For instance
 * `(exceededPercent) => rainAttenuation({ ...path, exceededPercent })`.
 */
export type FadeDistribution = (exceededPercent: number) => PathFade;

/** The range of percentages over which a distribution is asked. */
export interface PercentRange {
  /** Rarest percentage, 0.0001 to 100; default 0.001, where P.618 ends. */
  readonly fromPercent?: number;
  /** Commonest percentage; default 50, where the total attenuation of P.618 ends. */
  readonly toPercent?: number;
}

/** A link and how its path fades. */
export interface FadingLink extends PercentRange {
  /** The link in clear weather. */
  readonly link: LinkBudgetInput;
  /** Fade against percent of an average year. */
  readonly fade: FadeDistribution;
}

/** Returns a percentage of time, otherwise throws. */
export function checkedPercent(percent: number, parameter = 'exceededPercent'): number {
  return inRange(parameter, percent, 1e-4, 100, 'is it the availability or a fraction?');
}

/** Checked ends of a range of percentages. */
export function checkedPercents(range: PercentRange): {
  readonly from: number;
  readonly to: number;
} {
  const from = checkedPercent(range.fromPercent ?? 0.001, 'fromPercent');
  const to = checkedPercent(range.toPercent ?? 50, 'toPercent');
  if (!(from < to))
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'toPercent',
      received: to,
      allowed: `above fromPercent, ${from}`,
    });
  return { from, to };
}

/** Returns a distribution if it is a function, otherwise throws. */
export function checkedFade(fade: FadeDistribution, parameter = 'fade'): FadeDistribution {
  if (typeof fade === 'function') return fade;
  throw new DomainError({
    code: fade === undefined ? 'missing' : 'malformed',
    parameter,
    received: fade,
    allowed: 'a function from percent of time to a fade',
  });
}

/** The weather of a fade on a link whose clear attenuation is `clearDb`. */
export function fadeWeather(fade: PathFade, clearDb: number): Weather {
  const { attenuationDb, gasDb, rainDb, cloudDb } = known('fade', fade, PATH_FADE_KEYS);
  const total = inRange('fade.attenuationDb', attenuationDb, 0, 1e4);
  const gas = gasDb === undefined ? 0 : inRange('fade.gasDb', gasDb, 0, total);
  const wet =
    rainDb === undefined
      ? total - gas
      : inRange('fade.rainDb', rainDb, 0, 1e4) + inRange('fade.cloudDb', cloudDb ?? 0, 0, 1e4);
  return {
    clearDb: gasDb === undefined ? clearDb : gas,
    rainDb: wet,
    // What is left of the whole adds no noise: scintillation.
    scintillationDb: Math.max(0, total - gas - wet),
  };
}

const FADED_BUDGET_AT_FADE_KEYS = { fade: true, exceededPercent: true } satisfies Keys<
  Parameters<typeof fadedBudget>[1]
>;

/**
 * Budget of a link in the fade that is exceeded for a percentage of an average year.
 *
 * @param link  The link in clear weather, as for {@link linkBudget}.
 * @param atFade  `fade` the distribution; `exceededPercent` 0.0001 to 100.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: as {@link linkBudget}. Accuracy: that of the distribution.
 * @example
 * ```ts
 * import { dvbMode, fadedBudget } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * };
 * const fade = (exceededPercent: number) => ({ attenuationDb: 3 * (0.01 / exceededPercent) ** 0.5 });
 * fadedBudget(link, { fade, exceededPercent: 0.01 }).marginDb.toFixed(2); // => '4.86'
 * ```
 */
export function fadedBudget(
  link: LinkBudgetInput,
  atFade: { readonly fade: FadeDistribution; readonly exceededPercent: number },
): LinkBudget {
  const prepared = preparedLink(link);
  const { fade, exceededPercent } = knownOnly('atFade', atFade, FADED_BUDGET_AT_FADE_KEYS);
  const percent = checkedPercent(exceededPercent);
  return budgetOf(prepared, fadeWeather(checkedFade(fade)(percent), prepared.weather.clearDb));
}

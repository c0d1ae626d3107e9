/** The smallest reflector of a list that keeps a margin. */

import { checkedDiameterM } from '../../antenna/internal.js';
import { DomainError, inRange, object } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { entryAt } from '../../numeric/columns.js';
import type { LinkBudget } from '../budget/budgetOf.js';
import { budgetOf } from '../budget/budgetOf.js';
import type { Impairment } from '../budget/combine.js';
import type { LinkBudgetInput } from '../budget/linkBudgetInput.js';
import { LINK_BUDGET_INPUT_KEYS } from '../budget/linkBudgetInput.js';
import { type PreparedLink, preparedLink } from '../budget/preparedLink.js';
import { RECEIVING_TERMINAL_KEYS } from '../noise/receiver.js';
import { checkedFade, checkedPercent, type FadeDistribution, fadeWeather } from './fade.js';

/** Usual diameters of reflectors in metres, 0.45 to 7.3 (practice of the trade). */
export const STANDARD_DIAMETERS_M: readonly number[] = [
  0.45, 0.6, 0.75, 0.9, 1, 1.2, 1.5, 1.8, 2.4, 3, 3.7, 4.5, 5.5, 6.3, 7.3,
];

/** A reflector that was tried. */
export interface TriedReflector {
  /** Diameter in metres. */
  readonly diameterM: number;
  /** Its margin in dB, in the fade where one is given. */
  readonly marginDb: number;
  /** Whether that is at least the target. */
  readonly meets: boolean;
}

/** What {@link smallestReflector} looks for. */
export interface ReflectorTarget {
  /** Margin to keep in dB, -50 to 100; default 0. */
  readonly targetMarginDb?: number;
  /** Diameters to choose from in metres, at least one; default {@link STANDARD_DIAMETERS_M}. */
  readonly diametersM?: readonly number[];
  /** Fade against percent of an average year; default none, the margin is then that in clear weather. */
  readonly fade?: FadeDistribution;
  /** Percentage for which the margin may be missed, 0.0001 to 100; default 0.1. Only with `fade`. */
  readonly exceededPercent?: number;
  /** Impairments that depend on the size, such as interference from neighbours; added to those of the link. */
  readonly impairmentsAt?: (diameterM: number) => readonly Impairment[];
}

const REFLECTOR_TARGET_KEYS = {
  targetMarginDb: true,
  diametersM: true,
  fade: true,
  exceededPercent: true,
  impairmentsAt: true,
} satisfies Keys<ReflectorTarget>;

/** Outcome of {@link smallestReflector}. */
export type SmallestReflector =
  | {
      /** `found`: a reflector of the list keeps the margin. */
      readonly kind: 'found';
      /** Diameter of the smallest that does, in metres. */
      readonly diameterM: number;
      /** Its budget, in the fade where one is given. */
      readonly budget: LinkBudget;
      /** Every reflector of the list with its margin, by growing size. */
      readonly tried: readonly TriedReflector[];
    }
  | {
      /** `none`: no reflector of the list keeps the margin. */
      readonly kind: 'none';
      /** What the best of the list lacks, in dB. */
      readonly shortfallDb: number;
      /** Every reflector of the list with its margin, by growing size. */
      readonly tried: readonly TriedReflector[];
    };

/**
 * Smallest reflector of a list whose budget has at least `targetMarginDb`, in clear weather or in the fade of a percentage.
 *
 * With a pointing error in degrees a larger reflector can be worse, so every size is tried.
 *
 * @param link  The link as for {@link linkBudget}; its receiver's diameter is replaced by each of the list, and
 *   a gain from a data sheet is left out of account.
 * @param target  What to keep; see the fields.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: own search over {@link linkBudget}. Accuracy: that of the budget.
 * @example
 * ```ts
 * import { dvbMode, smallestReflector } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * };
 * const choice = smallestReflector(link, { targetMarginDb: 6 });
 * choice.kind === 'found' && choice.diameterM; // => 0.6
 * ```
 */
export function smallestReflector(
  link: LinkBudgetInput,
  target: ReflectorTarget = {},
): SmallestReflector {
  const {
    fade: given,
    exceededPercent,
    ...rest
  } = knownOnly('target', target, REFLECTOR_TARGET_KEYS);
  const { targetDb, reflectors } = reflectorsToTry(link, rest);
  const fade = given === undefined ? undefined : checkedFade(given);
  const percent = checkedPercent(exceededPercent ?? 0.1);
  const budgets = reflectors.map(({ prepared }) => {
    const { weather } = prepared;
    return budgetOf(prepared, fade ? fadeWeather(fade(percent), weather.clearDb) : weather);
  });
  const tried = budgets.map(({ marginDb }, index) => ({
    diameterM: entryAt(reflectors, index).diameterM,
    marginDb,
    meets: marginDb >= targetDb,
  }));
  const index = tried.findIndex(({ meets }) => meets);
  const budget = budgets[index];
  if (budget === undefined)
    return {
      kind: 'none',
      shortfallDb: targetDb - Math.max(...tried.map(({ marginDb }) => marginDb)),
      tried,
    };
  return { kind: 'found', diameterM: entryAt(reflectors, index).diameterM, budget, tried };
}

/** The reflectors of a target by growing size, each with the link through it; checks the target and the link. */
export function reflectorsToTry(
  link: LinkBudgetInput,
  target: Omit<ReflectorTarget, 'fade' | 'exceededPercent'>,
): {
  readonly targetDb: number;
  readonly reflectors: readonly { readonly diameterM: number; readonly prepared: PreparedLink }[];
} {
  const { receiver, impairments } = known('link', link, LINK_BUDGET_INPUT_KEYS);
  const { antennaGainDbi: _dataSheet, ...terminal } = known(
    'receiver',
    receiver,
    RECEIVING_TERMINAL_KEYS,
  );
  const targetDb = inRange('targetMarginDb', target.targetMarginDb ?? 0, -50, 100);
  const listed = object('diametersM', target.diametersM ?? STANDARD_DIAMETERS_M);
  if (!(listed.length > 0))
    throw new DomainError({
      code: 'empty',
      parameter: 'diametersM',
      received: listed,
      allowed: 'at least one diameter',
    });
  const reflectors = [...listed]
    .sort((a, b) => a - b)
    .map((diameterM) => {
      checkedDiameterM(diameterM, 'diametersM');
      const prepared = preparedLink({
        ...link,
        receiver: { ...terminal, diameterM },
        impairments: [...(impairments ?? []), ...(target.impairmentsAt?.(diameterM) ?? [])],
      });
      return { diameterM, prepared };
    });
  return { targetDb, reflectors };
}

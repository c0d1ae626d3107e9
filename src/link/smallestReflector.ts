/** The smallest reflector of a list that keeps a margin. */

import { checkedDiameterM } from '../antenna/guards.js';
import { DomainError, inRange, object } from '../errors.js';
import { type LinkBudget, type LinkBudgetInput, linkBudget } from './linkBudget.js';

/** Usual diameters of reflectors in metres, 0.45 to 7.3 (practice of the trade). */
export const STANDARD_DIAMETERS_M: readonly number[] = [
  0.45, 0.6, 0.75, 0.9, 1, 1.2, 1.5, 1.8, 2.4, 3, 3.7, 4.5, 5.5, 6.3, 7.3,
];

/** A reflector that was tried. */
export interface TriedReflector {
  /** Diameter in metres. */
  readonly diameterM: number;
  /** Its margin in dB. */
  readonly marginDb: number;
}

/** Outcome of {@link smallestReflector}. */
export type SmallestReflector =
  | {
      /** `found`: a reflector of the list keeps the margin. */
      readonly kind: 'found';
      /** Diameter of the smallest that does, in metres. */
      readonly diameterM: number;
      /** Its budget. */
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
 * Smallest reflector of a list whose budget has at least `targetMarginDb`.
 *
 * @param link  The link as for {@link linkBudget}; its receiver's diameter is replaced by each of the list, and
 *   a gain from a data sheet is left out of account.
 * @param options  `targetMarginDb` -50 to 100, default 0; `diametersM` at least one, default {@link STANDARD_DIAMETERS_M}.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: own search over {@link linkBudget}. Accuracy: that of the budget.
 * @example
 * ```ts
 * import { dvbMode, smallestReflector } from 'slantpath/link';
 * const choice = smallestReflector({
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * }, { targetMarginDb: 6 });
 * choice.kind === 'found' && choice.diameterM; // => 0.6
 * ```
 */
export function smallestReflector(
  link: LinkBudgetInput,
  options: { readonly targetMarginDb?: number; readonly diametersM?: readonly number[] } = {},
): SmallestReflector {
  const { receiver } = object('link', link);
  const { antennaGainDbi: _dataSheet, ...terminal } = object('receiver', receiver);
  const targetDb = inRange('targetMarginDb', options.targetMarginDb ?? 0, -50, 100);
  const diametersM = [...(options.diametersM ?? STANDARD_DIAMETERS_M)].sort((a, b) => a - b);
  if (diametersM.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'diametersM',
      received: diametersM,
      allowed: 'at least one diameter',
    });
  const budgets = diametersM.map((diameterM) =>
    linkBudget({ ...link, receiver: { ...terminal, diameterM: checkedDiameterM(diameterM) } }),
  );
  const tried = budgets.map(({ marginDb }, index) => ({
    diameterM: diametersM[index] as number,
    marginDb,
  }));
  const index = tried.findIndex(({ marginDb }) => marginDb >= targetDb);
  const budget = budgets[index];
  if (budget === undefined)
    return {
      kind: 'none',
      shortfallDb: targetDb - Math.max(...tried.map(({ marginDb }) => marginDb)),
      tried,
    };
  return { kind: 'found', diameterM: diametersM[index] as number, budget, tried };
}

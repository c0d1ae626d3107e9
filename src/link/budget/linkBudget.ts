/** The budget of a link down to a receiving terminal, line by line, to the margin. */

import { budgetOf, type LinkBudget } from './budgetOf.js';
import type { LinkBudgetInput } from './linkBudgetInput.js';
import { preparedLink } from './preparedLink.js';

/**
 * Budget of a link down to a receiving terminal.
 *
 * Es/N0 = EIRP - path losses + antenna gain - terminal losses - 10 log10 T_sys - k - 10 log10 Rs, then
 * combined with the impairments; margin = Es/N0 - implementation loss - threshold. Whatever absorbs on the
 * path also raises the antenna's noise.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definitions; sky noise by ITU-R P.618-14 section 3; check rows of textbook budgets in the tests.
 * Accuracy: rounding only; the inputs decide.
 * @example
 * ```ts
 * import { dvbMode, linkBudget } from 'slantpath/link';
 * const budget = linkBudget({
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * });
 * budget.marginDb.toFixed(2); // => '11.82'
 * ```
 */
export function linkBudget(link: LinkBudgetInput): LinkBudget {
  return budgetOf(preparedLink(link));
}

/** Two budgets side by side, and what makes the difference between their margins. */

import { finite, objects, text } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import type { BudgetTerm, BudgetUnit } from './term.js';

/** One line of two budgets. */
export interface TermDifference {
  /** Name of the line. */
  readonly name: string;
  /** Unit of the contributions. */
  readonly unit: BudgetUnit;
  /** Contribution in the first budget; 0 where it has no such line. */
  readonly firstDb: number;
  /** Contribution in the second budget; 0 where it has no such line. */
  readonly secondDb: number;
  /** Second less first. */
  readonly differenceDb: number;
}

/** Outcome of {@link compareBudgets}. */
export interface BudgetComparison {
  /** Every line of either budget, in the order of the first, then those that only the second has. */
  readonly terms: readonly TermDifference[];
  /** The same by the size of the difference, largest first, without those that are equal. */
  readonly causes: readonly TermDifference[];
  /** Sum of all differences: last running sum of the second less that of the first. */
  readonly differenceDb: number;
}

const COMPARE_BUDGETS_SECOND_KEYS = { terms: true } satisfies Keys<
  Parameters<typeof compareBudgets>[1]
>;

const COMPARE_BUDGETS_FIRST_KEYS = { terms: true } satisfies Keys<
  Parameters<typeof compareBudgets>[0]
>;

/** The terms of a budget, each with its name, unit and number. */
function checkedTerms(path: string, terms: readonly BudgetTerm[]): readonly BudgetTerm[] {
  return objects<BudgetTerm>(path, terms).map((term, index) => ({
    ...term,
    name: text(`${path}[${index}].name`, term.name) as BudgetTerm['name'],
    unit: text(`${path}[${index}].unit`, term.unit) as BudgetTerm['unit'],
    contributionDb: finite(`${path}[${index}].contributionDb`, term.contributionDb),
  }));
}

/**
 * Difference of two budgets, line by line; the lines add up to the difference of their margins.
 *
 * @param first  A budget's `terms` or anything that holds them.
 * @param second  The other.
 * @throws {@link DomainError} naming `first` or `second`.
 *
 * Source: definition. Accuracy: rounding only.
 * @example
 * ```ts
 * import { compareBudgets, dvbMode, linkBudget } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * };
 * const larger = { ...link, receiver: { ...link.receiver, diameterM: 1.2 } };
 * const { causes } = compareBudgets(linkBudget(link), linkBudget(larger));
 * causes[0]?.name; // => 'antenna-gain'
 * ```
 */
export function compareBudgets(
  first: { readonly terms: readonly BudgetTerm[] },
  second: { readonly terms: readonly BudgetTerm[] },
): BudgetComparison {
  const a = checkedTerms('first.terms', known('first', first, COMPARE_BUDGETS_FIRST_KEYS).terms);
  const b = checkedTerms(
    'second.terms',
    known('second', second, COMPARE_BUDGETS_SECOND_KEYS).terms,
  );
  const names = [...new Set([...a, ...b].map(({ name }) => name))];
  const sum = (terms: readonly BudgetTerm[], name: string): number =>
    terms.reduce((total, term) => (term.name === name ? total + term.contributionDb : total), 0);
  const terms = names.map((name) => {
    const firstDb = sum(a, name);
    const secondDb = sum(b, name);
    const unit = [...a, ...b].find((term) => term.name === name)?.unit ?? 'dB';
    return { name, unit, firstDb, secondDb, differenceDb: secondDb - firstDb + 0 };
  });
  return {
    terms,
    causes: terms
      .filter(({ differenceDb }) => differenceDb !== 0)
      .sort((x, y) => Math.abs(y.differenceDb) - Math.abs(x.differenceDb)),
    differenceDb: terms.reduce((total, { differenceDb }) => total + differenceDb, 0),
  };
}

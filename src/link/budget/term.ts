/** The lines of a budget: what each adds, in the order of the hand calculation. */

/** Unit of a line of a budget. */
export type BudgetUnit = 'dB' | 'dBi' | 'dBW' | 'dBW/m2' | 'dBm2' | 'dB/K' | 'dBHz' | 'dBW/K/Hz';

/** One line of a budget. */
export interface BudgetTerm {
  /** Name of the line in kebab-case words: `free-space-loss`. */
  readonly name: string;
  /** What the line adds to the sum, in `unit`; a loss is negative here, since the lines are summed. */
  readonly contributionDb: number;
  /** Unit of the contribution. */
  readonly unit: BudgetUnit;
  /** Sum of all lines up to and with this one. */
  readonly runningDb: number;
}

/** A line before it is summed: name, contribution in decibels, unit. */
export type TermSeed = readonly [name: string, contributionDb: number, unit: BudgetUnit];

/** Lines with their running sum. */
export function runningTerms(seeds: readonly TermSeed[]): BudgetTerm[] {
  let runningDb = 0;
  return seeds.map(([name, contributionDb, unit]) => {
    runningDb += contributionDb;
    return { name, contributionDb: contributionDb + 0, unit, runningDb: runningDb + 0 };
  });
}

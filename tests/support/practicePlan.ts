/** Symbols of a plan with their right values, for the table of slips from practice. */

import { type CompiledFormula, compileFormula, workedSolution } from 'slantpath/teaching';

export { type CompiledFormula, compileFormula };

/** Givens, constants and right steps by symbol, and the answer. */
export function solutionPlanOf(plan: string, inputs: Readonly<Record<string, number>>) {
  const solution = workedSolution(plan, inputs);
  if (solution.kind !== 'solved') throw new Error(`${plan}: ${solution.reason}`);
  const { givens, constants, steps, answer } = solution;
  const all = [...givens, ...constants, ...steps].map(({ symbol, value }) => [symbol, value] as const);
  return {
    symbols: Object.fromEntries(all) as Record<string, number>,
    exact: answer.value,
    decimals: answer.decimals,
  };
}

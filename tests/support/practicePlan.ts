/** Symbols of a plan with their right values, for the table of slips from practice. */

import { type CompiledFormula, compileFormula, workedSolution } from 'slantpath/teaching';

import { solutionPlan } from '../../src/teaching/plans/index.js';
import { answerTolerance } from '../../src/teaching/solution/tolerance.js';
import { checkedInputs } from '../../src/teaching/solution/workedSolution.js';

export { type CompiledFormula, compileFormula };

/** Givens, constants and right steps by symbol, and the answer. */
export function solutionPlanOf(plan: string, inputs: Readonly<Record<string, number>>) {
  const solution = workedSolution(plan, inputs);
  if (solution.kind !== 'solved') throw new Error(`${plan}: ${solution.reason}`);
  const { givens, constants, steps, answer } = solution;
  const all = [...givens, ...constants, ...steps].map(
    ({ symbol, value }) => [symbol, value] as const,
  );
  return {
    symbols: Object.fromEntries(all) as Record<string, number>,
    exact: answer.value,
    decimals: answer.decimals,
  };
}

/** How far an answer may be off because every step is rounded as shown. */
export function toleranceOf(plan: string, inputs: Readonly<Record<string, number>>): number {
  const found = solutionPlan(plan);
  return answerTolerance(found, checkedInputs(found, inputs));
}

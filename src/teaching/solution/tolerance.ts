/** How far an answer may be off: half of the last decimal asked for, and what rounding each step as shown can do. */

import { valueNamed } from '../../numeric/columns.js';
import type { PlanStep, SolutionPlan, SolutionValues } from '../plans/plan.js';
import { type CompiledPlan, compiledPlan, evaluateCompiled, startValues } from './evaluate.js';

/**
 * Largest error of an answer for which every step before it was rounded to the decimals shown, without the rounding of the
 * answer itself: each step is moved by half of its last decimal to both sides, and the moves of the answer add up.
 */
function roundingSpread(
  plan: SolutionPlan,
  start: SolutionValues,
  compiled: CompiledPlan = compiledPlan(plan),
): number {
  const last = plan.steps[plan.steps.length - 1] as PlanStep;
  const answer = (moved?: PlanStep, by = 0) =>
    valueNamed(
      evaluateCompiled(compiled, start, (value, step) =>
        step === moved ? value + by * 0.5 * 10 ** -step.decimals : value,
      ),
      last.symbol,
    );
  const exact = answer();
  return plan.steps.slice(0, -1).reduce((sum, step) => {
    const moves = [1, -1]
      .map((by) => Math.abs(answer(step, by) - exact))
      // Over the edge of a period or of a root: no effect of rounding.
      .filter((move) => Number.isFinite(move) && move < 90);
    return sum + Math.max(0, ...moves);
  }, 0);
}

/** The tolerance of an answer to inputs: the spread, a hundredth more for its curvature, and half of the last decimal. */
export function answerTolerance(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
): number {
  const last = plan.steps[plan.steps.length - 1] as PlanStep;
  return 0.5 * 10 ** -last.decimals + 1.01 * roundingSpread(plan, startValues(plan, inputs));
}

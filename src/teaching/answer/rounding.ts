/** Whether an answer is what rounding more than shown gives: computed, so that nothing else is taken for it. */

import { valueNamed } from '../../numeric/columns.js';
import type { PlanStep, SolutionPlan } from '../plans/plan.js';
import { evaluatePlan, roundedTo } from '../solution/evaluate.js';
import { apart } from './match.js';
import type { Typed } from './typed.js';

const significant = (value: number, digits: number) => Number(value.toPrecision(digits));

/** Ways to round more than shown, at every step. */
const WAYS: readonly ((value: number, step: PlanStep) => number)[] = [
  (value, { decimals }) => roundedTo(value, Math.max(0, decimals - 1)),
  (value) => significant(value, 3),
  (value) => significant(value, 4),
  // Cut off instead of rounded.
  (value, { decimals }) => Math.trunc(value * 10 ** decimals) / 10 ** decimals,
];

/** Whether an answer comes of rounding or cutting every step more than shown, or the last digit the wrong way. */
export function isRoundedTooMuch(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
  given: Typed,
  exact: number,
): boolean {
  const last = plan.steps[plan.steps.length - 1] as PlanStep;
  const unit = 10 ** -last.decimals;
  if (given.decimals >= last.decimals && apart(plan, given.value, exact) <= unit * 1.0001)
    return true;
  return WAYS.some((way) => {
    const early = valueNamed(
      evaluatePlan(plan, inputs, {
        value: (value, step) => (step === last ? value : way(value, step)),
      }),
      last.symbol,
    );
    return Number.isFinite(early) && apart(plan, given.value, early) <= 0.51 * unit;
  });
}

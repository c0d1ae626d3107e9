/** The slips to expect of a question: what each gives, so that a trainer or a learning system is ready for them. */

import { DomainError, inRange } from '../../errors.js';
import { known } from '../../keys.js';
import { valueNamed } from '../../numeric/columns.js';
import { solutionPlan } from '../plans/index.js';
import type { PlanStep } from '../plans/plan.js';
import { evaluateCompiled, startValues } from '../solution/evaluate.js';
import { answerTolerance } from '../solution/tolerance.js';
import { checkedInputs } from '../solution/workedSolution.js';
import type { Question } from './checkAnswer.js';
import { apart, type NamedSlip } from './match.js';
import { variantsOf } from './variants.js';

const QUESTION_KEYS = { plan: true, inputs: true, level: true } as const;

/** A wrong answer larger than this many times the right one is noticed by its size. */
const ABSURD = 1000;

/**
 * Slips to expect of a question, each with the wrong answer that it gives.
 *
 * Only slips of their own are told, not what can happen to any item of any sum; of several that give the same answer the first.
 * Slips that the numbers hide, and answers that are absurd by their size, are left out. Directions and units come first, then
 * decibels, rules, constants and functions.
 *
 * @param question  Plan and givens, for instance of an `exercise`.
 * @param count  Most slips, 1 to 50.
 * @throws {@link DomainError} for a plan that is not known, givens outside their domain or a wrong count.
 *
 * Source: `SLIPS`. Accuracy: that of the function.
 * @example
 * ```ts
 * import { likelySlips } from 'slantpath/teaching';
 * const question = { plan: 'free-space-loss', inputs: { frequencyGHz: 12, slantRangeKm: 38000 } };
 * likelySlips(question, 3).map(({ name, value }) => [name, value.toFixed(2)]); // => [['mhz-for-ghz', '265.63'], ['unit-of-input', '385.63'], ['ten-log-for-twenty', '149.04']]
 * ```
 */
export function likelySlips(question: Question, count: number): readonly NamedSlip[] {
  const { plan: name, inputs: asked } = known('question', question, QUESTION_KEYS);
  const most = inRange('count', count, 1, 50);
  if (!Number.isInteger(most))
    throw new DomainError({
      code: 'malformed',
      parameter: 'count',
      received: count,
      allowed: 'a whole number',
    });
  const plan = solutionPlan(name);
  const inputs = checkedInputs(plan, asked);
  const values = plan.compute(inputs);
  const last = plan.steps[plan.steps.length - 1] as PlanStep;
  if (typeof values === 'string') return [];
  const exact = valueNamed(values, last.symbol);
  const start = startValues(plan, inputs);
  const within = 2 * answerTolerance(plan, inputs);
  const found: NamedSlip[] = [];
  for (const { slips, rank, compiled } of variantsOf(plan).single) {
    const [slip] = slips;
    if (found.length === most) break;
    if (rank !== 1 || !slip || found.some((each) => each.name === slip.name)) continue;
    const value = valueNamed(evaluateCompiled(compiled, start), last.symbol);
    const shows =
      Number.isFinite(value) &&
      Math.abs(value) <= ABSURD * Math.max(1, Math.abs(exact)) &&
      apart(plan, value, exact) > within &&
      found.every((each) => apart(plan, value, each.value) > within);
    if (shows) found.push({ ...slip, value });
  }
  return found;
}

/** An answer sheet with its steps: what is right, what goes wrong, and what is right from there on. */

import { object } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { valueNamed } from '../../numeric/columns.js';
import { solutionPlan } from '../plans/index.js';
import type { PlanStep, SolutionPlan } from '../plans/plan.js';
import {
  compiledPlan,
  constantsOf,
  evaluateCompiled,
  evaluatePlan,
  startValues,
} from '../solution/evaluate.js';
import { answerTolerance } from '../solution/tolerance.js';
import { checkedInputs } from '../solution/workedSolution.js';
import type { Question } from './checkAnswer.js';
import { apart, matchingSlips, type NamedSlip } from './match.js';
import { typedAnswer } from './typed.js';
import { isUnit } from './units.js';

const QUESTION_KEYS = { plan: true, inputs: true, level: true } satisfies Keys<Question>;

/** What is said of one step. */
export interface StepCheck {
  readonly symbol: string;
  readonly meaning: string;
  /** `carried-forward`: right from the learner's own earlier steps, of which one is wrong. */
  readonly kind: 'right' | 'carried-forward' | 'wrong' | 'wrong-unit' | 'unreadable' | 'empty';
  /** Slips of this step alone that give it; empty where it is right or none is known. */
  readonly slips: readonly NamedSlip[];
  /** Share of the marks of the step: a step that follows correctly from a wrong one has them all. */
  readonly creditRatio: number;
}

/** Outcome of {@link checkSteps}. */
export type StepsCheck =
  | {
      readonly kind: 'checked';
      readonly steps: readonly StepCheck[];
      /** The first wrong step by its symbol; empty if there is none. */
      readonly firstWrong: string;
      /** Share of the marks of the whole: mean of the steps that are not empty, or 0. */
      readonly creditRatio: number;
    }
  | {
      /** The question itself has no answer. */
      readonly kind: 'no-answer';
      readonly reason: string;
    };

/** A plan that ends at a step. */
const upTo = (plan: SolutionPlan, at: number): SolutionPlan => ({
  ...plan,
  steps: plan.steps.slice(0, at + 1),
});

/** One step as a plan of its own: what comes before it is given. */
function alone(
  plan: SolutionPlan,
  at: number,
  inputs: Readonly<Record<string, number>>,
): SolutionPlan {
  const before = plan.steps.slice(0, at);
  const { lookedUp: _, otherWays: __, periodDeg: ___, ...rest } = plan;
  return {
    ...rest,
    ...(plan.periodDeg !== undefined && at === plan.steps.length - 1
      ? { periodDeg: plan.periodDeg }
      : {}),
    constants: [
      ...constantsOf(plan, inputs),
      ...before.map(({ symbol, tex, meaning, unit, source }) => ({
        symbol,
        tex,
        meaning,
        unit,
        source,
        value: Number.NaN,
      })),
    ],
    steps: [plan.steps[at] as PlanStep],
  };
}

/**
 * Checks an answer sheet step by step, with the error carried forward.
 *
 * A step is right if it is the library's value, within what rounding the steps before it can do. A step that is not, but
 * follows rightly from what the learner wrote before, is `carried-forward` and keeps its marks; the slip is looked for only
 * in the step where it was made.
 *
 * @param question  Plan and givens, for instance of an `exercise`.
 * @param answers  What was written for each step, by its symbol; steps may be left out.
 * @throws {@link DomainError} for a plan that is not known or givens outside their domain.
 *
 * Source: common practice of marking (the error carried forward is not counted twice).
 * Accuracy: as {@link checkAnswer}.
 * @example
 * ```ts
 * import { checkSteps } from 'slantpath/teaching';
 * const question = { plan: 'free-space-loss', inputs: { frequencyGHz: 12, slantRangeKm: 38000 } };
 * const sheet = checkSteps(question, { F: '10.79', R: '91.60', L: '194.84' });
 * sheet.kind === 'checked' && sheet.steps.map(({ kind }) => kind); // => ['wrong', 'right', 'carried-forward']
 * ```
 */
export function checkSteps(
  question: Question,
  answers: Readonly<Record<string, number | string>>,
): StepsCheck {
  const { plan: name, inputs: asked } = known('question', question, QUESTION_KEYS);
  object('answers', answers);
  const plan = solutionPlan(name);
  const inputs = checkedInputs(plan, asked);
  const exact = plan.compute(inputs);
  if (typeof exact === 'string') return { kind: 'no-answer', reason: exact };
  const right = evaluatePlan(plan, inputs);
  const own: Record<string, number> = { ...startValues(plan, inputs) };
  let firstWrong = '';
  const steps = plan.steps.map((step, at): StepCheck => {
    const single = alone(plan, at, inputs);
    const follows = valueNamed(evaluateCompiled(compiledPlan(single), own), step.symbol);
    const given = typedAnswer(answers[step.symbol] ?? '');
    own[step.symbol] = given?.value ?? follows;
    const said = (kind: StepCheck['kind'], slips: readonly NamedSlip[] = []): StepCheck => {
      if (kind === 'wrong' && firstWrong === '') firstWrong = step.symbol;
      const creditRatio = kind === 'right' || kind === 'carried-forward' ? 1 : 0;
      return { symbol: step.symbol, meaning: step.meaning, kind, slips, creditRatio };
    };
    if (given === undefined)
      return said(String(answers[step.symbol] ?? '').trim() === '' ? 'empty' : 'unreadable');
    if (given.unit !== '' && !isUnit(given.unit, step.unit)) return said('wrong-unit');
    const half = 0.5 * 10 ** -step.decimals;
    const tolerance = answerTolerance(upTo(plan, at), inputs) + 1e-9 * Math.abs(given.value);
    if (apart(single, given.value, valueNamed(right, step.symbol)) <= tolerance)
      return said('right');
    if (apart(single, given.value, follows) <= 1.02 * half + (tolerance - half))
      return said('carried-forward');
    const start = { ...own };
    delete start[step.symbol];
    const { slips } = matchingSlips({ plan: single, start, given, exact: follows, half });
    return said('wrong', slips);
  });
  const filled = steps.filter(({ kind }) => kind !== 'empty');
  const sum = filled.reduce((marks, { creditRatio }) => marks + creditRatio, 0);
  return {
    kind: 'checked',
    steps,
    firstWrong,
    creditRatio: filled.length === 0 ? 0 : sum / filled.length,
  };
}

/** A learner's answer: right, badly rounded, in another unit, or wrong with the likely slip named. */

import { type Keys, known } from '../../keys.js';
import { wrapLongitudeDeg } from '../../numeric/angle.js';
import { solutionPlan } from '../plans/index.js';
import type { PlanStep, SolutionPlan } from '../plans/plan.js';
import { evaluatePlan, evaluateRounded, roundedTo } from '../solution/evaluate.js';
import { checkedInputs } from '../solution/workedSolution.js';
import { otherUnits } from './otherUnits.js';
import { SLIPS } from './slips.js';

/** What was asked. */
export interface Question {
  /** Name of a plan of `SOLUTION_PLANS`. */
  readonly plan: string;
  /** The givens by their library names. */
  readonly inputs: Readonly<Record<string, number>>;
}

const QUESTION_KEYS = { plan: true, inputs: true } satisfies Keys<Question>;

/** A slip that explains an answer. */
export interface NamedSlip {
  /** Name of the slip. */
  readonly name: string;
  /** What went wrong, said to the learner. */
  readonly explanation: string;
  /** What the slip gives, in the asked unit. */
  readonly value: number;
}

/** Outcome of {@link checkAnswer}; read `kind` first. */
export type AnswerCheck =
  | { readonly kind: 'right'; readonly exact: number }
  | {
      /** Right, but rounded too early or to too few digits. */
      readonly kind: 'badly-rounded';
      readonly exact: number;
      /** Answer less exact value. */
      readonly error: number;
      /** Decimals that were asked for. */
      readonly decimals: number;
    }
  | {
      /** Right, but not in the unit that was asked for. */
      readonly kind: 'other-unit';
      readonly exact: number;
      /** The unit it was given in and the one asked for. */
      readonly unit: string;
      readonly askedUnit: string;
    }
  | {
      readonly kind: 'wrong';
      readonly exact: number;
      /** Slips that give this answer, the likeliest first; empty where none is known. */
      readonly slips: readonly NamedSlip[];
      /** Whether more than one slip explains it. */
      readonly ambiguous: boolean;
    }
  | {
      /** The answer is no number. */
      readonly kind: 'unreadable';
    }
  | {
      /** The question itself has no answer. */
      readonly kind: 'no-answer';
      readonly reason: string;
    };

/** An answer as typed: its value and how many decimals it shows. */
interface Typed {
  readonly value: number;
  readonly decimals: number;
}

/** Reads a number with decimal point or comma, with or without a unit behind it. */
function typed(answer: number | string): Typed | undefined {
  if (typeof answer === 'number')
    return Number.isFinite(answer) ? { value: answer, decimals: 12 } : undefined;
  if (typeof answer !== 'string') return undefined;
  const match = /^\s*([-+−]?\d*(?:[.,]\d*)?(?:e[-+]?\d+)?)\s*[^\d.,]*$/i.exec(answer);
  const text = (match?.[1] ?? '').replace(',', '.').replace('−', '-');
  if (!/\d/.test(text)) return undefined;
  const value = Number(text);
  if (!Number.isFinite(value)) return undefined;
  const [, fraction] = text.split(/[.e]/i);
  return { value, decimals: text.includes('.') ? (fraction ?? '').length : 0 };
}

/** Difference of two answers; full periods do not count. */
function apart(plan: SolutionPlan, a: number, b: number): number {
  if (plan.periodDeg === undefined) return Math.abs(a - b);
  const turns = 360 / plan.periodDeg;
  return Math.abs(wrapLongitudeDeg((a - b) * turns)) / turns;
}

/**
 * Checks an answer against the library's value and, if it is wrong, against what the usual slips give.
 *
 * @param question  Plan and givens, for instance of an `exercise`.
 * @param answer  The number, or the text as typed: decimal point or comma, a unit behind it is passed over.
 * @returns `right` within half a step of the last decimal asked for; `badly-rounded` where early rounding or too few
 *   digits explain it; `other-unit`; `wrong` with the slips that give it; `unreadable`; `no-answer`.
 * @throws {@link DomainError} for a plan that is not known or givens outside their domain.
 *
 * Source: the slips are common practice of training; each is a wrong variant of the computation, matched by value.
 * Accuracy: see the test of slip naming.
 * @example
 * ```ts
 * import { checkAnswer } from 'slantpath/teaching';
 * const question = { plan: 'free-space-loss', inputs: { frequencyGHz: 12, slantRangeKm: 38000 } };
 * checkAnswer(question, '205,63 dB').kind; // => 'right'
 * const check = checkAnswer(question, 265.63);
 * check.kind === 'wrong' && check.slips.map((slip) => slip.name); // => ['mhz-for-ghz', 'metres-for-kilometres']
 * ```
 */
export function checkAnswer(question: Question, answer: number | string): AnswerCheck {
  const { plan: name, inputs: asked } = known('question', question, QUESTION_KEYS);
  const plan = solutionPlan(name);
  const inputs = checkedInputs(plan, asked);
  const values = plan.compute(inputs);
  if (typeof values === 'string') return { kind: 'no-answer', reason: values };
  const step = plan.steps[plan.steps.length - 1] as PlanStep;
  const exact = values[step.symbol] as number;
  const given = typed(answer);
  if (given === undefined) return { kind: 'unreadable' };
  const half = 0.5 * 10 ** -step.decimals;
  const hair = 1e-9 * Math.max(1, Math.abs(exact));
  const error = apart(plan, given.value, exact);
  // A half of the last decimal may be rounded up or down.
  if (error <= half + hair) return { kind: 'right', exact };
  const early = apart(plan, evaluateRounded(plan, inputs)[step.symbol] as number, exact);
  const fewDigits =
    given.decimals < step.decimals &&
    apart(plan, given.value, roundedTo(exact, given.decimals)) <= hair;
  const unexplained = { slips: matchingSlips(plan, inputs, given, exact, half) };
  if (fewDigits || (error <= early + half + hair && unexplained.slips.length === 0))
    return { kind: 'badly-rounded', exact, error: given.value - exact, decimals: step.decimals };
  for (const { unit, convert } of otherUnits(step.unit)) {
    const converted = convert(exact);
    // Few decimals widen it, but a number that merely lies nearby is no conversion.
    const tolerance = Math.min(
      Math.max(0.5 * 10 ** -given.decimals, 2e-3 * Math.abs(converted)),
      2e-2 * Math.abs(converted),
    );
    if (Math.abs(given.value - converted) <= tolerance)
      return { kind: 'other-unit', exact, unit, askedUnit: step.unit };
  }
  if (error <= 3 * early + half && unexplained.slips.length === 0)
    return { kind: 'badly-rounded', exact, error: given.value - exact, decimals: step.decimals };
  return { kind: 'wrong', exact, ...unexplained, ambiguous: unexplained.slips.length > 1 };
}

/** Slips whose value, rounded early or not, is the answer. */
function matchingSlips(
  plan: SolutionPlan,
  inputs: Question['inputs'],
  given: Typed,
  exact: number,
  half: number,
): readonly NamedSlip[] {
  const step = plan.steps[plan.steps.length - 1] as PlanStep;
  const tolerance = Math.max(half, Math.min(0.5 * 10 ** -given.decimals, 100 * half)) * 1.02;
  return SLIPS.flatMap(
    ({ name, explanation, changes }): readonly (NamedSlip & { miss: number })[] => {
      for (const change of changes(plan)) {
        const value = evaluatePlan(plan, inputs, change)[step.symbol] as number;
        // A slip that does not show in these numbers explains nothing.
        if (!Number.isFinite(value) || apart(plan, value, exact) <= 2 * half) continue;
        const early = evaluatePlan(plan, inputs, {
          ...change,
          value: (x, at) => roundedTo(x, at.decimals),
        })[step.symbol] as number;
        const miss = apart(plan, given.value, value);
        const spread = Number.isFinite(early) ? apart(plan, early, value) : 0;
        if (miss <= tolerance + spread) return [{ name, explanation, value, miss }];
      }
      return [];
    },
  )
    .sort((a, b) => a.miss - b.miss)
    .map(({ miss: _miss, ...slip }) => slip);
}

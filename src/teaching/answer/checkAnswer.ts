/** A learner's answer: right, by another way, badly rounded, in another unit, or wrong with the likely slip named. */

import { type Keys, known } from '../../keys.js';
import { valueNamed } from '../../numeric/columns.js';
import { solutionPlan } from '../plans/index.js';
import type { PlanStep, SolutionPlan } from '../plans/plan.js';
import { evaluateRounded, roundedTo, startValues } from '../solution/evaluate.js';
import { answerTolerance } from '../solution/tolerance.js';
import { checkedInputs } from '../solution/workedSolution.js';
import { apart, type Matched, matchingSlips, type NamedSlip } from './match.js';
import { isRoundedTooMuch } from './rounding.js';
import { type Typed, typedAnswer } from './typed.js';
import { isUnit, otherUnits } from './units.js';

export type { NamedSlip } from './match.js';

/** What was asked. */
export interface Question {
  /** Name of a plan of `SOLUTION_PLANS`. */
  readonly plan: string;
  /** The givens by their library names. */
  readonly inputs: Readonly<Record<string, number>>;
  /** Difficulty of the exercise: at level 1 the round Earth is as right as the ellipsoid; 2 by default. */
  readonly level?: 1 | 2 | 3;
}

const QUESTION_KEYS = { plan: true, inputs: true, level: true } satisfies Keys<Question>;

/** Outcome of {@link checkAnswer}; read `kind` first. */
export type AnswerCheck =
  | {
      readonly kind: 'right';
      readonly exact: number;
      /** The way it is right by: the plan's own, or another one that is as good at this level. */
      readonly by: 'plan' | 'round-earth';
      /** Whether more decimals are shown than were asked for. */
      readonly moreDecimals: boolean;
      /** Share of the marks. */
      readonly creditRatio: number;
    }
  | {
      /** Right by another way of computing, which is less exact than the one asked for. */
      readonly kind: 'other-way';
      readonly way: 'round-earth';
      readonly exact: number;
      /** Answer less exact value. */
      readonly error: number;
      /** Slips that give the same number: near the other way's answer the number alone does not tell them apart. */
      readonly slips: readonly NamedSlip[];
      /** Share of the marks. */
      readonly creditRatio: number;
    }
  | {
      /** Right, but rounded too early or to too few digits. */
      readonly kind: 'badly-rounded';
      readonly exact: number;
      /** Answer less exact value. */
      readonly error: number;
      /** Decimals that were asked for. */
      readonly decimals: number;
      /** Share of the marks. */
      readonly creditRatio: number;
    }
  | {
      /** What would be right in another unit than the one that was asked for. */
      readonly kind: 'other-unit';
      readonly exact: number;
      /** The unit it was given in and the one asked for. */
      readonly unit: string;
      readonly askedUnit: string;
      /** Share of the marks. */
      readonly creditRatio: number;
    }
  | {
      /** The right number with a unit behind it that it does not have. */
      readonly kind: 'wrong-unit';
      readonly exact: number;
      /** The unit as typed and the one asked for. */
      readonly unit: string;
      readonly askedUnit: string;
      /** Share of the marks. */
      readonly creditRatio: number;
    }
  | {
      readonly kind: 'wrong';
      readonly exact: number;
      /** Slips that give this answer, the likeliest first; empty where none is known. */
      readonly slips: readonly NamedSlip[];
      /** Whether more than one slip alone explains it. */
      readonly ambiguous: boolean;
      /** Whether it takes all the slips at once to explain it. */
      readonly together: boolean;
      /** Whether it is also what rounding to the few digits shown would give. */
      readonly perhapsRounded: boolean;
      /** The unit as typed, where it is not the one asked for; empty otherwise. */
      readonly wrongUnit: string;
      /** Share of the marks. */
      readonly creditRatio: number;
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

/** Share of the marks by outcome: rounding costs a quarter, the unit or another way a half. */
const CREDIT_RATIO = {
  right: 1,
  'badly-rounded': 0.75,
  'other-way': 0.75,
  'other-unit': 0.5,
  'wrong-unit': 0.5,
  wrong: 0,
} as const;

/**
 * Checks an answer against the library's value and, if it is wrong, against what the usual slips give.
 *
 * The unit is judged first, then the value, then slips; only what no slip explains is judged as rounding, so that a
 * forgotten item is never praised as a rounded answer. Who rounds each step to the decimals shown is right.
 *
 * @param question  Plan and givens, for instance of an `exercise`; its level decides whether the round Earth will do.
 * @param answer  The number, or the text as typed: decimal point or comma, the unit behind it or none.
 * @returns `right` within the tolerance of {@link exercise}; `other-way`; `badly-rounded` where early rounding or too few
 *   digits explain it; `other-unit`; `wrong-unit`; `wrong` with the slips that give it, one or two at once; `unreadable`;
 *   `no-answer`.
 * @throws {@link DomainError} for a plan that is not known or givens outside their domain.
 *
 * Source: the slips are common practice of training; each is a wrong variant of the computation, matched by value.
 * Accuracy: see the test of slip naming.
 * @example
 * ```ts
 * import { checkAnswer } from 'slantpath/teaching';
 * const question = { plan: 'free-space-loss', inputs: { frequencyGHz: 12, slantRangeKm: 38000 } };
 * checkAnswer(question, '205,63 dB').kind; // => 'right'
 * checkAnswer(question, '205.63 dBm').kind; // => 'wrong-unit'
 * const check = checkAnswer(question, 265.63);
 * check.kind === 'wrong' && check.slips.map((slip) => slip.name); // => ['mhz-for-ghz', 'metres-for-kilometres']
 * ```
 */
export function checkAnswer(question: Question, answer: number | string): AnswerCheck {
  const { plan: name, inputs: asked, level } = known('question', question, QUESTION_KEYS);
  const plan = solutionPlan(name);
  const inputs = checkedInputs(plan, asked);
  const values = plan.compute(inputs);
  if (typeof values === 'string') return { kind: 'no-answer', reason: values };
  const step = plan.steps[plan.steps.length - 1] as PlanStep;
  const exact = valueNamed(values, step.symbol);
  const given = typedAnswer(answer);
  if (given === undefined) return { kind: 'unreadable' };
  const judged = judgedValue(plan, inputs, given, exact, level ?? 2);
  const named = given.unit !== '' && !isUnit(given.unit, step.unit);
  if (!named) return judged;
  const other = otherUnits(step.unit).find(({ unit }) => isUnit(given.unit, unit));
  if (other && near(given, other.convert(exact), 1)) return inOtherUnit(exact, other.unit, step);
  if (judged.kind === 'wrong') return { ...judged, wrongUnit: given.unit };
  return {
    kind: 'wrong-unit',
    exact,
    unit: given.unit,
    askedUnit: step.unit,
    creditRatio: CREDIT_RATIO['wrong-unit'],
  };
}

type Judged = Exclude<AnswerCheck, { kind: 'unreadable' | 'no-answer' | 'wrong-unit' }>;

const inOtherUnit = (exact: number, unit: string, step: PlanStep) =>
  ({
    kind: 'other-unit',
    exact,
    unit,
    askedUnit: step.unit,
    creditRatio: CREDIT_RATIO['other-unit'],
  }) as const;

/** Whether an answer is a converted value: few decimals widen it, but a number that merely lies nearby is no conversion. */
function near(given: Typed, converted: number, loose: number): boolean {
  const tolerance = Math.min(
    Math.max(0.5 * 10 ** -given.decimals, 2e-3 * loose * Math.abs(converted)),
    2e-2 * Math.abs(converted),
  );
  return Math.abs(given.value - converted) <= tolerance;
}

/** Whether an answer in percent was given as a share, rounded to the decimals that it shows. */
const asShare = ({ value, decimals }: Typed, unit: string, share: number): boolean =>
  unit === 'ratio' && value !== 0 && decimals > 0 && roundedTo(share, decimals) === value;

/** The value alone, whatever unit stands behind it. */
function judgedValue(
  plan: SolutionPlan,
  inputs: Question['inputs'],
  given: Typed,
  exact: number,
  level: 1 | 2 | 3,
): Judged {
  const step = plan.steps[plan.steps.length - 1] as PlanStep;
  const half = 0.5 * 10 ** -step.decimals;
  // A half of the last decimal may be rounded up or down.
  const hair = 1e-9 * Math.max(1, Math.abs(exact));
  const off = (value: number) => apart(plan, given.value, value);
  const right = (by: 'plan' | 'round-earth'): Judged => ({
    kind: 'right',
    exact,
    by,
    moreDecimals: given.decimals > step.decimals && given.decimals < 12,
    creditRatio: CREDIT_RATIO.right,
  });
  if (off(exact) <= half + hair) return right('plan');
  if (given.asThousands !== undefined && apart(plan, given.asThousands, exact) <= half + hair)
    return right('plan');
  const stepwise = valueNamed(evaluateRounded(plan, inputs), step.symbol);
  if (off(stepwise) <= hair) return right('plan');
  const start = startValues(plan, inputs);
  const matched = matchingSlips({ plan, start, given, exact, half });
  if (off(exact) <= answerTolerance(plan, inputs) + hair && !matched.own) return right('plan');
  const other = plan.otherWays?.(inputs).some((value) => off(value) <= 1.2 * half + hair);
  if (other && level === 1) return right('round-earth');
  if (other)
    return {
      kind: 'other-way',
      way: 'round-earth',
      exact,
      error: given.value - exact,
      slips: matched.slips,
      creditRatio: CREDIT_RATIO['other-way'],
    };
  return rejected(plan, inputs, given, exact, matched);
}

/** What is said of a value that is not right. */
function rejected(
  plan: SolutionPlan,
  inputs: Question['inputs'],
  given: Typed,
  exact: number,
  matched: Matched,
): Judged {
  const step = plan.steps[plan.steps.length - 1] as PlanStep;
  if (given.unit === '') {
    const other = otherUnits(step.unit).find(
      ({ unit, convert }) => near(given, convert(exact), 1) || asShare(given, unit, convert(exact)),
    );
    const radians = matched.slips.some((slip) => slip.name === 'radians-in-answer');
    if (other && (!matched.own || radians)) return inOtherUnit(exact, other.unit, step);
  }
  const hair = 1e-9 * Math.max(1, Math.abs(exact));
  const fewDigits =
    given.decimals < step.decimals &&
    apart(plan, given.value, roundedTo(exact, given.decimals)) <= hair;
  const rounded = fewDigits
    ? !matched.exactly
    : matched.slips.length === 0 && isRoundedTooMuch(plan, inputs, given, exact);
  if (rounded)
    return {
      kind: 'badly-rounded',
      exact,
      error: given.value - exact,
      decimals: step.decimals,
      creditRatio: CREDIT_RATIO['badly-rounded'],
    };
  return {
    kind: 'wrong',
    exact,
    slips: matched.slips,
    ambiguous: matched.slips.length > 1 && !matched.together,
    together: matched.together,
    perhapsRounded: fewDigits,
    wrongUnit: '',
    creditRatio: CREDIT_RATIO.wrong,
  };
}

/** Exercises from a seed: round inputs that have an answer, hints in steps, the worked solution. */

import { DomainError, finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { type RandomStream, randomStream } from '../../numeric/random.js';
import type { Question } from '../answer/checkAnswer.js';
import { solutionPlan } from '../plans/index.js';
import type { PlanStep, SolutionGiven, SolutionPlan } from '../plans/plan.js';
import { WHY } from '../plans/why.js';
import { plainNumber, plainSteps } from '../print/formulas.js';
import { englishNotes, noteText } from '../print/notes.js';
import { plainSymbol } from '../print/symbols.js';
import { fixedNumber, printedUnit, withUnit } from '../print/units.js';
import { roundedTo } from '../solution/evaluate.js';
import { answerTolerance } from '../solution/tolerance.js';
import {
  type SolutionQuantity,
  type WorkedSolution,
  workedSolution,
} from '../solution/workedSolution.js';

/** What {@link exercise} is asked. */
export interface ExerciseInput {
  /** Name of a plan of `SOLUTION_PLANS`: the kind of exercise. */
  readonly plan: string;
  /** Seed, any whole number: the same seed gives the same exercise to everyone. */
  readonly seed: number;
  /** Difficulty: 1 round numbers, 2 the usual ones, 3 as they come; 2 by default. */
  readonly level?: 1 | 2 | 3;
}

const EXERCISE_INPUT_KEYS = { plan: true, seed: true, level: true } satisfies Keys<ExerciseInput>;

/** An exercise with its key. */
export interface Exercise extends Question {
  /** The seed and level that give it again. */
  readonly seed: number;
  readonly level: 1 | 2 | 3;
  /** The question in plain words with its givens and constants. */
  readonly text: string;
  /** What is asked for: unit and decimals. */
  readonly unit: string;
  readonly decimals: number;
  /** The right answer, and how far an answer may be off. */
  readonly answer: number;
  readonly tolerance: number;
  /** Hints, each giving away more than the one before: why, the way, the formulas, the numbers put in. */
  readonly hints: readonly string[];
  /** The worked solution. */
  readonly solution: WorkedSolution & { readonly kind: 'solved' };
}

/** Draws before giving up; every plan has answers for most of its range. */
const MOST_DRAWS = 400;

/** A value on the given's grid; level 1 on one five times as wide, level 3 on one ten times as fine. */
function draw(
  { draw: { from, to, step } }: SolutionGiven,
  level: 1 | 2 | 3,
  stream: RandomStream,
): number {
  const width = level === 1 ? Math.min(5 * step, to - from) : level === 3 ? step / 10 : step;
  const first = level === 1 ? Math.ceil(from / width) * width : from;
  const count = Math.max(1, Math.floor((to - first) / width + 1e-9) + 1);
  return Number((first + width * stream.integer(count)).toPrecision(12));
}

/** A given or a constant in words: `latitude: φ = 46°`. */
function told({ meaning, tex, unit, value }: SolutionQuantity): string {
  return `${meaning}: ${plainSymbol(tex)} = ${withUnit(plainNumber(value), unit)}`;
}

/** The constants of a plan in words, so that everyone computes with the same. */
function takenFrom({ constants }: WorkedSolution & { readonly kind: 'solved' }): string {
  if (constants.length === 0) return '';
  return ` Take ${constants.map(told).join('; ')}.`;
}

/** What is said where the round Earth is as right as the ellipsoid. */
const ROUND_EARTH = ' The formulas of the round Earth will do.';

/** How far to round, in words. */
function toDecimals(count: number): string {
  return count === 0 ? 'a whole number' : `${count} ${count === 1 ? 'decimal' : 'decimals'}`;
}

function hintsOf(
  plan: SolutionPlan,
  solution: WorkedSolution & { readonly kind: 'solved' },
): string[] {
  const steps = solution.steps;
  const printed = plainSteps(solution);
  const why = WHY[plan.name];
  return [
    ...(why === undefined ? [] : [why]),
    `The way: ${plan.steps.map(({ meaning }) => meaning).join(', then ')}.`,
    ...printed.map(({ symbol, formula, notes }, at) => {
      const note = notes.length === 0 ? '' : ` (${noteText(notes, englishNotes)})`;
      return `${steps[at]?.meaning ?? ''}: ${symbol} = ${formula}${note}`;
    }),
    ...printed.map(({ symbol, numbers }, at) => {
      const step = steps[at];
      // The last value is the answer, which no hint gives away.
      return !step || at === steps.length - 1
        ? `${symbol} = ${numbers}`
        : `${symbol} = ${numbers} = ${withUnit(fixedNumber(step.value, step.decimals), step.unit)}`;
    }),
  ];
}

/**
 * An exercise of a kind from a seed.
 *
 * @returns Question, givens, answer with its tolerance (half a step of the last decimal asked for, and what rounding each
 *   step as shown can do to it), hints in order
 *   and the worked solution.
 * @throws {@link DomainError} for a plan that is not known, a seed that is no number or a level other than 1, 2, 3.
 *
 * Source: the answers are the library's own results. Accuracy: that of the function.
 * @example
 * ```ts
 * import { checkAnswer, exercise } from 'slantpath/teaching';
 * const one = exercise({ plan: 'elevation', seed: 7 });
 * checkAnswer(one, one.answer.toFixed(one.decimals)).kind; // => 'right'
 * exercise({ plan: 'elevation', seed: 7 }).text === one.text; // => true
 * ```
 */
export function exercise(input: ExerciseInput): Exercise {
  const {
    plan: name,
    seed: givenSeed,
    level: wanted,
  } = knownOnly('input', input, EXERCISE_INPUT_KEYS);
  const plan = solutionPlan(name);
  const seed = finite('seed', givenSeed);
  const level = inRange('level', wanted ?? 2, 1, 3);
  if (level !== 1 && level !== 2 && level !== 3)
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'level',
      received: level,
      allowed: '1, 2 or 3',
    });
  const stream = randomStream(seed);
  const step = plan.steps[plan.steps.length - 1] as PlanStep;
  for (let tries = 0; tries < MOST_DRAWS; tries++) {
    const inputs = Object.fromEntries(
      plan.givens.map((each) => [each.name, each.otherwise ?? draw(each, level, stream)]),
    );
    const solution = workedSolution(plan.name, inputs);
    if (solution.kind !== 'solved') continue;
    // An answer of zero teaches nothing and hides slips.
    if (roundedTo(solution.answer.value, step.decimals) === 0) continue;
    return {
      plan: plan.name,
      seed,
      level,
      inputs,
      text: `${plan.title} Given ${solution.givens.map(told).join('; ')}.${takenFrom(solution)}${level === 1 && plan.otherWays ? ROUND_EARTH : ''} Answer in ${step.unit === '' ? 'a plain number' : printedUnit(step.unit)} to ${toDecimals(step.decimals)}.`,
      unit: step.unit,
      decimals: step.decimals,
      answer: solution.answer.value,
      tolerance: answerTolerance(plan, inputs),
      hints: hintsOf(plan, solution),
      solution,
    };
  }
  throw new DomainError({
    code: 'inconsistent',
    parameter: 'plan',
    received: name,
    allowed: 'a plan whose range has answers',
  });
}

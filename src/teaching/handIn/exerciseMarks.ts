/** Marks of one exercise: one for each step; the answer earns all of them, or the steps what they earn, whichever is more. */

import { type AnswerCheck, checkAnswer } from '../answer/checkAnswer.js';
import { checkSteps, type StepCheck } from '../answer/checkSteps.js';
import type { NamedSlip } from '../answer/match.js';
import type { Exercise } from '../exercise/exercise.js';
import { mostMarksOf } from '../exercise/marks.js';
import type { HandedAnswer } from './handIn.js';

/** What an exercise earned. */
export interface ExerciseMarks {
  /** What was typed as the answer. */
  readonly answer: string;
  /** `empty` where nothing was typed as the answer, otherwise as `checkAnswer` says. */
  readonly outcome: AnswerCheck['kind'] | 'empty';
  /** Marks earned, and the most that can be: one for each step. */
  readonly marks: number;
  readonly mostMarks: number;
  /** The steps, where at least one before the answer was typed; empty otherwise. */
  readonly steps: readonly StepCheck[];
  /** The slips that explain what is wrong: those of the first wrong step, otherwise of the answer. */
  readonly slips: readonly NamedSlip[];
}

/** Marks of what was typed for an exercise. */
export function exerciseMarks(exercise: Exercise, handed: HandedAnswer): ExerciseMarks {
  const { answer, steps: typed = {} } = handed;
  const mostMarks = mostMarksOf(exercise);
  const check = answer.trim() === '' ? undefined : checkAnswer(exercise, answer);
  const ratio = check && 'creditRatio' in check ? check.creditRatio : 0;
  const steps = stepsOf(exercise, typed, answer);
  const byStep = steps.reduce((sum, { creditRatio }) => sum + creditRatio, 0);
  const wrong = steps.find(({ kind }) => kind === 'wrong');
  const named = wrong?.slips ?? [];
  const slips = named.length > 0 || check?.kind !== 'wrong' ? named : check.slips;
  return {
    answer,
    outcome: check?.kind ?? 'empty',
    marks: Math.max(ratio * mostMarks, byStep),
    mostMarks,
    steps,
    slips,
  };
}

/** The steps with the answer as the last of them; none where no step before it was typed. */
function stepsOf(
  exercise: Exercise,
  typed: Readonly<Record<string, string>>,
  answer: string,
): readonly StepCheck[] {
  const last = exercise.solution.steps.at(-1);
  if (!last || Object.values(typed).every((text) => text.trim() === '')) return [];
  const check = checkSteps(exercise, { ...typed, [last.symbol]: answer });
  return check.kind === 'checked' ? check.steps : [];
}

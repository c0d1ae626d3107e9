/** What a numerical question of a learning system knows: the right answer, the other way, and likely slips. */

import { likelySlips } from '../answer/likelySlips.js';
import { solutionPlan } from '../plans/index.js';
import type { Exercise } from './exercise.js';

/** One answer, counted where a typed number is within its tolerance and no answer before it fits. */
export interface NumericalAnswer {
  /** Share of the marks in percent. */
  readonly share: number;
  readonly value: number;
  readonly tolerance: number;
  /** What a learner is told; empty for the right answer. */
  readonly feedback: string;
}

/** Slips told beside the right answer. */
const MOST_SLIPS = 6;

/** The answers of an exercise. The first that fits counts, so that a slip never takes a right one away. */
export function numericalAnswers(exercise: Exercise): readonly NumericalAnswer[] {
  const { plan, inputs, answer, tolerance, decimals, level } = exercise;
  const half = 0.5 * 10 ** -decimals;
  const others = solutionPlan(plan).otherWays?.(inputs) ?? [];
  return [
    { share: 100, value: answer, tolerance, feedback: '' },
    ...others.map((value) => ({
      share: level === 1 ? 100 : 75,
      value,
      tolerance: half,
      feedback: 'By the formulas of the round Earth.',
    })),
    ...likelySlips(exercise, MOST_SLIPS).map(({ value, explanation }) => ({
      share: 0,
      value,
      tolerance: half,
      feedback: explanation,
    })),
  ];
}

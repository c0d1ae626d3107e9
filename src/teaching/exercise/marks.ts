/** Marks that an exercise has at most: one for each step. */

import type { Exercise } from './exercise.js';

export const mostMarksOf = ({ solution }: Exercise): number => solution.steps.length;

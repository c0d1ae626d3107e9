/** Nonlinear least squares of a few unknowns by Gauss-Newton with halved steps (A. Bjorck, Numerical Methods for Least Squares Problems, section 9.2). */

import { valueAt } from './columns.js';
import { type LinearFit, linearLeastSquares } from './leastSquares.js';

/** The readings at some values of the unknowns. */
export interface FitPlace {
  /** Reading less model, row by row. */
  readonly residuals: ArrayLike<number>;
  /** Weighted sum of squared residuals. */
  readonly sumOfSquares: number;
  /** Slopes of the model, one column for each unknown; asked where a step begins. */
  readonly slopes: () => readonly ArrayLike<number>[];
}

/** A model and how it is followed. */
export interface GaussNewtonInput<P extends FitPlace> {
  /** Values to begin with. */
  readonly start: readonly number[];
  /** The readings at values of the unknowns. */
  readonly at: (values: readonly number[]) => P;
  /** Weights of the readings, 0 or more; default 1 each. */
  readonly weights?: ArrayLike<number> | undefined;
  /** How much of a step is tried first, above 0 to 1; default all of it. */
  readonly firstShare?: (step: readonly number[]) => number;
  /** Values brought back to where the model has a meaning; default as they are. */
  readonly bounded?: (values: readonly number[]) => readonly number[];
  /** Most rounds. */
  readonly rounds: number;
  /** Times a step is halved at most while it does not lower the sum of squares. */
  readonly halvings: number;
  /** Relative change of the sum of squares at which the fit has settled. */
  readonly settledRatio: number;
}

/** Where the descent ended. */
export interface GaussNewtonFit<P extends FitPlace> {
  readonly values: readonly number[];
  readonly place: P;
  /** Linear fit of the residuals there, with the covariance; `undefined` where the readings do not determine every unknown. */
  readonly linear: LinearFit | undefined;
}

/** Added to a sum of squares so that an exact fit settles too. */
const EXACT = 1e-12;

/** Values with the least sum of squares near the start: each round solves the linear problem and keeps a step only if it does not raise the sum. */
export function gaussNewton<P extends FitPlace>(input: GaussNewtonInput<P>): GaussNewtonFit<P> {
  const { at, weights, firstShare, bounded, rounds, halvings, settledRatio } = input;
  let values = input.start;
  let place = at(values);
  for (let round = 0; round < rounds; round++) {
    const step = linearLeastSquares(place.slopes(), place.residuals, weights)?.coefficients;
    if (step === undefined) break;
    let share = firstShare?.(step) ?? 1;
    let trial = values;
    let next = place;
    for (let halving = 0; halving < halvings; halving++, share /= 2) {
      const moved = values.map((value, j) => value + share * valueAt(step, j));
      trial = bounded?.(moved) ?? moved;
      next = at(trial);
      if (next.sumOfSquares <= place.sumOfSquares) break;
    }
    // Also where the sum is no number: nothing that follows would be better.
    if (!(next.sumOfSquares <= place.sumOfSquares)) break;
    const gain = place.sumOfSquares - next.sumOfSquares;
    const settled = gain <= settledRatio * (place.sumOfSquares + EXACT);
    values = trial;
    place = next;
    if (settled) break;
  }
  return { values, place, linear: linearLeastSquares(place.slopes(), place.residuals, weights) };
}

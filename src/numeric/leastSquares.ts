/** Small dense weighted least squares by orthogonal columns (Golub and Van Loan, Matrix Computations, ch. 5). */

import { dense, denseAt } from './columns.js';

/** A linear fit of a few coefficients. */
export interface LinearFit {
  /** Fitted coefficients, one for each column. */
  readonly coefficients: readonly number[];
  /** Covariance of the coefficients for unit weight variance: (X' W X)^-1. */
  readonly covariance: readonly (readonly number[])[];
  /** Value minus fit, row by row, unweighted. */
  readonly residuals: Float64Array;
  /** Variance of the fitted value of each row for unit weight variance; also of rows of weight 0. */
  readonly fittedVariances: Float64Array;
  /** Weighted sum of squared residuals. */
  readonly sumOfSquares: number;
  /** Rows of weight above zero less coefficients. */
  readonly degreesOfFreedom: number;
}

/** Smallest ratio of a pivot to its column's length that still counts as independent. */
const RANK_TOLERANCE = 1e-10;

/**
 * Coefficients that minimise the sum of weight * (value - sum of coefficient * column)^2.
 *
 * @param columns  Columns of the design, each as long as `values`; scale them near 1 for the best digits.
 * @param weights  Weights of 0 or more; default 1 each. Rows of weight 0 do not count.
 * @returns `undefined` where the columns do not determine the coefficients.
 */
export function linearLeastSquares(
  columns: readonly ArrayLike<number>[],
  values: ArrayLike<number>,
  weights?: ArrayLike<number>,
): LinearFit | undefined {
  const w = weights && dense(weights);
  const rows = w ? w.reduce((count, weight) => (weight > 0 ? count + 1 : count), 0) : values.length;
  const table = tableOf(columns, values);
  if (rows < table.p) return undefined;
  // The values stand behind the columns, so that they are weighted with them.
  const q = weighted(table, w);
  const r = orthogonal(table, q);
  return r && solved(table, q, r, rows, w);
}

/** The columns one after the other, and the values as the last. */
interface Table {
  readonly n: number;
  readonly p: number;
  readonly x: Float64Array;
}

function tableOf(columns: readonly ArrayLike<number>[], values: ArrayLike<number>): Table {
  const [n, p] = [values.length, columns.length];
  const x = new Float64Array((p + 1) * n);
  for (const [j, column] of columns.entries()) x.set(column, j * n);
  x.set(values, p * n);
  return { n, p, x };
}

/** The table times the square roots of the weights. */
function weighted({ n, x }: Table, w: Float64Array | undefined): Float64Array {
  const scaled = x.slice();
  if (w)
    for (let i = 0; i < n; i++) {
      const root = Math.sqrt(denseAt(w, i));
      for (let at = i; at < scaled.length; at += n) scaled[at] = denseAt(scaled, at) * root;
    }
  return scaled;
}

/**
 * Makes the columns orthogonal and of length 1 where they stand, by modified Gram-Schmidt with one re-orthogonalisation: as stable
 * as reflections for so few columns. Gives the triangle that leads back, row by row; `undefined` where they are not independent.
 */
function orthogonal({ n, p }: Table, q: Float64Array): Float64Array | undefined {
  const r = new Float64Array(p * p);
  for (let j = 0; j < p; j++) {
    const here = j * n;
    const before = Math.sqrt(dot(q, here, here, n));
    for (let pass = 0; pass < 2; pass++)
      for (let i = 0; i < j; i++) {
        const other = i * n;
        const share = dot(q, other, here, n);
        r[i * p + j] = denseAt(r, i * p + j) + share;
        for (let k = 0; k < n; k++)
          q[here + k] = denseAt(q, here + k) - share * denseAt(q, other + k);
      }
    const length = Math.sqrt(dot(q, here, here, n));
    if (!(length > RANK_TOLERANCE * before)) return undefined;
    r[j * p + j] = length;
    for (let k = here; k < here + n; k++) q[k] = denseAt(q, k) / length;
  }
  return r;
}

/** Sum of the products of two stretches of a list. */
function dot(list: Float64Array, a: number, b: number, length: number): number {
  let sum = 0;
  for (let i = 0; i < length; i++) sum += denseAt(list, a + i) * denseAt(list, b + i);
  return sum;
}

/** Turns the right side into coefficients, by substitution from below, and gives the inverse of the triangle, row by row. */
function substituted(r: Float64Array, right: Float64Array): Float64Array {
  const p = right.length;
  const inverse = new Float64Array(p * p);
  for (let j = p - 1; j >= 0; j--) {
    let sum = denseAt(right, j);
    for (let k = j + 1; k < p; k++) sum -= denseAt(r, j * p + k) * denseAt(right, k);
    const pivot = denseAt(r, j * p + j);
    right[j] = sum / pivot;
    for (let column = j; column < p; column++) {
      let entry = column === j ? 1 : 0;
      for (let k = j + 1; k <= column; k++)
        entry -= denseAt(r, j * p + k) * denseAt(inverse, k * p + column);
      inverse[j * p + column] = entry / pivot;
    }
  }
  return inverse;
}

function solved(
  { n, p, x }: Table,
  q: Float64Array,
  r: Float64Array,
  rows: number,
  w: Float64Array | undefined,
): LinearFit {
  const coefficients = new Float64Array(p);
  for (let j = 0; j < p; j++) coefficients[j] = dot(q, j * n, p * n, n);
  const inverse = substituted(r, coefficients);
  const residuals = new Float64Array(n);
  const fittedVariances = new Float64Array(n);
  let sumOfSquares = 0;
  for (let i = 0; i < n; i++) {
    let fitted = 0;
    let variance = 0;
    for (let k = 0; k < p; k++) {
      fitted += denseAt(coefficients, k) * denseAt(x, k * n + i);
      let entry = 0;
      for (let j = 0; j <= k; j++) entry += denseAt(x, j * n + i) * denseAt(inverse, j * p + k);
      variance += entry * entry;
    }
    const residual = denseAt(x, p * n + i) - fitted;
    residuals[i] = residual;
    fittedVariances[i] = variance;
    sumOfSquares += (w ? denseAt(w, i) : 1) * residual * residual;
  }
  const lines = Array.from({ length: p }, (_, j) => j * p);
  return {
    coefficients: Array.from(coefficients),
    covariance: lines.map((a) => lines.map((b) => dot(inverse, a, b, p))),
    residuals,
    fittedVariances,
    sumOfSquares,
    degreesOfFreedom: rows - p,
  };
}

/** Cholesky's factor of a symmetric positive definite matrix, with its solutions and its determinant. */

import { denseAt, valueAt } from './columns.js';

/** A factor that solves. */
export interface Cholesky {
  /** Solution of A x = b. */
  readonly solve: (right: readonly number[]) => number[];
  /** Natural logarithm of the determinant of A. */
  readonly logDeterminant: number;
}

/**
 * Factor of a symmetric positive definite matrix by rows; a pivot that rounding brings to 0 or below is held at a tiny positive
 * share of its row, so that a nearly singular system still has a finite answer.
 */
export function cholesky(matrix: readonly (readonly number[])[]): Cholesky {
  const n = matrix.length;
  const factor = matrix.map(() => new Float64Array(n));
  let logDeterminant = 0;
  for (let i = 0; i < n; i += 1) {
    const row = factor[i] as Float64Array;
    for (let j = 0; j <= i; j += 1) {
      const other = factor[j] as Float64Array;
      let sum = valueAt(matrix[i] as readonly number[], j);
      for (let k = 0; k < j; k += 1) sum -= denseAt(row, k) * denseAt(other, k);
      if (i === j) {
        const least = 1e-15 * Math.abs(valueAt(matrix[i] as readonly number[], i)) + 1e-300;
        row[i] = Math.sqrt(Math.max(sum, least));
        logDeterminant += 2 * Math.log(denseAt(row, i));
      } else row[j] = sum / denseAt(other, j);
    }
  }
  return {
    logDeterminant,
    solve: (right) => {
      const x = [...right];
      for (let i = 0; i < n; i += 1) {
        const row = factor[i] as Float64Array;
        for (let k = 0; k < i; k += 1) x[i] = valueAt(x, i) - denseAt(row, k) * valueAt(x, k);
        x[i] = valueAt(x, i) / denseAt(row, i);
      }
      for (let i = n - 1; i >= 0; i -= 1) {
        for (let k = i + 1; k < n; k += 1)
          x[i] = valueAt(x, i) - denseAt(factor[k] as Float64Array, i) * valueAt(x, k);
        x[i] = valueAt(x, i) / denseAt(factor[i] as Float64Array, i);
      }
      return x;
    },
  };
}

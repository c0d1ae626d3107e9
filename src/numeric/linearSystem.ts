/** Small systems of linear equations: Gaussian elimination with row pivoting. */

import { entryAt, valueAt } from './columns.js';

/**
 * Solution x of A x = b for a square matrix by rows, or `undefined` where it is singular to working
 * precision. Neither argument is changed.
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, index) => [...row, valueAt(right, index)]);
  const at = (row: number, column: number): number => valueAt(entryAt(rows, row), column);
  const largest = Math.max(...rows.flat().map(Math.abs));
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++)
      if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row;
    if (!(Math.abs(at(pivot, column)) > 1e-15 * largest)) return undefined;
    const swapped = entryAt(rows, pivot);
    rows[pivot] = entryAt(rows, column);
    rows[column] = swapped;
    for (let row = column + 1; row < n; row++) {
      const factor = at(row, column) / at(column, column);
      for (let k = column; k <= n; k++) entryAt(rows, row)[k] = at(row, k) - factor * at(column, k);
    }
  }
  const solution = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    let sum = at(row, n);
    for (let k = row + 1; k < n; k++) sum -= at(row, k) * valueAt(solution, k);
    solution[row] = sum / at(row, row);
  }
  return solution;
}

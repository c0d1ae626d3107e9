/** Small systems of linear equations: Gaussian elimination with row pivoting. */

/**
 * Solution x of A x = b for a square matrix by rows, or `undefined` where it is singular to working
 * precision. Neither argument is changed.
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, index) => [...row, right[index] as number]);
  const at = (row: number, column: number): number => (rows[row] as number[])[column] as number;
  const largest = Math.max(...rows.flat().map(Math.abs));
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++)
      if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row;
    if (!(Math.abs(at(pivot, column)) > 1e-15 * largest)) return undefined;
    const swapped = rows[pivot] as number[];
    rows[pivot] = rows[column] as number[];
    rows[column] = swapped;
    for (let row = column + 1; row < n; row++) {
      const factor = at(row, column) / at(column, column);
      for (let k = column; k <= n; k++)
        (rows[row] as number[])[k] = at(row, k) - factor * at(column, k);
    }
  }
  const solution = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    let sum = at(row, n);
    for (let k = row + 1; k < n; k++) sum -= at(row, k) * (solution[k] as number);
    solution[row] = sum / at(row, row);
  }
  return solution;
}

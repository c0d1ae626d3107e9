/** Small positive definite systems, for the few quantities of a lobe. */

import { denseAt } from '../../numeric/columns.js';

/** A symmetric positive definite matrix as the product of a lower triangle and its transpose, scaled to a unit diagonal. */
export interface DefiniteFactor {
  readonly size: number;
  readonly factor: Float64Array;
  readonly scale: Float64Array;
}

/**
 * Cholesky factor of a matrix kept row by row (its lower triangle counts); `undefined` where it is not definite to working
 * precision.
 *
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, section 4.2.
 */
export function definiteFactor(matrix: Float64Array, size: number): DefiniteFactor | undefined {
  // Scaled to a unit diagonal, so that the test of definiteness has no unit.
  const scale = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const square = denseAt(matrix, i * size + i);
    if (!(square > 0)) return undefined;
    scale[i] = 1 / Math.sqrt(square);
  }
  const factor = new Float64Array(size * size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j <= i; j++) {
      let sum = denseAt(matrix, i * size + j) * denseAt(scale, i) * denseAt(scale, j);
      for (let k = 0; k < j; k++)
        sum -= denseAt(factor, i * size + k) * denseAt(factor, j * size + k);
      if (i === j) {
        if (!(sum > 1e-13)) return undefined;
        factor[i * size + i] = Math.sqrt(sum);
      } else factor[i * size + j] = sum / denseAt(factor, j * size + j);
    }
  return { size, factor, scale };
}

/** Solution of the equations with that matrix. */
export function definiteSolution(
  { size, factor, scale }: DefiniteFactor,
  right: Float64Array,
): Float64Array {
  const solution = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = denseAt(right, i) * denseAt(scale, i);
    for (let k = 0; k < i; k++) sum -= denseAt(factor, i * size + k) * denseAt(solution, k);
    solution[i] = sum / denseAt(factor, i * size + i);
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = denseAt(solution, i);
    for (let k = i + 1; k < size; k++) sum -= denseAt(factor, k * size + i) * denseAt(solution, k);
    solution[i] = sum / denseAt(factor, i * size + i);
  }
  for (let i = 0; i < size; i++) solution[i] = denseAt(solution, i) * denseAt(scale, i);
  return solution;
}

/** Inverse of that matrix, row by row. */
export function definiteInverse(of: DefiniteFactor): Float64Array {
  const { size } = of;
  const inverse = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const unit = new Float64Array(size);
    unit[j] = 1;
    inverse.set(definiteSolution(of, unit), j * size);
  }
  return inverse;
}

/** Natural logarithm of its determinant. */
export function logDeterminant({ size, factor, scale }: DefiniteFactor): number {
  let sum = 0;
  for (let i = 0; i < size; i++)
    sum += 2 * Math.log(denseAt(factor, i * size + i) / denseAt(scale, i));
  return sum;
}

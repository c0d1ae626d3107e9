/** Small dense weighted least squares by orthogonal columns (Golub and Van Loan, Matrix Computations, ch. 5). */

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
  const n = values.length;
  const p = columns.length;
  const q = columns.map((column) => {
    const scaled = new Float64Array(n);
    for (let i = 0; i < n; i++)
      scaled[i] = (column[i] as number) * (weights ? Math.sqrt(weights[i] as number) : 1);
    return scaled;
  });
  let rows = 0;
  for (let i = 0; i < n; i++) if (!weights || (weights[i] as number) > 0) rows++;
  if (rows < p) return undefined;
  // Modified Gram-Schmidt with one re-orthogonalisation: as stable as reflections for so few columns.
  const r: number[][] = columns.map(() => new Array<number>(p).fill(0));
  for (let j = 0; j < p; j++) {
    const current = q[j] as Float64Array;
    const before = Math.sqrt(dot(current, current));
    for (let pass = 0; pass < 2; pass++)
      for (let i = 0; i < j; i++) {
        const other = q[i] as Float64Array;
        const share = dot(other, current);
        (r[i] as number[])[j] = (r[i]?.[j] as number) + share;
        for (let k = 0; k < n; k++)
          current[k] = (current[k] as number) - share * (other[k] as number);
      }
    const length = Math.sqrt(dot(current, current));
    if (!(length > RANK_TOLERANCE * before)) return undefined;
    (r[j] as number[])[j] = length;
    for (let k = 0; k < n; k++) current[k] = (current[k] as number) / length;
  }
  return solved(columns, values, weights, q, r, rows);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function solved(
  columns: readonly ArrayLike<number>[],
  values: ArrayLike<number>,
  weights: ArrayLike<number> | undefined,
  q: readonly Float64Array[],
  r: readonly number[][],
  rows: number,
): LinearFit {
  const n = values.length;
  const p = columns.length;
  const at = (i: number, j: number) => r[i]?.[j] as number;
  const target = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    target[i] = (values[i] as number) * (weights ? Math.sqrt(weights[i] as number) : 1);
  }
  const coefficients = q.map((column) => dot(column, target));
  const inverse = r.map(() => new Array<number>(p).fill(0));
  for (let j = p - 1; j >= 0; j--) {
    let sum = coefficients[j] as number;
    for (let k = j + 1; k < p; k++) sum -= at(j, k) * (coefficients[k] as number);
    coefficients[j] = sum / at(j, j);
    for (let column = j; column < p; column++) {
      let entry = column === j ? 1 : 0;
      for (let k = j + 1; k <= column; k++) entry -= at(j, k) * (inverse[k]?.[column] as number);
      (inverse[j] as number[])[column] = entry / at(j, j);
    }
  }
  const covariance = inverse.map((a) =>
    inverse.map((b) => a.reduce((sum, entry, k) => sum + entry * (b[k] as number), 0)),
  );
  const residuals = new Float64Array(n);
  const fittedVariances = new Float64Array(n);
  let sumOfSquares = 0;
  for (let i = 0; i < n; i++) {
    let fitted = 0;
    for (let j = 0; j < p; j++)
      fitted += (coefficients[j] as number) * ((columns[j] as ArrayLike<number>)[i] as number);
    const residual = (values[i] as number) - fitted;
    residuals[i] = residual;
    let variance = 0;
    for (let k = 0; k < p; k++) {
      let entry = 0;
      for (let j = 0; j <= k; j++)
        entry += ((columns[j] as ArrayLike<number>)[i] as number) * (inverse[j]?.[k] as number);
      variance += entry * entry;
    }
    fittedVariances[i] = variance;
    sumOfSquares += (weights ? (weights[i] as number) : 1) * residual * residual;
  }
  return {
    coefficients,
    covariance,
    residuals,
    fittedVariances,
    sumOfSquares,
    degreesOfFreedom: rows - p,
  };
}

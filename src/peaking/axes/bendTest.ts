/** Whether the second order of a fitted surface is more than chance. */

import { fExceedance } from '../../numeric/beta.js';

/** Probability that the three second-order terms come out as large by chance (F test). */
export function bendProbability(
  coefficients: readonly number[],
  covariance: readonly (readonly number[])[],
  standardDeviationDb: number,
  degreesOfFreedom: number,
): number {
  if (standardDeviationDb === 0) return 0;
  const rows = [3, 4, 5].map((i) => [3, 4, 5].map((j) => covariance[i]?.[j] ?? 0));
  const wanted = [3, 4, 5].map((i) => coefficients[i] ?? 0);
  // beta' V^-1 beta by least squares on the factor of V would do; three by three is quicker directly.
  const [[m00 = 0, m01 = 0, m02 = 0] = [], [, m11 = 0, m12 = 0] = [], [, , m22 = 0] = []] = rows;
  const c00 = m11 * m22 - m12 * m12;
  const c01 = m02 * m12 - m01 * m22;
  const c02 = m01 * m12 - m02 * m11;
  const determinant = m00 * c00 + m01 * c01 + m02 * c02;
  const c11 = m00 * m22 - m02 * m02;
  const c12 = m01 * m02 - m00 * m12;
  const c22 = m00 * m11 - m01 * m01;
  const [b0 = 0, b1 = 0, b2 = 0] = wanted;
  const square =
    (b0 * b0 * c00 +
      b1 * b1 * c11 +
      b2 * b2 * c22 +
      2 * (b0 * b1 * c01 + b0 * b2 * c02 + b1 * b2 * c12)) /
    determinant;
  return fExceedance(
    Math.min(1e12, Math.max(0, square / (3 * standardDeviationDb * standardDeviationDb))),
    3,
    degreesOfFreedom,
  );
}

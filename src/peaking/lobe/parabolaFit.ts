/** Weighted parabola through samples by orthogonal polynomials: the quick way for a plain lobe. */

import { denseAt } from '../../numeric/columns.js';
import type { LobeDesign, LobeEstimate } from './lobeDesign.js';

/** Smallest share of a polynomial's length left after orthogonalisation that still counts as independent. */
const RANK_TOLERANCE = 1e-18;

/**
 * Least squares parabola a + b u + c u^2, or a + b u where the bend is known; neither drift nor floor.
 *
 * The polynomials 1, u - mean and (u - mean)^2 - skew (u - mean) - variance are orthogonal on the samples,
 * so each coefficient and its variance comes from one sum (G. E. Forsythe, J. SIAM 5, 1957).
 */
export function fitParabola(
  { places, levels, bend }: LobeDesign,
  weights?: Float64Array,
): LobeEstimate | undefined {
  const n = places.length;
  let s0 = 0;
  let mean = 0;
  let level = 0;
  let rows = 0;
  const known = bend ?? 0;
  for (let i = 0; i < n; i++) {
    const w = weights === undefined ? 1 : denseAt(weights, i);
    const u = denseAt(places, i);
    if (w > 0) rows++;
    s0 += w;
    mean += w * u;
    level += w * (denseAt(levels, i) - known * u * u);
  }
  mean /= s0;
  level /= s0;
  let s1 = 0;
  let cube = 0;
  let slope = 0;
  for (let i = 0; i < n; i++) {
    const w = weights === undefined ? 1 : denseAt(weights, i);
    const u = denseAt(places, i);
    const d = u - mean;
    s1 += w * d * d;
    cube += w * d * d * d;
    slope += w * d * (denseAt(levels, i) - known * u * u);
  }
  const fitted = bend === undefined ? 3 : 2;
  if (rows < fitted || !(s1 > RANK_TOLERANCE * s0)) return undefined;
  slope /= s1;
  const variance = s1 / s0;
  const skew = cube / s1;
  let s2 = 0;
  let c = 0;
  if (bend === undefined) {
    for (let i = 0; i < n; i++) {
      const w = weights === undefined ? 1 : denseAt(weights, i);
      const d = denseAt(places, i) - mean;
      const second = d * d - skew * d - variance;
      s2 += w * second * second;
      c += w * second * denseAt(levels, i);
    }
    if (!(s2 > RANK_TOLERANCE * s1)) return undefined;
    c /= s2;
  }
  const inverse2 = bend === undefined ? 1 / s2 : 0;
  // Back to powers of u: b = slope - lean c, a = level - mean slope + lift c.
  const lean = 2 * mean + skew;
  const lift = mean * mean + skew * mean - variance;
  const a = level - mean * slope + lift * c;
  const b = slope - lean * c;
  const residuals = new Float64Array(n);
  let sumOfSquares = 0;
  for (let i = 0; i < n; i++) {
    const u = denseAt(places, i);
    const d = u - mean;
    const second = d * d - skew * d - variance;
    const residual = denseAt(levels, i) - known * u * u - level - slope * d - c * second;
    residuals[i] = residual;
    sumOfSquares += (weights === undefined ? 1 : denseAt(weights, i)) * residual * residual;
  }
  return {
    a,
    b,
    c: bend ?? c,
    drift: 0,
    floorDb: undefined,
    covariance: powerCovariance({ s0, s1, inverse2, mean, lean, lift }),
    residuals,
    sumOfSquares,
    degreesOfFreedom: rows - fitted,
  };
}

/** Covariance of a, b and c for unit scatter: from the lengths of the polynomials, brought back to powers of u. */
function powerCovariance(sums: {
  readonly s0: number;
  readonly s1: number;
  readonly inverse2: number;
  readonly mean: number;
  readonly lean: number;
  readonly lift: number;
}): LobeEstimate['covariance'] {
  const { s0, s1, inverse2, mean, lean, lift } = sums;
  const ab = -mean / s1 - lift * lean * inverse2;
  const ac = lift * inverse2;
  const bc = -lean * inverse2;
  return [
    [1 / s0 + (mean * mean) / s1 + lift * lift * inverse2, ab, ac],
    [ab, 1 / s1 + lean * lean * inverse2, bc],
    [ac, bc, inverse2],
  ];
}

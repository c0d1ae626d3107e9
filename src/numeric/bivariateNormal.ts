/**
 * Joint exceedance of two correlated standard normal values.
 *
 * From Plackett's identity, d/dr P = the bivariate density: P(h, k; r) = Q(h) Q(k) + (1 / 2 pi) times the
 * integral over t from 0 to asin r of exp(-(h^2 + k^2 - 2 h k sin t) / (2 cos^2 t)). Gauss-Legendre on panels
 * that halve towards the quarter turn, where the integrand bends most, holds 1e-14 up to full correlation.
 */

import { normalExceedance } from './normal.js';

/** Abscissas above zero and weights of the 20-point Gauss-Legendre rule on [-1, 1]. */
const NODES: readonly (readonly [x: number, weight: number])[] = [
  [0.07652652113349734, 0.15275338713072628],
  [0.22778585114164507, 0.14917298647260424],
  [0.37370608871541955, 0.1420961093183824],
  [0.5108670019508271, 0.1316886384491769],
  [0.636053680726515, 0.1181945319615186],
  [0.7463319064601508, 0.1019301198172407],
  [0.8391169718222188, 0.08327674157670471],
  [0.912234428251326, 0.06267204833410879],
  [0.9639719272779138, 0.040601429800386446],
  [0.993128599185095, 0.017614007139150893],
];

/** Probability that both of two standard normal values of correlation `correlation` exceed `h` and `k`. */
export function bivariateNormalExceedance(h: number, k: number, correlation: number): number {
  const independent = normalExceedance(h) * normalExceedance(k);
  if (correlation >= 1) return normalExceedance(Math.max(h, k));
  if (correlation <= -1) return Math.max(0, normalExceedance(h) - normalExceedance(-k));
  // Angles counted down from the quarter turn, where cos t = sin u; one side of zero by symmetry.
  const side = Math.sign(correlation);
  const last = Math.acos(Math.abs(correlation));
  const product = side * h * k;
  const squares = (h * h + k * k) / 2;
  let sum = 0;
  let from = Math.PI / 2;
  for (let panel = 0; panel < 64 && from > last; panel++) {
    const to = Math.max(last, from / 2);
    const half = (from - to) / 2;
    const middle = (from + to) / 2;
    for (const [x, weight] of NODES)
      for (const u of [middle - half * x, middle + half * x]) {
        const sine = Math.sin(u);
        // (squares - product cos u) / sin^2 u without loss where u is small.
        const exponent = (squares - product) / (sine * sine) + product / (1 + Math.cos(u));
        sum += half * weight * Math.exp(-exponent);
      }
    from = to;
  }
  return Math.max(0, independent + (side * sum) / (2 * Math.PI));
}

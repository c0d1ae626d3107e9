/** Logarithm of the gamma function and the regularised incomplete beta function. */

import { inRange, positive } from '../errors.js';

/** Natural logarithm of Gamma(x), x above 0: Stirling's series after a shift to 12 or more; about 1e-14. */
export function logGamma(x: number): number {
  let shifted = positive('x', x);
  let product = 1;
  for (; shifted < 12; shifted += 1) product *= shifted;
  const r = 1 / (shifted * shifted);
  const series =
    (1 / 12 -
      r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r * (1 / 1188 - (r * 691) / 360360))))) /
    shifted;
  return (
    (shifted - 0.5) * Math.log(shifted) -
    shifted +
    0.5 * Math.log(2 * Math.PI) +
    series -
    Math.log(product)
  );
}

/** Continued fraction of the incomplete beta function I_x(a, b), by Lentz's method; at most 500 steps. */
export function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const guard = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / guard(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guard(1 + even * d);
    c = guard(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guard(1 + odd * d);
    c = guard(1 + odd / c);
    const change = d * c;
    fraction *= change;
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return fraction;
}

/**
 * Regularised incomplete beta function I_x(a, b): x from 0 to 1, a and b above 0 and up to 1e4; about 1e-12.
 *
 * Source: Abramowitz and Stegun 26.5.8, with the symmetry 26.5.2.
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  inRange('x', x, 0, 1);
  inRange('a', positive('a', a), 0, 1e4);
  inRange('b', positive('b', b), 0, 1e4);
  if (x === 0 || x === 1) return x;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Probability that F with the given degrees of freedom (1 to 20000) exceeds `f` of 0 or more. */
export function fExceedance(
  f: number,
  numeratorDegreesOfFreedom: number,
  denominatorDegreesOfFreedom: number,
): number {
  inRange('f', f, 0, Number.MAX_VALUE);
  const above = inRange('numeratorDegreesOfFreedom', numeratorDegreesOfFreedom, 1, 2e4);
  const below = inRange('denominatorDegreesOfFreedom', denominatorDegreesOfFreedom, 1, 2e4);
  return incompleteBeta(below / (below + above * f), below / 2, above / 2);
}

/**
 * Student's t distribution: probability, quantile and coverage factor, for any degrees of freedom from 1.
 *
 * The tail is an incomplete beta function, summed as a continued fraction (Abramowitz and Stegun 26.5.8);
 * above 50,000 degrees of freedom it is brought to the normal distribution by G. W. Hill's expansion
 * (Comm. ACM 13, 1970, algorithms 395 and 396). Both to about 1e-13 relative.
 */

import { inRange } from '../errors.js';
import { betaFraction } from './beta.js';
import { normalExceedance, normalQuantile } from './normal.js';

/** Above this the normal distribution with Hill's correction is exact to the last digits. */
const NEARLY_NORMAL = 50_000;

/** Gamma(a + 1/2) / (Gamma(a) sqrt(pi)) for a > 0: Stirling's series, reached by the recurrence. */
function halfStepRatio(a: number): number {
  let factor = 1 / Math.sqrt(Math.PI);
  let b = a;
  for (; b < 16; b += 1) factor *= b / (b + 0.5);
  const r = 1 / (b * b);
  const series =
    (-1 / 8 + r * (1 / 192 + r * (-1 / 640 + r * (17 / 14336 - (r * 31) / 18432)))) / b;
  return factor * Math.sqrt(b) * Math.exp(series);
}

/** Probability that |T| exceeds t, for t of 0 or more. */
function twoTails(t: number, nu: number): number {
  if (t === 0) return 1;
  if (nu > NEARLY_NORMAL) return 2 * normalExceedance(asNormal(t, nu));
  const a = nu / 2;
  const ratio = (t * t) / nu;
  // x^a (1 - x)^(1/2) / B(a, 1/2) with x = 1 / (1 + t^2/nu), kept exact for large nu.
  const front = halfStepRatio(a) * Math.exp(-a * Math.log1p(ratio));
  const oneMinusX = Math.sqrt(ratio / (1 + ratio));
  return ratio > 1.5 / (a + 1)
    ? (front * oneMinusX * betaFraction(1 / (1 + ratio), a, 0.5)) / a
    : 1 - 2 * front * oneMinusX * betaFraction(ratio / (1 + ratio), 0.5, a);
}

/** Standard normal value with the same tail as `t`. */
function asNormal(t: number, nu: number): number {
  if (nu === Number.POSITIVE_INFINITY) return t;
  const a = nu - 0.5;
  const b = 48 * a * a;
  const square = a * Math.log1p((t * t) / nu);
  const z = Math.sqrt(square);
  const fourth = square * square;
  return (
    z +
    (z * (square + 3)) / b -
    (z * (4 * fourth * square + 33 * fourth + 240 * square + 855)) /
      (10 * b * (b + 0.8 * fourth + 100))
  );
}

/** Probability density of Student's t. */
function density(t: number, nu: number): number {
  if (nu === Number.POSITIVE_INFINITY) return Math.exp((-t * t) / 2) / Math.sqrt(2 * Math.PI);
  return (
    (halfStepRatio(nu / 2) / Math.sqrt(nu)) * Math.exp(-0.5 * (nu + 1) * Math.log1p((t * t) / nu))
  );
}

/**
 * Probability that Student's t with `degreesOfFreedom` exceeds `t`; exact far into the upper tail.
 *
 * @param degreesOfFreedom  1 or more, not necessarily whole; Infinity gives the normal distribution.
 */
export function studentExceedance(t: number, degreesOfFreedom: number): number {
  const nu = inRange('degreesOfFreedom', degreesOfFreedom, 1, Number.POSITIVE_INFINITY);
  const tails = 0.5 * twoTails(Math.abs(t), nu);
  return t < 0 ? 1 - tails : tails;
}

/** Probability that Student's t with `degreesOfFreedom` (1 or more, or Infinity) is below `t`. */
export function studentProbability(t: number, degreesOfFreedom: number): number {
  return studentExceedance(-t, degreesOfFreedom);
}

/** Value of 0 or more that T exceeds with probability `tail`, which lies above 0 and up to 0.5. */
function upperQuantile(tail: number, nu: number): number {
  if (tail === 0.5) return 0;
  if (nu === Number.POSITIVE_INFINITY) return -normalQuantile(tail);
  if (nu === 1) return 1 / Math.tan(Math.PI * tail);
  if (nu === 2) return (1 - 2 * tail) / Math.sqrt(2 * tail * (1 - tail));
  let t = -normalQuantile(tail);
  for (let step = 0; step < 60; step++) {
    const exceedance = 0.5 * twoTails(t, nu);
    const slope = density(t, nu);
    // Far out the tail is nearly a power of t, so the logarithms are nearly on a line.
    const next =
      tail > 0.1
        ? t + (exceedance - tail) / slope
        : t * Math.exp((Math.log(exceedance / tail) * exceedance) / (t * slope));
    const done = Math.abs(next - t) <= 4e-16 * t;
    t = next;
    if (done) break;
  }
  return t;
}

/**
 * Value that Student's t with `degreesOfFreedom` falls below with `probability`.
 *
 * @param probability  Strictly between 0 and 1 (from 1e-300 to 1 - 1e-16).
 * @param degreesOfFreedom  1 or more, not necessarily whole; Infinity gives the normal quantile.
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  const p = inRange('probability', probability, 1e-300, 1 - 1e-16);
  const nu = inRange('degreesOfFreedom', degreesOfFreedom, 1, Number.POSITIVE_INFINITY);
  return p <= 0.5 ? 0 - upperQuantile(p, nu) : upperQuantile(1 - p, nu);
}

/**
 * Coverage factor: the t that |T| stays below with probability `coverageRatio` (two-sided; 0.95 gives
 * 1.959964 for Infinity).
 */
export function studentCoverageFactor(coverageRatio: number, degreesOfFreedom: number): number {
  const coverage = inRange('coverageRatio', coverageRatio, 0, 1 - 1e-16);
  const nu = inRange('degreesOfFreedom', degreesOfFreedom, 1, Number.POSITIVE_INFINITY);
  return upperQuantile((1 - coverage) / 2, nu);
}

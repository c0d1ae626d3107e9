/** Chi-square distribution for whole degrees of freedom (Abramowitz and Stegun 26.4.4 and 26.4.5). */

import { inRange } from '../errors.js';
import { normalExceedance } from './normal.js';

/**
 * Probability that chi-square with `degreesOfFreedom` exceeds `x`: a finite sum, exact to about 1e-13.
 *
 * @param x  0 or more.
 * @param degreesOfFreedom  A whole number from 1 to 10000.
 */
export function chiSquareExceedance(x: number, degreesOfFreedom: number): number {
  const value = inRange('x', x, 0, Number.MAX_VALUE);
  const nu = Math.round(inRange('degreesOfFreedom', degreesOfFreedom, 1, 10_000));
  const odd = nu % 2 === 1;
  const root = Math.sqrt(value);
  // Each term is a Poisson-like weight; logarithms keep a large x from underflowing too early.
  let logTerm = odd
    ? Math.log(2 / Math.sqrt(2 * Math.PI)) + Math.log(root) - value / 2
    : -value / 2;
  let sum = odd ? 2 * normalExceedance(root) : 0;
  const terms = odd ? (nu - 1) / 2 : nu / 2;
  const logValue = Math.log(value);
  for (let k = 0; k < terms; k++) {
    sum += Math.exp(logTerm);
    logTerm += logValue - Math.log(odd ? 2 * k + 3 : 2 * k + 2);
  }
  return value === 0 ? 1 : Math.min(1, sum);
}

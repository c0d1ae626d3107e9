/**
 * The normal distribution: probability and quantile.
 *
 * Probability by W. J. Cody's rational approximations of erfc (Math. Comp. 23, 1969), quantile by
 * M. J. Wichura's AS 241 (Appl. Statist. 37, 1988): both to about 1e-15 relative.
 */

import { valueAt } from './columns.js';

const P1 = [
  3.1611237438705656, 113.864154151050156, 377.485237685302021, 3209.37758913846947,
  0.185777706184603153,
] as const;
const Q1 = [
  23.6012909523441209, 244.024637934444173, 1282.61652607737228, 2844.23683343917062,
] as const;
const P2 = [
  0.564188496988670089, 8.88314979438837594, 66.1191906371416295, 298.635138197400131,
  881.95222124176909, 1712.04761263407058, 2051.07837782607147, 1230.33935479799725,
  2.15311535474403846e-8,
] as const;
const Q2 = [
  15.7449261107098347, 117.693950891312499, 537.181101862009858, 1621.38957456669019,
  3290.79923573345963, 4362.61909014324716, 3439.36767414372164, 1230.33935480374942,
] as const;
const P3 = [
  0.305326634961232344, 0.360344899949804439, 0.125781726111229246, 0.0160837851487422766,
  0.000658749161529837803, 0.0163153871373020978,
] as const;
const Q3 = [
  2.56852019228982242, 1.87295284992346047, 0.527905102951428412, 0.0605183413124413191,
  0.00233520497626869185,
] as const;

/** Complementary error function for y of 0.46875 or more. */
function erfcTail(y: number): number {
  let ratio: number;
  if (y <= 4) {
    let numerator = P2[8] * y;
    let denominator = y;
    for (let i = 0; i < 7; i++) {
      numerator = (numerator + valueAt(P2, i)) * y;
      denominator = (denominator + valueAt(Q2, i)) * y;
    }
    ratio = (numerator + P2[7]) / (denominator + Q2[7]);
  } else {
    const square = 1 / (y * y);
    let numerator = P3[5] * square;
    let denominator = square;
    for (let i = 0; i < 4; i++) {
      numerator = (numerator + valueAt(P3, i)) * square;
      denominator = (denominator + valueAt(Q3, i)) * square;
    }
    ratio = (1 / Math.sqrt(Math.PI) - (square * (numerator + P3[4])) / (denominator + Q3[4])) / y;
  }
  // exp(-y^2) in two factors, so that the square keeps its low digits.
  const high = Math.trunc(y * 16) / 16;
  return Math.exp(-high * high) * Math.exp(-(y - high) * (y + high)) * ratio;
}

/** Complementary error function, 2/sqrt(pi) times the integral of exp(-t^2) from x up. */
function erfc(x: number): number {
  const y = Math.abs(x);
  if (y <= 0.46875) {
    const square = y * y;
    let numerator = P1[4] * square;
    let denominator = square;
    for (let i = 0; i < 3; i++) {
      numerator = (numerator + valueAt(P1, i)) * square;
      denominator = (denominator + valueAt(Q1, i)) * square;
    }
    return 1 - (x * (numerator + P1[3])) / (denominator + Q1[3]);
  }
  const tail = erfcTail(y);
  return x < 0 ? 2 - tail : tail;
}

/** Probability that a standard normal value is below `z`. */
export function normalProbability(z: number): number {
  return 0.5 * erfc(-z * Math.SQRT1_2);
}

/** Probability that a standard normal value exceeds `z` (the Q function), exact far into the tail. */
export function normalExceedance(z: number): number {
  return 0.5 * erfc(z * Math.SQRT1_2);
}

const A = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
  45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
] as const;
const B = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
  39307.89580009271061, 28729.085735721942674, 5226.495278852854561,
] as const;
const C = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833,
  7.7454501427834140764e-4,
] as const;
const D = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
] as const;
const E = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
  0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5,
  2.01033439929228813265e-7,
] as const;
const F = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525,
  7.868691311456132591e-4, 1.8463183175100546818e-5, 1.4215117583164458887e-7,
  2.04426310338993978564e-15,
] as const;

function quotient(top: readonly number[], bottom: readonly number[], r: number): number {
  let numerator = 0;
  let denominator = 0;
  for (let i = 7; i >= 0; i--) {
    numerator = numerator * r + valueAt(top, i);
    denominator = denominator * r + valueAt(bottom, i);
  }
  return numerator / denominator;
}

/** Value that a standard normal falls below with `probability`, which must lie strictly between 0 and 1. */
export function normalQuantile(probability: number): number {
  const q = probability - 0.5;
  if (Math.abs(q) <= 0.425) return q * quotient(A, B, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? probability : 1 - probability));
  const z = r <= 5 ? quotient(C, D, r - 1.6) : quotient(E, F, r - 5);
  return q < 0 ? -z : z;
}

/** Value that a standard normal exceeds with `probability` (inverse Q function), exact for tiny ones. */
export function normalExceedanceQuantile(probability: number): number {
  return -normalQuantile(probability);
}

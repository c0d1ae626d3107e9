/** Bessel functions of the first kind and whole order, for the patterns of round apertures. */

const INTERVALS = 40;

/**
 * J of a whole `order` from 0 to 6 at `x` of 0 or more, to about 1e-15 absolute.
 *
 * Up to 25 by the trapezoidal rule on Bessel's integral, which converges exponentially (F. W. J. Olver and others, NIST
 * Handbook of Mathematical Functions, 10.9.2 and 3.5(i)); beyond by Hankel's expansion (10.17.3).
 */
export function besselJ(order: number, x: number): number {
  if (x > 25) return hankel(order, x);
  let sum = 0.5 * (1 + (order % 2 === 0 ? 1 : -1));
  for (let i = 1; i < INTERVALS; i++) {
    const angle = (Math.PI * i) / INTERVALS;
    sum += Math.cos(order * angle - x * Math.sin(angle));
  }
  return sum / INTERVALS;
}

function hankel(order: number, x: number): number {
  const mu = 4 * order * order;
  let even = 1;
  let odd = 0;
  let term = 1;
  for (let k = 1; k <= 20; k++) {
    const next = (term * (mu - (2 * k - 1) ** 2)) / (k * 8 * x);
    if (Math.abs(next) > Math.abs(term) && k > order) break;
    term = next;
    // Signs go + + - - over the even and odd terms.
    if (k % 2 === 1) odd += k % 4 === 1 ? term : -term;
    else even += k % 4 === 0 ? term : -term;
  }
  const phase = x - (order / 2 + 0.25) * Math.PI;
  return Math.sqrt(2 / (Math.PI * x)) * (even * Math.cos(phase) - odd * Math.sin(phase));
}

/** The normalised m! (2 / x)^m J_m(x) of a whole order 1 to 4: 1 at the origin, even in x. */
export function lambdaFunction(order: number, x: number): number {
  const size = Math.abs(x);
  if (size < 3) {
    // The power series: 1 - (x/2)^2 / (1 (m + 1)) + ...; its terms stay below 1 in size here.
    const square = (size * size) / 4;
    let term = 1;
    let sum = 1;
    for (let k = 1; k <= 20; k++) {
      term *= -square / (k * (order + k));
      sum += term;
    }
    return sum;
  }
  let factor = 1;
  for (let m = 1; m <= order; m++) factor *= (2 * m) / size;
  return factor * besselJ(order, size);
}

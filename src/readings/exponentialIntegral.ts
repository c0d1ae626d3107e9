/** The exponential integral E1, which the average of a logarithm of power needs. */

const EULER = 0.5772156649015329;

/**
 * E1(x), the integral of exp(-t) / t from x to infinity, for x above 0.
 *
 * Series below 1, continued fraction (Lentz) above. Source: Abramowitz and Stegun (1964), 5.1.11 and 5.1.22.
 * Accuracy: 1e-14 relative.
 */
export function exponentialIntegral(x: number): number {
  if (x > 700) return 0;
  if (x <= 1) {
    let sum = -EULER - Math.log(x);
    let power = 1;
    for (let n = 1; n <= 30; n += 1) {
      power *= -x / n;
      sum -= power / n;
    }
    return sum;
  }
  let b = x + 1;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n <= 200; n += 1) {
    const a = -n * n;
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return value * Math.exp(-x);
}

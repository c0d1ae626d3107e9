/** A bracketed root: Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4). */

/**
 * Zero of a continuous function between two points at which its signs differ.
 *
 * Bounded: at most 200 evaluations. Returns `undefined` when the ends do not bracket a zero.
 */
export function bracketedRoot(
  f: (x: number) => number,
  bracket: { readonly from: number; readonly to: number; readonly tolerance?: number },
): number | undefined {
  let a = bracket.from;
  let b = bracket.to;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return undefined;
  let c = a;
  let fc = fa;
  let step = b - a;
  let previous = step;
  for (let evaluation = 0; evaluation < 200; evaluation++) {
    if (fb * fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previous = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b) + 0.5 * (bracket.tolerance ?? 0);
    const middle = 0.5 * (c - b);
    if (Math.abs(middle) <= tolerance || fb === 0) return b;
    if (Math.abs(previous) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      step = middle;
      previous = middle;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * middle * s;
        q = 1 - s;
      } else {
        const u = fa / fc;
        const v = fb / fc;
        p = s * (2 * middle * u * (u - v) - (b - a) * (v - 1));
        q = (u - 1) * (v - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * middle * q - Math.abs(tolerance * q), Math.abs(previous * q))) {
        previous = step;
        step = p / q;
      } else {
        step = middle;
        previous = middle;
      }
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > tolerance ? step : Math.sign(middle) * tolerance;
    fb = f(b);
  }
  return b;
}

/** The minimum of a function of one variable: golden section with parabolic steps (Brent 1973, ch. 5). */

/**
 * Place of a minimum of `f` between `from` and `to`; the global one if `f` has a single minimum there.
 * Bounded: at most 200 evaluations.
 */
export function minimumBetween(
  f: (x: number) => number,
  interval: { readonly from: number; readonly to: number; readonly tolerance?: number },
): { readonly at: number; readonly value: number } {
  const golden = 0.5 * (3 - Math.sqrt(5));
  let low = Math.min(interval.from, interval.to);
  let high = Math.max(interval.from, interval.to);
  let x = low + golden * (high - low);
  let w = x;
  let v = x;
  let fx = f(x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let previous = 0;
  for (let evaluation = 0; evaluation < 200; evaluation++) {
    const middle = 0.5 * (low + high);
    const tolerance = 1.5e-8 * Math.abs(x) + (interval.tolerance ?? 1e-12) / 3;
    if (Math.abs(x - middle) <= 2 * tolerance - 0.5 * (high - low)) break;
    let parabolic = false;
    if (Math.abs(previous) > tolerance) {
      const r = (x - w) * (fx - fv);
      let q = (x - v) * (fx - fw);
      let p = (x - v) * q - (x - w) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      else q = -q;
      if (Math.abs(p) < Math.abs(0.5 * q * previous) && p > q * (low - x) && p < q * (high - x)) {
        previous = step;
        step = p / q;
        const trial = x + step;
        if (trial - low < 2 * tolerance || high - trial < 2 * tolerance)
          step = x < middle ? tolerance : -tolerance;
        parabolic = true;
      }
    }
    if (!parabolic) {
      previous = x < middle ? high - x : low - x;
      step = golden * previous;
    }
    const u = x + (Math.abs(step) >= tolerance ? step : step > 0 ? tolerance : -tolerance);
    const fu = f(u);
    if (fu <= fx) {
      if (u < x) high = x;
      else low = x;
      [v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu];
    } else {
      if (u < x) low = u;
      else high = u;
      if (fu <= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu];
      else if (fu <= fv || v === x || v === w) [v, fv] = [u, fu];
    }
  }
  return { at: x, value: fx };
}

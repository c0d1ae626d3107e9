/** How much a third and a fourth order would take from the residuals of a lobe. */

import { denseAt } from '../../numeric/columns.js';

/** Sums of squares of the residuals, by what explains them. */
export interface HigherOrders {
  /** Explained by the third and fourth order together. */
  readonly gain: number;
  /** Left when second, third and fourth order are free. */
  readonly left: number;
}

/**
 * Projects residuals on orthogonal polynomials of the samples' places, made by their three-term recurrence
 * (G. E. Forsythe, J. SIAM 5, 1957); `undefined` where the places do not carry a fourth order.
 *
 * @param weights  1 for each sample that counts, 0 for others.
 */
export function higherOrders(
  places: Float64Array,
  residuals: Float64Array,
  weights: Float64Array,
): HigherOrders | undefined {
  const n = places.length;
  let previous = new Float64Array(n);
  let current = new Float64Array(n).fill(1);
  const rest = Float64Array.from(residuals);
  let before = 1;
  let gain = 0;
  for (let order = 0; order <= 4; order++) {
    let norm = 0;
    let shift = 0;
    let share = 0;
    for (let i = 0; i < n; i++) {
      const weighted = denseAt(weights, i) * denseAt(current, i);
      const square = weighted * denseAt(current, i);
      norm += square;
      shift += square * denseAt(places, i);
      share += weighted * denseAt(rest, i);
    }
    if (!(norm > 1e-18 * before)) return undefined;
    share /= norm;
    shift /= norm;
    if (order > 2) gain += share * share * norm;
    const next = new Float64Array(n);
    const back = order === 0 ? 0 : norm / before;
    for (let i = 0; i < n; i++) {
      const here = denseAt(current, i);
      rest[i] = denseAt(rest, i) - share * here;
      next[i] = (denseAt(places, i) - shift) * here - back * denseAt(previous, i);
    }
    before = norm;
    previous = current;
    current = next;
  }
  let left = 0;
  for (let i = 0; i < n; i++) left += denseAt(weights, i) * denseAt(rest, i) ** 2;
  return { gain, left };
}

/** A start for a trimmed fit: the lobe through a few samples that most others lie close to. */

import { denseAt, valueAt } from '../../numeric/columns.js';
import type { LobeDesign } from '../lobe/lobeDesign.js';

/** Most lobes tried. */
const TRIALS = 64;

/**
 * Residuals of all samples from the best of up to 64 lobes, each through two (width known) or three
 * samples, one from each equal share of the sorted places; drift and noise floor left aside. Best is the
 * smallest sum of the `kept` smallest squares. `undefined` where no lobe can be drawn.
 */
export function bestTrimmed(design: LobeDesign, kept: number): Float64Array | undefined {
  const { places, levels, bend } = design;
  const n = places.length;
  const sorted = Array.from({ length: n }, (_, i) => i).sort(
    (i, j) => denseAt(places, i) - denseAt(places, j),
  );
  const size = bend === undefined ? 3 : 2;
  const cuts = [0, Math.floor(n / size), Math.floor((2 * n) / size), n];
  const lengths = [0, 1, 2].map((s) => (s < size ? valueAt(cuts, s + 1) - valueAt(cuts, s) : 1));
  const [first = 1, second = 1, third = 1] = lengths;
  const count = first * second * third;
  const stride = Math.max(1, count / TRIALS);
  const trial = new Float64Array(n);
  const squares = new Float64Array(n);
  let best: Float64Array | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step < count; step += stride) {
    const index = Math.floor(step);
    const i = valueAt(sorted, index % first);
    const j = valueAt(sorted, first + (Math.floor(index / first) % second));
    const k = valueAt(sorted, n - 1 - Math.floor(index / (first * second)));
    if (!residualsThrough(places, levels, bend, [i, j, k], trial)) continue;
    const sum = smallestSquares(trial, kept, least, squares);
    if (sum < least) {
      least = sum;
      best = trial.slice();
    }
  }
  return best;
}

/** Fills `out` with the residuals from the lobe through the picked samples; false where it is undetermined. */
function residualsThrough(
  places: Float64Array,
  levels: Float64Array,
  bend: number | undefined,
  [i, j, k]: readonly [number, number, number],
  out: Float64Array,
): boolean {
  const x0 = denseAt(places, i);
  const x1 = denseAt(places, j);
  const y0 = denseAt(levels, i);
  if (x1 - x0 < 1e-9) return false;
  const first = (denseAt(levels, j) - y0) / (x1 - x0);
  let c = bend;
  if (c === undefined) {
    const x2 = denseAt(places, k);
    if (x2 - x1 < 1e-9) return false;
    c = ((denseAt(levels, k) - denseAt(levels, j)) / (x2 - x1) - first) / (x2 - x0);
  }
  for (let m = 0; m < out.length; m++) {
    const x = denseAt(places, m);
    out[m] = denseAt(levels, m) - y0 - (x - x0) * (first + c * (x - x1));
  }
  return true;
}

/** Sum of the `kept` smallest squares, or Infinity as soon as it cannot be below `limit`. */
function smallestSquares(
  values: Float64Array,
  kept: number,
  limit: number,
  scratch: Float64Array,
): number {
  let within = 0;
  for (let i = 0; i < values.length; i++) {
    const square = denseAt(values, i) ** 2;
    scratch[i] = square;
    if (square < limit) within++;
  }
  if (within < kept) return Number.POSITIVE_INFINITY;
  scratch.sort();
  let sum = 0;
  for (let i = 0; i < kept; i++) sum += denseAt(scratch, i);
  return sum;
}

/** Which peaks agree with readings when rounding alone separates them from the lobe. */

import { valueAt } from '../../numeric/columns.js';

/** Readings on scaled places; each level stands for anything within half a step of it. */
export interface RoundedReadings {
  readonly places: readonly number[];
  readonly levels: readonly number[];
  readonly stepDb: number;
  /** Coefficient of the squared place where the width is known (below 0). */
  readonly bend: number | undefined;
}

/**
 * Interval of all peak places for which some lobe P - k (u - p)^2 passes within half a step of every
 * reading, searched from `start` out to `reach`; `undefined` where `start` itself is not among them.
 *
 * For a given p the readings bound k from both sides, pair by pair; the set of p is the image of a convex
 * set under a ratio of linear functions, hence an interval, and each end is found by halving.
 */
export function roundingInterval(
  readings: RoundedReadings,
  start: number,
  reach: number,
): { readonly from: number; readonly to: number } | undefined {
  if (!agrees(readings, start)) return undefined;
  const end = (sign: number): number => {
    let inside = start;
    let outside = sign * reach;
    if (agrees(readings, outside)) return outside;
    for (let halving = 0; halving < 40; halving++) {
      const middle = (inside + outside) / 2;
      if (agrees(readings, middle)) inside = middle;
      else outside = middle;
    }
    return outside;
  };
  return { from: end(-1), to: end(1) };
}

/** Whether some lobe with its peak at `p` rounds to the readings. */
function agrees({ places, levels, stepDb, bend }: RoundedReadings, p: number): boolean {
  let least = bend === undefined ? 0 : -bend;
  let most = bend === undefined ? Number.POSITIVE_INFINITY : -bend;
  const slack = 1e-9 * stepDb;
  for (let i = 0; i < places.length; i++)
    for (let j = 0; j < places.length; j++) {
      // low_i + k d_i <= high_j + k d_j
      const gap = valueAt(levels, i) - valueAt(levels, j) - stepDb - slack;
      const lever = (valueAt(places, j) - p) ** 2 - (valueAt(places, i) - p) ** 2;
      if (lever > 0) least = Math.max(least, gap / lever);
      else if (lever < 0) most = Math.min(most, gap / lever);
      else if (gap > 0) return false;
      if (least > most * (1 + 1e-12)) return false;
    }
  return true;
}

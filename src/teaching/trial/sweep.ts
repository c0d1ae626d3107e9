/** A grid over the region of a trial and the search for its worst place. */

import { valueAt } from '../../numeric/columns.js';
import type { FormulaValues } from '../formula/functions.js';
import type { FormulaVariable } from '../formula/subject.js';

/** A side of the region. */
export interface Side {
  readonly variable: FormulaVariable;
  readonly from: number;
  readonly to: number;
}

/** Steps per side by the number of varying sides: about five thousand places in all. */
const STEPS: readonly number[] = [0, 1001, 71, 17, 8];

/** Places along each side; a side of no width has one. */
export function gridOf(sides: readonly Side[]): readonly (readonly number[])[] {
  const varying = sides.filter(({ from, to }) => to > from).length;
  const steps = STEPS[varying] ?? 6;
  return sides.map(({ from, to }) =>
    to > from
      ? Array.from({ length: steps }, (_, i) => from + ((to - from) * i) / (steps - 1))
      : [from],
  );
}

/** Values by full name and by symbol. */
export function rowOf(sides: readonly Side[], place: readonly number[]): FormulaValues {
  const row: Record<string, number> = {};
  sides.forEach(({ variable }, index) => {
    row[variable.name] = valueAt(place, index);
    row[variable.symbol] = valueAt(place, index);
  });
  return row;
}

/** Calls `visit` at every place of the grid; the place array is used again for the next one. */
export function visitGrid(
  grid: readonly (readonly number[])[],
  visit: (place: number[], indices: readonly number[]) => void,
): void {
  const indices = grid.map(() => 0);
  const place = grid.map((side) => valueAt(side, 0));
  for (;;) {
    visit(place, indices);
    let side = grid.length - 1;
    for (; side >= 0; side--) {
      const list = grid[side] as readonly number[];
      const next = valueAt(indices, side) + 1;
      if (next < list.length) {
        indices[side] = next;
        place[side] = valueAt(list, next);
        break;
      }
      indices[side] = 0;
      place[side] = valueAt(list, 0);
    }
    if (side < 0) return;
  }
}

/** Held to the side; a hair from an end counts as the end. */
function snapped(value: number, from: number, to: number): number {
  const hair = 1e-6 * (to - from);
  return value <= from + hair ? from : value >= to - hair ? to : value;
}

/** Most steps of a climb that may help. */
const MOST_MOVES = 60;

/**
 * Climbs from a grid place to the highest place nearby, by steps along each side that are halved when none
 * helps. Bounded by the number of halvings.
 */
export function climb(
  sides: readonly Side[],
  start: readonly number[],
  height: (place: readonly number[]) => number,
  steps: readonly number[],
  mostHalvings: number,
): { readonly place: readonly number[]; readonly height: number } {
  const place = [...start];
  const step = [...steps];
  let best = height(place);
  let moves = 0;
  for (let halvings = 0; halvings < mostHalvings; ) {
    let moved = false;
    sides.forEach(({ from, to }, index) => {
      for (const sign of [1, -1]) {
        const old = valueAt(place, index);
        const tried = snapped(old + sign * valueAt(step, index), from, to);
        if (tried === old) continue;
        place[index] = tried;
        const here = height(place);
        if (here > best) {
          best = here;
          moved = true;
          return;
        }
        place[index] = old;
      }
    });
    // Along a ridge each step helps a little; a bounded walk is near enough to its top.
    if (moved && ++moves < MOST_MOVES) continue;
    for (let index = 0; index < step.length; index++) step[index] = valueAt(step, index) / 2;
    halvings++;
  }
  return { place, height: best };
}

/** The places of a trial: where the exact function has an answer, what it is, and which named parts they belong to. */

import { valueAt } from '../../numeric/columns.js';
import type { FormulaSubject } from '../formula/subject.js';
import { gridOf, rowOf, type Side, visitGrid } from './sweep.js';

/** All places of a grid that have an exact answer. */
export interface Places {
  /** Values along each side. */
  readonly grid: readonly (readonly number[])[];
  readonly count: number;
  /** Variables by full name and by symbol. */
  readonly columns: ReadonlyMap<string, Float64Array>;
  readonly exact: Float64Array;
  /** In the order of the subject's areas: 1 where a place belongs to it. */
  readonly areas: readonly Uint8Array[];
  /** Where on the grid each place is, and the place at each point of the grid; -1 for none. */
  readonly points: Int32Array;
  readonly placeAt: Int32Array;
  /** How far apart neighbours along each side are among the points. */
  readonly strides: readonly number[];
}

/** The places of a region. */
export function placesOf(subject: FormulaSubject, sides: readonly Side[]): Places {
  const grid = gridOf(sides);
  const total = grid.reduce((product, side) => product * side.length, 1);
  const columns = sides.map(() => new Float64Array(total));
  const exact = new Float64Array(total);
  const areas = subject.areas.map(() => new Uint8Array(total));
  const points = new Int32Array(total);
  const placeAt = new Int32Array(total).fill(-1);
  let count = 0;
  let point = -1;
  visitGrid(grid, (place) => {
    point++;
    const row = rowOf(sides, place);
    const answer = subject.exact(row);
    if (answer === null) return;
    sides.forEach((_, index) => {
      (columns[index] as Float64Array)[count] = valueAt(place, index);
    });
    exact[count] = answer;
    subject.areas.forEach(({ contains }, index) => {
      (areas[index] as Uint8Array)[count] = contains(row, answer) ? 1 : 0;
    });
    points[count] = point;
    placeAt[point] = count;
    count++;
  });
  let stride = 1;
  const strides = grid.map(() => 1);
  for (let index = grid.length - 1; index >= 0; index--) {
    strides[index] = stride;
    stride *= (grid[index] as readonly number[]).length;
  }
  const named = new Map<string, Float64Array>();
  sides.forEach(({ variable }, index) => {
    const column = (columns[index] as Float64Array).subarray(0, count);
    named.set(variable.name, column);
    named.set(variable.symbol, column);
  });
  return {
    grid,
    count,
    columns: named,
    exact: exact.subarray(0, count),
    areas: areas.map((each) => each.subarray(0, count)),
    points: points.subarray(0, count),
    placeAt,
    strides,
  };
}

/**
 * Places of the last region of each subject. The exact answers depend on nothing else, so a page that tries one formula after
 * another over one region computes them once (`docs/decisions/teaching-formulas.md`).
 */
const last = new WeakMap<FormulaSubject, { readonly region: string; readonly places: Places }>();

/** The places of a region, computed once as long as the region stays. */
export function keptPlaces(subject: FormulaSubject, sides: readonly Side[]): Places {
  const region = sides.map(({ from, to }) => `${from} ${to}`).join(', ');
  const kept = last.get(subject);
  if (kept?.region === region) return kept.places;
  const places = placesOf(subject, sides);
  last.set(subject, { region, places });
  return places;
}

/** Some of the places, evenly taken, with at most `count` of them. */
export function someOf(places: Places, count: number): Places {
  if (places.count <= count) return places;
  return pickedFrom(
    places,
    Int32Array.from({ length: count }, (_, i) => Math.floor(((i + 0.5) * places.count) / count)),
  );
}

/** The places for which a condition on their index is true. */
export function placesWhere(places: Places, isWanted: (index: number) => boolean): Places {
  const picked: number[] = [];
  for (let i = 0; i < places.count; i++) if (isWanted(i)) picked.push(i);
  return pickedFrom(places, Int32Array.from(picked));
}

function pickedFrom(places: Places, picked: Int32Array): Places {
  const taken = <T extends Float64Array | Uint8Array | Int32Array>(from: T, out: T): T => {
    for (let i = 0; i < picked.length; i++) out[i] = from[picked[i] as number] as number;
    return out;
  };
  const count = picked.length;
  return {
    ...places,
    count,
    columns: new Map(
      [...places.columns].map(([name, column]) => [name, taken(column, new Float64Array(count))]),
    ),
    exact: taken(places.exact, new Float64Array(count)),
    areas: places.areas.map((each) => taken(each, new Uint8Array(count))),
    points: taken(places.points, new Int32Array(count)),
  };
}

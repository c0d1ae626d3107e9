/** A formula held against the exact function on every place of a grid. */

import { denseAt, valueAt } from '../../numeric/columns.js';
import type { FormulaValues } from '../formula/functions.js';
import type { FormulaSubject } from '../formula/subject.js';
import type { Places } from './places.js';
import type { Side } from './sweep.js';

/** Tally of a part of the region. */
export interface Tally {
  places: number;
  squares: number;
  largest: number;
  within: number;
  broken: number;
}

/** What a grid shows. */
export interface ComparedGrid {
  readonly all: Tally;
  /** In the order of the subject's areas. */
  readonly areas: readonly Tally[];
  /** Places from which the worst one is sought, the worst first. */
  readonly starts: readonly (readonly number[])[];
  readonly firstBroken: FormulaValues | null;
  /** The first two sides that vary and the largest error over the others; `null` for fewer. */
  readonly map: {
    readonly xSide: number;
    readonly ySide: number;
    readonly errors: readonly (readonly (number | null)[])[];
  } | null;
}

/** Places of the grid from which the worst one is sought. */
const STARTS = 6;

const emptyTally = (): Tally => ({ places: 0, squares: 0, largest: 0, within: 0, broken: 0 });

/** Size of a difference; full periods in it do not count. */
export function distance(difference: number, period: FormulaSubject['period']): number {
  const size = Math.abs(difference);
  if (period === null || size <= period / 2) return size;
  const rest = size % period;
  return rest > period / 2 ? period - rest : rest;
}

/** Values by full name only, as they are told to people. */
export function named(sides: readonly Side[], place: readonly number[]): FormulaValues {
  return Object.fromEntries(sides.map(({ variable }, i) => [variable.name, valueAt(place, i)]));
}

/** Compares the formula's column with the exact one. */
export function comparedGrid(
  places: Places,
  got: Float64Array,
  from: {
    readonly sides: readonly Side[];
    readonly period: FormulaSubject['period'];
    readonly tolerance: number;
  },
): ComparedGrid {
  const { sides, period, tolerance } = from;
  const all = emptyTally();
  const areas = places.areas.map(emptyTally);
  const errors = new Float64Array(places.count);
  const { count, exact } = places;
  for (let i = 0; i < count; i++) {
    const value = denseAt(got, i);
    errors[i] = Number.isFinite(value) ? distance(value - denseAt(exact, i), period) : -1;
  }
  tally(all, errors, tolerance);
  for (let a = 0; a < areas.length; a++)
    tally(areas[a] as Tally, errors, tolerance, places.areas[a]);
  const broken = all.broken > 0 ? errors.indexOf(-1) : -1;
  const firstBroken = broken < 0 ? null : named(sides, placeOf(places, broken));
  return {
    all,
    areas,
    starts: hills(places, errors).map((index) => placeOf(places, index)),
    firstBroken,
    map: mapOf(places, sides, errors),
  };
}

function placeOf(places: Places, index: number): readonly number[] {
  const point = valueAt(places.points, index);
  return places.grid.map((side, i) =>
    valueAt(side, Math.floor(point / valueAt(places.strides, i)) % side.length),
  );
}

/** Counts the errors of a part of the places; of all of them without a mask. */
function tally(into: Tally, errors: Float64Array, tolerance: number, mask?: Uint8Array): void {
  for (let i = 0; i < errors.length; i++) {
    if (mask && mask[i] !== 1) continue;
    const error = denseAt(errors, i);
    if (error < 0) {
      into.broken++;
      continue;
    }
    into.places++;
    into.squares += error * error;
    if (error > into.largest) into.largest = error;
    if (error <= tolerance) into.within++;
  }
}

/** The highest places that no neighbour along a side overtops: one alone may stand on a lesser hill. */
function hills(places: Places, errors: Float64Array): readonly number[] {
  const best: number[] = [];
  for (let i = 0; i < places.count; i++) {
    const error = denseAt(errors, i);
    const lowest = best.length < STARTS ? -1 : denseAt(errors, valueAt(best, best.length - 1));
    if (error <= lowest || error < 0) continue;
    const point = valueAt(places.points, i);
    const overtopped = places.strides.some((stride, side) => {
      const length = (places.grid[side] as readonly number[]).length;
      const along = Math.floor(point / stride) % length;
      return (
        (along > 0 && higher(places, errors, point - stride, error)) ||
        (along < length - 1 && higher(places, errors, point + stride, error))
      );
    });
    if (overtopped) continue;
    best.push(i);
    best.sort((a, b) => denseAt(errors, b) - denseAt(errors, a));
    best.length = Math.min(best.length, STARTS);
  }
  return best;
}

function higher(places: Places, errors: Float64Array, point: number, error: number): boolean {
  const index = valueAt(places.placeAt, point);
  return index >= 0 && denseAt(errors, index) > error;
}

/** The largest error over the first two sides that vary. */
function mapOf(places: Places, sides: readonly Side[], errors: Float64Array): ComparedGrid['map'] {
  const [xSide, ySide] = sides.flatMap(({ from, to }, index) => (to > from ? [index] : []));
  if (xSide === undefined || ySide === undefined) return null;
  const [columns, rows] = [places.grid[xSide]?.length ?? 0, places.grid[ySide]?.length ?? 0];
  const [xStride, yStride] = [valueAt(places.strides, xSide), valueAt(places.strides, ySide)];
  const map = Array.from({ length: rows }, () => new Array<number | null>(columns).fill(null));
  for (let i = 0; i < places.count; i++) {
    const error = denseAt(errors, i);
    if (error < 0) continue;
    const point = valueAt(places.points, i);
    const line = map[Math.floor(point / yStride) % rows];
    const x = Math.floor(point / xStride) % columns;
    if (line) line[x] = Math.max(line[x] ?? 0, error);
  }
  return { xSide, ySide, errors: map };
}

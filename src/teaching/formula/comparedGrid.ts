/** A formula held against the exact function on every place of a grid. */

import { wrapLongitudeDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import type { CompiledFormula, FormulaValues } from './expression.js';
import type { FormulaSubject } from './subject.js';
import { rowOf, type Side, visitGrid } from './sweep.js';

/** A formula with what it is held against. */
export interface Comparison {
  readonly subject: FormulaSubject;
  readonly sides: readonly Side[];
  readonly formula: CompiledFormula;
  readonly tolerance: number;
}

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
  /** Places with the largest errors, the worst first. */
  readonly starts: readonly { readonly error: number; readonly place: readonly number[] }[];
  readonly firstBroken: FormulaValues | null;
  /** The first two sides that vary and the largest error over the others; `null` for fewer. */
  readonly map: {
    readonly xSide: number;
    readonly ySide: number;
    readonly errors: readonly (readonly (number | null)[])[];
  } | null;
}

/** Best places of the grid from which the worst one is sought. */
const STARTS = 24;

const emptyTally = (): Tally => ({ places: 0, squares: 0, largest: 0, within: 0, broken: 0 });

/** Size of a difference; full periods in it do not count. */
function distance(difference: number, period: FormulaSubject['period']): number {
  if (period === null) return Math.abs(difference);
  const turns = 360 / period;
  return Math.abs(wrapLongitudeDeg(difference * turns)) / turns;
}

/** Error at a place: `no-answer` where the exact function has none, `broken` where only the formula has none. */
export function errorAt(
  { subject, formula }: Comparison,
  row: FormulaValues,
  exact = subject.exact(row),
): number | 'no-answer' | 'broken' {
  if (exact === null) return 'no-answer';
  const got = formula(row);
  return Number.isFinite(got) ? distance(got - exact, subject.period) : 'broken';
}

/** Values by full name only, as they are told to people. */
export function named(sides: readonly Side[], place: readonly number[]): FormulaValues {
  return Object.fromEntries(sides.map(({ variable }, i) => [variable.name, valueAt(place, i)]));
}

/** Compares on every place of the grid. */
export function comparedGrid(
  comparison: Comparison,
  grid: readonly (readonly number[])[],
): ComparedGrid {
  const { subject, sides, tolerance } = comparison;
  const all = emptyTally();
  const areas = subject.areas.map(emptyTally);
  const map = emptyMap(sides, grid);
  const starts: { error: number; place: readonly number[] }[] = [];
  let firstBroken: FormulaValues | null = null;
  visitGrid(grid, (place, indices) => {
    const row = rowOf(sides, place);
    const exact = subject.exact(row);
    if (exact === null) return;
    const tallies = [all, ...areas.filter((_, i) => subject.areas[i]?.contains(row, exact))];
    const error = errorAt(comparison, row, exact);
    if (typeof error !== 'number') {
      for (const each of tallies) each.broken++;
      firstBroken ??= named(sides, place);
      return;
    }
    for (const each of tallies) count(each, error, tolerance);
    if (map) {
      const line = map.errors[valueAt(indices, map.ySide)] as (number | null)[];
      const column = valueAt(indices, map.xSide);
      line[column] = Math.max(line[column] ?? 0, error);
    }
    // Only the worst few are kept: the search that follows climbs from each, and one alone may stand on a lesser hill.
    if (starts.length < STARTS || error > (starts[starts.length - 1]?.error ?? 0)) {
      starts.push({ error, place: [...place] });
      starts.sort((a, b) => b.error - a.error);
      starts.length = Math.min(starts.length, STARTS);
    }
  });
  return { all, areas, starts, firstBroken, map };
}

function count(tally: Tally, error: number, tolerance: number): void {
  tally.places++;
  tally.squares += error * error;
  tally.largest = Math.max(tally.largest, error);
  if (error <= tolerance) tally.within++;
}

/** A map without errors over the first two sides that vary. */
function emptyMap(sides: readonly Side[], grid: readonly (readonly number[])[]) {
  const [xSide, ySide] = sides.flatMap(({ from, to }, index) => (to > from ? [index] : []));
  if (xSide === undefined || ySide === undefined) return null;
  const errors = (grid[ySide] ?? []).map(() => (grid[xSide] ?? []).map((): number | null => null));
  return { xSide, ySide, errors };
}

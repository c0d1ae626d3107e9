/** A map of the error of a formula: steps by pattern and number, never by colour alone. */

import { linear } from '../drawing/scale.js';
import { at, label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { said } from '../language/language.js';
import { escapeHtml, withUnit } from '../language/text.js';

/** What the map shows. */
export interface ErrorMap {
  readonly title: string;
  readonly x: { readonly label: string; readonly values: readonly number[] };
  readonly y: { readonly label: string; readonly values: readonly number[] };
  /** Rows by y, columns by x; `none` where there is nothing to compare, `broken` where the formula has no value. */
  readonly errors: readonly (readonly (number | 'none' | 'broken')[])[];
  readonly unit: string;
  readonly tolerance: number;
  /** The worst place. */
  readonly worst?: { readonly x: number; readonly y: number; readonly label: string };
}

const WIDTH = 440;
const EDGE = { top: 14, right: 14, left: 58 };
const LOW = 304;
/** Ends of the steps in tolerances; the second is the tolerance itself. */
const STEPS = [0.2, 1, 2, 10] as const;
const NONE = 5;
const BROKEN = 6;
/** At most so many cells along a side. */
const CELLS = 34;

/** A number as short as three digits allow. */
export function brief(value: number): string {
  const size = Math.abs(value);
  // What is left of rounding in the machine is nothing; no power of ten is ever printed.
  if (size < 1e-9) return '0';
  const text =
    size >= 1000
      ? value.toFixed(0)
      : size < 1e-6
        ? value.toFixed(9).replace(/0+$/, '')
        : String(Number(value.toPrecision(3)));
  return text.replace('-', '−');
}

/** Step of an error. */
function stepOf(error: number | 'none' | 'broken', tolerance: number): number {
  if (error === 'none') return NONE;
  if (error === 'broken') return BROKEN;
  const index = STEPS.findIndex((end) => error <= end * tolerance * (1 + 1e-12));
  return index < 0 ? STEPS.length : index;
}

/** The worst of a block: a formula without a value, then the largest error. */
function worstIn(block: readonly (number | 'none' | 'broken')[]): number | 'none' | 'broken' {
  if (block.includes('broken')) return 'broken';
  const numbers = block.filter((each): each is number => typeof each === 'number');
  return numbers.length === 0 ? 'none' : numbers.reduce((a, b) => Math.max(a, b));
}

/** Starts of the blocks that a side is cut into, and its length as the last. */
function cuts(count: number): number[] {
  const width = Math.ceil(count / CELLS);
  return [...Array.from({ length: Math.ceil(count / width) }, (_, i) => i * width), count];
}

/** Edges of the blocks in coordinates of the picture. */
function edges(starts: readonly number[], count: number, from: number, to: number): number[] {
  return starts.map((start) => from + (start / count) * (to - from));
}

const line = (d: string, width = 1) =>
  tag('path', { d, stroke: 'currentColor', 'stroke-width': String(width) });
/** Fillings of the steps, from nothing to dense; the last is for places without a value. */
const FILLS: readonly (string | undefined)[] = [
  undefined,
  `<pattern id="map-1" class="s0" width="9" height="9" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1.1" fill="currentColor"/></pattern>`,
  `<pattern id="map-2" class="s1" width="10" height="10" patternUnits="userSpaceOnUse">${line('M-1 11L11-1', 1.3)}</pattern>`,
  `<pattern id="map-3" class="s1" width="5" height="5" patternUnits="userSpaceOnUse">${line('M-1 6L6-1', 1.4)}</pattern>`,
  `<pattern id="map-4" class="s1" width="5" height="5" patternUnits="userSpaceOnUse">${line('M-1 6L6-1M-1-1L6 6', 1.6)}</pattern>`,
  undefined,
  `<pattern id="map-6" width="12" height="12" patternUnits="userSpaceOnUse">${line('M3 6h6M6 3v6')}</pattern>`,
];

const fillOf = (step: number, of: Readonly<Record<string, number | string>>) => {
  if (step === 0) return '';
  const shape = 'd' in of ? 'path' : 'rect';
  return step === NONE
    ? tag(shape, { ...of, class: 'band' })
    : tag(shape, { ...of, fill: `url(#map-${step})` });
};

/** How far each cell lies inside its own step, in cells. */
function depths(steps: readonly (readonly number[])[]): number[][] {
  const same = (row: number, column: number, r: number) => {
    for (let i = row - r; i <= row + r; i++)
      for (let j = column - r; j <= column + r; j++)
        if (steps[i]?.[j] !== steps[row]?.[column]) return false;
    return true;
  };
  return steps.map((cells, row) =>
    cells.map((_, column) => {
      let r = 0;
      while (r < 8 && same(row, column, r + 1)) r++;
      return r;
    }),
  );
}

/** Places for the numbers of the steps: the middle of each area, one after the other, never close together. */
function numberPlaces(steps: readonly (readonly number[])[]): [row: number, column: number][] {
  const all = depths(steps).flatMap((cells, row) =>
    cells.map((depth, column) => ({ depth, row, column })),
  );
  const chosen: typeof all = [];
  for (const place of all.filter(({ depth }) => depth >= 1).sort((a, b) => b.depth - a.depth)) {
    const far = chosen.every(
      (other) =>
        Math.hypot(other.row - place.row, other.column - place.column) >
        (steps[other.row]?.[other.column] === steps[place.row]?.[place.column] ? 15 : 4),
    );
    if (far) chosen.push(place);
    if (chosen.length === 16) break;
  }
  return chosen.map(({ row, column }) => [row, column]);
}

const STEP_WORDS = (unit: string, tolerance: number): readonly string[] => {
  const ends = STEPS.map((step) => withUnit(brief(step * tolerance), unit));
  return [
    `up to ${ends[0]}`,
    `to ${ends[1]}, the tolerance`,
    `to ${ends[2]}: outside`,
    `to ${ends[3]}`,
    `over ${ends[3]}`,
    'no exact answer: below the horizon',
    'the formula has no value',
  ];
};

/** Draws the map. */
export function errorMap(map: ErrorMap): Figure {
  const { x, y, errors, unit, tolerance } = map;
  const [left, right, top] = [EDGE.left, WIDTH - EDGE.right, EDGE.top];
  const columns = cuts(x.values.length);
  const rows = cuts(y.values.length);
  const xs = edges(columns, x.values.length, left, right);
  const ys = edges(rows, y.values.length, LOW, top);
  const steps = rows.slice(0, -1).map((from, row) =>
    columns.slice(0, -1).map((start, column) => {
      const block = errors
        .slice(from, rows[row + 1])
        .flatMap((cells) => cells.slice(start, columns[column + 1]));
      return stepOf(worstIn(block), tolerance);
    }),
  );
  const areas: string[] = Array.from({ length: 7 }, () => '');
  let border = '';
  steps.forEach((cells, row) => {
    const [low = 0, high = 0] = [ys[row], ys[row + 1]];
    for (let start = 0; start < cells.length; ) {
      const step = cells[start] as number;
      let end = start + 1;
      while (cells[end] === step) end++;
      const [a = 0, b = 0] = [xs[start], xs[end]];
      areas[step] += `M${at(a)} ${at(high)}H${at(b)}V${at(low)}H${at(a)}z`;
      start = end;
    }
    const outside = (step: number | undefined) =>
      step === undefined || step === NONE ? undefined : step > 1;
    cells.forEach((step, column) => {
      const here = outside(step);
      const [a = 0, b = 0] = [xs[column], xs[column + 1]];
      const next = outside(cells[column + 1]);
      const above = outside(steps[row + 1]?.[column]);
      if (here === undefined) return;
      if (next !== undefined && next !== here) border += `M${at(b)} ${at(low)}V${at(high)}`;
      if (above !== undefined && above !== here) border += `M${at(a)} ${at(high)}H${at(b)}`;
    });
  });
  const inner = [`<defs>${FILLS.filter(Boolean).join('')}</defs>`];
  areas.forEach((d, step) => {
    if (d) inner.push(fillOf(step, { d }));
  });
  if (border) inner.push(tag('path', { class: 'rim', d: border, 'stroke-width': '2' }));
  inner.push(...axes(map, left, right, top));
  for (const [row, column] of numberPlaces(steps)) {
    const step = steps[row]?.[column] ?? NONE;
    if (step >= NONE) continue;
    const px = ((xs[column] ?? 0) + (xs[column + 1] ?? 0)) / 2;
    const py = ((ys[row] ?? 0) + (ys[row + 1] ?? 0)) / 2;
    inner.push(
      tag('rect', { class: 'plate', x: px - 8, y: py - 9, width: 16, height: 18 }),
      label(px, py + 5, String(step), 'middle', 'remark'),
    );
  }
  if (map.worst) {
    const share = (value: number, values: readonly number[]) =>
      (value - (values[0] ?? 0)) / ((values.at(-1) ?? 1) - (values[0] ?? 0));
    const px = left + share(map.worst.x, x.values) * (right - left);
    const py = LOW - share(map.worst.y, y.values) * (LOW - top);
    const end = px > right - 110;
    const ty = py < top + 20 ? py + 16 : py - 7;
    const width = 8.6 * map.worst.label.length + 6;
    inner.push(
      tag('rect', {
        class: 'plate',
        x: end ? px - 6 - width : px + 6,
        y: ty - 13,
        width,
        height: 18,
      }),
      tag('circle', { class: 'plate', cx: px, cy: py, r: 8 }),
      tag('circle', { class: 'ring', cx: px, cy: py, r: 5 }),
      label(px + (end ? -9 : 9), ty, map.worst.label, end ? 'end' : 'start', 'remark'),
    );
  }
  const words = STEP_WORDS(unit, tolerance);
  const present = areas.flatMap((d, step) => (d ? [step] : []));
  present.forEach((step, index) => {
    const cy = LOW + 54 + index * 21;
    const box = { x: left, y: cy, width: 30, height: 15 };
    inner.push(
      fillOf(step, box),
      tag('rect', { class: 'rim', ...box }),
      step < NONE ? label(left + 15, cy + 12, String(step), 'middle', 'remark') : '',
      label(left + 38, cy + 12, words[step] ?? '', 'start', 'name'),
    );
  });
  return {
    title: map.title,
    svg: picture(WIDTH, LOW + 58 + present.length * 21, map.title, inner.join('')),
    table: numbers(map),
  };
}

function axes({ x, y }: ErrorMap, left: number, right: number, top: number): string[] {
  const span = (values: readonly number[]) => [values[0] ?? 0, values.at(-1) ?? 1] as const;
  const across = linear(...span(x.values), left, right, 6);
  const up = linear(...span(y.values), LOW, top, 6);
  const sign = (value: number) => String(value).replace('-', '−');
  return [
    tag('path', {
      class: 'axis',
      d: `${through([
        [left, top],
        [left, LOW],
        [right, LOW],
        [right, top],
      ])}z`,
    }),
    ...across.ticks.map((tick) => label(across(tick), LOW + 19, sign(tick))),
    ...up.ticks.map((tick) => label(left - 7, up(tick) + 4.5, sign(tick), 'end')),
    label((left + right) / 2, LOW + 40, x.label, 'middle', 'name'),
    `<text class="name" text-anchor="middle" transform="translate(14 ${(top + LOW) / 2}) rotate(-90)">${escapeHtml(said(y.label))}</text>`,
  ];
}

/** Errors at some places of the map, as a table. */
function numbers({ title, x, y, errors }: ErrorMap): Figure['table'] {
  const some = (count: number, most: number) => {
    const wanted = Math.min(most, count);
    return Array.from({ length: wanted }, (_, i) => Math.round((i * (count - 1)) / (wanted - 1)));
  };
  const columns = some(x.values.length, 5);
  return {
    caption: title,
    columns: [`${y.label} \\ ${x.label}`, ...columns.map((i) => brief(x.values[i] ?? 0))],
    rows: some(y.values.length, 7)
      .reverse()
      .map((row) => [
        brief(y.values[row] ?? 0),
        ...columns.map((column) => {
          const error = errors[row]?.[column] ?? 'none';
          return error === 'none' ? '–' : error === 'broken' ? 'no value' : brief(error);
        }),
      ]),
  };
}

/** Line plots: curves, samples, bands and marks over two axes. Readable without colour and in print. */

import { alongRule, aroundMark, besideRule, insideBand, labelPlaces } from '../drawing/labels.js';
import { extent, linear, logarithmic, type Scale } from '../drawing/scale.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure, Handle, Table } from '../example.js';
import { said } from '../language/language.js';
import { escapeHtml, shown } from '../language/text.js';

/** A point of a curve. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An axis; its interval follows from the data where it is not given. */
interface Axis {
  readonly label: string;
  readonly unit?: string;
  readonly scale?: 'linear' | 'log';
  readonly min?: number;
  readonly max?: number;
  /** Decimals of its values in the table of numbers, default 2. */
  readonly digits?: number;
}

/** A curve or a set of samples. Curves differ by dash and weight, samples by the shape of their mark. */
interface Series {
  readonly label: string;
  readonly points: readonly Point[];
  readonly style?: 'line' | 'samples' | 'line-and-samples';
}

/** A plot. */
export interface Plot {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
  /** Intervals shaded across the plot: an uncertainty, a guard band. */
  readonly bands?: readonly {
    readonly axis: 'x' | 'y';
    readonly from: number;
    readonly to: number;
    readonly label: string;
  }[];
  /** Straight lines across the plot: a limit, a best position. */
  readonly rules?: readonly {
    readonly axis: 'x' | 'y';
    readonly at: number;
    readonly label: string;
  }[];
  /** Named points. */
  readonly marks?: readonly (Point & { readonly label: string })[];
  /** Points that can be moved; `put` gets the values of both axes. */
  readonly handles?: readonly (Point & Omit<Handle, 'at'>)[];
  /** The table of numbers; made from the series where it is not given. */
  readonly table?: Table;
  readonly height?: number;
}

const WIDTH = 440;
const EDGE = { top: 14, right: 14, bottom: 49, left: 58 };
const KEY_ROW = 18;

const axisText = ({ label, unit }: Axis) => (unit ? `${label} / ${unit}` : label);

function scaleOf(axis: Axis, values: readonly number[], from: number, to: number, count: number) {
  const log = axis.scale === 'log';
  const [low, high] = extent(values, log ? 0 : 0.05);
  const [min, max] = [axis.min ?? low, axis.max ?? high];
  return log ? logarithmic(min, max, from, to) : linear(min, max, from, to, count);
}

/** A tick's number as short as it can be. */
const tickText = (value: number) => String(value).replace('-', '−');

const MARKS: readonly ((x: number, y: number) => string)[] = [
  (x, y) => tag('circle', { cx: x, cy: y, r: 3.5 }),
  (x, y) => tag('rect', { x: x - 3.2, y: y - 3.2, width: 6.4, height: 6.4 }),
  (x, y) => tag('path', { d: `M${x.toFixed(1)} ${(y - 4.5).toFixed(1)}l4.2 7.5h-8.4z` }),
  (x, y) => tag('path', { d: `M${x.toFixed(1)} ${(y - 4.6).toFixed(1)}l4.6 4.6-4.6 4.6-4.6-4.6z` }),
];

function drawSeries(series: Series, index: number, x: Scale, y: Scale): string {
  const style = series.style ?? 'line';
  const places = series.points.map((point) => [x(point.x), y(point.y)] as const);
  const line = style === 'samples' ? '' : tag('path', { class: 'line', d: through(places) });
  const mark = MARKS[index % MARKS.length];
  const marks =
    style === 'line' || !mark
      ? ''
      : places
          .filter(([px, py]) => Number.isFinite(px) && Number.isFinite(py))
          .map(([px, py]) => mark(px, py))
          .join('');
  return tag(
    'g',
    { class: `series s${index % 4}` },
    line + (marks && `<g class="mark">${marks}</g>`),
  );
}

/** The key: one entry for each series, drawn as the series is. */
function key(series: readonly Series[], top: number): string {
  if (series.length < 2) return '';
  return series
    .map((one, index) => {
      const y = top + index * KEY_ROW;
      const mark =
        one.style && one.style !== 'line' ? MARKS[index % 4]?.(EDGE.left + 12, y - 4) : '';
      const line =
        one.style === 'samples'
          ? ''
          : tag('path', {
              class: 'line',
              d: through([
                [EDGE.left, y - 4],
                [EDGE.left + 24, y - 4],
              ]),
            });
      return tag(
        'g',
        { class: `series s${index % 4}` },
        `${line}<g class="mark">${mark}</g>${label(EDGE.left + 32, y, one.label, 'start')}`,
      );
    })
    .join('');
}

/** The numbers of a plot as a table: every sample, or a dozen points of each curve. */
function tableOf(plot: Plot): Table {
  const rows = plot.series.flatMap((series) => {
    const every = Math.max(1, Math.floor(series.points.length / 12));
    return series.points
      .filter((_, index) => index % every === 0 || index === series.points.length - 1)
      .map(({ x, y }) => [series.label, shown(x, plot.x.digits), shown(y, plot.y.digits)]);
  });
  return {
    caption: plot.title,
    columns: ['Curve', axisText(plot.x), axisText(plot.y)],
    rows,
  };
}

/** Room left of the plot: for its longest tick, and the name of the axis beside it. */
function leftEdge(ticks: readonly number[]): number {
  const widths = ticks.map((tick) => 8.6 * tickText(tick).replace('.', '').length);
  return Math.max(EDGE.left, 34 + Math.max(0, ...widths));
}

/** Draws a plot. */
export function linePlot(plot: Plot): Figure {
  const keyHeight = plot.series.length < 2 ? 0 : plot.series.length * KEY_ROW + 6;
  const bottom = plot.height ?? 280;
  const height = bottom + keyHeight;
  const points = plot.series.flatMap((series) => series.points);
  const rules = plot.rules ?? [];
  const [top, low, right] = [EDGE.top, bottom - EDGE.bottom, WIDTH - EDGE.right];
  const y = scaleOf(
    plot.y,
    [...points.map((p) => p.y), ...rules.filter((r) => r.axis === 'y').map((r) => r.at)],
    low,
    top,
    5,
  );
  const left = leftEdge(y.ticks);
  const x = scaleOf(
    plot.x,
    [...points.map((p) => p.x), ...rules.filter((r) => r.axis === 'x').map((r) => r.at)],
    left,
    right,
    6,
  );
  const places = labelPlaces({ left, right, top: top - 4, bottom: low });
  for (const { points: line, style } of plot.series)
    places.keepClear(
      line.map((point) => [x(point.x), y(point.y)] as const),
      style !== 'samples',
    );
  const inner: string[] = [];
  for (const band of plot.bands ?? []) {
    const [a, b] = (
      band.axis === 'x' ? [x(band.from), x(band.to)] : [y(band.to), y(band.from)]
    ).map((v) =>
      Math.min(Math.max(v, band.axis === 'x' ? left : top), band.axis === 'x' ? right : low),
    );
    const size = Math.max((b ?? 0) - (a ?? 0), 1);
    inner.push(
      band.axis === 'x'
        ? tag('rect', { class: 'band', x: a, y: top, width: size, height: low - top })
        : tag('rect', { class: 'band', x: left, y: a, width: right - left, height: size }),
    );
  }
  for (const tick of x.ticks)
    inner.push(
      tag('path', {
        class: 'grid',
        d: through([
          [x(tick), top],
          [x(tick), low],
        ]),
      }),
      // The last one stays within the picture on a phone, where letters are larger.
      label(Math.min(x(tick), WIDTH - 5 * tickText(tick).length), low + 20, tickText(tick)),
    );
  for (const tick of y.ticks)
    inner.push(
      tag('path', {
        class: 'grid',
        d: through([
          [left, y(tick)],
          [right, y(tick)],
        ]),
      }),
      label(left - 7, y(tick) + 4.5, tickText(tick), 'end'),
    );
  inner.push(
    tag('path', {
      class: 'axis',
      d: through([
        [left, top],
        [left, low],
        [right, low],
      ]),
    }),
    label((left + right) / 2, low + 41, axisText(plot.x), 'middle', 'name'),
    `<text class="name" text-anchor="middle" transform="translate(14 ${(top + low) / 2}) rotate(-90)">${escapeHtml(said(axisText(plot.y)))}</text>`,
  );
  for (const rule of rules) {
    const line: [number, number][] =
      rule.axis === 'x'
        ? [
            [x(rule.at), top],
            [x(rule.at), low],
          ]
        : [
            [left, y(rule.at)],
            [right, y(rule.at)],
          ];
    inner.push(tag('path', { class: 'rule', d: through(line) }));
    if (rule.axis === 'y') places.keepClear(line, true);
  }
  inner.push(
    `<svg x="${left}" y="${top}" width="${right - left}" height="${low - top}" viewBox="${left} ${top} ${right - left} ${low - top}">${plot.series.map((series, index) => drawSeries(series, index, x, y)).join('')}</svg>`,
  );
  for (const mark of plot.marks ?? []) {
    const [px, py] = [x(mark.x), y(mark.y)];
    inner.push(
      tag('circle', { class: 'ring', cx: px, cy: py, r: 5 }),
      places.put(mark.label, aroundMark(px, py)),
    );
  }
  for (const rule of rules)
    inner.push(
      places.put(
        rule.label,
        rule.axis === 'x' ? besideRule(x(rule.at), top, low) : alongRule(y(rule.at), left, right),
      ),
    );
  for (const rule of rules)
    if (rule.axis === 'x')
      places.keepClear(
        [
          [x(rule.at), top],
          [x(rule.at), low],
        ],
        true,
      );
  for (const band of plot.bands ?? []) {
    const scale = band.axis === 'x' ? x : y;
    const ends: readonly [number, number] = band.axis === 'x' ? [left, right] : [top, low];
    const [a, b] = [scale(band.from), scale(band.to)].map((v) =>
      Math.min(Math.max(v, ends[0]), ends[1]),
    ) as [number, number];
    inner.push(
      places.put(
        band.label,
        band.axis === 'x'
          ? insideBand(a, b, top, low)
          : alongRule(Math.min(a, b) + 18, left, right),
      ),
    );
  }
  inner.push(key(plot.series, bottom + 10));
  return {
    title: plot.title,
    svg: picture(WIDTH, height, plot.title, inner.join('')),
    table: plot.table ?? tableOf(plot),
    ...(plot.handles
      ? {
          handles: plot.handles.map(({ x: atX, y: atY, put, ...handle }) => ({
            ...handle,
            at: [x(atX) / WIDTH, y(atY) / height] as const,
            put: (right: number, down: number) => put(x.back(right * WIDTH), y.back(down * height)),
          })),
        }
      : {}),
  };
}

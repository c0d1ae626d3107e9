/** Line plots: curves, samples, bands and marks over two axes. Readable without colour and in print. */

import type { Figure, Table } from './example.js';
import { said } from './language.js';
import { extent, linear, logarithmic, type Scale } from './scale.js';
import { label, picture, tag, through } from './svg.js';
import { escapeHtml, shown } from './text.js';

/** A point of a curve. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An axis; its interval follows from the data where it is not given. */
export interface Axis {
  readonly label: string;
  readonly unit?: string;
  readonly scale?: 'linear' | 'log';
  readonly min?: number;
  readonly max?: number;
  /** Decimals of its values in the table of numbers, default 2. */
  readonly digits?: number;
}

/** A curve or a set of samples. Curves differ by dash and weight, samples by the shape of their mark. */
export interface Series {
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
  /** The table of numbers; made from the series where it is not given. */
  readonly table?: Table;
  readonly height?: number;
}

const WIDTH = 440;
const EDGE = { top: 14, right: 14, bottom: 46, left: 58 };

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
      const y = top + index * 17;
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

/** Draws a plot. */
export function linePlot(plot: Plot): Figure {
  const keyHeight = plot.series.length < 2 ? 0 : plot.series.length * 17 + 6;
  const bottom = plot.height ?? 280;
  const height = bottom + keyHeight;
  const points = plot.series.flatMap((series) => series.points);
  const rules = plot.rules ?? [];
  const x = scaleOf(
    plot.x,
    [...points.map((p) => p.x), ...rules.filter((r) => r.axis === 'x').map((r) => r.at)],
    EDGE.left,
    WIDTH - EDGE.right,
    6,
  );
  const y = scaleOf(
    plot.y,
    [...points.map((p) => p.y), ...rules.filter((r) => r.axis === 'y').map((r) => r.at)],
    bottom - EDGE.bottom,
    EDGE.top,
    5,
  );
  const [left, right, top, low] = [EDGE.left, WIDTH - EDGE.right, EDGE.top, bottom - EDGE.bottom];
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
      band.axis === 'x'
        ? label(((a ?? 0) + (b ?? 0)) / 2, low - 7, band.label, 'middle', 'remark')
        : label(right - 4, (a ?? 0) + 13, band.label, 'end', 'remark'),
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
      label(x(tick), low + 17, tickText(tick)),
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
    label((left + right) / 2, low + 38, axisText(plot.x), 'middle', 'name'),
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
    inner.push(
      tag('path', { class: 'rule', d: through(line) }),
      rule.axis === 'x'
        ? label(
            x(rule.at) + (x(rule.at) > right - 90 ? -5 : 5),
            top + 12,
            rule.label,
            x(rule.at) > right - 90 ? 'end' : 'start',
            'remark',
          )
        : label(right - 4, y(rule.at) - 5, rule.label, 'end', 'remark'),
    );
  }
  inner.push(
    `<svg x="${left}" y="${top}" width="${right - left}" height="${low - top}" viewBox="${left} ${top} ${right - left} ${low - top}">${plot.series.map((series, index) => drawSeries(series, index, x, y)).join('')}</svg>`,
  );
  for (const mark of plot.marks ?? []) {
    const [px, py] = [x(mark.x), y(mark.y)];
    const end = px > right - 110;
    inner.push(
      tag('circle', { class: 'ring', cx: px, cy: py, r: 5 }),
      label(px + (end ? -9 : 9), py - 7, mark.label, end ? 'end' : 'start', 'remark'),
    );
  }
  inner.push(key(plot.series, bottom + 10));
  return {
    title: plot.title,
    svg: picture(WIDTH, height, plot.title, inner.join('')),
    table: plot.table ?? tableOf(plot),
  };
}

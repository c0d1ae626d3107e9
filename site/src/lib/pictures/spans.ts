/** Stretches of a frequency axis, one row below the other: carriers, user bands, bands of other services. */

import { extent, linear } from '../drawing/scale.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure, Table } from '../example.js';
import { said } from '../language/language.js';
import { shown } from '../language/text.js';

/** One row of the picture. */
interface SpanRow {
  readonly label: string;
  /** Stretches of the row; a hollow one is what is not wanted there. */
  readonly spans: readonly {
    readonly from: number;
    readonly to: number;
    readonly hollow?: boolean;
  }[];
  /** A few words behind the row's name. */
  readonly words?: string;
}

/** What the drawing needs. */
interface Spans {
  readonly title: string;
  /** Name of the axis with its unit. */
  readonly axis: string;
  readonly rows: readonly SpanRow[];
  /** Shaded through all rows: what a receiver or a cable takes. */
  readonly shade?: { readonly from: number; readonly to: number; readonly label: string };
  readonly table?: Table;
}

const WIDTH = 440;
const [LEFT, RIGHT, TOP, ROW] = [10, WIDTH - 14, 24, 38];

/** Draws the rows over a common axis. */
export function spanRows({ title, axis, rows, shade, table }: Spans): Figure {
  const ends = rows.flatMap(({ spans }) => spans.flatMap(({ from, to }) => [from, to]));
  const [low, high] = extent(shade ? [...ends, shade.from, shade.to] : ends, 0.04);
  const x = linear(low, high, LEFT, RIGHT, 6);
  const bottom = TOP + ROW * rows.length + 4;
  const inner: string[] = [];
  if (shade)
    inner.push(
      tag('rect', {
        class: 'band',
        x: x(shade.from),
        y: TOP - 4,
        width: x(shade.to) - x(shade.from),
        height: bottom - TOP + 4,
      }),
      label((x(shade.from) + x(shade.to)) / 2, TOP - 9, shade.label, 'middle', 'remark'),
    );
  for (const tick of x.ticks)
    inner.push(
      tag('path', {
        class: 'grid',
        d: through([
          [x(tick), TOP - 4],
          [x(tick), bottom],
        ]),
      }),
      label(x(tick), bottom + 19, shown(tick, 0)),
    );
  rows.forEach(({ label: name, spans, words }, index) => {
    const top = TOP + ROW * index;
    const first = Math.min(...spans.map(({ from }) => x(from)));
    const text = words ? `${said(name)}: ${said(words)}` : said(name);
    // A name near the right edge ends there.
    const atEnd = first + 8 * text.length > RIGHT;
    inner.push(
      label(
        atEnd ? RIGHT : Math.max(LEFT, first),
        top + 13,
        words ? `${name}: ${words}` : name,
        atEnd ? 'end' : 'start',
        'remark',
      ),
    );
    for (const { from, to, hollow } of spans) {
      const width = Math.max(3, x(to) - x(from));
      inner.push(
        hollow
          ? tag('rect', { class: 'ring', x: x(from), y: top + 19, width, height: 10 })
          : tag('rect', { class: 'object', x: x(from), y: top + 18, width, height: 12 }),
      );
    }
  });
  inner.push(
    tag('path', {
      class: 'axis',
      d: through([
        [LEFT, bottom],
        [RIGHT, bottom],
      ]),
    }),
    label((LEFT + RIGHT) / 2, bottom + 39, axis, 'middle', 'name'),
  );
  return {
    title,
    svg: picture(WIDTH, bottom + 46, title, inner.join('')),
    table: table ?? {
      caption: title,
      columns: ['What', 'From / MHz', 'To / MHz'],
      rows: rows.flatMap(({ label: name, spans }) =>
        spans.map(({ from, to }) => [name, shown(from, 1), shown(to, 1)]),
      ),
    },
  };
}

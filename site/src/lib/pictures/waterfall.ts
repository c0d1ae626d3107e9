/** A budget as a waterfall: each line a bar from the sum before it to the sum after it. */

import { extent, linear } from '../drawing/scale.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** A line of the waterfall. */
interface Step {
  readonly label: string;
  /** What it adds; negative for a loss. */
  readonly change: number;
}

/** A waterfall. */
export interface Waterfall {
  readonly title: string;
  readonly unit: string;
  /** The sum before the first line, where it is not nothing: drawn as a bar of its own. */
  readonly start?: { readonly label: string; readonly value: number };
  readonly steps: readonly Step[];
  /** What the sum after the last line is called. */
  readonly end: string;
}

const WIDTH = 440;
const ROW = 24;
const LEFT = 190;
const RIGHT = 70;
const TOP = 8;

/** Draws a waterfall; gains are solid, losses hollow, and each line bears its signed number. */
export function waterfall(of: Waterfall): Figure {
  const start = of.start?.value ?? 0;
  let sum = start;
  const bars = of.steps.map(({ label: name, change }) => {
    const from = sum;
    sum += change;
    return { name, from, to: sum, change };
  });
  const x = linear(
    ...extent([0, start, ...bars.flatMap(({ from, to }) => [from, to])], 0.02),
    LEFT,
    WIDTH - RIGHT,
    4,
  );
  const all = [
    ...(of.start ? [{ name: of.start.label, from: 0, to: start, total: true }] : []),
    ...bars.map((bar) => ({ ...bar, total: false })),
    { name: of.end, from: 0, to: sum, total: true },
  ];
  const bottom = TOP + all.length * ROW;
  const inner: string[] = x.ticks.map(
    (tick) =>
      tag('path', {
        class: 'grid',
        d: through([
          [x(tick), TOP],
          [x(tick), bottom],
        ]),
      }) + label(x(tick), bottom + 19, String(tick).replace('-', '−')),
  );
  inner.push(
    tag('path', {
      class: 'axis',
      d: through([
        [x(0), TOP],
        [x(0), bottom],
      ]),
    }),
  );
  all.forEach(({ name, from, to, total }, index) => {
    const y = TOP + index * ROW;
    const change = to - from;
    const [low, high] = [Math.min(x(from), x(to)), Math.max(x(from), x(to))];
    const rect = { x: low, y: y + 5, width: Math.max(high - low, 1.5), height: ROW - 10 };
    inner.push(
      label(LEFT - 8, y + ROW / 2 + 4.5, name, 'end', total ? 'name' : 'tick'),
      total || change >= 0
        ? `<g class="series ${total ? 's1' : 's0'}"><g class="mark">${tag('rect', rect)}</g></g>`
        : `<g class="series s0">${tag('path', {
            class: 'line',
            d: `${through([
              [low, rect.y],
              [low + rect.width, rect.y],
              [low + rect.width, rect.y + rect.height],
              [low, rect.y + rect.height],
            ])}Z`,
          })}</g>`,
      label(
        WIDTH - 4,
        y + ROW / 2 + 4.5,
        `${!total && change > 0 ? '+' : ''}${shown(total ? to : change)}`,
        'end',
        total ? 'name' : 'tick',
      ),
    );
    // A thin step leads from each sum to the next line.
    if (index < all.length - 1)
      inner.push(
        tag('path', {
          class: 'grid',
          d: through([
            [x(to), y + 5],
            [x(to), y + ROW + 5],
          ]),
        }),
      );
  });
  inner.push(label((LEFT + WIDTH - RIGHT) / 2, bottom + 37, of.unit, 'middle', 'name'));
  return {
    title: of.title,
    svg: picture(WIDTH, bottom + 44, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Line', `Change / ${of.unit}`, `Sum / ${of.unit}`],
      rows: all.map(({ name, from, to, total }) => [
        name,
        total ? '' : shown(to - from),
        shown(to),
      ]),
    },
  };
}

/** A bench: the head of an adjuster with its count of turns, beside a level that flickers. */

import { linear } from '../drawing/scale.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure, Handle } from '../example.js';
import { shown } from '../language/text.js';

/** What the drawing needs. */
export interface AdjusterBench {
  readonly title: string;
  /** Where the adjuster stands, in turns. */
  readonly placeTurns: number;
  /** The last few levels displayed, in dBm, the newest first. */
  readonly levelsDbm: readonly number[];
  /** Ends of the level's scale in dBm. */
  readonly scaleDbm: readonly [number, number];
  /** How far the adjuster goes to each side, in turns. */
  readonly travelTurns: number;
}

const SIZE = { width: 440, height: 212 };
const HEAD = { x: 92, y: 104, radius: 62 };

/** The head turns under the finger as often as the finger goes round. */
function turned(placeTurns: number, travelTurns: number): Handle {
  const held = (turns: number) => ({
    placeTurns: Math.min(travelTurns, Math.max(-travelTurns, Math.round(20 * turns) / 20)),
  });
  const angle = 2 * Math.PI * placeTurns;
  // Where the finger was last: the nearest turn to it is meant.
  let last = placeTurns;
  return {
    label: 'The adjuster stands at',
    says: `${shown(placeTurns)} turns`,
    at: [
      (HEAD.x + 0.86 * HEAD.radius * Math.sin(angle)) / SIZE.width,
      (HEAD.y - 0.86 * HEAD.radius * Math.cos(angle)) / SIZE.height,
    ],
    now: placeTurns,
    min: -travelTurns,
    max: travelTurns,
    put: (right, down) => {
      const [x, y] = [right * SIZE.width - HEAD.x, HEAD.y - down * SIZE.height];
      if (Math.hypot(x, y) < 8) return undefined;
      const aside = Math.atan2(x, y) / (2 * Math.PI) - last;
      const next = held(last + aside - Math.round(aside));
      last = next.placeTurns;
      return next;
    },
    step: (right, up) => held(placeTurns + (right + up) / 4),
  };
}

/** Draws the bench. */
export function adjusterBench(of: AdjusterBench): Figure {
  const { x, y, radius } = HEAD;
  const [least, most] = of.scaleDbm;
  const level = linear(least, most, 196, 24, 6);
  const now = of.levelsDbm[0] ?? least;
  // A whole turn is a whole circle, clockwise for more turns, zero at the top.
  const angle = 2 * Math.PI * of.placeTurns;
  const at = (share: number, turned: number): readonly [number, number] => [
    x + share * radius * Math.sin(turned),
    y - share * radius * Math.cos(turned),
  ];
  const inner = [
    tag('circle', { class: 'rim', cx: x, cy: y, r: radius }),
    tag('circle', { class: 'rim', cx: x, cy: y, r: 9 }),
    ...[0, 1, 2, 3].map((quarter) =>
      tag('path', {
        class: 'axis',
        d: through([at(0.9, (quarter * Math.PI) / 2), at(1.1, (quarter * Math.PI) / 2)]),
      }),
    ),
    tag('path', { class: 'hand', d: through([at(0.15, angle), at(0.86, angle)]) }),
    tag('circle', { class: 'object', cx: at(0.86, angle)[0], cy: at(0.86, angle)[1], r: 6 }),
    label(x, y + radius + 28, `${shown(of.placeTurns)} turns`, 'middle', 'name'),
    ...level.ticks.flatMap((tick) => [
      tag('path', {
        class: 'grid',
        d: through([
          [262, level(tick)],
          [330, level(tick)],
        ]),
      }),
      label(254, level(tick) + 4.5, shown(tick, 0), 'end'),
    ]),
    tag('rect', { class: 'rim', x: 262, y: 24, width: 68, height: 172 }),
    tag('rect', { class: 'band', x: 263, y: level(now), width: 66, height: 195 - level(now) }),
    // Older levels to the right, each a little apart, so that equal ones can be counted.
    ...of.levelsDbm
      .slice(1)
      .map((older, i) =>
        tag('circle', { class: 'object', cx: 278 + i * 13, cy: level(older), r: 3.5 }),
      ),
    tag('path', {
      class: 'hand',
      d: through([
        [256, level(now)],
        [336, level(now)],
      ]),
    }),
    label(342, level(now) + 4.5, `${shown(now, 1)} dBm`, 'start', 'name'),
  ];
  return {
    title: of.title,
    svg: picture(SIZE.width, SIZE.height, of.title, inner.join('')),
    handles: [turned(of.placeTurns, of.travelTurns)],
    table: {
      caption: of.title,
      columns: ['What', 'Reads'],
      rows: [
        ['adjuster / turns', shown(of.placeTurns)],
        ...of.levelsDbm.map((dbm, i) => [
          i === 0 ? 'level now / dBm' : `level ${i} before / dBm`,
          shown(dbm, 1),
        ]),
      ],
    },
  };
}

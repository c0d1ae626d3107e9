/** The turn of a feed as seen from behind the antenna, facing the satellite. */

import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** What the drawing needs. */
export interface FeedFace {
  readonly title: string;
  /** Turn of the feed in degrees, clockwise positive. */
  readonly skewDeg: number;
}

/** Draws the plumb line, the turned feed and the angle between them. */
export function feedFace(of: FeedFace): Figure {
  const [cx, cy, radius] = [220, 140, 92];
  const at = (clockwiseDeg: number, r: number) => {
    const a = (clockwiseDeg * Math.PI) / 180;
    return [cx + r * Math.sin(a), cy - r * Math.cos(a)] as const;
  };
  const steps = Math.max(2, Math.ceil(Math.abs(of.skewDeg) / 3));
  const turn = Array.from({ length: steps + 1 }, (_, i) => at((of.skewDeg * i) / steps, 58));
  const last = at(of.skewDeg, 58);
  const back = of.skewDeg >= 0 ? -1 : 1;
  const head =
    Math.abs(of.skewDeg) < 6
      ? ''
      : tag('path', {
          class: 'rim',
          d: through([at(of.skewDeg + back * 9, 64), last, at(of.skewDeg + back * 9, 52)]),
        });
  const inner = [
    tag('circle', { class: 'rim', cx, cy, r: radius }),
    tag('path', { class: 'drop', d: through([at(0, radius + 18), at(180, radius + 18)]) }),
    tag('path', { class: 'grid', d: through([at(90, radius), at(270, radius)]) }),
    tag('path', { class: 'rim', d: through(turn) }),
    head,
    tag('path', {
      class: 'hand',
      d: through([at(of.skewDeg, radius), at(of.skewDeg + 180, radius)]),
    }),
    `<g class="series s1">${tag('path', { class: 'line', d: through([at(of.skewDeg + 90, radius * 0.6), at(of.skewDeg + 270, radius * 0.6)]) })}</g>`,
    label(cx, 18, 'up', 'middle', 'name'),
    label(cx - radius - 12, cy + 5, 'left', 'end', 'name'),
    label(cx + radius + 12, cy + 5, 'right', 'start', 'name'),
    label(
      ...at(of.skewDeg + (of.skewDeg < 0 ? -14 : 14), radius + 26),
      `${shown(of.skewDeg, 1)}°`,
      of.skewDeg < 0 ? 'end' : 'start',
      'remark',
    ),
  ];
  return {
    title: of.title,
    svg: picture(440, 264, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Line', 'Clockwise from upright / °'],
      rows: [
        ['Feed for vertical polarization', shown(of.skewDeg)],
        [
          'Feed for horizontal polarization',
          shown(of.skewDeg < 0 ? of.skewDeg + 90 : of.skewDeg - 90),
        ],
      ],
    },
  };
}

/** Skew and tilt: turns about the line of sight, seen from behind the antenna. */

import { label, picture, tag, through } from '../lib/drawing/svg.js';
import type { Figure } from '../lib/example.js';

export function skewPicture(): Figure {
  const title = 'Seen from behind the antenna, facing the satellite: a clockwise turn is positive';
  const one = (cx: number, deg: number, text: string) => {
    const [cy, r] = [104, 68];
    const at = (angle: number, radius: number) =>
      [
        cx + radius * Math.sin((angle * Math.PI) / 180),
        cy - radius * Math.cos((angle * Math.PI) / 180),
      ] as const;
    const turn =
      deg === 0
        ? ''
        : tag('path', {
            class: 'hand',
            d: through(Array.from({ length: 13 }, (_, i) => at((deg * i) / 12, r - 16))),
          }) +
          tag('path', {
            class: 'object',
            d: `${through([at(deg + Math.sign(deg) * 5, r - 16), at(deg - Math.sign(deg) * 6, r - 9), at(deg - Math.sign(deg) * 6, r - 23)])}Z`,
          });
    return [
      tag('circle', { class: 'rim', cx, cy, r }),
      tag('path', { class: 'grid', d: through([at(0, r + 8), at(180, r + 8)]) }),
      tag('path', { class: 'drop', d: through([at(deg, r), at(deg + 180, r)]) }),
      tag('rect', {
        class: 'ring',
        x: cx - 11,
        y: cy - 24,
        width: 22,
        height: 48,
        transform: `rotate(${deg} ${cx} ${cy})`,
      }),
      turn,
      label(cx, cy - r - 14, 'up', 'middle'),
      label(cx, cy + r + 26, text, 'middle', 'name'),
    ].join('');
  };
  return {
    title,
    svg: picture(440, 212, title, one(78, -30, '−30°') + one(220, 0, '0°') + one(362, 30, '+30°')),
    table: {
      caption: title,
      columns: ['Turn of the receiving unit', 'Angle'],
      rows: [
        ['upright', '0°'],
        ['clockwise', 'positive'],
        ['anticlockwise', 'negative'],
      ],
    },
  };
}

/** Longitude: the Earth seen from above the North Pole, east positive. */

import { label, picture, tag, through } from '../lib/drawing/svg.js';
import type { Figure } from '../lib/example.js';

export function longitudePicture(): Figure {
  const title =
    'The Earth seen from above the North Pole: longitude counts eastward, west is negative';
  const [cx, cy, earth, ring] = [220, 148, 78, 112];
  // Greenwich at the bottom, east to the right.
  const at = (deg: number, r: number) =>
    [cx + r * Math.sin((deg * Math.PI) / 180), cy + r * Math.cos((deg * Math.PI) / 180)] as const;
  const arc = (from: number, to: number, r: number) =>
    through(Array.from({ length: 25 }, (_, i) => at(from + ((to - from) * i) / 24, r)));
  const names: readonly [number, string, 'start' | 'middle' | 'end'][] = [
    [0, '0°', 'middle'],
    [90, '90°', 'start'],
    [180, '−180°', 'middle'],
    [-90, '−90°', 'end'],
  ];
  const slots: readonly [number, string][] = [
    [16.4, '16.4° E: 16.4'],
    [-58, '58° W: −58'],
    [-177, '183° E: −177'],
  ];
  return {
    title,
    svg: picture(
      440,
      310,
      title,
      [
        tag('circle', { class: 'ground', cx, cy, r: earth }),
        tag('circle', { class: 'arc', cx, cy, r: ring }),
        ...[0, 90, 180, 270].map((deg) =>
          tag('path', { class: 'grid', d: through([[cx, cy], at(deg, earth)]) }),
        ),
        label(cx, cy + 4, 'N', 'middle', 'name'),
        ...names.map(([deg, text, anchor]) => {
          const [px, py] = at(deg, earth - 16);
          return label(
            px,
            py + 4,
            text,
            anchor === 'middle' ? 'middle' : anchor === 'start' ? 'end' : 'start',
            'remark',
          );
        }),
        tag('path', { class: 'hand', d: arc(28, 62, ring + 18) }),
        tag('path', {
          class: 'object',
          d: `${through([at(66, ring + 18), at(60, ring + 24), at(60, ring + 12)])}Z`,
        }),
        label(...at(46, ring + 30), 'east, +', 'start', 'name'),
        ...slots.map(([deg, text]) => {
          const [px, py] = at(deg, ring);
          const [tx, ty] = at(deg, ring + 14);
          const side = Math.sin((deg * Math.PI) / 180);
          return (
            tag('circle', { class: 'object', cx: px, cy: py, r: 5 }) +
            label(
              tx,
              ty + (Math.abs(side) < 0.35 && deg < 90 && deg > -90 ? 14 : 2),
              text,
              side > 0 ? 'start' : 'end',
              'remark',
            )
          );
        }),
      ].join(''),
    ),
    table: {
      caption: title,
      columns: ['In words', 'In the library'],
      rows: slots.map(([, text]) => text.split(': ')),
    },
  };
}

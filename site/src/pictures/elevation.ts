/** Elevation: the angle above the local horizontal, and what the air does to it. */

import { label, picture, tag, through } from '../lib/drawing/svg.js';
import type { Figure } from '../lib/example.js';

export function elevationPicture(): Figure {
  const title =
    'Elevation counts from the horizontal plane upward; the air lifts a low satellite a little';
  const [x, y, reach] = [60, 190, 300];
  const at = (deg: number, r: number) =>
    [x + r * Math.cos((deg * Math.PI) / 180), y - r * Math.sin((deg * Math.PI) / 180)] as const;
  const arc = (from: number, to: number, r: number) =>
    through(Array.from({ length: 21 }, (_, i) => at(from + ((to - from) * i) / 20, r)));
  const [satX, satY] = at(32, reach);
  const [tipX, tipY] = at(32, 96);
  return {
    title,
    svg: picture(
      440,
      240,
      title,
      [
        tag('path', {
          class: 'axis',
          d: through([
            [20, y],
            [420, y],
          ]),
        }),
        label(416, y + 20, 'horizontal', 'end', 'name'),
        tag('path', {
          class: 'grid',
          d: through([
            [x, y],
            [x, 14],
          ]),
        }),
        label(x + 8, 26, 'zenith, 90°', 'start'),
        tag('path', {
          class: 'hand',
          d: through([
            [x, y],
            [satX, satY],
          ]),
        }),
        tag('circle', { class: 'object', cx: satX, cy: satY, r: 6 }),
        label(satX - 4, satY - 14, 'satellite', 'middle', 'remark'),
        tag('path', { class: 'axis', d: arc(0, 32, 96) }),
        tag('path', {
          class: 'object',
          d: `${through([
            [tipX, tipY],
            [tipX + 10, tipY + 7],
            [tipX + 1, tipY + 12],
          ])}Z`,
        }),
        label(x + 104, y - 34, 'elevation', 'start', 'name'),
        tag('path', {
          class: 'drop',
          d: through([
            [x, y],
            [420, y + 34],
          ]),
        }),
        label(416, y + 46, 'below: hidden, negative', 'end'),
        tag('circle', { class: 'object', cx: x, cy: y, r: 3 }),
      ].join(''),
    ),
    table: {
      caption: title,
      columns: ['Direction', 'Elevation'],
      rows: [
        ['horizontal', '0°'],
        ['straight up', '90°'],
        ['hidden by the Earth', 'negative, down to −90°'],
      ],
    },
  };
}

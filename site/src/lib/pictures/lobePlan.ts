/** A lobe seen along the beam: its ellipses of equal level, the places read, and a way over it. */

import { extent, linear } from '../drawing/scale.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { said } from '../language/language.js';
import { escapeHtml, shown } from '../language/text.js';

type At = readonly [number, number];

/** What the drawing needs; degrees on the sky, first axis to the right, second up. */
export interface LobePlan {
  readonly title: string;
  readonly peakDeg: At;
  /** Half-power beamwidths along the lobe's own axes, narrow first. */
  readonly beamwidthDeg: At;
  /** Direction of the narrow axis from the first axis towards the second. */
  readonly narrowAxisDeg: number;
  readonly readings: readonly At[];
  /** Places of a way, from where the antenna stands. */
  readonly way: readonly At[];
  readonly axes: readonly [string, string];
}

/** Losses whose ellipses are drawn, in dB. */
const RINGS = [1, 3, 6];

/** Draws the lobe; both axes to the same scale. */
export function lobePlan(of: LobePlan): Figure {
  const [narrow, wide] = of.beamwidthDeg;
  const turn = (of.narrowAxisDeg * Math.PI) / 180;
  const ring = (lossDb: number): At[] =>
    Array.from({ length: 73 }, (_, i) => {
      const a = (i * Math.PI) / 36;
      const u = narrow * Math.sqrt(lossDb / 12) * Math.cos(a);
      const v = wide * Math.sqrt(lossDb / 12) * Math.sin(a);
      return [
        of.peakDeg[0] + u * Math.cos(turn) - v * Math.sin(turn),
        of.peakDeg[1] + u * Math.sin(turn) + v * Math.cos(turn),
      ];
    });
  const reach = [...ring(3), ...of.readings, ...of.way];
  const [left, right] = extent(reach.map(([x]) => x));
  const [low, high] = extent(reach.map(([, y]) => y));
  const perDeg = Math.min(360 / (right - left), 300 / (high - low));
  const size: At = [(right - left) * perDeg, (high - low) * perDeg];
  const x = linear(left, right, 62, 62 + size[0]);
  const y = linear(low, high, 14 + size[1], 14);
  const foot = 14 + size[1];
  const at = (place: At): readonly [number, number] => [x(place[0]), y(place[1])];
  const end = of.way.at(-1);
  const inner = [
    ...x.ticks.flatMap((tick) => [
      tag('path', {
        class: 'grid',
        d: through([
          [x(tick), 14],
          [x(tick), foot],
        ]),
      }),
      label(x(tick), foot + 17, String(tick).replace('-', '−')),
    ]),
    ...y.ticks.flatMap((tick) => [
      tag('path', {
        class: 'grid',
        d: through([
          [62, y(tick)],
          [62 + size[0], y(tick)],
        ]),
      }),
      label(55, y(tick) + 4.5, String(tick).replace('-', '−'), 'end'),
    ]),
    tag('rect', { class: 'rim', x: 62, y: 14, width: size[0], height: size[1] }),
    label(62 + size[0] / 2, foot + 38, `${of.axes[0]} / °`, 'middle', 'name'),
    `<text class="name" text-anchor="middle" transform="translate(14 ${14 + size[1] / 2}) rotate(-90)">${escapeHtml(said(`${of.axes[1]} / °`))}</text>`,
    `<svg x="62" y="14" width="${size[0]}" height="${size[1]}" viewBox="62 14 ${size[0]} ${size[1]}">`,
    ...RINGS.map((lossDb) =>
      tag(
        'g',
        { class: 'series s0' },
        tag('path', { class: 'line', d: through(ring(lossDb).map(at)) }),
      ),
    ),
    `<g class="series s1"><g class="mark">${of.readings.map((place) => tag('rect', { x: at(place)[0] - 3.2, y: at(place)[1] - 3.2, width: 6.4, height: 6.4 })).join('')}</g></g>`,
    tag('path', { class: 'hand', d: through(of.way.map(at)) }),
    '</svg>',
    ...RINGS.map((lossDb) => {
      const [px, py] = at(ring(lossDb)[54] ?? of.peakDeg);
      const inside = px > 70 && px < 54 + size[0] && py > 26 && py < foot - 4;
      return inside ? label(px, py - 4, `−${lossDb} dB`, 'middle', 'remark') : '';
    }),
    ...(end ? [tag('circle', { class: 'ring', cx: at(end)[0], cy: at(end)[1], r: 5 })] : []),
  ];
  return {
    title: of.title,
    svg: picture(440, foot + 48, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['What', `${of.axes[0]} / °`, `${of.axes[1]} / °`],
      rows: [
        ['peak', shown(of.peakDeg[0], 3), shown(of.peakDeg[1], 3)],
        ...of.way.map(([a, b], i) => [
          i === 0 ? 'start' : `after axis ${i}`,
          shown(a, 3),
          shown(b, 3),
        ]),
      ],
    },
  };
}

/** A reflector from the side, true to scale: its section, the rays from the rim to the focus, and the feeds. */

import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** What the drawing needs. */
export interface ReflectorSide {
  readonly title: string;
  readonly diameterM: number;
  readonly focalLengthM: number;
  readonly offsetAngleDeg: number;
  /** Elevation of the boresight in degrees. */
  readonly elevationDeg: number;
  /** Feeds by their place above the focus, across the line to the middle of the reflector, and along it, in metres. */
  readonly feeds: readonly { readonly upM: number; readonly alongM: number }[];
  readonly feedDiameterM: number;
}

type At = readonly [number, number];
const [WIDTH, HEIGHT] = [440, 270];
const radians = (deg: number) => (deg * Math.PI) / 180;

/** Draws the reflector with its beam to the right. */
export function reflectorSide(of: ReflectorSide): Figure {
  const f = of.focalLengthM;
  const middle = 2 * f * Math.tan(radians(of.offsetAngleDeg));
  const [low, high] = [middle - of.diameterM / 2, middle + of.diameterM / 2];
  const [s, c] = [Math.sin(radians(of.elevationDeg)), Math.cos(radians(of.elevationDeg))];
  /** From height above the axis and distance along the beam to the picture's plane, in metres. */
  const turned = (height: number, along: number): At => [
    along * c - height * s,
    along * s + height * c,
  ];
  const section = Array.from({ length: 33 }, (_, i) => {
    const height = low + ((high - low) * i) / 32;
    return turned(height, height ** 2 / (4 * f));
  });
  const focus = turned(0, f);
  const feedAngle = radians(2 * of.offsetAngleDeg);
  const feeds = of.feeds.map(({ upM, alongM }) =>
    turned(
      upM * Math.cos(feedAngle) + alongM * Math.sin(feedAngle),
      f + upM * Math.sin(feedAngle) - alongM * Math.cos(feedAngle),
    ),
  );
  const centre = turned(middle, middle ** 2 / (4 * f));
  const beam = turned(middle, middle ** 2 / (4 * f) + 0.9 * of.diameterM);
  const all = [...section, focus, beam, ...feeds];
  const [left, right] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [bottom, top] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const scale = Math.min((WIDTH - 110) / (right - left), (HEIGHT - 60) / (top - bottom));
  const margin = (WIDTH - scale * (right - left)) / 2;
  const at = ([x, y]: At): At => [margin + scale * (x - left), 24 + scale * (top - y)];
  const ends = [section[0], section.at(-1)].filter((end) => end !== undefined);
  const [fx, fy] = at(focus);
  const inner = [
    ...ends.map((end) => tag('path', { class: 'drop', d: through([at(end), at(focus)]) })),
    tag('path', { class: 'drop', d: through([at(centre), at(beam)]) }),
    `<g class="series s0">${tag('path', { class: 'line', d: through(section.map(at)) })}</g>`,
    ...feeds.map((feed) => {
      const [cx, cy] = at(feed);
      return tag('circle', {
        class: 'ring',
        cx,
        cy,
        r: Math.max(3, (scale * of.feedDiameterM) / 2),
      });
    }),
    tag('circle', { class: 'object', cx: fx, cy: fy, r: 3 }),
    label(fx + 14, fy + 18, 'focus and feeds', fx > WIDTH - 130 ? 'end' : 'start', 'remark'),
    label(...at(beam), 'boresight', at(beam)[0] > WIDTH - 70 ? 'end' : 'start', 'remark'),
  ];
  const string = (end: At) => Math.hypot(end[0] - focus[0], end[1] - focus[1]);
  return {
    title: of.title,
    svg: picture(WIDTH, HEIGHT, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Length', 'Metres'],
      rows: [
        ['Lower end of the rim to the focus', shown(string(ends[0] ?? focus), 3)],
        ['Upper end of the rim to the focus', shown(string(ends[1] ?? focus), 3)],
        ['Middle of the reflector to the focus', shown(string(centre), 3)],
      ],
    },
  };
}

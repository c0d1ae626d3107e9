/** A mast out of plumb: from the side, in the satellite's plane, and from behind. Angles are drawn several times as large. */

import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** What the drawing needs. */
export interface Mast {
  readonly title: string;
  /** Lean towards the satellite in degrees, away from it negative. */
  readonly towardsDeg: number;
  /** Lean to the right as seen from behind in degrees. */
  readonly rightDeg: number;
  /** Elevation of the satellite in degrees. */
  readonly elevationDeg: number;
  /** Error of the beam in elevation in degrees, up positive. */
  readonly elevationErrorDeg: number;
  /** Roll of the antenna about the line of sight in degrees, clockwise positive as seen from behind. */
  readonly rollDeg: number;
}

const radians = (deg: number) => (deg * Math.PI) / 180;

/** From `[x, y]` by `length` in a direction counted from the right, upwards. */
function reach(from: readonly [number, number], directionDeg: number, length: number) {
  const a = radians(directionDeg);
  return [from[0] + length * Math.cos(a), from[1] - length * Math.sin(a)] as const;
}

/** An arrow from a point in a direction. */
function arrow(
  from: readonly [number, number],
  directionDeg: number,
  length: number,
  kind: string,
) {
  const end = reach(from, directionDeg, length);
  const head = [reach(end, directionDeg + 155, 11), end, reach(end, directionDeg - 155, 11)];
  return (
    tag('path', { class: kind, d: through([from, end]) }) +
    tag('path', { class: kind, d: through(head) })
  );
}

function upright(base: readonly [number, number], leanDeg: number, height: number): string {
  return (
    tag('path', { class: 'drop', d: through([base, [base[0], base[1] - height - 24]]) }) +
    tag('path', { class: 'hand', d: through([base, reach(base, 90 - leanDeg, height)]) })
  );
}

/** Draws the mast from the side and from behind. */
export function leaningMast(of: Mast): Figure {
  // Large angles are drawn less enlarged, so that the mast stays in the picture.
  const largest = Math.max(Math.hypot(of.towardsDeg, of.rightDeg), Math.abs(of.rollDeg) / 2);
  const times = largest > 6 ? 2 : 5;
  const ground = 216;
  const side = [88, ground] as const;
  const behind = [336, ground] as const;
  const top = reach(side, 90 - times * of.towardsDeg, 96);
  const beamDeg = of.elevationDeg + times * of.elevationErrorDeg;
  // A steep beam is shorter, so that it stays below the words at the top.
  const length = Math.max(of.elevationDeg, beamDeg) > 55 ? 90 : 118;
  const rim = [reach(top, beamDeg + 90, 30), reach(top, beamDeg - 90, 30)] as const;
  const belly = reach(top, beamDeg + 180, 22);
  const head = reach(behind, 90 - times * of.rightDeg, 96);
  const own = 90 - times * of.rollDeg;
  const inner = [
    tag('path', {
      class: 'axis',
      d: through([
        [20, ground],
        [210, ground],
      ]),
    }),
    tag('path', {
      class: 'axis',
      d: through([
        [252, ground],
        [420, ground],
      ]),
    }),
    upright(side, times * of.towardsDeg, 96),
    tag('path', {
      class: 'rim',
      d: `M${rim[0].map((v) => v.toFixed(1)).join(' ')}Q${belly.map((v) => v.toFixed(1)).join(' ')} ${rim[1].map((v) => v.toFixed(1)).join(' ')}`,
    }),
    arrow(top, of.elevationDeg, length, 'drop'),
    `<g class="series s0">${arrow(top, beamDeg, length - 14, 'line')}</g>`,
    upright(behind, times * of.rightDeg, 96),
    tag('circle', { class: 'rim', cx: head[0], cy: head[1], r: 34 }),
    tag('path', {
      class: 'drop',
      d: through([
        [head[0], head[1] - 46],
        [head[0], head[1] + 34],
      ]),
    }),
    `<g class="series s0">${tag('path', { class: 'line', d: through([reach(head, own, 34), reach(head, own + 180, 34)]) })}</g>`,
    label(115, ground + 20, 'from the side', 'middle', 'name'),
    label(336, ground + 20, 'from behind', 'middle', 'name'),
    label(220, 18, `angles of lean and error drawn ${times} times as large`),
  ];
  return {
    title: of.title,
    svg: picture(440, 246, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Angle', 'Degrees'],
      rows: [
        ['Lean towards the satellite', shown(of.towardsDeg)],
        ['Lean to the right', shown(of.rightDeg)],
        ['Beam above the satellite', shown(of.elevationErrorDeg)],
        ['Antenna rolled clockwise', shown(of.rollDeg)],
      ],
    },
  };
}

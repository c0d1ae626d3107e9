/** A polar mount from the side, in the plane of the meridian: axis, plane across it, beam at the highest point. */

import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** What the drawing needs. */
export interface PolarAxis {
  readonly title: string;
  /** Elevation of the axis towards the nearer pole in degrees. */
  readonly axisElevationDeg: number;
  /** Angle of the beam below the plane across the axis in degrees. */
  readonly mountDeclinationDeg: number;
  /** Elevation of the beam at the highest point in degrees. */
  readonly beamElevationDeg: number;
  /** Names of the two sides: towards the pole, towards the equator. */
  readonly pole: string;
  readonly equator: string;
}

type At = readonly [number, number];

/** From a point in a direction counted from the right, upwards. */
function reach(from: At, directionDeg: number, length: number): At {
  const a = (directionDeg * Math.PI) / 180;
  return [from[0] + length * Math.cos(a), from[1] - length * Math.sin(a)];
}

/** Part of a circle between two directions, and a place for its label. */
function sweep(centre: At, radius: number, fromDeg: number, toDeg: number): string {
  const steps = Math.max(2, Math.ceil(Math.abs(toDeg - fromDeg) / 4));
  const points = Array.from({ length: steps + 1 }, (_, i) =>
    reach(centre, fromDeg + ((toDeg - fromDeg) * i) / steps, radius),
  );
  return tag('path', { class: 'rim', d: through(points) });
}

/** Draws the axis and the beam. */
export function polarAxis(of: PolarAxis): Figure {
  const foot: At = [205, 214];
  const hinge: At = [205, 150];
  const axisDeg = 180 - of.axisElevationDeg;
  const planeDeg = 90 - of.axisElevationDeg;
  // A steep line is shorter, so that its end stays in the picture.
  const within = (directionDeg: number) =>
    Math.min(180, 124 / Math.max(Math.sin((directionDeg * Math.PI) / 180), 0.1));
  // The figure of a small angle stands under the horizontal, where no line crosses it.
  const beside = (directionDeg: number, radius: number, angleDeg: number): At => {
    const [x, y] = reach(hinge, directionDeg, radius);
    return angleDeg < 25 ? [x, hinge[1] + 18] : [x, y];
  };
  const ends = [reach(hinge, axisDeg, 112), reach(hinge, axisDeg + 180, 46)] as const;
  const inner = [
    tag('path', {
      class: 'axis',
      d: through([
        [20, 214],
        [420, 214],
      ]),
    }),
    tag('path', { class: 'axis', d: through([foot, hinge]) }),
    tag('path', {
      class: 'grid',
      d: through([
        [20, hinge[1]],
        [420, hinge[1]],
      ]),
    }),
    tag('path', { class: 'hand', d: through(ends) }),
    tag('path', { class: 'drop', d: through([hinge, reach(hinge, planeDeg, within(planeDeg))]) }),
    `<g class="series s0">${tag('path', { class: 'line', d: through([hinge, reach(hinge, of.beamElevationDeg, within(of.beamElevationDeg))]) })}</g>`,
    sweep(hinge, 52, 180, axisDeg),
    sweep(hinge, 118, planeDeg, of.beamElevationDeg),
    sweep(hinge, 66, 0, of.beamElevationDeg),
    label(
      ...beside((180 + axisDeg) / 2, 58, of.axisElevationDeg),
      `${shown(of.axisElevationDeg)}°`,
      'end',
      'remark',
    ),
    label(
      ...reach(hinge, planeDeg + 4, Math.min(140, within(planeDeg) - 4)),
      `${shown(of.mountDeclinationDeg)}°`,
      'end',
      'remark',
    ),
    label(
      ...beside(of.beamElevationDeg / 2, 72, of.beamElevationDeg),
      `${shown(of.beamElevationDeg)}°`,
      'start',
      'remark',
    ),
    label(...reach(ends[0], axisDeg, 12), 'axis', 'end', 'name'),
    label(
      ...reach(hinge, of.beamElevationDeg, within(of.beamElevationDeg) + 8),
      'beam',
      'start',
      'name',
    ),
    label(24, 234, of.pole, 'start', 'name'),
    label(416, 234, of.equator, 'end', 'name'),
  ];
  return {
    title: of.title,
    svg: picture(440, 244, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Angle', 'Degrees'],
      rows: [
        ['Axis above the horizontal', shown(of.axisElevationDeg)],
        ['Beam below the plane across the axis', shown(of.mountDeclinationDeg)],
        ['Beam above the horizontal', shown(of.beamElevationDeg)],
      ],
    },
  };
}

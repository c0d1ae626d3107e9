/** Pattern of ITU-R S.580-6: design objective for antennas that look at the geostationary arc. */

import { type ElectricalSize, falling, flat, type Shape } from './patternShape.js';

/**
 * 29 - 25 log10(phi) from 1 degree or 100 / x up to 20 degrees, -3.5 dBi up to 26.3 degrees, then S.465.
 * Stated for x of 50 or more.
 */
export function shapeS580({ x }: ElectricalSize): Shape {
  return {
    edition: 'S.580-6',
    outsideStatedRange: x < 50 ? ['diameterM'] : [],
    segments: [
      falling(Math.max(1, 100 / x), 'side-lobes', 29),
      { ...flat(20, 'far-side-lobes', -3.5), opensAfter: true },
      falling(26.3, 'far-side-lobes', 32),
      flat(48, 'back-lobes', -10),
    ],
    endDeg: 180,
  };
}

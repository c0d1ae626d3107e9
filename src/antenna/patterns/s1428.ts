/** Pattern of ITU-R S.1428-1: receiving earth stations near non-geostationary systems, x of 20 or more. */

import { type ElectricalSize, falling, flat, mainLobe, type Shape } from './patternShape.js';

/** Peak 20 log10(x) + 7.7; three forms by x: up to 25, up to 100, beyond. The stated 10.7 to 30 GHz is from memory. */
export function shapeS1428({ x, frequencyGHz }: ElectricalSize): Shape {
  const peakDbi = 20 * Math.log10(x) + 7.7;
  const outsideStatedRange = [
    ...(x < 20 ? ['diameterM'] : []),
    ...(frequencyGHz < 10.7 || frequencyGHz > 30 ? ['frequencyGHz'] : []),
  ];
  const head = { edition: 'S.1428-1', outsideStatedRange, endDeg: 180 };
  if (x > 100) {
    const plateauEndDeg = 15.85 * x ** -0.6;
    return {
      ...head,
      segments: [
        ...mainLobe(x, peakDbi, -1 + 15 * Math.log10(x), plateauEndDeg),
        falling(plateauEndDeg, 'side-lobes', 29),
        falling(10, 'side-lobes', 34, 30),
        flat(34.1, 'far-side-lobes', -12),
        flat(80, 'back-lobes', -7),
        flat(120, 'back-lobes', -12),
      ],
    };
  }
  const plateauEndDeg = 95 / x;
  return {
    ...head,
    segments: [
      ...mainLobe(x, peakDbi, 29 - 25 * Math.log10(plateauEndDeg), plateauEndDeg),
      falling(plateauEndDeg, 'side-lobes', 29),
      flat(33.1, 'far-side-lobes', -9),
      ...(x > 25
        ? [flat(80, 'back-lobes', -4), flat(120, 'back-lobes', -9)]
        : [flat(80, 'back-lobes', -5)]),
    ],
  };
}

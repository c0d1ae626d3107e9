/** Pattern of ITU-R S.465-6: earth stations of the fixed-satellite service, 2 to 31 GHz. */

import { type ElectricalSize, falling, flat, type Shape } from './patternShape.js';

/** Angle below which S.465-6 says nothing: 1 degree or 100 / x from x = 50 on, else 2 degrees or 114 x^-1.09. */
function firstDeg(x: number): number {
  return x >= 50 ? Math.max(1, 100 / x) : Math.max(2, 114 * x ** -1.09);
}

/** 32 - 25 log10(phi) up to 48 degrees, -10 dBi beyond. */
export function shapeS465({ x, frequencyGHz }: ElectricalSize): Shape {
  return {
    edition: 'S.465-6',
    outsideStatedRange: frequencyGHz < 2 || frequencyGHz > 31 ? ['frequencyGHz'] : [],
    segments: [falling(firstDeg(x), 'side-lobes', 32), flat(48, 'back-lobes', -10)],
    endDeg: 180,
  };
}

/** Patterns of the Radio Regulations: Appendix 8, Appendix 7 (Annex 3) and Appendix 30 (digital, 2003). */

import {
  checkedPeakDbi,
  type ElectricalSize,
  falling,
  flat,
  mainLobe,
  type Shape,
} from './patternShape.js';

/** Appendix 8: peak 20 log10(x) + 7.7, first side lobe 2 + 15 log10(x). */
export function shapeAppendix8({ x }: ElectricalSize): Shape {
  const sizeDb = 10 * Math.log10(x);
  const large = x >= 100;
  const plateauEndDeg = large ? 15.85 * x ** -0.6 : 100 / x;
  return {
    edition: 'RR Appendix 8',
    outsideStatedRange: [],
    segments: [
      ...mainLobe(x, 2 * sizeDb + 7.7, 2 + 1.5 * sizeDb, plateauEndDeg),
      falling(plateauEndDeg, 'side-lobes', large ? 32 : 52 - sizeDb),
      flat(48, 'back-lobes', large ? -10 : 10 - sizeDb),
    ],
    endDeg: 180,
  };
}

/** Appendix 7, Annex 3, for x of 35 or more: 29 - 25 log10(phi) to 36 degrees, -10 dBi beyond. */
export function shapeAppendix7({ x }: ElectricalSize, peakGainDbi: number): Shape {
  const sizeDb = 10 * Math.log10(x);
  const large = x >= 100;
  const plateauEndDeg = large ? 15.85 * x ** -0.6 : 100 / x;
  return {
    edition: 'RR Appendix 7 Annex 3',
    outsideStatedRange: x < 35 ? ['diameterM'] : [],
    segments: [
      ...mainLobe(
        x,
        checkedPeakDbi(peakGainDbi),
        large ? -1 + 1.5 * sizeDb : -21 + 2.5 * sizeDb,
        plateauEndDeg,
      ),
      falling(plateauEndDeg, 'side-lobes', 29),
      flat(36, 'back-lobes', -10),
    ],
    endDeg: 180,
  };
}

/** Appendix 30, digital broadcasting: as BO.1213-1 near the axis, then 29 - 25 log10(phi) but not below 0 dBi. */
export function shapeAppendix30({ x }: ElectricalSize, peakGainDbi: number): Shape {
  const plateauEndDeg = 95 / x;
  return {
    edition: 'RR Appendix 30 (2003)',
    outsideStatedRange: [],
    segments: [
      ...mainLobe(
        x,
        checkedPeakDbi(peakGainDbi),
        29 - 25 * Math.log10(plateauEndDeg),
        plateauEndDeg,
      ),
      falling(plateauEndDeg, 'side-lobes', 29),
      flat(10 ** (29 / 25), 'back-lobes', 0),
    ],
    endDeg: 180,
  };
}

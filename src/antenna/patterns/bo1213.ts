/** Pattern of ITU-R BO.1213-1: receiving antennas of the broadcasting-satellite service near 12 GHz. */

import {
  checkedPeakDbi,
  type ElectricalSize,
  falling,
  flat,
  mainLobe,
  type Segment,
  type Shape,
} from './patternShape.js';

/** The frequency band that the recommendation is written for, in GHz. */
function outside(frequencyGHz: number): string[] {
  return frequencyGHz < 11.7 || frequencyGHz > 12.75 ? ['frequencyGHz'] : [];
}

/** Co-polar: main lobe, plateau to 95 / x, 29 - 25 log10(phi) to 22.9 degrees, -5 to 70, 0 dBi beyond. */
export function shapeBo1213({ x, frequencyGHz }: ElectricalSize, peakGainDbi: number): Shape {
  const peakDbi = checkedPeakDbi(peakGainDbi);
  const plateauEndDeg = 95 / x;
  return {
    edition: 'BO.1213-1',
    outsideStatedRange: outside(frequencyGHz),
    segments: [
      ...mainLobe(x, peakDbi, 29 - 25 * Math.log10(plateauEndDeg), plateauEndDeg),
      falling(plateauEndDeg, 'side-lobes', 29),
      flat(10 ** (34 / 25), 'far-side-lobes', -5),
      flat(70, 'back-lobes', 0),
    ],
    endDeg: 180,
  };
}

/** Cross-polar: 25 dB below the peak near the axis, up to 17 dB below beside it, then falling. */
export function crossPolarBo1213({ x, frequencyGHz }: ElectricalSize, peakGainDbi: number): Shape {
  const peakDbi = checkedPeakDbi(peakGainDbi);
  const phi0 = (2 / x) * Math.sqrt(3 / 0.0025);
  const phi1 = (phi0 / 2) * Math.sqrt(10.1875);
  const drop = 21 - 25 * Math.log10(phi1) - (peakDbi - 17);
  const segments: Segment[] = [
    flat(0, 'main-lobe', peakDbi - 25),
    {
      fromDeg: 0.25 * phi0,
      region: 'main-lobe',
      gainDbi: (phi) => peakDbi - 25 + (8 * (phi - 0.25 * phi0)) / (0.19 * phi0),
    },
    flat(0.44 * phi0, 'main-lobe', peakDbi - 17),
    {
      fromDeg: phi0,
      region: 'first-side-lobe',
      gainDbi: (phi) => peakDbi - 17 + drop * Math.abs((phi - phi0) / (phi1 - phi0)),
    },
    falling(phi1, 'side-lobes', 21),
    flat(10 ** (26 / 25), 'far-side-lobes', -5),
    flat(70, 'back-lobes', 0),
  ];
  return {
    edition: 'BO.1213-1',
    outsideStatedRange: outside(frequencyGHz),
    segments,
    endDeg: 180,
  };
}

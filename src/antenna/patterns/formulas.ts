/** Patterns by formula: the Gaussian lobe, and the exact pattern of a round aperture. */

import { inRange } from '../../errors.js';
import { sinDeg } from '../../numeric/angle.js';
import { gaussianLobeLossDb, gaussianLobeOffsetDeg } from '../../numeric/gaussianLobe.js';
import { checkedBeamwidthDeg } from '../guards.js';
import { apertureField, checkedIllumination, type Illumination } from '../illumination.js';
import { checkedPeakDbi, flat, type Shape } from './patternShape.js';

function checkedFloorDbi(floorDbi: number | undefined): number {
  return inRange('floorDbi', floorDbi ?? -10, -100, 0);
}

/** A Gaussian main lobe down to a floor. */
export function shapeGaussian(pattern: {
  readonly peakGainDbi: number;
  readonly beamwidthDeg: number;
  readonly floorDbi?: number;
}): Shape {
  const peakDbi = checkedPeakDbi(pattern.peakGainDbi);
  const beamwidthDeg = checkedBeamwidthDeg(pattern.beamwidthDeg);
  const floorDbi = checkedFloorDbi(pattern.floorDbi);
  const floorFromDeg = gaussianLobeOffsetDeg(peakDbi - floorDbi, beamwidthDeg);
  return {
    edition: 'Gaussian lobe',
    outsideStatedRange: [],
    segments: [
      {
        fromDeg: 0,
        region: 'main-lobe',
        gainDbi: (phi) => peakDbi - gaussianLobeLossDb(phi, beamwidthDeg),
      },
      ...(floorFromDeg < 180 ? [flat(floorFromDeg, 'far-side-lobes' as const, floorDbi)] : []),
    ],
    endDeg: 180,
  };
}

/** The pattern of a tapered round aperture, not below a floor; level with the floor behind the reflector. */
export function shapeIlluminated(
  x: number,
  pattern: Illumination & { readonly peakGainDbi: number; readonly floorDbi?: number },
): Shape {
  const peakDbi = checkedPeakDbi(pattern.peakGainDbi);
  const floorDbi = checkedFloorDbi(pattern.floorDbi);
  const { edge, exponent } = checkedIllumination(pattern);
  const gainDbi = (phi: number): number => {
    const field = Math.abs(apertureField(edge, exponent, Math.PI * x * sinDeg(phi)));
    return field < 1e-10 ? floorDbi : Math.max(floorDbi, peakDbi + 20 * Math.log10(field));
  };
  return {
    edition: 'tapered round aperture',
    outsideStatedRange: [],
    segments: [{ fromDeg: 0, region: 'main-lobe', gainDbi }, flat(90, 'back-lobes', floorDbi)],
    endDeg: 180,
  };
}

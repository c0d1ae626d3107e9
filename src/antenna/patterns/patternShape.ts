/** What all patterns are made of: stretches of angle, each with its formula. */

import { DomainError, inRange } from '../../errors.js';

/** Part of a pattern. */
export type Region =
  | 'main-lobe'
  | 'first-side-lobe'
  | 'side-lobes'
  | 'far-side-lobes'
  | 'back-lobes';

/** A stretch of a pattern. */
export interface Segment {
  /** First angle, in degrees. */
  readonly fromDeg: number;
  /** The first angle itself still belongs to the stretch before. */
  readonly opensAfter?: boolean;
  readonly region: Region;
  /** Gain in dBi at an angle in degrees within the stretch. */
  readonly gainDbi: (offAxisDeg: number) => number;
}

/** A pattern ready to evaluate. */
export interface Shape {
  readonly edition: string;
  readonly outsideStatedRange: readonly string[];
  /** Stretches by growing angle; the first may begin off the axis. */
  readonly segments: readonly Segment[];
  /** Where the last stretch ends, in degrees. */
  readonly endDeg: number;
}

/** Diameter over wavelength and frequency of a reflector. */
export interface ElectricalSize {
  readonly x: number;
  readonly frequencyGHz: number;
}

/** Stretch of one level. */
export function flat(fromDeg: number, region: Region, gainDbi: number): Segment {
  return { fromDeg, region, gainDbi: () => gainDbi };
}

/** Stretch of `offset - slope log10(angle)`. */
export function falling(fromDeg: number, region: Region, offsetDb: number, slope = 25): Segment {
  return { fromDeg, region, gainDbi: (phi) => offsetDb - slope * Math.log10(phi) };
}

/**
 * Main lobe `peak - 0.0025 (x phi)^2` and the plateau that follows it up to `plateauEndDeg`. Where size and
 * gain fit each other the parabola meets the plateau before its end.
 */
export function mainLobe(
  x: number,
  peakDbi: number,
  plateauDbi: number,
  plateauEndDeg: number,
): Segment[] {
  if (peakDbi < plateauDbi)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'peakGainDbi',
      received: peakDbi,
      allowed: `at least the first side lobe of a reflector of that size, ${plateauDbi.toFixed(1)} dBi`,
      slip: 'do gain, diameter and frequency belong together?',
    });
  const meetDeg = Math.min((20 / x) * Math.sqrt(peakDbi - plateauDbi), plateauEndDeg);
  return [
    { fromDeg: 0, region: 'main-lobe', gainDbi: (phi) => peakDbi - 0.0025 * (x * phi) ** 2 },
    flat(meetDeg, 'first-side-lobe', plateauDbi),
  ];
}

/** Returns a peak gain of 0 to 80 dBi, otherwise throws. */
export function checkedPeakDbi(peakGainDbi: number): number {
  return inRange('peakGainDbi', peakGainDbi, 0, 80, 'is the gain in dBi?');
}

/** How much of an antenna's pattern looks at the ground, by elevation. */

import { patternGain, patternSegments } from '../../antenna/patterns/pattern.js';
import type { AntennaPattern } from '../../antenna/patterns/patternTypes.js';
import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { cosDeg, RADIANS_PER_DEGREE, sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { dbToRatio } from '../../numeric/decibel.js';
import { gaussLegendre } from '../../numeric/gaussLegendre.js';

/** Input of {@link groundShare}. */
export interface GroundShareInput {
  /** Pattern of the antenna. */
  readonly pattern: AntennaPattern;
  /** Elevation of its axis in degrees, 0 to 90. */
  readonly elevationDeg: number;
  /**
   * How far the mean of the side lobes lies below the pattern in dB, 0 to 20; default 3, since reference patterns are envelopes
   * of the lobes' peaks. For a measured table give 0.
   */
  readonly lobesBelowPatternDb?: number;
}

const GROUND_SHARE_INPUT_KEYS = {
  pattern: true,
  elevationDeg: true,
  lobesBelowPatternDb: true,
} satisfies Keys<GroundShareInput>;

/** Where long stretches are divided: a side lobe that falls with the logarithm changes much over an octave. */
const OCTAVES = [0.25, 0.5, 1, 2, 4, 8, 16, 32, 64, 128];

/** Part of the ring at an angle off the axis that lies below the horizon, 0 to 1. */
function belowHorizon(offAxisDeg: number, elevationDeg: number): number {
  const height = sinDeg(elevationDeg) * cosDeg(offAxisDeg);
  const swing = cosDeg(elevationDeg) * sinDeg(offAxisDeg);
  if (height >= swing) return 0;
  if (height <= -swing) return 1;
  return Math.acos(height / swing) / Math.PI;
}

/**
 * Share of an antenna's pattern that looks at the ground, 0 to 1: what `antennaNoise` takes as `groundShareRatio`.
 *
 * The pattern is summed over the sphere, ring by ring about the axis, each ring with its part below a flat horizon:
 * s = 1/2 integral of g(phi) f(phi, elevation) sin(phi). Where the pattern says nothing (S.465 near the axis) nothing is
 * counted, which is sky for all but the lowest elevations.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definition of antenna noise temperature (ITU-R BO.790 and textbooks); own integration.
 * Accuracy: 1e-6 of the integral; a reference pattern says what an antenna must not exceed, so take the result as a typical value within
 * a factor of two.
 * @example
 * ```ts
 * import { groundShare } from 'slantpath/link';
 * const pattern = { kind: 'S.465-6', diameterM: 0.9, frequencyGHz: 11.7 } as const;
 * groundShare({ pattern, elevationDeg: 30 }).toFixed(3); // => '0.026'
 * ```
 */
export function groundShare(input: GroundShareInput): number {
  const { pattern, elevationDeg, lobesBelowPatternDb } = knownOnly(
    'input',
    input,
    GROUND_SHARE_INPUT_KEYS,
  );
  const elevation = inRange('elevationDeg', elevationDeg, 0, 90);
  const belowDb = inRange('lobesBelowPatternDb', lobesBelowPatternDb ?? 3, 0, 20);
  let share = 0;
  for (const { fromDeg, toDeg, region } of patternSegments(pattern)) {
    const meanDb = region === 'main-lobe' ? 0 : belowDb;
    // Rings begin to touch the ground at the elevation and lie wholly on it beyond its supplement.
    const cuts = [fromDeg, toDeg, elevation, 180 - elevation, ...OCTAVES]
      .filter((angle) => angle >= fromDeg && angle <= toDeg)
      .sort((a, b) => a - b);
    for (let index = 1; index < cuts.length; index++)
      share += piece(pattern, elevation, valueAt(cuts, index - 1), valueAt(cuts, index), meanDb);
  }
  return Math.min(1, 0.5 * share);
}

/** Integral over a range of angles, in the angle u whose sine runs along it: so the ground's part, a root at both ends, is smooth. */
function piece(
  pattern: AntennaPattern,
  elevationDeg: number,
  from: number,
  to: number,
  meanDb: number,
): number {
  const middle = 0.5 * (from + to);
  const half = 0.5 * (to - from);
  return gaussLegendre(
    (u) => {
      const angle = middle + half * Math.sin(u);
      const ground = belowHorizon(angle, elevationDeg);
      if (ground === 0) return 0;
      const gain = patternGain(pattern, Math.min(to, Math.max(from, angle)));
      if (gain.kind !== 'gain') return 0;
      const stretch = half * Math.cos(u) * RADIANS_PER_DEGREE;
      return stretch * ground * dbToRatio(gain.gainDbi - meanDb) * sinDeg(angle);
    },
    -Math.PI / 2,
    Math.PI / 2,
  );
}

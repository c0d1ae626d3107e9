/** What a pattern is given as, and what is found in it. */

import type { Keys } from '../../keys.js';
import type { Region } from './patternShape.js';

/** A reflector in a reference pattern. */
export interface Sized {
  /** Diameter in metres, at least 10 wavelengths. */
  readonly diameterM: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
}

/** A reflector in the pattern of BO.1213-1, which has a cross-polar part too. */
export interface Bo1213Pattern extends Sized {
  readonly kind: 'BO.1213-1';
  /** Gain on the axis in dBi, 0 to 80. */
  readonly peakGainDbi: number;
}

export const BO1213_PATTERN_KEYS = {
  kind: true,
  peakGainDbi: true,
  diameterM: true,
  frequencyGHz: true,
} satisfies Keys<Bo1213Pattern>;

/** An antenna's pattern; round about its axis. */
export type AntennaPattern =
  | (Sized & { readonly kind: 'S.465-6' | 'S.580-6' | 'S.1428-1' | 'RR-AP8' })
  | Bo1213Pattern
  | (Sized & {
      readonly kind: 'RR-AP7' | 'RR-AP30';
      /** Gain on the axis in dBi, 0 to 80. */
      readonly peakGainDbi: number;
    })
  | {
      readonly kind: 'gaussian';
      /** Gain on the axis in dBi. */
      readonly peakGainDbi: number;
      /** Half-power beamwidth in degrees. */
      readonly beamwidthDeg: number;
      /** Level in dBi below which the pattern does not fall; default -10. */
      readonly floorDbi?: number;
    }
  | (Sized & {
      readonly kind: 'illuminated';
      /** Gain on the axis in dBi. */
      readonly peakGainDbi: number;
      /** Power at the rim below that at the centre, in dB, 0 to 60. */
      readonly edgeTaperDb: number;
      /** Exponent of the parabola, 1 or 2; default 1. */
      readonly exponent?: 1 | 2;
      /** Level in dBi below which the pattern does not fall; default -10. */
      readonly floorDbi?: number;
    })
  | {
      readonly kind: 'table';
      /** Angles off the axis in degrees, strictly increasing, at least two, 0 to 180. */
      readonly offAxisDeg: readonly number[];
      /** Gain at each angle in dBi. */
      readonly gainDbi: readonly number[];
    };

export const ANTENNA_PATTERN_KEYS = {
  diameterM: true,
  frequencyGHz: true,
  kind: true,
  peakGainDbi: true,
  beamwidthDeg: true,
  floorDbi: true,
  edgeTaperDb: true,
  exponent: true,
  offAxisDeg: true,
  gainDbi: true,
} satisfies Keys<AntennaPattern>;

/** Outcome of `patternGain`. */
export type PatternGain =
  | {
      readonly kind: 'gain';
      /** Gain in dBi towards the angle. */
      readonly gainDbi: number;
      /** Part of the pattern that the angle falls into. */
      readonly region: Region;
      /** What was computed: the recommendation with its edition, or the formula. */
      readonly edition: string;
      /** Fields outside the range that the recommendation states. */
      readonly outsideStatedRange: readonly string[];
    }
  | {
      /** The pattern says nothing at this angle: S.465 and S.580 near the axis, a table beyond its ends. */
      readonly kind: 'not-specified';
      /** First angle in degrees at which it says something. */
      readonly specifiedFromDeg: number;
      /** Last such angle in degrees. */
      readonly specifiedToDeg: number;
      readonly edition: string;
      readonly outsideStatedRange: readonly string[];
    };

/** One stretch of a pattern. */
export interface PatternSegment {
  /** First angle of the stretch in degrees. */
  readonly fromDeg: number;
  /** Where it ends, in degrees. */
  readonly toDeg: number;
  /** Part of the pattern. */
  readonly region: Region;
  /** Gain at its beginning in dBi. */
  readonly fromDbi: number;
  /** Gain just before its end in dBi. */
  readonly toDbi: number;
}

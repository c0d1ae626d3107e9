/** Pointing loss on an antenna's own pattern instead of the Gaussian lobe. */

import { inRange } from '../../errors.js';
import { patternGain, shapeOf } from './pattern.js';
import type { AntennaPattern } from './patternTypes.js';

/** Outcome of {@link patternPointingLoss}. */
export type PatternPointingLoss =
  | {
      readonly kind: 'loss';
      /** Gain on the axis less gain at the offset, in dB; negative if the table rises beside its first sample. */
      readonly lossDb: number;
      /** Gain on the axis in dBi. */
      readonly axisGainDbi: number;
      /** Gain at the offset in dBi. */
      readonly offsetGainDbi: number;
    }
  | {
      /** The pattern says nothing on the axis or at the offset. */
      readonly kind: 'not-specified';
      /** First angle in degrees at which it says something. */
      readonly specifiedFromDeg: number;
      /** Last such angle in degrees. */
      readonly specifiedToDeg: number;
    };

/**
 * Loss of an antenna that points `offsetDeg` beside the satellite, on its own pattern.
 *
 * @param pattern  Any pattern with a main lobe: `illuminated`, `table`, `gaussian`, or a reference pattern
 *   that begins at the axis; S.465-6 and S.580-6 give `not-specified`.
 * @param offsetDeg  Angle on the sky in degrees, either sign, within 180.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definition. Accuracy: that of the pattern.
 * @example
 * ```ts
 * import { patternPointingLoss } from 'slantpath/antenna';
 * const loss = patternPointingLoss(
 *   { kind: 'table', offAxisDeg: [0, 0.5, 1], gainDbi: [39, 38.2, 36] },
 *   0.25,
 * );
 * loss.kind === 'loss' && loss.lossDb.toFixed(3); // => '0.400'
 * ```
 */
export function patternPointingLoss(
  pattern: AntennaPattern,
  offsetDeg: number,
): PatternPointingLoss {
  inRange('offsetDeg', offsetDeg, -180, 180);
  const axis = patternGain(pattern, 0);
  const offset = patternGain(pattern, offsetDeg);
  if (axis.kind === 'gain' && offset.kind === 'gain')
    return {
      kind: 'loss',
      lossDb: axis.gainDbi - offset.gainDbi,
      axisGainDbi: axis.gainDbi,
      offsetGainDbi: offset.gainDbi,
    };
  const shape = shapeOf(pattern);
  return {
    kind: 'not-specified',
    specifiedFromDeg: shape.segments[0]?.fromDeg ?? 0,
    specifiedToDeg: shape.endDeg,
  };
}

/** Preset of an offset reflector: its offset angle from the rim, and the reading of the elevation scale. */

import { DomainError, inRange, oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { acosDeg } from '../../numeric/angle.js';

/** Rim of an offset reflector as measured with a tape. */
export interface ReflectorRim {
  /** Width of the rim in metres, 0.05 to 100. */
  readonly widthM: number;
  /** Height of the rim in metres along its face, not less than the width. */
  readonly heightM: number;
}

const REFLECTOR_RIM_KEYS = { widthM: true, heightM: true } satisfies Keys<ReflectorRim>;

/** Offset angle from the rim. */
export interface OffsetAngle {
  /** Angle between the beam and the perpendicular of the rim's plane in degrees, 0 to 90. */
  readonly offsetAngleDeg: number;
  /** Change of that angle for a height 1 mm greater, in degrees. */
  readonly changePerMmOfHeightDeg: number;
}

/**
 * Offset angle of a reflector whose rim looks round along the beam: acos(width / height).
 *
 * A paraboloid cut by a round beam has a flat elliptical rim. Seen along the beam the ellipse is a circle, so
 * its height is foreshortened to its width by the cosine of the angle between beam and rim perpendicular.
 * Reflectors whose rim is not cut by a round beam (a round rim, a trimmed edge) need the maker's figure.
 *
 * @throws {@link DomainError} naming `widthM` or `heightM`; `inconsistent` for a rim wider than high.
 *
 * Source: geometry of the offset paraboloid.
 * Accuracy: exact for such a rim; `changePerMmOfHeightDeg` tells what the tape's error does.
 * @example
 * ```ts
 * import { offsetAngleFromRim } from 'slantpath/pointing';
 * offsetAngleFromRim({ widthM: 0.9, heightM: 0.99 }).offsetAngleDeg.toFixed(2); // => '24.62'
 * ```
 */
export function offsetAngleFromRim(rim: ReflectorRim): OffsetAngle {
  const { widthM, heightM } = knownOnly('rim', rim, REFLECTOR_RIM_KEYS);
  inRange('widthM', widthM, 0.05, 100, 'is the width in metres?');
  inRange('heightM', heightM, 0.05, 200, 'is the height in metres?');
  if (widthM > heightM)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'heightM',
      received: heightM,
      allowed: `not less than widthM, ${widthM}`,
      slip: 'were width and height swapped?',
    });
  const ratio = widthM / heightM;
  const offsetAngleDeg = acosDeg(ratio);
  // A finite step, since the derivative is infinite for a round rim.
  const changed = acosDeg(widthM / (heightM + 0.001));
  return { offsetAngleDeg, changePerMmOfHeightDeg: changed - offsetAngleDeg };
}

/** What {@link offsetReflectorPreset} is asked. */
export interface OffsetReflectorInput {
  /** Elevation of the satellite in degrees, -5 to 90. */
  readonly elevationDeg: number;
  /** Angle between the beam and the perpendicular of the rim's plane in degrees, 0 to 60. */
  readonly offsetAngleDeg: number;
  /** `upright` (feed below, the usual way; when left out) or `inverted` (feed above, reflector upside down). */
  readonly mounting?: 'upright' | 'inverted';
  /**
   * Offset that the elevation scale already counts in, in degrees, for the upright mounting: 0 for an
   * inclinometer laid on the rim (when left out), the offset angle for a scale marked in true elevation.
   */
  readonly scaleOffsetDeg?: number;
}

const OFFSET_REFLECTOR_INPUT_KEYS = {
  elevationDeg: true,
  offsetAngleDeg: true,
  mounting: true,
  scaleOffsetDeg: true,
} satisfies Keys<OffsetReflectorInput>;

/** How the reflector is preset. */
export interface OffsetReflectorPreset {
  /** Elevation of the rim's perpendicular in degrees; negative when the face looks below the horizontal. */
  readonly faceElevationDeg: number;
  /** Lean of the face from the vertical in degrees: positive backwards, towards the sky; negative forwards. */
  readonly faceLeanDeg: number;
  /** Reading of the elevation scale in degrees. */
  readonly scaleReadingDeg: number;
  /** Whether the open face looks at or below the horizontal, so that rain and snow do not lie in it. */
  readonly facesDown: boolean;
}

/**
 * Preset of an offset reflector for an elevation.
 *
 * Upright, the beam leaves above the rim's perpendicular by the offset angle, so the face stands at
 * elevation - offset; inverted, the beam leaves below it and the face stands at elevation + offset.
 * The scale reads the face's elevation plus the offset it counts in.
 *
 * @throws {@link DomainError} naming `elevationDeg`, `offsetAngleDeg`, `mounting` or `scaleOffsetDeg`.
 *
 * Source: geometry.
 * Accuracy: exact.
 * @example
 * ```ts
 * import { offsetReflectorPreset } from 'slantpath/pointing';
 * offsetReflectorPreset({ elevationDeg: 36, offsetAngleDeg: 24 }).faceLeanDeg; // => 12
 * ```
 */
export function offsetReflectorPreset(input: OffsetReflectorInput): OffsetReflectorPreset {
  const { elevationDeg, offsetAngleDeg, mounting, scaleOffsetDeg } = knownOnly(
    'input',
    input,
    OFFSET_REFLECTOR_INPUT_KEYS,
  );
  inRange('elevationDeg', elevationDeg, -5, 90);
  inRange('offsetAngleDeg', offsetAngleDeg, 0, 60, 'is it the angle from the rim perpendicular?');
  const way = oneOf('mounting', mounting ?? 'upright', ['upright', 'inverted']);
  const counted = inRange('scaleOffsetDeg', scaleOffsetDeg ?? 0, -90, 90);
  const faceElevationDeg =
    (way === 'upright' ? elevationDeg - offsetAngleDeg : elevationDeg + offsetAngleDeg) + 0;
  return {
    faceElevationDeg,
    faceLeanDeg: faceElevationDeg,
    scaleReadingDeg: faceElevationDeg + counted + 0,
    facesDown: faceElevationDeg <= 0,
  };
}

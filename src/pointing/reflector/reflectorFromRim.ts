/** Focal length and feed place of an offset reflector from its rim and depth, by tape. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { asinDeg, RADIANS_PER_DEGREE } from '../../numeric/angle.js';
import { offsetAngleFromRim, type ReflectorRim } from './offsetReflector.js';

/** Rim and depth of a reflector as measured. */
export interface ReflectorMeasured extends ReflectorRim {
  /** Greatest depth below the plane of the rim, at its middle, in metres, 0.01 to 0.5 of the width. */
  readonly depthM: number;
}

const REFLECTOR_MEASURED_KEYS = {
  depthM: true,
  widthM: true,
  heightM: true,
} satisfies Keys<ReflectorMeasured>;

/** Shape of the paraboloid and where its focus lies. */
export interface ReflectorFromRim {
  /** Diameter as seen along the beam in metres: the width of the rim. */
  readonly diameterM: number;
  /** Angle between the beam and the perpendicular of the rim's plane in degrees. */
  readonly offsetAngleDeg: number;
  /** Focal length of the paraboloid in metres. */
  readonly focalLengthM: number;
  /** Distance of the rim's lower end from the paraboloid's axis in metres, upright mounting; negative if the axis passes inside the rim. */
  readonly clearanceM: number;
  /** Distance from the rim's lower end to the focus in metres: the length of a string. */
  readonly lowerEndToFocusM: number;
  /** Distance from the rim's upper end to the focus in metres. */
  readonly upperEndToFocusM: number;
  /** Angle at the focus between the axis and the line to the middle of the reflector in degrees: twice the offset angle. */
  readonly feedAngleDeg: number;
  /** Half of the angle at the focus between lower and upper end of the rim in degrees. */
  readonly halfSubtendedDeg: number;
}

/**
 * Shape of a paraboloid from width, height and depth of its rim.
 *
 * The chord between the ends of the rim spans w across the beam, so the paraboloid lies w^2 / (16 f) below its middle, measured along
 * the axis; square to the rim's plane that is the depth d = w^3 / (16 f h). The rim's plane leans by the offset angle, whose tangent is the
 * middle's distance from the axis over 2 f; two strings to the ends of the rim then find the focus.
 *
 * @throws {@link DomainError} naming `widthM`, `heightM` or `depthM`.
 *
 * Source: geometry of the paraboloid.
 * Accuracy: exact for such a rim; 1 % of depth is 1 % of focal length.
 * @example
 * ```ts
 * import { reflectorFromRim } from 'slantpath/pointing';
 * // A paraboloid of 0.54 m focal length, 0.9 m wide, cut so that the beam leaves at 24 degrees.
 * const shape = reflectorFromRim({ widthM: 0.9, heightM: 0.98517, depthM: 0.085644 });
 * [shape.offsetAngleDeg.toFixed(1), shape.focalLengthM.toFixed(3)]; // => ['24.0', '0.540']
 * ```
 */
export function reflectorFromRim(measured: ReflectorMeasured): ReflectorFromRim {
  const { widthM, heightM, depthM } = knownOnly('measured', measured, REFLECTOR_MEASURED_KEYS);
  const { offsetAngleDeg } = offsetAngleFromRim({ widthM, heightM });
  inRange('heightM', heightM, widthM, 2 * widthM);
  inRange('depthM', depthM, 0.01 * widthM, 0.5 * widthM, 'is the depth in metres?');
  const focalLengthM = widthM ** 3 / (16 * depthM * heightM);
  const middleM = 2 * focalLengthM * Math.tan(offsetAngleDeg * RADIANS_PER_DEGREE);
  const toFocus = (fromAxisM: number): number => focalLengthM + fromAxisM ** 2 / (4 * focalLengthM);
  const lower = toFocus(middleM - widthM / 2);
  const upper = toFocus(middleM + widthM / 2);
  // Half the angle between two known sides across a known chord.
  const chord = heightM;
  const halfSine = Math.sqrt((chord ** 2 - (lower - upper) ** 2) / (4 * lower * upper));
  return {
    diameterM: widthM,
    offsetAngleDeg,
    focalLengthM,
    clearanceM: middleM - widthM / 2,
    lowerEndToFocusM: lower,
    upperEndToFocusM: upper,
    feedAngleDeg: 2 * offsetAngleDeg,
    halfSubtendedDeg: asinDeg(halfSine),
  };
}

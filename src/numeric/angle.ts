/**
 * Angles in degrees: reduction to a named range, and trigonometry that is exact at the cardinal angles.
 *
 * The reduction follows the idea of C. F. F. Karney's geodesic work (J. Geodesy 87, 2013): bring the
 * angle near zero while it is still an exact number of degrees, and only then turn it into radians.
 */

/** Radians in a degree. */
export const RADIANS_PER_DEGREE = Math.PI / 180;

/** Degrees in a radian. */
export const DEGREES_PER_RADIAN = 180 / Math.PI;

/** Longitude or difference brought to [-180, 180); exact; -0 never comes out. */
export function wrapLongitudeDeg(angleDeg: number): number {
  if (angleDeg >= -180 && angleDeg < 180) return angleDeg + 0;
  const turn = angleDeg % 360;
  return (turn < -180 ? turn + 360 : turn >= 180 ? turn - 360 : turn) + 0;
}

/** Azimuth brought to [0, 360); exact for values in one turn; -0 never comes out. */
export function wrapAzimuthDeg(angleDeg: number): number {
  const turn = angleDeg % 360;
  const wrapped = turn < 0 ? turn + 360 : turn;
  // A tiny negative angle rounds up to a full turn.
  return wrapped === 360 ? 0 : wrapped + 0;
}

/** Shortest signed turn from one direction to another, in [-180, 180), clockwise positive for azimuths. */
export function turnDeg(fromDeg: number, toDeg: number): number {
  return wrapLongitudeDeg((toDeg % 360) - (fromDeg % 360));
}

/** Sine of an angle in degrees; exact at every multiple of 90. */
export function sinDeg(angleDeg: number): number {
  const reduced = wrapLongitudeDeg(angleDeg);
  if (reduced > 90) return Math.sin((180 - reduced) * RADIANS_PER_DEGREE);
  if (reduced < -90) return 0 - Math.sin((180 + reduced) * RADIANS_PER_DEGREE);
  return Math.sin(reduced * RADIANS_PER_DEGREE);
}

/** Cosine of an angle in degrees; exact at every multiple of 90. */
export function cosDeg(angleDeg: number): number {
  const reduced = Math.abs(wrapLongitudeDeg(angleDeg));
  if (reduced > 45 && reduced < 135) return Math.sin((90 - reduced) * RADIANS_PER_DEGREE);
  return Math.cos(reduced * RADIANS_PER_DEGREE);
}

/** Tangent of an angle in degrees; beyond 1e16 in size at 90. */
export function tanDeg(angleDeg: number): number {
  return Math.tan(angleDeg * RADIANS_PER_DEGREE);
}

/** Direction of the vector (`x`, `y`) in degrees, counted from x towards y, in (-180, 180]. */
export function atan2Deg(y: number, x: number): number {
  return Math.atan2(y, x) * DEGREES_PER_RADIAN;
}

/** Arcsine in degrees; an argument a hair beyond 1 counts as 1. */
export function asinDeg(ratio: number): number {
  return Math.asin(Math.max(-1, Math.min(1, ratio))) * DEGREES_PER_RADIAN;
}

/** Arccosine in degrees; an argument a hair beyond 1 counts as 1. Badly conditioned near 0 and 180. */
export function acosDeg(ratio: number): number {
  return Math.acos(Math.max(-1, Math.min(1, ratio))) * DEGREES_PER_RADIAN;
}

/** Direction of a line, which has no head, brought to [-90, 90). */
export function lineDeg(angleDeg: number): number {
  return wrapLongitudeDeg(2 * (angleDeg % 180)) / 2 + 0;
}

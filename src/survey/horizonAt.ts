/** The skyline of a profile at any azimuth. */

import { DomainError, finite, inRange, objects } from '../errors.js';
import { known } from '../keys.js';
import {
  DEGREES_PER_RADIAN,
  RADIANS_PER_DEGREE,
  sinDeg,
  wrapAzimuthDeg,
} from '../numeric/angle.js';
import type { HorizonPoint, HorizonProfile } from './horizonProfile.js';
import { HORIZON_PROFILE_KEYS } from './horizonProfile.js';

/** The skyline at an azimuth; read `kind` first. */
export type HorizonAt =
  | {
      /** `sighted`: at a sighting or between two close enough. */
      readonly kind: 'sighted';
      /** Elevation of the skyline in degrees. */
      readonly elevationDeg: number;
    }
  | {
      /** `not-sighted`: in a gap wider than the profile's `widestGapDeg`; nothing is known there. */
      readonly kind: 'not-sighted';
      /** Azimuth at which the gap begins, clockwise, in degrees. */
      readonly gapFromDeg: number;
      /** Azimuth at which it ends. */
      readonly gapToDeg: number;
    };

/**
 * Elevation of the skyline at an azimuth.
 *
 * Between neighbours 1 and 2 the skyline is a straight edge in space, which the eye sees as a great circle:
 * tan e = (tan e1 sin(a2 - a) + tan e2 sin(a - a1)) / sin(a2 - a1). It rises above the straight line drawn
 * between the two angles: by 7 degrees in the middle of a wall sighted at 20 degrees at two corners 90 degrees
 * apart. At a vertical edge the higher side counts.
 *
 * @param profile  From `horizonProfile`.
 * @param azimuthDeg  Azimuth in degrees from true north, any turn.
 * @throws {@link DomainError} `missing`, `not-a-number` or `not-finite`.
 *
 * Source: own derivation (plane through the eye and a straight edge). Accuracy: rounding only, for a straight edge.
 * @example
 * ```ts
 * import { horizonAt, horizonProfile } from 'slantpath/survey';
 * const wall = horizonProfile({
 *   sightings: [
 *     { azimuthDeg: 160, elevationDeg: 20 },
 *     { azimuthDeg: 200, elevationDeg: 20 },
 *   ],
 * });
 * const middle = horizonAt(wall, 180);
 * middle.kind === 'sighted' && middle.elevationDeg.toFixed(2); // => '21.17'
 * horizonAt(wall, 250).kind; // => 'not-sighted'
 * ```
 */
export function horizonAt(profile: HorizonProfile, azimuthDeg: number): HorizonAt {
  const { points, widestGapDeg: gap } = known('profile', profile, HORIZON_PROFILE_KEYS);
  if (!Array.isArray(points) || points.length === 0) {
    throw new DomainError({
      code: points === undefined || points === null ? 'missing' : 'empty',
      parameter: 'profile.points',
      received: points,
      allowed: 'a list of at least one point, as horizonProfile gives it',
    });
  }
  const azimuth = wrapAzimuthDeg(finite('azimuthDeg', azimuthDeg));
  let before: HorizonPoint | undefined;
  let after: HorizonPoint | undefined;
  let highest: number | undefined;
  const skyline = objects<HorizonPoint>('profile.points', points).map((point, index) => ({
    azimuthDeg: inRange('profile.points.azimuthDeg', point.azimuthDeg, 0, 360, undefined, index),
    elevationDeg: inRange(
      'profile.points.elevationDeg',
      point.elevationDeg,
      -90,
      90,
      undefined,
      index,
    ),
  }));
  const widestGapDeg = inRange('profile.widestGapDeg', gap, 0, 360);
  for (const point of skyline) {
    if (point.azimuthDeg === azimuth) highest = Math.max(highest ?? -90, point.elevationDeg);
    else if (point.azimuthDeg < azimuth) before = point;
    else after ??= point;
  }
  if (highest !== undefined) return { kind: 'sighted', elevationDeg: highest };
  // Through north the last point is followed by the first.
  const from = before ?? (skyline[skyline.length - 1] as HorizonPoint);
  const to = after ?? (skyline[0] as HorizonPoint);
  const gapDeg =
    to.azimuthDeg - from.azimuthDeg + (after === undefined || before === undefined ? 360 : 0);
  if (gapDeg > widestGapDeg)
    return { kind: 'not-sighted', gapFromDeg: from.azimuthDeg, gapToDeg: to.azimuthDeg };
  const fromDeg = wrapAzimuthDeg(azimuth - from.azimuthDeg);
  const tangent =
    (Math.tan(from.elevationDeg * RADIANS_PER_DEGREE) * sinDeg(gapDeg - fromDeg) +
      Math.tan(to.elevationDeg * RADIANS_PER_DEGREE) * sinDeg(fromDeg)) /
    sinDeg(gapDeg);
  return { kind: 'sighted', elevationDeg: Math.atan(tangent) * DEGREES_PER_RADIAN };
}

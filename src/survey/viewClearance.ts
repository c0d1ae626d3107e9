/** Whether the view in a direction is clear of the skyline, and by how much. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { horizonAt } from './horizonAt.js';
import type { HorizonProfile } from './horizonProfile.js';

/** The view in a direction; read `kind` first. */
export type ViewClearance =
  | {
      /** `clear`: at least the required clearance; `tight`: above the skyline, but by less; `blocked`: behind it. */
      readonly kind: 'clear' | 'tight' | 'blocked';
      /** Elevation of the skyline under the direction, in degrees. */
      readonly horizonElevationDeg: number;
      /** Elevation of the direction less that of the skyline, in degrees; negative when blocked. */
      readonly clearanceDeg: number;
      /** Clearance less the required one, in degrees; negative when tight or blocked. */
      readonly spareDeg: number;
    }
  | {
      /** `not-sighted`: the profile says nothing in that direction. */
      readonly kind: 'not-sighted';
      /** Azimuth at which the gap in the sightings begins, clockwise, in degrees. */
      readonly gapFromDeg: number;
      /** Azimuth at which it ends. */
      readonly gapToDeg: number;
    };

const VIEW_CLEARANCE_DIRECTION_KEYS = {
  azimuthDeg: true,
  elevationDeg: true,
  requiredClearanceDeg: true,
} satisfies Keys<Parameters<typeof viewClearance>[1]>;

/**
 * Clearance of a direction over a measured horizon.
 *
 * @param profile  From `horizonProfile`, sighted from where the reflector will stand.
 * @param direction  `azimuthDeg` from true north and `elevationDeg`, as `lookAngles` gives them;
 *   `requiredClearanceDeg` from 0 to 30, default 0: half the beamwidth at the very least, and the growth of
 *   trees.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: definition. Accuracy: that of the sightings.
 * @example
 * ```ts
 * import { horizonProfile, viewClearance } from 'slantpath/survey';
 * const profile = horizonProfile({
 *   sightings: [
 *     { azimuthDeg: 150, elevationDeg: 12 },
 *     { azimuthDeg: 190, elevationDeg: 12 },
 *   ],
 * });
 * const view = viewClearance(profile, { azimuthDeg: 150, elevationDeg: 36.2, requiredClearanceDeg: 2 });
 * view.kind; // => 'clear'
 * ```
 */
export function viewClearance(
  profile: HorizonProfile,
  direction: {
    readonly azimuthDeg: number;
    readonly elevationDeg: number;
    readonly requiredClearanceDeg?: number;
  },
): ViewClearance {
  const { azimuthDeg, elevationDeg, requiredClearanceDeg } = knownOnly(
    'direction',
    direction,
    VIEW_CLEARANCE_DIRECTION_KEYS,
  );
  const elevation = inRange('elevationDeg', elevationDeg, -90, 90);
  const required = inRange('requiredClearanceDeg', requiredClearanceDeg ?? 0, 0, 30);
  const horizon = horizonAt(profile, azimuthDeg);
  if (horizon.kind === 'not-sighted') return horizon;
  const clearanceDeg = elevation - horizon.elevationDeg;
  const spareDeg = clearanceDeg - required;
  return {
    kind: clearanceDeg <= 0 ? 'blocked' : spareDeg < 0 ? 'tight' : 'clear',
    horizonElevationDeg: horizon.elevationDeg,
    clearanceDeg,
    spareDeg,
  };
}

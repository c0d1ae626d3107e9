/** True and magnetic bearings, both ways. */

import { finite, inRange } from '../errors.js';
import { wrapAzimuthDeg } from '../numeric/angle.js';

const SLIP = 'is the declination in degrees, east positive?';

/**
 * Magnetic bearing of a true azimuth: what a compass shows in that direction.
 *
 * magnetic = true - declination, the declination being positive where the needle points east of true
 * north. The compass's own deviation (iron nearby) is not in it.
 *
 * @param azimuthDeg  Azimuth in degrees from true north, clockwise, any turn.
 * @param declinationDeg  Declination in degrees, east positive, -180 to 180.
 * @returns Bearing in degrees from magnetic north, clockwise, [0, 360).
 * @throws {@link DomainError} `not-finite`, `out-of-range`, `missing` or `not-a-number`.
 *
 * Source: definition of declination (WMM2025 report, section 1). Accuracy: rounding only.
 * @example
 * ```ts
 * import { trueToMagneticBearing } from 'slantpath/magnetic';
 * trueToMagneticBearing(170.5, 3.5); // => 167
 * ```
 */
export function trueToMagneticBearing(azimuthDeg: number, declinationDeg: number): number {
  return wrapAzimuthDeg(
    (finite('azimuthDeg', azimuthDeg) % 360) -
      inRange('declinationDeg', declinationDeg, -180, 180, SLIP),
  );
}

/**
 * True azimuth of a magnetic bearing: true = magnetic + declination.
 *
 * @param magneticBearingDeg  Bearing read on a compass, degrees clockwise from magnetic north, any turn.
 * @param declinationDeg  Declination in degrees, east positive, -180 to 180.
 * @returns Azimuth in degrees from true north, clockwise, [0, 360).
 * @throws {@link DomainError} `not-finite`, `out-of-range`, `missing` or `not-a-number`.
 *
 * Source: definition of declination (WMM2025 report, section 1). Accuracy: rounding only.
 * @example
 * ```ts
 * import { magneticToTrueBearing } from 'slantpath/magnetic';
 * magneticToTrueBearing(358, 3.5); // => 1.5
 * ```
 */
export function magneticToTrueBearing(magneticBearingDeg: number, declinationDeg: number): number {
  return wrapAzimuthDeg(
    (finite('magneticBearingDeg', magneticBearingDeg) % 360) +
      inRange('declinationDeg', declinationDeg, -180, 180, SLIP),
  );
}

/** True and magnetic bearings, both ways. */

import { finite, inRange } from '../errors.js';
import { knownOnly } from '../keys.js';
import { wrapAzimuthDeg } from '../numeric/angle.js';

const SLIP = 'is the declination in degrees, east positive?';
const TRUE_KEYS = { azimuthDeg: true, declinationDeg: true } as const;
const MAGNETIC_KEYS = { magneticBearingDeg: true, declinationDeg: true } as const;

/**
 * Magnetic bearing of a true azimuth: what a compass shows in that direction.
 *
 * magnetic = true - declination, the declination being positive where the needle points east of true
 * north. The compass's own deviation (iron nearby) is not in it.
 *
 * @param bearing  `azimuthDeg`, degrees clockwise from true north, any turn; `declinationDeg`, east positive, -180 to 180.
 * @returns Bearing in degrees from magnetic north, clockwise, [0, 360).
 * @throws {@link DomainError} `not-finite`, `out-of-range`, `missing` or `not-a-number`.
 *
 * Source: definition of declination (WMM2025 report, section 1). Accuracy: rounding only.
 * @example
 * ```ts
 * import { trueToMagneticBearing } from 'slantpath/magnetic';
 * trueToMagneticBearing({ azimuthDeg: 170.5, declinationDeg: 3.5 }); // => 167
 * ```
 */
export function trueToMagneticBearing(bearing: {
  readonly azimuthDeg: number;
  readonly declinationDeg: number;
}): number {
  const { azimuthDeg, declinationDeg } = knownOnly('input', bearing, TRUE_KEYS);
  return wrapAzimuthDeg(
    (finite('azimuthDeg', azimuthDeg) % 360) -
      inRange('declinationDeg', declinationDeg, -180, 180, SLIP),
  );
}

/**
 * True azimuth of a magnetic bearing: true = magnetic + declination.
 *
 * @param bearing  `magneticBearingDeg`, read on a compass, degrees clockwise from magnetic north, any turn;
 *   `declinationDeg`, east positive, -180 to 180.
 * @returns Azimuth in degrees from true north, clockwise, [0, 360).
 * @throws {@link DomainError} `not-finite`, `out-of-range`, `missing` or `not-a-number`.
 *
 * Source: definition of declination (WMM2025 report, section 1). Accuracy: rounding only.
 * @example
 * ```ts
 * import { magneticToTrueBearing } from 'slantpath/magnetic';
 * magneticToTrueBearing({ magneticBearingDeg: 358, declinationDeg: 3.5 }); // => 1.5
 * ```
 */
export function magneticToTrueBearing(bearing: {
  readonly magneticBearingDeg: number;
  readonly declinationDeg: number;
}): number {
  const { magneticBearingDeg, declinationDeg } = knownOnly('input', bearing, MAGNETIC_KEYS);
  return wrapAzimuthDeg(
    (finite('magneticBearingDeg', magneticBearingDeg) % 360) +
      inRange('declinationDeg', declinationDeg, -180, 180, SLIP),
  );
}

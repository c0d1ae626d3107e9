/** Earth-fixed coordinates back to latitude, longitude and height (WGS 84). */

import {
  WGS84_ECCENTRICITY_SQUARED_RATIO,
  WGS84_FLATTENING_RATIO,
  WGS84_SEMI_MAJOR_AXIS_KM,
} from '../constants.js';
import { DomainError, finite } from '../errors.js';
import { known } from '../keys.js';
import { DEGREES_PER_RADIAN, wrapLongitudeDeg } from '../numeric/angle.js';
import type { EcefKm } from './ecef.js';
import { ECEF_KM_KEYS } from './ecef.js';
import type { Station } from './station.js';

const SEMI_MINOR_AXIS_KM = WGS84_SEMI_MAJOR_AXIS_KM * (1 - WGS84_FLATTENING_RATIO);
const SECOND_ECCENTRICITY_SQUARED_RATIO =
  WGS84_ECCENTRICITY_SQUARED_RATIO / (1 - WGS84_ECCENTRICITY_SQUARED_RATIO);

/**
 * Latitude, longitude and height of an Earth-fixed point: the inverse of `stationToEcef`.
 *
 * Bowring's iteration on the reduced latitude b: tan lat = (z + e'^2 B sin^3 b) / (p - e^2 a cos^3 b)
 * with p the distance from the axis; then h = p cos lat + z sin lat - a sqrt(1 - e^2 sin^2 lat). On the
 * axis the longitude has no meaning and is given as 0.
 *
 * @param ecef  Kilometres in the Earth-fixed frame, 6000 to 1000000 from the Earth's centre, so that a
 *   satellite's position is taken too.
 * @returns Geodetic latitude, longitude in [-180, 180), height above the ellipsoid in metres.
 * @throws {@link DomainError} `out-of-range` for a point near the Earth's centre or far out, `missing`,
 *   `not-a-number`, `not-finite` for a bad coordinate.
 *
 * Source: B. R. Bowring, Survey Review 23 (1976); IOGP Guidance Note 7-2, section 4.1.1.
 * Accuracy: 1e-13 degree in latitude and 1e-8 m in height for points up to 100 km above the ground.
 * @example
 * ```ts
 * import { ecefToStation } from 'slantpath/earth';
 * ecefToStation({ xKm: 0, yKm: 6379.137, zKm: 0 }); // => { latitudeDeg: 0, longitudeDeg: 90, heightM: 1000 }
 * ```
 */
export function ecefToStation(ecef: EcefKm): Station {
  const { xKm, yKm, zKm } = checkedEcef(ecef);
  const axisKm = Math.hypot(xKm, yKm);
  let sine = 0;
  let cosine = 1;
  let reduced = Math.atan2(zKm * WGS84_SEMI_MAJOR_AXIS_KM, axisKm * SEMI_MINOR_AXIS_KM);
  // Each step gains about five digits near the ground; four are enough at any height allowed.
  for (let step = 0; step < 4; step++) {
    const north =
      zKm + SECOND_ECCENTRICITY_SQUARED_RATIO * SEMI_MINOR_AXIS_KM * Math.sin(reduced) ** 3;
    const out =
      axisKm - WGS84_ECCENTRICITY_SQUARED_RATIO * WGS84_SEMI_MAJOR_AXIS_KM * Math.cos(reduced) ** 3;
    const length = Math.hypot(north, out);
    sine = north / length;
    cosine = out / length;
    reduced = Math.atan2(sine * (1 - WGS84_FLATTENING_RATIO), cosine);
  }
  const heightKm =
    axisKm * cosine +
    zKm * sine -
    WGS84_SEMI_MAJOR_AXIS_KM * Math.sqrt(1 - WGS84_ECCENTRICITY_SQUARED_RATIO * sine * sine);
  return {
    latitudeDeg:
      axisKm === 0 ? Math.sign(zKm) * 90 : Math.atan2(sine, cosine) * DEGREES_PER_RADIAN + 0,
    longitudeDeg: wrapLongitudeDeg(Math.atan2(yKm, xKm) * DEGREES_PER_RADIAN),
    heightM: heightKm * 1000 + 0,
  };
}

/** The checked point, far enough from the Earth's centre for a latitude to have meaning. */
function checkedEcef(ecef: EcefKm): EcefKm {
  const { xKm, yKm, zKm } = known('ecef', ecef, ECEF_KM_KEYS);
  for (const [name, value] of Object.entries({ xKm, yKm, zKm })) finite(name, value);
  const radiusKm = Math.hypot(xKm, yKm, zKm);
  if (radiusKm >= 6000 && radiusKm <= 1e6) return { xKm, yKm, zKm };
  throw new DomainError({
    code: 'out-of-range',
    parameter: 'ecef',
    received: radiusKm,
    allowed: 'from 6000 to 1000000 km from the centre of the Earth',
    slip: radiusKm > 1e6 ? 'are the coordinates in metres?' : undefined,
  });
}

/** Geodetic and geocentric latitude, both ways. */

import { finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { cosDeg, DEGREES_PER_RADIAN, sinDeg, wrapLongitudeDeg } from '../numeric/angle.js';
import { stationToEcef } from './ecef.js';
import { ecefToStation } from './geodetic.js';
import type { Station } from './station.js';

/** A point by its direction and distance from the centre of the Earth. */
export interface GeocentricPoint {
  /** Angle in degrees between the equatorial plane and the line to the Earth's centre, north positive, -90 to 90. */
  readonly geocentricLatitudeDeg: number;
  /** Longitude in degrees, east positive, [-180, 180) in results, any turn in arguments. */
  readonly longitudeDeg: number;
  /** Distance from the centre of the Earth in kilometres. */
  readonly radiusKm: number;
}

const GEOCENTRIC_POINT_KEYS = {
  geocentricLatitudeDeg: true,
  longitudeDeg: true,
  radiusKm: true,
} satisfies Keys<GeocentricPoint>;

/**
 * Geocentric latitude and radius of a station.
 *
 * The geodetic latitude (maps, receivers, everything typed) is the angle of the plumb line of the
 * ellipsoid; the geocentric one is the angle of the line to the Earth's centre. They differ by up to
 * 0.192 degree, at 45 degrees of latitude.
 *
 * @throws {@link DomainError} for a station outside its domain.
 *
 * Source: NGA.STND.0036 (WGS 84); the WMM2025 report, equations 7 and 8.
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { stationToGeocentric } from 'slantpath/earth';
 * const centre = stationToGeocentric({ latitudeDeg: 45, longitudeDeg: 9.6, heightM: 0 });
 * (45 - centre.geocentricLatitudeDeg).toFixed(4); // => '0.1924'
 * ```
 */
export function stationToGeocentric(station: Station): GeocentricPoint {
  const { xKm, yKm, zKm } = stationToEcef(station);
  const axisKm = Math.hypot(xKm, yKm);
  return {
    geocentricLatitudeDeg: Math.atan2(zKm, axisKm) * DEGREES_PER_RADIAN + 0,
    longitudeDeg: wrapLongitudeDeg(station.longitudeDeg),
    radiusKm: Math.hypot(axisKm, zKm),
  };
}

/**
 * Station at a geocentric latitude, longitude and radius: the inverse of {@link stationToGeocentric}.
 *
 * @param point  `radiusKm` from 6000 to 1000000.
 * @throws {@link DomainError} naming `geocentricLatitudeDeg`, `longitudeDeg` or `radiusKm`.
 *
 * Source: as {@link stationToGeocentric}. Accuracy: 1e-13 degree, 1e-8 m near the ground.
 * @example
 * ```ts
 * import { geocentricToStation } from 'slantpath/earth';
 * const place = geocentricToStation({ geocentricLatitudeDeg: 45, longitudeDeg: 9.6, radiusKm: 6368 });
 * place.latitudeDeg.toFixed(4); // => '45.1924'
 * ```
 */
export function geocentricToStation(point: GeocentricPoint): Station {
  const { geocentricLatitudeDeg, longitudeDeg, radiusKm } = known(
    'point',
    point,
    GEOCENTRIC_POINT_KEYS,
  );
  const latitude = inRange('geocentricLatitudeDeg', geocentricLatitudeDeg, -90, 90);
  const longitude = wrapLongitudeDeg(finite('longitudeDeg', longitudeDeg));
  const radius = inRange('radiusKm', radiusKm, 6000, 1e6, 'is the radius in kilometres?');
  const { latitudeDeg, heightM } = ecefToStation({
    xKm: radius * cosDeg(latitude),
    yKm: 0,
    zKm: radius * sinDeg(latitude),
  });
  return { latitudeDeg, longitudeDeg: longitude, heightM };
}

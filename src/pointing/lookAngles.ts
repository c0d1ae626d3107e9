/** Look angles: where a geostationary satellite stands in the sky of a station. */

import {
  GEOSTATIONARY_RADIUS_KM,
  WGS84_ECCENTRICITY_SQUARED_RATIO,
  WGS84_SEMI_MAJOR_AXIS_KM,
} from '../constants.js';
import { checkedStation, type Station } from '../earth/station.js';
import { finite } from '../errors.js';
import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../numeric/angle.js';

/** Direction and distance of a satellite; read `kind` first. */
export type LookAngles =
  | {
      /** `visible`: above the geometric horizon. `below-horizon`: hidden by the Earth. */
      readonly kind: 'visible' | 'below-horizon';
      /** Azimuth in degrees, clockwise from true north, [0, 360). */
      readonly azimuthDeg: number;
      /** Geometric elevation in degrees above the local horizontal, -90 to 90; negative when hidden. */
      readonly elevationDeg: number;
      /** Straight distance in kilometres. */
      readonly slantRangeKm: number;
    }
  | {
      /** The satellite stands in the zenith, where azimuth has no meaning. */
      readonly kind: 'overhead';
      /** Geometric elevation in degrees, within 1e-9 of 90. */
      readonly elevationDeg: number;
      /** Straight distance in kilometres. */
      readonly slantRangeKm: number;
    };

/** Horizontal share of the line of sight below which azimuth is noise: 1e-9 degree from the zenith. */
const OVERHEAD_RATIO = 1.75e-11;

/**
 * Look angles from a station to a geostationary satellite, on the WGS 84 ellipsoid, without refraction.
 *
 * In the station's meridian frame the satellite is at r (cos d, sin d, 0), d its longitude east of the
 * station; the line of sight is turned into east, north and up.
 *
 * @param station  Where the antenna stands: geodetic latitude north positive, longitude east positive,
 *   height above the ellipsoid in metres.
 * @param orbitalLongitudeDeg  Longitude of the slot in degrees, east positive, any turn (183 equals -177).
 * @returns Azimuth clockwise from true north in [0, 360), geometric elevation, slant range; or `overhead`.
 * @throws {@link DomainError} naming `latitudeDeg`, `longitudeDeg`, `heightM` or `orbitalLongitudeDeg`.
 *
 * Source: own derivation from the WGS 84 conversion (NGA.STND.0036); nominal orbit radius 42164.169 km.
 * Accuracy: 1e-10 degree and 1e-7 m for the nominal orbit. A spherical Earth would be up to 0.033
 * degree off in elevation.
 * @example
 * ```ts
 * import { lookAngles } from 'slantpath/pointing';
 * const look = lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 }, 16.4);
 * look.elevationDeg.toFixed(3); // => '36.237'
 * ```
 */
export function lookAngles(station: Station, orbitalLongitudeDeg: number): LookAngles {
  const { latitudeDeg, longitudeDeg, heightM } = checkedStation(station);
  const differenceDeg =
    (finite('orbitalLongitudeDeg', orbitalLongitudeDeg) % 360) - (longitudeDeg % 360);
  const sinLatitude = sinDeg(latitudeDeg);
  const cosLatitude = cosDeg(latitudeDeg);
  const normalKm =
    WGS84_SEMI_MAJOR_AXIS_KM /
    Math.sqrt(1 - WGS84_ECCENTRICITY_SQUARED_RATIO * sinLatitude * sinLatitude);
  const heightKm = heightM / 1000;
  // Line of sight: away from the axis, eastward, and along the axis.
  const outKm =
    GEOSTATIONARY_RADIUS_KM * cosDeg(differenceDeg) - (normalKm + heightKm) * cosLatitude;
  const eastKm = GEOSTATIONARY_RADIUS_KM * sinDeg(differenceDeg);
  const axisKm = -(normalKm * (1 - WGS84_ECCENTRICITY_SQUARED_RATIO) + heightKm) * sinLatitude;
  const northKm = cosLatitude * axisKm - sinLatitude * outKm;
  const upKm = cosLatitude * outKm + sinLatitude * axisKm;
  const horizontalKm = Math.sqrt(eastKm * eastKm + northKm * northKm);
  const slantRangeKm = Math.sqrt(horizontalKm * horizontalKm + upKm * upKm);
  const elevationDeg = Math.atan2(upKm, horizontalKm) * DEGREES_PER_RADIAN;
  if (upKm > 0 && horizontalKm < OVERHEAD_RATIO * upKm)
    return { kind: 'overhead', elevationDeg, slantRangeKm };
  const fromNorthDeg = Math.atan2(eastKm, northKm) * DEGREES_PER_RADIAN;
  return {
    kind: upKm > 0 ? 'visible' : 'below-horizon',
    azimuthDeg: fromNorthDeg < 0 ? (fromNorthDeg + 360) % 360 : fromNorthDeg + 0,
    elevationDeg,
    slantRangeKm,
  };
}

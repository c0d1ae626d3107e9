/** Look angles: where a geostationary satellite stands in the sky of a station. */

import {
  GEOSTATIONARY_RADIUS_KM,
  WGS84_ECCENTRICITY_SQUARED_RATIO,
  WGS84_SEMI_MAJOR_AXIS_KM,
} from '../../constants.js';
import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { finite, object } from '../../errors.js';
import { hasMoreKeys } from '../../keys.js';
import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE, wrapLongitudeDeg } from '../../numeric/angle.js';
import { OVERHEAD_RATIO } from './overhead.js';

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
 * Accuracy: 1e-11 degree and 0.01 mm for the nominal orbit. A spherical Earth would be up to 0.033
 * degree off in elevation.
 * @example
 * ```ts
 * import { lookAngles } from 'slantpath/pointing';
 * const look = lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 }, 16.4);
 * look.elevationDeg.toFixed(3); // => '36.237'
 * ```
 */
export function lookAngles(station: Station, orbitalLongitudeDeg: number): LookAngles {
  let { latitudeDeg, longitudeDeg, heightM } = object('station', station);
  if (
    !plainlyGood(latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg) ||
    hasMoreKeys(station, 3)
  ) {
    ({ latitudeDeg, longitudeDeg, heightM } = checkedStation(station));
    finite('orbitalLongitudeDeg', orbitalLongitudeDeg);
  }
  const line = lineOfSight(latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg);
  const { eastKm, northKm, upKm } = line;
  const { horizontalKm, azimuthDeg, elevationDeg, slantRangeKm } = direction(eastKm, northKm, upKm);
  if (upKm > 0 && horizontalKm < OVERHEAD_RATIO * upKm)
    return { kind: 'overhead', elevationDeg, slantRangeKm };
  return { kind: upKm > 0 ? 'visible' : 'below-horizon', azimuthDeg, elevationDeg, slantRangeKm };
}

/** One cheap question for good input; the guards with their messages are asked only about doubtful input. */
export function plainlyGood(
  latitudeDeg: number,
  longitudeDeg: number,
  heightM: number,
  orbitalLongitudeDeg: number,
): boolean {
  return (
    typeof latitudeDeg === 'number' &&
    typeof longitudeDeg === 'number' &&
    typeof heightM === 'number' &&
    typeof orbitalLongitudeDeg === 'number' &&
    latitudeDeg >= -90 &&
    latitudeDeg <= 90 &&
    heightM >= -1000 &&
    heightM <= 100000 &&
    Number.isFinite(orbitalLongitudeDeg - longitudeDeg)
  );
}

/** Line of sight of checked numbers in the station's frame; short, so that engines unfold it in a loop. */
export function lineOfSight(
  latitudeDeg: number,
  longitudeDeg: number,
  heightM: number,
  orbitalLongitudeDeg: number,
) {
  const difference = longitudeDifferenceDeg(longitudeDeg, orbitalLongitudeDeg) * RADIANS_PER_DEGREE;
  const sinLatitude = Math.sin(latitudeDeg * RADIANS_PER_DEGREE);
  const cosLatitude = Math.cos(latitudeDeg * RADIANS_PER_DEGREE);
  const normalKm =
    WGS84_SEMI_MAJOR_AXIS_KM /
    Math.sqrt(1 - WGS84_ECCENTRICITY_SQUARED_RATIO * sinLatitude * sinLatitude);
  const heightKm = heightM / 1000;
  // Away from the Earth's axis, and along it.
  const outKm =
    GEOSTATIONARY_RADIUS_KM * Math.cos(difference) - (normalKm + heightKm) * cosLatitude;
  const axisKm = -(normalKm * (1 - WGS84_ECCENTRICITY_SQUARED_RATIO) + heightKm) * sinLatitude;
  return {
    sinLatitude,
    cosLatitude,
    normalKm,
    outKm,
    axisKm,
    eastKm: GEOSTATIONARY_RADIUS_KM * Math.sin(difference),
    northKm: cosLatitude * axisKm - sinLatitude * outKm,
    upKm: cosLatitude * outKm + sinLatitude * axisKm,
  };
}

function longitudeDifferenceDeg(fromDeg: number, toDeg: number): number {
  const differenceDeg = toDeg - fromDeg;
  return differenceDeg >= -180 && differenceDeg < 180
    ? differenceDeg
    : wrapLongitudeDeg((toDeg % 360) - (fromDeg % 360));
}

/** Azimuth (0 straight up), elevation and range of a line of sight. */
export function direction(eastKm: number, northKm: number, upKm: number) {
  const horizontalKm = Math.sqrt(eastKm * eastKm + northKm * northKm);
  // Bearing by half its angle from the nearer of north and south: four quadrants, and nothing cancels.
  const half = Math.atan(eastKm / (horizontalKm + Math.abs(northKm)));
  const bearingDeg = (northKm < 0 ? Math.PI - 2 * half : 2 * half) * DEGREES_PER_RADIAN;
  const azimuthDeg = bearingDeg < 0 ? bearingDeg + 360 : bearingDeg;
  return {
    horizontalKm,
    // A tiny negative bearing rounds up to a full turn; straight up it is no number.
    azimuthDeg: azimuthDeg >= 0 && azimuthDeg < 360 ? azimuthDeg + 0 : 0,
    // Straight up the quotient is infinite, and its arctangent 90 degrees.
    elevationDeg: Math.atan(upKm / horizontalKm) * DEGREES_PER_RADIAN,
    slantRangeKm: Math.sqrt(horizontalKm * horizontalKm + upKm * upKm),
  };
}

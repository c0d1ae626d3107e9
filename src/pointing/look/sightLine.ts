/** The line of sight as a vector in the station's own frame, and directions on the sky as unit vectors. */

import {
  GEOSTATIONARY_RADIUS_KM,
  WGS84_ECCENTRICITY_SQUARED_RATIO,
  WGS84_SEMI_MAJOR_AXIS_KM,
} from '../../constants.js';
import type { Station } from '../../earth/station.js';
import { atan2Deg, cosDeg, sinDeg, wrapAzimuthDeg } from '../../numeric/angle.js';

/** East, north and up: kilometres for a line of sight, shares of 1 for a direction. */
export type EastNorthUp = readonly [east: number, north: number, up: number];

/** Line of sight in kilometres from a checked station to the point of the nominal orbit at a longitude. */
export function sightLineKm(station: Station, orbitalLongitudeDeg: number): EastNorthUp {
  const { latitudeDeg, longitudeDeg, heightM } = station;
  const differenceDeg = (orbitalLongitudeDeg % 360) - (longitudeDeg % 360);
  const { east, north, up } = sightLine(
    sinDeg(latitudeDeg),
    cosDeg(latitudeDeg),
    heightM,
    differenceDeg,
  );
  return [east, north, up];
}

/** The same from the latitude's sine and cosine and the difference of longitudes. */
function sightLine(
  sinLatitude: number,
  cosLatitude: number,
  heightM: number,
  differenceDeg: number,
): { readonly east: number; readonly north: number; readonly up: number } {
  const normalKm =
    WGS84_SEMI_MAJOR_AXIS_KM /
    Math.sqrt(1 - WGS84_ECCENTRICITY_SQUARED_RATIO * sinLatitude * sinLatitude);
  const heightKm = heightM / 1000;
  // Away from the Earth's axis and along it.
  const outKm =
    GEOSTATIONARY_RADIUS_KM * cosDeg(differenceDeg) - (normalKm + heightKm) * cosLatitude;
  const axisKm = -(normalKm * (1 - WGS84_ECCENTRICITY_SQUARED_RATIO) + heightKm) * sinLatitude;
  return {
    east: GEOSTATIONARY_RADIUS_KM * sinDeg(differenceDeg),
    north: cosLatitude * axisKm - sinLatitude * outKm,
    up: cosLatitude * outKm + sinLatitude * axisKm,
  };
}

/** Elevation in degrees of a line of sight. */
export function elevationOfDeg(line: EastNorthUp): number {
  return atan2Deg(line[2], Math.hypot(line[0], line[1]));
}

/** Azimuth in degrees of a line of sight; 0 where it is vertical. */
export function azimuthOfDeg(line: EastNorthUp): number {
  return wrapAzimuthDeg(atan2Deg(line[0], line[1]));
}

/** Unit vector of a direction on the sky. */
export function skyVector(azimuthDeg: number, elevationDeg: number): EastNorthUp {
  const horizontal = cosDeg(elevationDeg);
  return [horizontal * sinDeg(azimuthDeg), horizontal * cosDeg(azimuthDeg), sinDeg(elevationDeg)];
}

/** The vector brought to length 1. */
export function unit(vector: EastNorthUp): EastNorthUp {
  const length = Math.hypot(vector[0], vector[1], vector[2]);
  return [vector[0] / length, vector[1] / length, vector[2] / length];
}

/** Scalar product. */
export function dot(a: EastNorthUp, b: EastNorthUp): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Vector product. */
export function cross(a: EastNorthUp, b: EastNorthUp): EastNorthUp {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Angle between two directions in degrees, 0 to 180, exact for small ones. */
export function separationDeg(a: EastNorthUp, b: EastNorthUp): number {
  const [east, north, up] = cross(a, b);
  return atan2Deg(Math.hypot(east, north, up), dot(a, b));
}

/**
 * The picture plane across a direction, as seen from behind the antenna: unit vectors to the right and up.
 * Towards the zenith, where "up" has no meaning, the right is east.
 */
export function pictureAxes(direction: EastNorthUp): {
  readonly right: EastNorthUp;
  readonly up: EastNorthUp;
} {
  const horizontal = Math.hypot(direction[0], direction[1]);
  const right: EastNorthUp =
    horizontal > 1e-12 * Math.abs(direction[2])
      ? [direction[1] / horizontal, -direction[0] / horizontal, 0]
      : [1, 0, 0];
  return { right, up: cross(right, unit(direction)) };
}

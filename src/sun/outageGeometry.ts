/** The Sun's angular distance from a fixed direction during a day. */

import { stationToEcef } from '../earth/ecef.js';
import { ecefToEnu } from '../earth/localFrame.js';
import type { Station } from '../earth/station.js';
import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE, wrapLongitudeDeg } from '../numeric/angle.js';
import { minimumBetween } from '../numeric/minimum.js';
import {
  SOLAR_RADIUS_KM,
  siderealDeg,
  sunOfDate,
  toEarthFixed,
  type VectorKm,
} from './ephemeris.js';

const DAY_MS = 86400000;
const HALF_SPAN_MS = 3600000;

/** A direction in Earth-fixed axes as a unit vector with its declination and longitude. */
export interface FixedDirection {
  readonly unit: VectorKm;
  readonly celestialDeclinationDeg: number;
  readonly longitudeDeg: number;
  /** Geometric elevation above the station's horizon. */
  readonly elevationDeg: number;
}

/** Direction from a station to a point in Earth-fixed axes. */
export function fixedDirection(station: Station, point: VectorKm): FixedDirection {
  const { xKm, yKm, zKm } = stationToEcef(station);
  const x = point.x - xKm;
  const y = point.y - yKm;
  const z = point.z - zKm;
  const length = Math.hypot(x, y, z);
  const { eastKm, northKm, upKm } = ecefToEnu(station, {
    xKm: point.x,
    yKm: point.y,
    zKm: point.z,
  });
  return {
    elevationDeg: Math.atan2(upKm, Math.hypot(eastKm, northKm)) * DEGREES_PER_RADIAN,
    unit: { x: x / length, y: y / length, z: z / length },
    celestialDeclinationDeg: Math.atan2(z, Math.hypot(x, y)) * DEGREES_PER_RADIAN,
    longitudeDeg: Math.atan2(y, x) * DEGREES_PER_RADIAN,
  };
}

/** Rough declination of the Sun in degrees, to 0.02; Source: Astronomical Almanac, low-precision formulas. */
export function roughDeclinationDeg(epochMs: number): number {
  const days = (epochMs - 946728000000) / DAY_MS;
  const anomaly = (357.528 + 0.9856003 * days) * RADIANS_PER_DEGREE;
  const longitudeDeg =
    280.46 + 0.9856474 * days + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly);
  const obliquity = (23.439 - 4e-7 * days) * RADIANS_PER_DEGREE;
  return (
    Math.asin(Math.sin(obliquity) * Math.sin(longitudeDeg * RADIANS_PER_DEGREE)) *
    DEGREES_PER_RADIAN
  );
}

/** The Sun near one passage of a direction. */
export interface Passage {
  /** Instant of the least separation, epoch milliseconds. */
  readonly peakMs: number;
  /** Least separation in degrees. */
  readonly separationDeg: number;
  /** Angular radius of the disc in degrees. */
  readonly angularRadiusDeg: number;
  /** Separation in degrees at an instant within an hour of the passage. */
  readonly separationAt: (epochMs: number) => number;
}

/**
 * Passage of the Sun by a direction on the UTC day that begins at `dayMs`.
 *
 * The Sun's vector of date is carried through the hours by a parabola through three points (1e-9 degree); only the
 * Earth turns fast.
 */
export function passageOfDay(station: Station, direction: FixedDirection, dayMs: number): Passage {
  const { xKm, yKm, zKm } = stationToEcef(station);
  // Sun over the longitude of the direction: noon UTC at Greenwich less the longitude; the equation of time comes next.
  const meanMs = dayMs + DAY_MS / 2 - wrapLongitudeDeg(direction.longitudeDeg) * 240000;
  const middle = toEarthFixed(sunOfDate(meanMs), siderealDeg(meanMs));
  const sunLongitudeDeg = Math.atan2(middle.y, middle.x) * DEGREES_PER_RADIAN;
  const centreMs = meanMs + wrapLongitudeDeg(sunLongitudeDeg - direction.longitudeDeg) * 240000;
  const [a, b, c] = [-HALF_SPAN_MS, 0, HALF_SPAN_MS].map((offset) =>
    sunOfDate(centreMs + offset),
  ) as [VectorKm, VectorKm, VectorKm];
  const greenwichDeg = siderealDeg(centreMs);
  const separationAt = (epochMs: number) => {
    const t = (epochMs - centreMs) / HALF_SPAN_MS;
    const along = (p: number, q: number, r: number) =>
      q + t * (0.5 * (r - p) + t * (0.5 * (p + r) - q));
    const ofDate = {
      x: along(a.x, b.x, c.x),
      y: along(a.y, b.y, c.y),
      z: along(a.z, b.z, c.z),
    };
    const turnedDeg = greenwichDeg + (epochMs - centreMs) * SIDEREAL_DEG_PER_MS;
    const sun = toEarthFixed(ofDate, turnedDeg);
    return angleDeg(direction.unit, { x: sun.x - xKm, y: sun.y - yKm, z: sun.z - zKm });
  };
  const found = minimumBetween(separationAt, {
    from: centreMs - 1200000,
    to: centreMs + 1200000,
    tolerance: 100,
  });
  return {
    peakMs: found.at,
    separationDeg: found.value,
    angularRadiusDeg: (SOLAR_RADIUS_KM / Math.hypot(b.x, b.y, b.z)) * DEGREES_PER_RADIAN,
    separationAt,
  };
}

/** Degrees by which the Earth turns in a millisecond: 360.98564736629 a day. Source: IAU sidereal rate. */
const SIDEREAL_DEG_PER_MS = 360.98564736629 / DAY_MS;

/** Angle between two directions, by the tangent so that small ones keep their digits. */
function angleDeg(u: VectorKm, v: VectorKm): number {
  const crossX = u.y * v.z - u.z * v.y;
  const crossY = u.z * v.x - u.x * v.z;
  const crossZ = u.x * v.y - u.y * v.x;
  const dot = u.x * v.x + u.y * v.y + u.z * v.z;
  return Math.atan2(Math.hypot(crossX, crossY, crossZ), dot) * DEGREES_PER_RADIAN;
}

/** The apparent Sun in Earth-fixed axes, through the library `astronomy-engine`. */

import { Body, GeoVector, RotateVector, Rotation_EQJ_EQD, SiderealTime } from 'astronomy-engine';
import { RADIANS_PER_DEGREE } from '../numeric/angle.js';

/** Kilometres in an astronomical unit. Source: IAU 2012 Resolution B2, exact. */
const ASTRONOMICAL_UNIT_KM = 149597870.7;

/** Radius of the solar disc in kilometres. Source: IAU 2015 Resolution B3, nominal value. */
export const SOLAR_RADIUS_KM = 695700;

/** Milliseconds since 1970-01-01 at the epoch J2000, 2000-01-01T12:00:00. */
const J2000_MS = 946728000000;
const DAY_MS = 86400000;

/** A vector in kilometres. */
export interface VectorKm {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** UT days since J2000: the form in which the ephemeris takes an instant. UTC stands in for UT1 (within 0.9 s). */
function daysOf(epochMs: number): number {
  return (epochMs - J2000_MS) / DAY_MS;
}

/** Apparent geocentric Sun (light time and aberration counted) in the true equator and equinox of date. */
export function sunOfDate(epochMs: number): VectorKm {
  const days = daysOf(epochMs);
  const { x, y, z } = RotateVector(Rotation_EQJ_EQD(days), GeoVector(Body.Sun, days, true));
  return { x: x * ASTRONOMICAL_UNIT_KM, y: y * ASTRONOMICAL_UNIT_KM, z: z * ASTRONOMICAL_UNIT_KM };
}

/** Greenwich apparent sidereal time in degrees, [0, 360). */
export function siderealDeg(epochMs: number): number {
  return SiderealTime(daysOf(epochMs)) * 15;
}

/** A vector of date turned into Earth-fixed axes by the sidereal time. */
export function toEarthFixed(ofDate: VectorKm, greenwichDeg: number): VectorKm {
  const sine = Math.sin(greenwichDeg * RADIANS_PER_DEGREE);
  const cosine = Math.cos(greenwichDeg * RADIANS_PER_DEGREE);
  return {
    x: cosine * ofDate.x + sine * ofDate.y,
    y: cosine * ofDate.y - sine * ofDate.x,
    z: ofDate.z,
  };
}

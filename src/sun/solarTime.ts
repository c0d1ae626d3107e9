/** Solar time: what a sundial shows. */

import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { DEGREES_PER_RADIAN, wrapAzimuthDeg, wrapLongitudeDeg } from '../numeric/angle.js';
import { type Instant, instantToEpochMs } from '../numeric/instant.js';
import { siderealDeg, sunOfDate, toEarthFixed } from './ephemeris.js';

/** Solar time at a place. */
export interface SolarTime {
  /** Apparent minus mean solar time in minutes, about -14.3 to 16.5 in a year; positive when the sundial is ahead. */
  readonly equationOfTimeMin: number;
  /** Mean solar time in hours of the day, [0, 24): UTC plus the longitude at 15 degrees an hour. */
  readonly meanSolarTimeH: number;
  /** Apparent solar time in hours of the day, [0, 24): 12 when the Sun crosses the meridian. */
  readonly apparentSolarTimeH: number;
}

/**
 * Mean and apparent solar time at a station.
 *
 * @throws {@link DomainError} for a bad station or instant.
 *
 * Source: definition (hour angle of the Sun plus 12 hours). Accuracy: 0.2 second of time, UTC taken for UT1 (within 0.9 second).
 * @example
 * ```ts
 * import { solarTime } from 'slantpath/sun';
 * const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * solarTime(hut, '2026-11-03T12:00:00Z').equationOfTimeMin.toFixed(1); // => '16.4'
 * ```
 */
export function solarTime(station: Station, instant: Instant): SolarTime {
  const { longitudeDeg } = checkedStation(station);
  const epochMs = instantToEpochMs('instant', instant);
  // The geocentric Sun: parallax would move a sundial by up to 0.6 seconds.
  const sun = toEarthFixed(sunOfDate(epochMs), siderealDeg(epochMs));
  const sunLongitudeDeg = Math.atan2(sun.y, sun.x) * DEGREES_PER_RADIAN;
  const apparentDeg = wrapAzimuthDeg((longitudeDeg % 360) - sunLongitudeDeg + 180);
  const meanDeg = wrapAzimuthDeg((epochMs % 86400000) / 240000 + (longitudeDeg % 360));
  return {
    equationOfTimeMin: wrapLongitudeDeg(apparentDeg - meanDeg) * 4,
    meanSolarTimeH: meanDeg / 15,
    apparentSolarTimeH: apparentDeg / 15,
  };
}

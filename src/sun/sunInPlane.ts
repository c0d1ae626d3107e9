/** North by the Sun: when a plumb line's shadow lies along a wanted bearing. */

import { checkedStation } from '../earth/internal.js';
import { ecefToEnu } from '../earth/localFrame.js';
import type { Station } from '../earth/station.js';
import { DomainError, finite, inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import {
  cosDeg,
  DEGREES_PER_RADIAN,
  sinDeg,
  wrapAzimuthDeg,
  wrapLongitudeDeg,
} from '../numeric/angle.js';
import { epochMsToIso, instantToEpochMs } from '../numeric/instant.js';
import { bracketedRoot } from '../numeric/root.js';
import { siderealDeg, sunOfDate, toEarthFixed } from './ephemeris.js';
import { opticalRefractionDeg, standardPressureHpa } from './refraction.js';

/** An instant at which the shadow of a plumb line lies along a bearing. */
export interface ShadowInstant {
  /** The instant in UTC, ISO 8601. */
  readonly instantUtc: string;
  /**
   * `sun`: the Sun stands over the bearing, so the bearing runs from the shadow's end towards the plumb line.
   * `shadow`: the Sun stands opposite, so the shadow itself points along the bearing.
   */
  readonly pointer: 'sun' | 'shadow';
  /** Azimuth of the Sun in degrees, [0, 360). */
  readonly sunAzimuthDeg: number;
  /** Apparent elevation of the Sun in degrees. */
  readonly sunElevationDeg: number;
  /** Error of the bearing per minute of clock error, degrees per minute, 0 or more. */
  readonly errorDegPerMin: number;
  /** Length of the shadow over the height of what casts it (ratio). */
  readonly shadowLengthRatio: number;
}

/** Input of {@link shadowInstants}. */
export interface ShadowInput {
  /** Where the plumb line hangs. */
  readonly station: Station;
  /** Bearing wanted: azimuth in degrees from true north, any turn; a slot's comes from `lookAngles`. */
  readonly azimuthDeg: number;
  /** Date at the station, `2026-06-10`; the day runs from midnight to midnight of mean solar time there. */
  readonly day: string;
  /** Lowest apparent elevation of the Sun in degrees, 0 to 60; default 5. */
  readonly minimumElevationDeg?: number;
}

const SHADOW_INPUT_KEYS = {
  station: true,
  azimuthDeg: true,
  day: true,
  minimumElevationDeg: true,
} satisfies Keys<ShadowInput>;

const DAY_MS = 86400000;
const STEP_MS = 1200000;

/**
 * Instants of a day at which the Sun stands in the vertical plane of a bearing, on either side.
 *
 * Then the shadow of a plumb line is that bearing, on sloping ground too: true north without a compass. The Sun is in
 * the plane when E cos az - N sin az = 0 for its direction (E, N, U).
 *
 * Never look at the Sun; watch the shadow on the ground only.
 *
 * @returns The instants in order; an empty list when the Sun is up at none of them. Near noon in low latitudes
 *   the Sun swings fast: see `errorDegPerMin`. The Sun's disc blurs a shadow's edge over 0.53 degree.
 * @throws {@link DomainError} for a bad station, azimuth, day or elevation.
 *
 * Source: own derivation; the Sun as in `sunDirection`. Accuracy: 0.004 degree of bearing for an exact clock.
 * @example
 * ```ts
 * import { lookAngles } from 'slantpath/pointing';
 * import { shadowInstants } from 'slantpath/sun';
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * const look = lookAngles(station, 16.4);
 * if (look.kind === 'overhead') throw new Error('no bearing straight overhead');
 * const found = shadowInstants({ station, azimuthDeg: look.azimuthDeg, day: '2026-06-10' });
 * found[0]?.instantUtc.slice(0, 16); // => '2026-06-10T11:04'
 * ```
 */
export function shadowInstants(input: ShadowInput): readonly ShadowInstant[] {
  const { station, azimuthDeg, day, minimumElevationDeg } = knownOnly(
    'input',
    input,
    SHADOW_INPUT_KEYS,
  );
  const place = checkedStation(station);
  const azimuth = wrapAzimuthDeg(finite('azimuthDeg', azimuthDeg));
  const lowestDeg = inRange('minimumElevationDeg', minimumElevationDeg ?? 5, 0, 60);
  const start = startOfDayMs(day, place.longitudeDeg);
  const sine = sinDeg(azimuth);
  const cosine = cosDeg(azimuth);
  const sun = (epochMs: number) => {
    const { x, y, z } = toEarthFixed(sunOfDate(epochMs), siderealDeg(epochMs));
    const { eastKm, northKm, upKm } = ecefToEnu(place, { xKm: x, yKm: y, zKm: z });
    return {
      along: eastKm * sine + northKm * cosine,
      across: eastKm * cosine - northKm * sine,
      up: upKm,
    };
  };
  const across = (epochMs: number) => sun(epochMs).across;
  const found: ShadowInstant[] = [];
  let before = across(start);
  for (let from = start; from < start + DAY_MS; from += STEP_MS) {
    const after = across(from + STEP_MS);
    const crosses = before === 0 || before * after < 0;
    before = after;
    if (!crosses) continue;
    const at = bracketedRoot(across, { from, to: from + STEP_MS, tolerance: 1 }) ?? from;
    const { along, up } = sun(at);
    const elevationDeg = Math.atan2(up, Math.abs(along)) * DEGREES_PER_RADIAN;
    const air = { pressureHpa: standardPressureHpa(place.heightM), temperatureK: 283.15 };
    const sunElevationDeg = elevationDeg + opticalRefractionDeg(elevationDeg, air);
    // Within 0.1 degree of the zenith there is no shadow to speak of.
    if (sunElevationDeg < lowestDeg || sunElevationDeg > 89.9) continue;
    const rate = (across(at + 30000) - across(at - 30000)) / along;
    found.push({
      instantUtc: epochMsToIso(at),
      pointer: along > 0 ? 'sun' : 'shadow',
      sunAzimuthDeg: along > 0 ? azimuth : wrapAzimuthDeg(azimuth + 180),
      sunElevationDeg,
      errorDegPerMin: Math.abs(rate) * DEGREES_PER_RADIAN,
      shadowLengthRatio: 1 / Math.tan(sunElevationDeg / DEGREES_PER_RADIAN),
    });
  }
  return found;
}

/** Midnight of mean solar time at which a date begins at a longitude, epoch milliseconds. */
function startOfDayMs(day: string, longitudeDeg: number): number {
  if (typeof day !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(day)) {
    throw new DomainError({
      code: day === undefined || day === null ? 'missing' : 'malformed',
      parameter: 'day',
      received: day,
      allowed: 'a date such as 2026-06-10',
    });
  }
  return instantToEpochMs('day', day) - wrapLongitudeDeg(longitudeDeg) * 240000;
}

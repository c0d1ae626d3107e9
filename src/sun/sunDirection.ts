/** Where the Sun stands in the sky of a station. */

import { stationToEcef } from '../earth/ecef.js';
import { checkedStation } from '../earth/internal.js';
import { ecefToEnu } from '../earth/localFrame.js';
import type { Station } from '../earth/station.js';
import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { asinDeg, DEGREES_PER_RADIAN, wrapAzimuthDeg, wrapLongitudeDeg } from '../numeric/angle.js';
import { type Instant, instantToEpochMs } from '../numeric/instant.js';
import { SOLAR_RADIUS_KM, siderealDeg, sunOfDate, toEarthFixed } from './ephemeris.js';
import { opticalRefractionDeg, standardPressureHpa } from './refraction.js';

/** The Sun's place in the sky, whatever its kind. */
interface SunPlace {
  /** Geometric elevation of the Sun's centre in degrees, -90 to 90. */
  readonly elevationDeg: number;
  /** How much the air lifts the Sun in degrees, 0 or more. */
  readonly refractionDeg: number;
  /** Elevation as seen in degrees: geometric plus refraction. */
  readonly apparentElevationDeg: number;
  /** Right ascension seen from the station, true equator of date, degrees, [0, 360). */
  readonly rightAscensionDeg: number;
  /** Declination seen from the station, true equator of date, degrees, -90 to 90. */
  readonly sunDeclinationDeg: number;
  /** Hour angle in degrees, west of the meridian positive, [-180, 180). */
  readonly hourAngleDeg: number;
  /** Half the angular diameter of the disc in degrees. */
  readonly angularRadiusDeg: number;
  /** Distance of the Sun from the station in kilometres. */
  readonly distanceKm: number;
}

/** Direction of the Sun; read `kind` first. */
export type SunDirection =
  | (SunPlace & {
      /** `above-horizon`: the centre is seen above the level horizon (refraction counted); else `below-horizon`. */
      readonly kind: 'above-horizon' | 'below-horizon';
      /** Azimuth in degrees, clockwise from true north, [0, 360). */
      readonly azimuthDeg: number;
    })
  | (SunPlace & {
      /** `overhead`: in the zenith or nadir to 1e-6 degree, where azimuth has no meaning. */
      readonly kind: 'overhead';
    });

/** Air for the refraction of sunlight. */
export interface Air {
  /** Pressure at the station in hectopascals, 100 to 1100; default: standard atmosphere at the station's height. */
  readonly pressureHpa?: number;
  /** Temperature at the station in kelvins, 200 to 340; default 283.15. */
  readonly temperatureK?: number;
}

const SUN_DIRECTION_AT_KEYS = {
  instant: true,
  pressureHpa: true,
  temperatureK: true,
} satisfies Keys<Parameters<typeof sunDirection>[1]>;

/**
 * Azimuth and elevation of the Sun's centre at a station and instant.
 *
 * Never look at the Sun, nor let it shine on the focus of a reflector towards your eyes: use a shadow.
 *
 * @param station  Geodetic latitude, longitude east positive, height in metres.
 * @param at  `instant`: ISO-8601 text in UTC (`2026-03-02T10:08:07Z`) or epoch milliseconds, years 1900 to 2100;
 *   `pressureHpa` and `temperatureK` of the air for the refraction.
 * @returns Azimuth from true north; geometric and apparent elevation; the equatorial place they come from.
 * @throws {@link DomainError} for a bad station, instant, pressure or temperature.
 *
 * Source: ephemeris VSOP87 and nutation of the library `astronomy-engine`; refraction after NREL/TP-560-34302 (Reda and
 * Andreas 2008), equation 42. UTC is taken for UT1.
 * Accuracy: 0.004 degree with UTC for UT1 (within 0.9 s), 0.0006 degree against an IAU 2006 reduction otherwise.
 * @example
 * ```ts
 * import { sunDirection } from 'slantpath/sun';
 * const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * const sun = sunDirection(hut, { instant: '2026-03-02T11:30:00Z' });
 * sun.kind !== 'overhead' && sun.azimuthDeg.toFixed(2); // => '178.86'
 * sun.apparentElevationDeg.toFixed(2); // => '36.51'
 * ```
 */
export function sunDirection(
  station: Station,
  at: { readonly instant: Instant } & Air,
): SunDirection {
  const place = checkedStation(station);
  const { instant, pressureHpa, temperatureK } = knownOnly('at', at, SUN_DIRECTION_AT_KEYS);
  const epochMs = instantToEpochMs('instant', instant);
  const air = {
    pressureHpa: inRange(
      'pressureHpa',
      pressureHpa ?? standardPressureHpa(place.heightM),
      100,
      1100,
    ),
    temperatureK: inRange('temperatureK', temperatureK ?? 283.15, 200, 340, 'is it in kelvins?'),
  };
  const greenwichDeg = siderealDeg(epochMs);
  const fixed = toEarthFixed(sunOfDate(epochMs), greenwichDeg);
  const here = stationToEcef(place);
  const enu = ecefToEnu(place, { xKm: fixed.x, yKm: fixed.y, zKm: fixed.z });
  const horizontalKm = Math.hypot(enu.eastKm, enu.northKm);
  const distanceKm = Math.hypot(horizontalKm, enu.upKm);
  const elevationDeg = Math.atan2(enu.upKm, horizontalKm) * DEGREES_PER_RADIAN + 0;
  const refractionDeg = opticalRefractionDeg(elevationDeg, air);
  const eastOfGreenwichDeg =
    Math.atan2(fixed.y - here.yKm, fixed.x - here.xKm) * DEGREES_PER_RADIAN;
  const sun = {
    elevationDeg,
    refractionDeg,
    apparentElevationDeg: elevationDeg + refractionDeg,
    rightAscensionDeg: wrapAzimuthDeg(greenwichDeg + eastOfGreenwichDeg),
    sunDeclinationDeg: asinDeg((fixed.z - here.zKm) / distanceKm),
    hourAngleDeg: wrapLongitudeDeg((place.longitudeDeg % 360) - eastOfGreenwichDeg),
    angularRadiusDeg: asinDeg(SOLAR_RADIUS_KM / distanceKm),
    distanceKm,
  };
  if (horizontalKm < 1.7e-8 * distanceKm) return { kind: 'overhead', ...sun };
  return {
    kind: sun.apparentElevationDeg > 0 ? 'above-horizon' : 'below-horizon',
    azimuthDeg: wrapAzimuthDeg(Math.atan2(enu.eastKm, enu.northKm) * DEGREES_PER_RADIAN),
    ...sun,
  };
}

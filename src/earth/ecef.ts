/** Geodetic coordinates to Earth-centred, Earth-fixed ones (WGS 84). */

import { WGS84_ECCENTRICITY_SQUARED_RATIO, WGS84_SEMI_MAJOR_AXIS_KM } from '../constants.js';
import type { Keys } from '../keys.js';
import { cosDeg, sinDeg } from '../numeric/angle.js';
import { checkedStation, type Station } from './station.js';

/** A point in the Earth-fixed frame: x towards 0 N 0 E, y towards 0 N 90 E, z towards the north pole. */
export interface EcefKm {
  /** Kilometres towards the meeting of equator and prime meridian. */
  readonly xKm: number;
  /** Kilometres towards 90 E on the equator. */
  readonly yKm: number;
  /** Kilometres towards the north pole. */
  readonly zKm: number;
}

export const ECEF_KM_KEYS = { xKm: true, yKm: true, zKm: true } satisfies Keys<EcefKm>;

/**
 * Earth-fixed position of a station.
 *
 * With N = a / sqrt(1 - e^2 sin^2 lat): x = (N + h) cos lat cos lon, y = (N + h) cos lat sin lon,
 * z = (N (1 - e^2) + h) sin lat.
 *
 * @throws {@link DomainError} for a station outside its domain.
 *
 * Source: NGA.STND.0036 (WGS 84), geodetic to Cartesian conversion; IOGP Guidance Note 7-2, section 4.1.1.
 * Accuracy: rounding only, 2e-12 km.
 * @example
 * ```ts
 * import { stationToEcef } from 'slantpath/earth';
 * stationToEcef({ latitudeDeg: 0, longitudeDeg: 90, heightM: 0 }).yKm; // => 6378.137
 * ```
 */
export function stationToEcef(station: Station): EcefKm {
  const { latitudeDeg, longitudeDeg, heightM } = checkedStation(station);
  const sinLatitude = sinDeg(latitudeDeg);
  const normalKm =
    WGS84_SEMI_MAJOR_AXIS_KM /
    Math.sqrt(1 - WGS84_ECCENTRICITY_SQUARED_RATIO * sinLatitude * sinLatitude);
  const heightKm = heightM / 1000;
  const equatorialKm = (normalKm + heightKm) * cosDeg(latitudeDeg);
  return {
    xKm: equatorialKm * cosDeg(longitudeDeg),
    yKm: equatorialKm * sinDeg(longitudeDeg),
    zKm: (normalKm * (1 - WGS84_ECCENTRICITY_SQUARED_RATIO) + heightKm) * sinLatitude,
  };
}

/** Where an antenna stands, and the guard that every function with a station begins with. */

import { finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';

/** A place on or near the Earth's surface, referred to the WGS 84 ellipsoid. */
export interface Station {
  /** Geodetic latitude in degrees, north positive, -90 to 90 inclusive. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, any turn: 183 equals -177. */
  readonly longitudeDeg: number;
  /**
   * Height above the ellipsoid in metres, -1000 to 100000. A height above sea level may stand in: the
   * difference (up to 107 m) moves a look angle by less than 0.0001 degree.
   */
  readonly heightM: number;
}

/** Fields of {@link Station}. */
const STATION_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
} satisfies Keys<Station>;

const SWAPPED = 'were latitude and longitude swapped?';

/**
 * The checked station: latitude held to its interval, longitude as given.
 *
 * @throws DomainError naming `latitudeDeg`, `longitudeDeg` or `heightM`.
 */
export function checkedStation(station: Station): Station {
  const { latitudeDeg, longitudeDeg, heightM } = known('station', station, STATION_KEYS);
  return {
    latitudeDeg: inRange('latitudeDeg', latitudeDeg, -90, 90, SWAPPED),
    longitudeDeg: finite('longitudeDeg', longitudeDeg),
    heightM: inRange('heightM', heightM, -1000, 100000, 'is the height in metres?'),
  };
}

/** The daily figure of a satellite whose orbit is inclined or a little eccentric, seen from a station. */

import { GEOSTATIONARY_RADIUS_KM } from '../../constants.js';
import { checkedStation } from '../../earth/internal.js';
import { ecefToEnu } from '../../earth/localFrame.js';
import type { Station } from '../../earth/station.js';
import { finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import {
  asinDeg,
  atan2Deg,
  cosDeg,
  RADIANS_PER_DEGREE,
  sinDeg,
  wrapLongitudeDeg,
} from '../../numeric/angle.js';
import { direction } from '../look/lookAngles.js';

/** Length of a mean sidereal day in hours: 86164.0905 s. */
const SIDEREAL_DAY_H = 86164.0905 / 3600;

/** What {@link dailyFigure} is asked. */
export interface DailyFigureInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Mean longitude of the satellite in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** Inclination of the orbit in degrees, 0 to 20. */
  readonly inclinationDeg: number;
  /** Eccentricity (ratio), 0 to 0.1; 0 when left out. */
  readonly eccentricityRatio?: number;
  /** Argument of perigee in degrees, any turn; 0 when left out. */
  readonly argumentOfPerigeeDeg?: number;
  /** How many points share the sidereal day, 8 to 1440; 96 when left out. */
  readonly count?: number;
}

const DAILY_FIGURE_INPUT_KEYS = {
  station: true,
  orbitalLongitudeDeg: true,
  inclinationDeg: true,
  eccentricityRatio: true,
  argumentOfPerigeeDeg: true,
  count: true,
} satisfies Keys<DailyFigureInput>;

/** One point of a satellite's track across the sky. */
export interface TrackPoint {
  /** Azimuth in degrees, clockwise from true north, [0, 360); 0 straight up. */
  readonly azimuthDeg: number;
  /** Geometric elevation in degrees. */
  readonly elevationDeg: number;
  /** Straight distance in kilometres. */
  readonly slantRangeKm: number;
}

/** One point of the daily figure. */
export interface DailyFigurePoint extends TrackPoint {
  /** Hours since the mean satellite passed the ascending node, northbound across the equator. */
  readonly sinceNodeH: number;
  /** Longitude under the satellite in degrees, [-180, 180). */
  readonly underLongitudeDeg: number;
  /** Geocentric latitude under the satellite in degrees, north positive. */
  readonly underLatitudeDeg: number;
}

/** Eccentric anomaly in radians of a mean anomaly: Newton's method on Kepler's equation, bounded. */
function eccentricAnomaly(meanAnomaly: number, eccentricity: number): number {
  let anomaly = meanAnomaly;
  for (let step = 0; step < 10; step++)
    anomaly -=
      (anomaly - eccentricity * Math.sin(anomaly) - meanAnomaly) /
      (1 - eccentricity * Math.cos(anomaly));
  return anomaly;
}

/**
 * The daily figure: where a satellite of an inclined or slightly eccentric geosynchronous orbit stands through one sidereal day.
 *
 * Two-body motion with a period of one sidereal day. With u the argument of latitude and i the inclination the satellite stands over the
 * latitude asin(sin i sin u), and over the mean longitude + atan2(cos i sin u, cos u) - (mean argument of latitude): a slender
 * figure of eight, i high to either side and about i^2 / 229 degree wide; an eccentricity e swings it by 2 e radians eastwards and
 * westwards.
 *
 * @returns The points of one day, the first at the ascending node; a satellite below the horizon has a negative elevation.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: two-body motion; textbooks of orbital mechanics.
 * Accuracy: 1e-9 degree for two bodies; the pull of Sun and Moon changes a real orbit's inclination by about 0.0025 degree a day.
 * @example
 * ```ts
 * import { dailyFigure } from 'slantpath/pointing';
 * const day = dailyFigure({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   orbitalLongitudeDeg: 16.4,
 *   inclinationDeg: 3,
 * });
 * Math.max(...day.map((point) => point.underLatitudeDeg)).toFixed(3); // => '3.000'
 * ```
 */
export function dailyFigure(input: DailyFigureInput): readonly DailyFigurePoint[] {
  const given = knownOnly('input', input, DAILY_FIGURE_INPUT_KEYS);
  const station = checkedStation(given.station);
  const meanLongitudeDeg = finite('orbitalLongitudeDeg', given.orbitalLongitudeDeg);
  const inclinationDeg = inRange('inclinationDeg', given.inclinationDeg, 0, 20);
  const eccentricity = inRange('eccentricityRatio', given.eccentricityRatio ?? 0, 0, 0.1);
  const perigeeDeg = finite('argumentOfPerigeeDeg', given.argumentOfPerigeeDeg ?? 0) % 360;
  const count = Math.round(inRange('count', given.count ?? 96, 8, 1440));
  return Array.from({ length: count }, (_, index) => {
    const meanArgumentDeg = (360 * index) / count;
    const anomaly = eccentricAnomaly(
      (meanArgumentDeg - perigeeDeg) * RADIANS_PER_DEGREE,
      eccentricity,
    );
    const trueAnomalyDeg = atan2Deg(
      Math.sqrt(1 - eccentricity ** 2) * Math.sin(anomaly),
      Math.cos(anomaly) - eccentricity,
    );
    const argumentDeg = trueAnomalyDeg + perigeeDeg;
    const radiusKm = GEOSTATIONARY_RADIUS_KM * (1 - eccentricity * Math.cos(anomaly));
    const underLatitudeDeg = asinDeg(sinDeg(inclinationDeg) * sinDeg(argumentDeg));
    const fromNodeDeg = atan2Deg(cosDeg(inclinationDeg) * sinDeg(argumentDeg), cosDeg(argumentDeg));
    const underLongitudeDeg = wrapLongitudeDeg(
      (meanLongitudeDeg % 360) + wrapLongitudeDeg(fromNodeDeg - meanArgumentDeg),
    );
    const { eastKm, northKm, upKm } = ecefToEnu(station, {
      xKm: radiusKm * cosDeg(underLatitudeDeg) * cosDeg(underLongitudeDeg),
      yKm: radiusKm * cosDeg(underLatitudeDeg) * sinDeg(underLongitudeDeg),
      zKm: radiusKm * sinDeg(underLatitudeDeg),
    });
    const { azimuthDeg, elevationDeg, slantRangeKm } = direction(eastKm, northKm, upKm);
    return {
      sinceNodeH: (SIDEREAL_DAY_H * index) / count,
      underLongitudeDeg,
      underLatitudeDeg: underLatitudeDeg + 0,
      azimuthDeg,
      elevationDeg,
      slantRangeKm,
    };
  });
}

/** The station-keeping box: how far a satellite may wander, seen from a station. */

import { GEOSTATIONARY_RADIUS_KM } from '../../constants.js';
import { checkedStation } from '../../earth/internal.js';
import { ecefToEnu } from '../../earth/localFrame.js';
import type { Station } from '../../earth/station.js';
import { finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { cosDeg, sinDeg, turnDeg, wrapAzimuthDeg } from '../../numeric/angle.js';
import {
  azimuthOfDeg,
  type EastNorthUp,
  elevationOfDeg,
  separationDeg,
  sightLineKm,
} from '../look/sightLine.js';

/** What {@link stationKeepingBox} is asked. */
export interface StationKeepingBoxInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Longitude of the box's middle in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** Half of the box east to west in degrees, 0 to 5; 0.1 when left out (Radio Regulations, Article 22). */
  readonly longitudeHalfWidthDeg?: number;
  /** Half of the box north to south in degrees (the inclination kept), 0 to 10; 0.1 when left out. */
  readonly latitudeHalfWidthDeg?: number;
  /** Eccentricity kept (ratio), 0 to 0.01: moves the satellite up and down; 0 when left out. */
  readonly eccentricityRatio?: number;
}

const STATION_KEEPING_BOX_INPUT_KEYS = {
  station: true,
  orbitalLongitudeDeg: true,
  longitudeHalfWidthDeg: true,
  latitudeHalfWidthDeg: true,
  eccentricityRatio: true,
} satisfies Keys<StationKeepingBoxInput>;

/** The box seen from the station. */
export interface StationKeepingBox {
  /** Smallest and largest geometric elevation in degrees. */
  readonly elevationDeg: { readonly lowest: number; readonly highest: number };
  /** Azimuths between which it lies, clockwise from the first, in degrees, [0, 360). */
  readonly azimuthDeg: { readonly from: number; readonly to: number };
  /** Smallest and largest slant range in kilometres. */
  readonly slantRangeKm: { readonly nearest: number; readonly farthest: number };
  /** Largest angle between the middle of the box and a corner, seen from the station, in degrees. */
  readonly largestOffsetDeg: number;
}

/**
 * Extremes of the look angles over a station-keeping box.
 *
 * The extremes of so small a box lie at its corners and edges, which are walked in eight places at three radii. Near the zenith,
 * where the box may pass over it, azimuths have no meaning: look at `largestOffsetDeg`.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: geometry; the default of 0.1 degree is the station-keeping of Radio Regulations, Article 22.
 * Accuracy: 1e-4 of the box.
 * @example
 * ```ts
 * import { stationKeepingBox } from 'slantpath/pointing';
 * const box = stationKeepingBox({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   orbitalLongitudeDeg: 16.4,
 * });
 * box.largestOffsetDeg.toFixed(2); // => '0.16'
 * ```
 */
export function stationKeepingBox(input: StationKeepingBoxInput): StationKeepingBox {
  const given = knownOnly('input', input, STATION_KEEPING_BOX_INPUT_KEYS);
  const station = checkedStation(given.station);
  const slotDeg = finite('orbitalLongitudeDeg', given.orbitalLongitudeDeg) % 360;
  const eastDeg = inRange('longitudeHalfWidthDeg', given.longitudeHalfWidthDeg ?? 0.1, 0, 5);
  const northDeg = inRange('latitudeHalfWidthDeg', given.latitudeHalfWidthDeg ?? 0.1, 0, 10);
  const eccentricity = inRange('eccentricityRatio', given.eccentricityRatio ?? 0, 0, 0.01);
  const lines: EastNorthUp[] = [];
  for (const radius of [-eccentricity, 0, eccentricity])
    for (const east of [-eastDeg, 0, eastDeg])
      for (const north of [-northDeg, 0, northDeg]) {
        const radiusKm = GEOSTATIONARY_RADIUS_KM * (1 + radius);
        const enu = ecefToEnu(station, {
          xKm: radiusKm * cosDeg(north) * cosDeg(slotDeg + east),
          yKm: radiusKm * cosDeg(north) * sinDeg(slotDeg + east),
          zKm: radiusKm * sinDeg(north),
        });
        lines.push([enu.eastKm, enu.northKm, enu.upKm]);
      }
  const middle = sightLineKm(station, slotDeg);
  const middleDeg = azimuthOfDeg(middle);
  const elevations = lines.map(elevationOfDeg);
  const swings = lines.map((line) => turnDeg(middleDeg, azimuthOfDeg(line)));
  const ranges = lines.map((line) => Math.hypot(...line));
  return {
    elevationDeg: { lowest: Math.min(...elevations), highest: Math.max(...elevations) },
    azimuthDeg: {
      from: wrapAzimuthDeg(middleDeg + Math.min(...swings)),
      to: wrapAzimuthDeg(middleDeg + Math.max(...swings)),
    },
    slantRangeKm: { nearest: Math.min(...ranges), farthest: Math.max(...ranges) },
    largestOffsetDeg: Math.max(...lines.map((line) => separationDeg(line, middle))),
  };
}

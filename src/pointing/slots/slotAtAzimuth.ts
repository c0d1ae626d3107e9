/** Where the geostationary arc crosses a bearing. */

import {
  GEOSTATIONARY_RADIUS_KM,
  WGS84_ECCENTRICITY_SQUARED_RATIO,
  WGS84_SEMI_MAJOR_AXIS_KM,
} from '../../constants.js';
import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { finite } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { asinDeg, atan2Deg, cosDeg, sinDeg, wrapLongitudeDeg } from '../../numeric/angle.js';
import { elevationOfDeg, sightLineKm } from '../look/sightLine.js';

/** What {@link slotAtAzimuth} is asked. */
export interface SlotAtAzimuthInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Azimuth in degrees, clockwise from true north, any turn. */
  readonly azimuthDeg: number;
}

const SLOT_AT_AZIMUTH_INPUT_KEYS = {
  station: true,
  azimuthDeg: true,
} satisfies Keys<SlotAtAzimuthInput>;

/** Where the arc crosses the bearing; read `kind` first. */
export type SlotAtAzimuth =
  | {
      /** `crossing`: the arc crosses the bearing above the horizon. */
      readonly kind: 'crossing';
      /** Orbital longitude of the crossing in degrees, [-180, 180). */
      readonly orbitalLongitudeDeg: number;
      /** Geometric elevation of the crossing in degrees, above 0. */
      readonly elevationDeg: number;
    }
  | {
      /** `none`: no visible part of the arc lies in that bearing; or, on the equator, all of one half does. */
      readonly kind: 'none';
    };

/**
 * Where the geostationary arc crosses a bearing: which orbital longitude stands there, and how high.
 *
 * The vertical plane of the bearing A cuts the circle of the orbit where
 * cos A sin d + sin A sin lat cos d = K sin A / r, with d the longitude east of the station and K the northward part of the
 * station's own place; two angles solve it, and the visible one counts.
 *
 * @throws {@link DomainError} naming the station's field or `azimuthDeg`.
 *
 * Source: own derivation; WGS 84 ellipsoid.
 * Accuracy: 1e-9 degree where the arc crosses the bearing steeply; on the equator, where bearing and arc run together, none.
 * @example
 * ```ts
 * import { slotAtAzimuth } from 'slantpath/pointing';
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * const south = slotAtAzimuth({ station, azimuthDeg: 180 });
 * south.kind === 'crossing' && south.orbitalLongitudeDeg.toFixed(6); // => '9.600000'
 * ```
 */
export function slotAtAzimuth(input: SlotAtAzimuthInput): SlotAtAzimuth {
  const { station, azimuthDeg } = knownOnly('input', input, SLOT_AT_AZIMUTH_INPUT_KEYS);
  const checked = checkedStation(station);
  finite('azimuthDeg', azimuthDeg);
  const difference = crossingDeg(checked, azimuthDeg);
  if (difference === undefined) return { kind: 'none' };
  return {
    kind: 'crossing',
    orbitalLongitudeDeg: wrapLongitudeDeg((checked.longitudeDeg % 360) + difference),
    elevationDeg: elevationOfDeg(sightLineKm({ ...checked, longitudeDeg: 0 }, difference)),
  };
}

/** Longitude east of the station at which the visible arc crosses an azimuth. */
export function crossingDeg(station: Station, azimuthDeg: number): number | undefined {
  const local = { ...station, longitudeDeg: 0 };
  const sinLatitude = sinDeg(station.latitudeDeg);
  const normalKm =
    WGS84_SEMI_MAJOR_AXIS_KM / Math.sqrt(1 - WGS84_ECCENTRICITY_SQUARED_RATIO * sinLatitude ** 2);
  // What the station's own place adds northwards: normal times e^2 sin cos, whatever the height.
  const placeKm =
    normalKm * WGS84_ECCENTRICITY_SQUARED_RATIO * sinLatitude * cosDeg(station.latitudeDeg);
  const alongSine = cosDeg(azimuthDeg);
  const alongCosine = sinDeg(azimuthDeg) * sinLatitude;
  const size = Math.hypot(alongSine, alongCosine);
  const ratio = (placeKm * sinDeg(azimuthDeg)) / (GEOSTATIONARY_RADIUS_KM * size);
  if (!(Math.abs(ratio) <= 1)) return undefined;
  const phaseDeg = atan2Deg(alongCosine, alongSine);
  const first = asinDeg(ratio);
  return [first - phaseDeg, 180 - first - phaseDeg].map(wrapLongitudeDeg).find((difference) => {
    const [east, north, up] = sightLineKm(local, difference);
    return up > 0 && east * sinDeg(azimuthDeg) + north * cosDeg(azimuthDeg) > 0;
  });
}

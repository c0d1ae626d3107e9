/** The local frame of a station: east, north and up. */

import { inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../numeric/angle.js';
import { ECEF_KM_KEYS, type EcefKm, stationToEcef } from './ecef.js';
import { checkedStation, type Station } from './station.js';

/** A point or direction in a station's local frame. */
export interface EnuKm {
  /** Kilometres towards the east. */
  readonly eastKm: number;
  /** Kilometres towards true north. */
  readonly northKm: number;
  /** Kilometres along the ellipsoid's normal, up. */
  readonly upKm: number;
}

const ENU_KM_KEYS = { eastKm: true, northKm: true, upKm: true } satisfies Keys<EnuKm>;

/** A direction and distance in a station's sky; read `kind` first. */
export type LocalDirection =
  | {
      /** `inclined`: the usual case. */
      readonly kind: 'inclined';
      /** Azimuth in degrees, clockwise from true north, [0, 360). */
      readonly azimuthDeg: number;
      /** Geometric elevation in degrees, -90 to 90. */
      readonly elevationDeg: number;
      /** Straight distance in kilometres. */
      readonly slantRangeKm: number;
    }
  | {
      /** `vertical`: straight up or down, where azimuth has no meaning. */
      readonly kind: 'vertical';
      /** 90 or -90 degrees. */
      readonly elevationDeg: number;
      /** Straight distance in kilometres. */
      readonly slantRangeKm: number;
    }
  | {
      /** `same-place`: no direction at all. */
      readonly kind: 'same-place';
      /** Zero. */
      readonly slantRangeKm: number;
    };

/** Nothing is farther than this, about 67 astronomical units: products of coordinates stay finite. */
const FARTHEST_KM = 1e10;

/** The three unit vectors of a local frame in Earth-fixed axes. */
interface FrameTurn {
  readonly sinLatitude: number;
  readonly cosLatitude: number;
  readonly sinLongitude: number;
  readonly cosLongitude: number;
  readonly origin: EcefKm;
}

function frameTurn(station: Station): FrameTurn {
  const { latitudeDeg, longitudeDeg } = checkedStation(station);
  return {
    sinLatitude: sinDeg(latitudeDeg),
    cosLatitude: cosDeg(latitudeDeg),
    sinLongitude: sinDeg(longitudeDeg),
    cosLongitude: cosDeg(longitudeDeg),
    origin: stationToEcef(station),
  };
}

/**
 * An Earth-fixed point as seen from a station: kilometres east, north and up.
 *
 * The line of sight is turned by the longitude about the axis, then by the latitude:
 * east = -sin lon dx + cos lon dy; north = -sin lat (cos lon dx + sin lon dy) + cos lat dz;
 * up = cos lat (cos lon dx + sin lon dy) + sin lat dz.
 *
 * @throws {@link DomainError} for a station outside its domain or a point that is not finite or beyond 1e10 km.
 *
 * Source: IOGP Guidance Note 7-2, section 4.1.2 (topocentric conversion, EPSG method 9836).
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { ecefToEnu } from 'slantpath/earth';
 * const under = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
 * ecefToEnu(under, { xKm: 6378.137, yKm: 3, zKm: 4 }); // => { eastKm: 3, northKm: 4, upKm: 0 }
 * ```
 */
export function ecefToEnu(station: Station, ecef: EcefKm): EnuKm {
  const turn = frameTurn(station);
  const { xKm, yKm, zKm } = known('ecef', ecef, ECEF_KM_KEYS);
  const dx = inRange('xKm', xKm, -FARTHEST_KM, FARTHEST_KM) - turn.origin.xKm;
  const dy = inRange('yKm', yKm, -FARTHEST_KM, FARTHEST_KM) - turn.origin.yKm;
  const dz = inRange('zKm', zKm, -FARTHEST_KM, FARTHEST_KM) - turn.origin.zKm;
  const out = turn.cosLongitude * dx + turn.sinLongitude * dy;
  return {
    eastKm: turn.cosLongitude * dy - turn.sinLongitude * dx + 0,
    northKm: turn.cosLatitude * dz - turn.sinLatitude * out + 0,
    upKm: turn.cosLatitude * out + turn.sinLatitude * dz + 0,
  };
}

/**
 * Earth-fixed position of a point given in a station's local frame: the inverse of {@link ecefToEnu}.
 *
 * @throws {@link DomainError} for a station outside its domain or a component that is not finite or beyond 1e10 km.
 *
 * Source: IOGP Guidance Note 7-2, section 4.1.2 (EPSG method 9836, reversed). Accuracy: rounding only.
 * @example
 * ```ts
 * import { enuToEcef } from 'slantpath/earth';
 * const under = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
 * enuToEcef(under, { eastKm: 3, northKm: 4, upKm: 0 }); // => { xKm: 6378.137, yKm: 3, zKm: 4 }
 * ```
 */
export function enuToEcef(station: Station, enu: EnuKm): EcefKm {
  const turn = frameTurn(station);
  const { eastKm, northKm, upKm } = checkedEnu(enu);
  const out = turn.cosLatitude * upKm - turn.sinLatitude * northKm;
  return {
    xKm: turn.origin.xKm + turn.cosLongitude * out - turn.sinLongitude * eastKm,
    yKm: turn.origin.yKm + turn.sinLongitude * out + turn.cosLongitude * eastKm,
    zKm: turn.origin.zKm + turn.cosLatitude * northKm + turn.sinLatitude * upKm,
  };
}

/**
 * Azimuth, elevation and distance of a point in a local frame.
 *
 * @returns `inclined` with azimuth [0, 360), elevation -90 to 90 and range; `vertical` straight up or
 *   down, where azimuth has no meaning; `same-place` for a zero vector.
 * @throws {@link DomainError} for a component that is not finite or beyond 1e10 km.
 *
 * Source: definition. Accuracy: rounding only.
 * @example
 * ```ts
 * import { enuToDirection } from 'slantpath/earth';
 * const direction = enuToDirection({ eastKm: -1, northKm: 0, upKm: 1 });
 * direction.kind === 'inclined' && direction.azimuthDeg; // => 270
 * ```
 */
export function enuToDirection(enu: EnuKm): LocalDirection {
  const { eastKm, northKm, upKm } = checkedEnu(enu);
  const horizontalKm = Math.hypot(eastKm, northKm);
  const slantRangeKm = Math.hypot(horizontalKm, upKm);
  if (slantRangeKm === 0) return { kind: 'same-place', slantRangeKm };
  const elevationDeg = Math.atan2(upKm, horizontalKm) * DEGREES_PER_RADIAN + 0;
  if (horizontalKm === 0) return { kind: 'vertical', elevationDeg, slantRangeKm };
  const turnDeg = Math.atan2(eastKm, northKm) * DEGREES_PER_RADIAN;
  const azimuthDeg = turnDeg < 0 ? (turnDeg + 360) % 360 : turnDeg + 0;
  return { kind: 'inclined', azimuthDeg, elevationDeg, slantRangeKm };
}

function checkedEnu(enu: EnuKm): EnuKm {
  const { eastKm, northKm, upKm } = known('enu', enu, ENU_KM_KEYS);
  return {
    eastKm: inRange('eastKm', eastKm, -FARTHEST_KM, FARTHEST_KM),
    northKm: inRange('northKm', northKm, -FARTHEST_KM, FARTHEST_KM),
    upKm: inRange('upKm', upKm, -FARTHEST_KM, FARTHEST_KM),
  };
}

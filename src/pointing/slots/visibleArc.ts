/** The part of the geostationary arc above a given elevation. */

import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { wrapLongitudeDeg } from '../../numeric/angle.js';
import { bracketedRoot } from '../../numeric/root.js';
import { elevationOfDeg, sightLineKm } from '../look/sightLine.js';

/** What {@link visibleArc} is asked. */
export interface VisibleArcInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Lowest geometric elevation that counts as visible in degrees, -5 to 90; 0 when left out. */
  readonly minimumElevationDeg?: number;
}

const VISIBLE_ARC_INPUT_KEYS = {
  station: true,
  minimumElevationDeg: true,
} satisfies Keys<VisibleArcInput>;

/** The visible part of the arc; read `kind` first. */
export type VisibleArc =
  | {
      /** `arc`: part of the geostationary arc stands above the lowest elevation. */
      readonly kind: 'arc';
      /** Westernmost visible orbital longitude in degrees, [-180, 180). */
      readonly westLongitudeDeg: number;
      /** Easternmost visible orbital longitude in degrees, [-180, 180); less than the west one across the date line. */
      readonly eastLongitudeDeg: number;
      /** Half of the arc: from the station's longitude to either end in degrees of orbital longitude, 0 to 82. */
      readonly halfWidthDeg: number;
      /** Elevation of the arc's highest point, on the station's meridian, in degrees. */
      readonly highestElevationDeg: number;
    }
  | {
      /** `none`: even the arc's highest point stands below the lowest elevation. */
      readonly kind: 'none';
      /** Elevation of the arc's highest point, on the station's meridian, in degrees. */
      readonly highestElevationDeg: number;
    };

/** Half width of the arc above `minimumElevationDeg` for a checked station, or `undefined` if there is none. */
export function arcHalfWidthDeg(station: Station, minimumElevationDeg: number): number | undefined {
  const above = (offsetDeg: number): number =>
    elevationOfDeg(sightLineKm({ ...station, longitudeDeg: 0 }, offsetDeg)) - minimumElevationDeg;
  if (above(0) < 0) return undefined;
  // Elevation falls steadily from the meridian to the far side of the Earth.
  return bracketedRoot(above, { from: 0, to: 180 }) ?? 180;
}

/**
 * The part of the geostationary arc that stands above a lowest elevation at a station.
 *
 * Elevation depends on the difference of longitudes only and falls steadily on both sides of the
 * station's meridian, so the arc is symmetrical about it; its half width is found as a bracketed root.
 *
 * @returns Both ends as orbital longitudes and the elevation of the highest point; or `none`.
 * @throws {@link DomainError} naming the station's field or `minimumElevationDeg`.
 *
 * Source: own derivation; WGS 84 ellipsoid, no refraction.
 * Accuracy: 1e-9 degree of orbital longitude.
 * @example
 * ```ts
 * import { visibleArc } from 'slantpath/pointing';
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * const arc = visibleArc({ station, minimumElevationDeg: 10 });
 * arc.kind === 'arc' && arc.westLongitudeDeg.toFixed(2); // => '-52.92'
 * ```
 */
export function visibleArc(input: VisibleArcInput): VisibleArc {
  const { station, minimumElevationDeg = 0 } = knownOnly('input', input, VISIBLE_ARC_INPUT_KEYS);
  const checked = checkedStation(station);
  const lowestDeg = inRange('minimumElevationDeg', minimumElevationDeg, -5, 90);
  const highestElevationDeg = elevationOfDeg(sightLineKm(checked, checked.longitudeDeg));
  const halfWidthDeg = arcHalfWidthDeg(checked, lowestDeg);
  if (halfWidthDeg === undefined) return { kind: 'none', highestElevationDeg };
  const meridianDeg = wrapLongitudeDeg(checked.longitudeDeg);
  return {
    kind: 'arc',
    westLongitudeDeg: wrapLongitudeDeg(meridianDeg - halfWidthDeg),
    eastLongitudeDeg: wrapLongitudeDeg(meridianDeg + halfWidthDeg),
    halfWidthDeg,
    highestElevationDeg,
  };
}

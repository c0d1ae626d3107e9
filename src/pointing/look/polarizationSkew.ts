/** Polarization skew: by how much the feed is turned to match the satellite's polarization. */

import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { finite, inRange, oneOf } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { atan2Deg, lineDeg } from '../../numeric/angle.js';
import { lineOfSight } from './lookAngles.js';
import { OVERHEAD_RATIO } from './overhead.js';

/** How a satellite's polarization lies. */
export type SatellitePolarization =
  | {
      /** Linear: one polarization along the satellite's vertical, the other across it. */
      readonly kind: 'linear';
      /**
       * Turn of the satellite's vertical from the Earth's axis in degrees, -180 to 180, clockwise positive as
       * seen from behind the antenna, facing the satellite; 0 for most satellites.
       */
      readonly tiltDeg: number;
    }
  | {
      /** Circular: the feed's rotation does not matter. */
      readonly kind: 'circular';
    };

const SATELLITE_POLARIZATION_KEYS = {
  kind: true,
  tiltDeg: true,
} satisfies Keys<SatellitePolarization>;

/** What {@link polarizationSkew} is asked. */
export interface PolarizationSkewInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** The satellite's polarization; linear without tilt when left out. */
  readonly polarization?: SatellitePolarization;
}

const POLARIZATION_SKEW_INPUT_KEYS = {
  station: true,
  orbitalLongitudeDeg: true,
  polarization: true,
} satisfies Keys<PolarizationSkewInput>;

/** Rotation of the feed; read `kind` first. */
export type PolarizationSkew =
  | {
      /** `visible`: above the geometric horizon. `below-horizon`: hidden by the Earth. */
      readonly kind: 'visible' | 'below-horizon';
      /**
       * Rotation of the feed from its upright position in degrees, [-90, 90), clockwise positive as seen
       * from behind the antenna, facing the satellite. A feed for the other polarization stands across it.
       */
      readonly skewDeg: number;
      /** The share of the geometry: from the local vertical to the Earth's axis, [-90, 90). */
      readonly geometryDeg: number;
      /** The share of the satellite's own tilt, as given. */
      readonly tiltDeg: number;
    }
  | {
      /** The satellite stands in the zenith, where the antenna has no vertical to count from. */
      readonly kind: 'overhead';
      /** True bearing of the satellite's vertical polarization over the ground in degrees, [0, 180). */
      readonly polarizationBearingDeg: number;
      /** The share of the satellite's own tilt, as given. */
      readonly tiltDeg: number;
    }
  | {
      /** Circular polarization: any rotation of the feed will do. */
      readonly kind: 'circular';
    };

/**
 * Polarization skew from a station to a geostationary satellite.
 *
 * The Earth's axis and the local vertical are projected on the plane across the line of sight; the angle
 * between the projections is the share of the geometry, and the satellite's own tilt is added to it.
 * With the line of sight (e, n, u) of length s in east, north, up, the axis (0, cos lat, sin lat):
 * tan(skew) = -e cos lat / (s sin lat - u (n cos lat + u sin lat) / s).
 *
 * @returns `skewDeg` with its two shares; a bearing for a satellite in the zenith; nothing to turn for a
 *   circular polarization.
 * @throws {@link DomainError} naming the station's field, `orbitalLongitudeDeg`, `polarization.kind` or
 *   `polarization.tiltDeg`.
 *
 * Source: own derivation from vectors; the same angle is the parallactic angle of astronomy, with the
 * topocentric hour angle and declination. Textbooks often give the short form
 * atan(sin(station - satellite longitude) / tan(latitude)), which is up to 0.34 degree short, most
 * about latitude 45 for a satellite low in the east or west.
 * Accuracy: 1e-9 degree outside 0.1 degree around the zenith.
 * @example
 * ```ts
 * import { polarizationSkew } from 'slantpath/pointing';
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * const skew = polarizationSkew({ station, orbitalLongitudeDeg: 21.8 });
 * skew.kind === 'visible' && skew.skewDeg.toFixed(2); // => '-11.47'
 * ```
 */
export function polarizationSkew(input: PolarizationSkewInput): PolarizationSkew {
  const { station, orbitalLongitudeDeg, polarization } = knownOnly(
    'input',
    input,
    POLARIZATION_SKEW_INPUT_KEYS,
  );
  const checked = checkedStation(station);
  const longitudeDeg = finite('orbitalLongitudeDeg', orbitalLongitudeDeg);
  const tiltDeg = checkedTiltDeg(polarization);
  if (tiltDeg === undefined) return { kind: 'circular' };
  const { latitudeDeg, heightM } = checked;
  const line = lineOfSight(latitudeDeg, checked.longitudeDeg, heightM, longitudeDeg);
  const geometryDeg = skewGeometry(line);
  // Seen from above a bearing runs clockwise, seen from below, facing the zenith, counter-clockwise.
  if (Number.isNaN(geometryDeg))
    return {
      kind: 'overhead',
      polarizationBearingDeg: (lineDeg(-tiltDeg) + 180) % 180,
      tiltDeg,
    };
  return {
    kind: line.upKm > 0 ? 'visible' : 'below-horizon',
    skewDeg: lineDeg(geometryDeg + tiltDeg),
    geometryDeg,
    tiltDeg,
  };
}

/**
 * The share of the geometry for checked numbers, and how far up the line of sight goes; NaN in the zenith. Square roots instead
 * of `Math.hypot`, which is slow and guards against sizes that do not occur here.
 */
export function skewGeometry({
  eastKm,
  northKm,
  upKm,
  sinLatitude,
  cosLatitude,
}: ReturnType<typeof lineOfSight>): number {
  const square = eastKm * eastKm + northKm * northKm;
  if (upKm > 0 && Math.sqrt(square) < OVERHEAD_RATIO * upKm) return Number.NaN;
  const range = Math.sqrt(square + upKm * upKm);
  return lineDeg(
    atan2Deg(
      -eastKm * cosLatitude,
      range * sinLatitude - (upKm * (northKm * cosLatitude + upKm * sinLatitude)) / range,
    ),
  );
}

/** Tilt of a checked polarization, 0 where none is given; nothing for a circular one. */
export function checkedTiltDeg(
  polarization: SatellitePolarization | undefined,
  parameter = 'polarization',
): number | undefined {
  if (polarization === undefined) return 0;
  const { kind } = known(parameter, polarization, SATELLITE_POLARIZATION_KEYS);
  oneOf(`${parameter}.kind`, kind, ['linear', 'circular']);
  if (polarization.kind === 'circular') return undefined;
  return inRange(`${parameter}.tiltDeg`, polarization.tiltDeg, -180, 180) + 0;
}

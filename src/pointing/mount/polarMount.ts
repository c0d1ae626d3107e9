/** Polar mount: one axis that follows the arc, its setting, and the tracking error that is left. */

import { GEOSTATIONARY_RADIUS_KM, WGS84_SEMI_MAJOR_AXIS_KM } from '../../constants.js';
import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { finite, inRange, list, oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { asinDeg, atan2Deg, cosDeg, sinDeg, wrapLongitudeDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { minimumBetween } from '../../numeric/minimum.js';
import { bracketedRoot } from '../../numeric/root.js';
import { type EastNorthUp, elevationOfDeg, sightLineKm, unit } from '../look/sightLine.js';

/** How the axis is set. */
export type PolarMountFit = 'least-worst' | 'apex-and-ends' | 'polar-axis';

/** What {@link polarMount} is asked. */
export interface PolarMountInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Lowest geometric elevation of the arc to follow in degrees, 0 to 89; 0 when left out. */
  readonly minimumElevationDeg?: number;
  /**
   * `least-worst` (when left out): the largest tracking error over the arc is least. `apex-and-ends`: right at the arc's
   * highest point and at both ends. `polar-axis`: the axis parallel to the Earth's, right at the highest point only.
   */
  readonly fit?: PolarMountFit;
  /** Slots whose rotation and error are asked, longitudes in degrees; none when left out. */
  readonly orbitalLongitudesDeg?: readonly number[];
  /** `ellipsoid` (WGS 84, when left out) or `sphere` (radius 6378.137 km), to compare with textbook tables. */
  readonly earthModel?: 'ellipsoid' | 'sphere';
}

const POLAR_MOUNT_INPUT_KEYS = {
  station: true,
  minimumElevationDeg: true,
  fit: true,
  orbitalLongitudesDeg: true,
  earthModel: true,
} satisfies Keys<PolarMountInput>;

/** A slot as the mount reaches it. */
export interface PolarMountSlot {
  /** Longitude of the slot in degrees, [-180, 180). */
  readonly orbitalLongitudeDeg: number;
  /** Rotation of the axis from the highest point in degrees, [-180, 180), towards the east positive. */
  readonly rotationEastDeg: number;
  /** How far the beam passes beside the slot in degrees: positive where the slot stands too low for it. */
  readonly errorDeg: number;
  /** Geometric elevation of the slot in degrees. */
  readonly elevationDeg: number;
}

/** Setting of a polar mount; read `kind` first. */
export type PolarMount =
  | {
      /** `mount`: there is an arc to follow. */
      readonly kind: 'mount';
      /** Elevation of the axis above the horizontal towards the nearer pole in degrees. */
      readonly axisElevationDeg: number;
      /** By how much the axis is tipped forwards, towards the equator, from the Earth's axis in degrees: axis elevation minus latitude. */
      readonly forwardTiltDeg: number;
      /** Angle of the beam below the plane across the axis in degrees. */
      readonly mountDeclinationDeg: number;
      /** Elevation of the beam at the highest point in degrees: 90 - axis elevation - declination. */
      readonly apexBeamElevationDeg: number;
      /** Elevation of the arc's highest point in degrees. */
      readonly apexElevationDeg: number;
      /** Half of the arc in degrees of orbital longitude. */
      readonly halfWidthDeg: number;
      /** Error at the highest point in degrees, signed as in the slots. */
      readonly apexErrorDeg: number;
      /** Error at either end of the arc in degrees, signed as in the slots. */
      readonly endErrorDeg: number;
      /** Largest error of any sign over the arc in degrees. */
      readonly largestErrorDeg: number;
      /** The slots asked for, in the order given; also those below the lowest elevation. */
      readonly slots: readonly PolarMountSlot[];
      /** Error over one half of the arc, from the highest point to its end in 40 steps; the other half mirrors it. */
      readonly curve: readonly {
        /** Longitude of the slot from the station's in degrees. */
        readonly longitudeDifferenceDeg: number;
        /** Error in degrees, signed as in the slots. */
        readonly errorDeg: number;
      }[];
    }
  | {
      /** `none`: no part of the arc stands above the lowest elevation. */
      readonly kind: 'none';
      /** Elevation of the arc's highest point in degrees. */
      readonly apexElevationDeg: number;
    };

/** Direction of a slot by its longitude east of the station: towards east, the nearer pole, and up. */
type Arc = (longitudeDifferenceDeg: number) => EastNorthUp;

function arcOf(station: Station, earthModel: 'ellipsoid' | 'sphere'): Arc {
  const local = { ...station, latitudeDeg: Math.abs(station.latitudeDeg), longitudeDeg: 0 };
  if (earthModel === 'ellipsoid') return (difference) => unit(sightLineKm(local, difference));
  const sine = sinDeg(local.latitudeDeg);
  const cosine = cosDeg(local.latitudeDeg);
  const radiusKm = WGS84_SEMI_MAJOR_AXIS_KM + local.heightM / 1000;
  return (difference) => {
    const out = GEOSTATIONARY_RADIUS_KM * cosDeg(difference);
    return unit([
      GEOSTATIONARY_RADIUS_KM * sinDeg(difference),
      -sine * out,
      cosine * out - radiusKm,
    ]);
  };
}

/** Angle of a direction below the plane across an axis whose elevation is given. */
function declinationOf(direction: EastNorthUp, axisElevationDeg: number): number {
  return -asinDeg(
    direction[1] * cosDeg(axisElevationDeg) + direction[2] * sinDeg(axisElevationDeg),
  );
}

/** Lowest and highest declination over the half arc for an axis. */
function declinationSpan(
  arc: Arc,
  halfWidthDeg: number,
  axisElevationDeg: number,
): readonly [number, number] {
  const at = (difference: number): number => declinationOf(arc(difference), axisElevationDeg);
  const steps = 32;
  const values = Array.from({ length: steps + 1 }, (_, i) => at((i / steps) * halfWidthDeg));
  const extreme = (sign: 1 | -1): number => {
    const index = values.reduce(
      (best, v, i) => (sign * v < sign * valueAt(values, best) ? i : best),
      0,
    );
    const { value } = minimumBetween((x) => sign * at(x), {
      from: (Math.max(0, index - 1) / steps) * halfWidthDeg,
      to: (Math.min(steps, index + 1) / steps) * halfWidthDeg,
      tolerance: 1e-7,
    });
    return sign * Math.min(value, sign * valueAt(values, index));
  };
  return [extreme(1), extreme(-1)];
}

/** Axis elevation and declination for a fit. */
function setting(
  arc: Arc,
  latitudeDeg: number,
  halfWidthDeg: number,
  fit: PolarMountFit,
): { readonly axisElevationDeg: number; readonly mountDeclinationDeg: number } {
  const right = (axisElevationDeg: number) => ({
    axisElevationDeg,
    mountDeclinationDeg: declinationOf(arc(0), axisElevationDeg),
  });
  if (fit === 'polar-axis') return right(latitudeDeg);
  if (fit === 'apex-and-ends') {
    const gap = (tilt: number): number =>
      declinationOf(arc(0), latitudeDeg + tilt) -
      declinationOf(arc(halfWidthDeg), latitudeDeg + tilt);
    return right(latitudeDeg + (bracketedRoot(gap, { from: -0.5, to: 2, tolerance: 1e-12 }) ?? 0));
  }
  const { at } = minimumBetween(
    (tilt) => {
      const [low, high] = declinationSpan(arc, halfWidthDeg, latitudeDeg + tilt);
      return high - low;
    },
    { from: -0.5, to: 2, tolerance: 1e-9 },
  );
  const [low, high] = declinationSpan(arc, halfWidthDeg, latitudeDeg + at);
  return { axisElevationDeg: latitudeDeg + at, mountDeclinationDeg: (low + high) / 2 };
}

/**
 * Setting of a polar mount for a station: elevation of the axis, declination of the beam, rotation to each slot, and the
 * tracking error that is left.
 *
 * A beam that keeps the angle 90 + declination to the axis draws a cone; the arc, at a finite distance, is not one. With the axis
 * parallel to the Earth's the beam is right at the highest point and passes up to 0.6 degree beside the ends. Tipping the axis
 * forwards by t and taking about t off the declination brings the error down to hundredths of a degree (the modified mount).
 *
 * @returns The setting, the slots and the error over the arc; `none` where no arc is visible.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: own derivation from vectors; declination offset on the sphere as in Roddy, Example 3.3, and Blake, Example 20.2.
 * Accuracy: 1e-7 degree.
 * @example
 * ```ts
 * import { polarMount } from 'slantpath/pointing';
 * const mount = polarMount({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   minimumElevationDeg: 10,
 *   orbitalLongitudesDeg: [7.2, 16.4, 21.8],
 * });
 * mount.kind === 'mount' && mount.largestErrorDeg < 0.005; // => true
 * ```
 */
export function polarMount(input: PolarMountInput): PolarMount {
  const given = knownOnly('input', input, POLAR_MOUNT_INPUT_KEYS);
  const station = checkedStation(given.station);
  const minimumDeg = inRange('minimumElevationDeg', given.minimumElevationDeg ?? 0, 0, 89);
  const fit = oneOf('fit', given.fit ?? 'least-worst', [
    'least-worst',
    'apex-and-ends',
    'polar-axis',
  ]);
  const earthModel = oneOf('earthModel', given.earthModel ?? 'ellipsoid', ['ellipsoid', 'sphere']);
  const longitudes = Array.from(
    list('orbitalLongitudesDeg', given.orbitalLongitudesDeg ?? []),
    (value, index) => finite('orbitalLongitudesDeg', value, undefined, index),
  );
  const arc = arcOf(station, earthModel);
  const apexElevationDeg = elevationOfDeg(arc(0));
  const halfWidthDeg = bracketedRoot((d) => elevationOfDeg(arc(d)) - minimumDeg, {
    from: 0,
    to: 180,
  });
  if (apexElevationDeg < minimumDeg || halfWidthDeg === undefined)
    return { kind: 'none', apexElevationDeg };
  const latitudeDeg = Math.abs(station.latitudeDeg);
  const { axisElevationDeg, mountDeclinationDeg: setDeg } = setting(
    arc,
    latitudeDeg,
    halfWidthDeg,
    fit,
  );
  const errorDeg = (difference: number): number =>
    declinationOf(arc(difference), axisElevationDeg) - setDeg + 0;
  const [low, high] = declinationSpan(arc, halfWidthDeg, axisElevationDeg);
  return {
    kind: 'mount',
    axisElevationDeg,
    forwardTiltDeg: axisElevationDeg - latitudeDeg,
    mountDeclinationDeg: setDeg + 0,
    apexBeamElevationDeg: 90 - axisElevationDeg - setDeg,
    apexElevationDeg,
    halfWidthDeg,
    apexErrorDeg: errorDeg(0),
    endErrorDeg: errorDeg(halfWidthDeg),
    largestErrorDeg: Math.max(Math.abs(low - setDeg), Math.abs(high - setDeg)),
    slots: longitudes.map((longitude): PolarMountSlot => {
      const difference = (longitude % 360) - (station.longitudeDeg % 360);
      const direction = arc(difference);
      return {
        orbitalLongitudeDeg: wrapLongitudeDeg(longitude),
        rotationEastDeg: wrapLongitudeDeg(
          atan2Deg(
            direction[0],
            direction[2] * cosDeg(axisElevationDeg) - direction[1] * sinDeg(axisElevationDeg),
          ),
        ),
        errorDeg: errorDeg(difference),
        elevationDeg: elevationOfDeg(direction),
      };
    }),
    curve: Array.from({ length: 41 }, (_, step) => {
      const longitudeDifferenceDeg = (step / 40) * halfWidthDeg;
      return { longitudeDifferenceDeg, errorDeg: errorDeg(longitudeDifferenceDeg) };
    }),
  };
}

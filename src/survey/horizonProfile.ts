/** The horizon as measured from one place: sightings made into a profile. */

import { DomainError, finite, inRange, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { DEGREES_PER_RADIAN, wrapAzimuthDeg } from '../numeric/angle.js';

/**
 * One sighting of the skyline. Its direction is either `azimuthDeg` (from true north) or
 * `magneticBearingDeg` (as read on a compass; needs `declinationDeg` in the call). Its height is either
 * `elevationDeg` or `distanceM` with `heightAboveEyeM`.
 */
export type Sighting = SightingDirection & SightingHeight;

const SIGHTING_KEYS = {
  azimuthDeg: true,
  magneticBearingDeg: true,
  elevationDeg: true,
  distanceM: true,
  heightAboveEyeM: true,
} satisfies Keys<Sighting>;

/** Direction of a sighting: true or magnetic. */
export type SightingDirection =
  | {
      /** Azimuth in degrees, clockwise from true north, any turn. */
      readonly azimuthDeg: number;
      readonly magneticBearingDeg?: never;
    }
  | {
      /** Bearing in degrees, clockwise from magnetic north, any turn. */
      readonly magneticBearingDeg: number;
      readonly azimuthDeg?: never;
    };

/** Height of a sighting: an angle, or a distance and a height. */
export type SightingHeight =
  | {
      /** Elevation of the skyline in degrees, -89 to 89; apparent, as a clinometer shows it. */
      readonly elevationDeg: number;
      readonly distanceM?: never;
      readonly heightAboveEyeM?: never;
    }
  | {
      /** Horizontal distance in metres, above 0. */
      readonly distanceM: number;
      /** Height of the obstruction's top above the observer's eye in metres; negative below it. */
      readonly heightAboveEyeM: number;
      readonly elevationDeg?: never;
    };

/** A point of a profile. */
export interface HorizonPoint {
  /** Azimuth in degrees, clockwise from true north, [0, 360). */
  readonly azimuthDeg: number;
  /** Elevation of the skyline in degrees, -89 to 89. */
  readonly elevationDeg: number;
}

/** The skyline round a place, point by point in the order of azimuth. */
export interface HorizonProfile {
  /** Points by rising azimuth; two at one azimuth are a vertical edge. */
  readonly points: readonly HorizonPoint[];
  /** Between neighbours further apart than this many degrees the skyline counts as not sighted. */
  readonly widestGapDeg: number;
}

export const HORIZON_PROFILE_KEYS = {
  points: true,
  widestGapDeg: true,
} satisfies Keys<HorizonProfile>;

const HORIZON_PROFILE_INPUT_KEYS = {
  sightings: true,
  declinationDeg: true,
  widestGapDeg: true,
} satisfies Keys<Parameters<typeof horizonProfile>[0]>;

/**
 * Profile of the horizon from sightings in any order.
 *
 * Take a sighting at each corner of the skyline. Between two of them the skyline is taken as a straight
 * edge in space (a roof, a wall, a ridge line); see `horizonAt`. Two sightings at the same azimuth make a
 * vertical edge.
 *
 * @param input  `sightings`, at least one; `declinationDeg` (east positive, default: none) is needed by
 *   magnetic bearings; `widestGapDeg` above 0 to 179, default 45.
 * @throws {@link DomainError} with the path of the sighting, for instance `sightings[2].elevationDeg`.
 *
 * Source: definition. Accuracy: that of the sightings; a hand clinometer and compass give about 0.5 and 1 degree
 * (practice of the trade).
 * @example
 * ```ts
 * import { horizonProfile } from 'slantpath/survey';
 * const profile = horizonProfile({
 *   sightings: [
 *     { magneticBearingDeg: 140, elevationDeg: 12 },
 *     { magneticBearingDeg: 170, distanceM: 40, heightAboveEyeM: 8 },
 *   ],
 *   declinationDeg: 3.8,
 * });
 * profile.points[0]; // => { azimuthDeg: 143.8, elevationDeg: 12 }
 * ```
 */
export function horizonProfile(input: {
  readonly sightings: readonly Sighting[];
  readonly declinationDeg?: number;
  readonly widestGapDeg?: number;
}): HorizonProfile {
  const { sightings, declinationDeg, widestGapDeg } = knownOnly(
    'input',
    input,
    HORIZON_PROFILE_INPUT_KEYS,
  );
  if (!Array.isArray(sightings) || sightings.length === 0) {
    throw new DomainError({
      code: sightings === undefined || sightings === null ? 'missing' : 'empty',
      parameter: 'sightings',
      received: sightings,
      allowed: 'a list of at least one sighting',
    });
  }
  if (declinationDeg !== undefined) inRange('declinationDeg', declinationDeg, -180, 180);
  const points = (sightings as readonly Sighting[]).map((sighting, index) => {
    const path = `sightings[${index}]`;
    known(path, sighting, SIGHTING_KEYS);
    return {
      azimuthDeg: sightingAzimuthDeg(path, sighting, declinationDeg),
      elevationDeg: sightingElevationDeg(path, sighting),
    };
  });
  // The sort is stable: points of a vertical edge keep the order in which they were sighted.
  points.sort((a, b) => a.azimuthDeg - b.azimuthDeg);
  return { points, widestGapDeg: inRange('widestGapDeg', widestGapDeg ?? 45, 0.001, 179) };
}

function sightingAzimuthDeg(
  path: string,
  sighting: Sighting,
  declinationDeg: number | undefined,
): number {
  if (sighting.magneticBearingDeg === undefined)
    return wrapAzimuthDeg(finite(`${path}.azimuthDeg`, sighting.azimuthDeg));
  const bearing = finite(`${path}.magneticBearingDeg`, sighting.magneticBearingDeg);
  if (declinationDeg === undefined) {
    throw new DomainError({
      code: 'missing',
      parameter: 'declinationDeg',
      received: declinationDeg,
      allowed: `given, because ${path} has a magnetic bearing`,
    });
  }
  return wrapAzimuthDeg((bearing % 360) + declinationDeg);
}

function sightingElevationDeg(path: string, sighting: Sighting): number {
  if (sighting.distanceM === undefined)
    return inRange(`${path}.elevationDeg`, sighting.elevationDeg, -89, 89) + 0;
  const distanceM = positive(`${path}.distanceM`, sighting.distanceM);
  const heightM = finite(`${path}.heightAboveEyeM`, sighting.heightAboveEyeM);
  const elevationDeg = Math.atan2(heightM, distanceM) * DEGREES_PER_RADIAN;
  return inRange(`${path} elevation`, elevationDeg, -89, 89, 'is the distance right?') + 0;
}

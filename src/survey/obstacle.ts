/** Obstacles by the corners of their upper edges, so that other places on the roof can be tried. */

import { DomainError, finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { cosDeg, sinDeg, wrapAzimuthDeg } from '../numeric/angle.js';

/** A point near the survey's own place: metres east, north and up from it. */
export interface LocalPointM {
  /** Metres towards the east, -100000 to 100000. */
  readonly eastM: number;
  /** Metres towards true north, -100000 to 100000. */
  readonly northM: number;
  /** Metres up from the eye, -100000 to 100000. */
  readonly upM: number;
}

const LOCAL_POINT_M_KEYS = { eastM: true, northM: true, upM: true } satisfies Keys<LocalPointM>;

/** Something that stands in the way: the corners of its upper edge in order, one for a pole or a tree's top. */
export interface Obstacle {
  /** Neighbouring corners are joined by straight edges; everything below an edge is solid. */
  readonly corners: readonly LocalPointM[];
}

const OBSTACLE_KEYS = { corners: true } satisfies Keys<Obstacle>;

const OBSTACLE_CORNER_SIGHTING_KEYS = {
  distanceM: true,
  heightAboveEyeM: true,
  azimuthDeg: true,
  magneticBearingDeg: true,
  declinationDeg: true,
} satisfies Keys<Parameters<typeof obstacleCorner>[0]>;

/**
 * Corner of an obstacle from a sighting: direction, horizontal distance and height above the eye.
 *
 * @param sighting  `azimuthDeg` from true north (or `magneticBearingDeg` with `declinationDeg`, east positive),
 *   `distanceM` above 0 to 100000, `heightAboveEyeM` -9000 to 9000.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: definition. Accuracy: that of the sighting.
 * @example
 * ```ts
 * import { obstacleCorner } from 'slantpath/survey';
 * const corner = obstacleCorner({ azimuthDeg: 90, distanceM: 40, heightAboveEyeM: 8 });
 * corner; // => { eastM: 40, northM: 0, upM: 8 }
 * ```
 */
export function obstacleCorner(
  sighting: { readonly distanceM: number; readonly heightAboveEyeM: number } & (
    | { readonly azimuthDeg: number; readonly magneticBearingDeg?: never }
    | {
        readonly magneticBearingDeg: number;
        readonly declinationDeg: number;
        readonly azimuthDeg?: never;
      }
  ),
): LocalPointM {
  const { distanceM, heightAboveEyeM, ...direction } = known(
    'sighting',
    sighting,
    OBSTACLE_CORNER_SIGHTING_KEYS,
  );
  const azimuth =
    direction.magneticBearingDeg === undefined
      ? finite('azimuthDeg', direction.azimuthDeg)
      : (finite('magneticBearingDeg', direction.magneticBearingDeg) % 360) +
        inRange('declinationDeg', direction.declinationDeg, -180, 180);
  const distance = inRange('distanceM', distanceM, 1e-3, 100000, 'is the distance in metres?');
  const azimuthDeg = wrapAzimuthDeg(azimuth);
  return {
    eastM: distance * sinDeg(azimuthDeg) + 0,
    northM: distance * cosDeg(azimuthDeg) + 0,
    upM: inRange('heightAboveEyeM', heightAboveEyeM, -9000, 9000, 'is the height in metres?') + 0,
  };
}

/** The checked point. */
export function checkedPoint(path: string, point: LocalPointM): LocalPointM {
  const { eastM, northM, upM } = known(path, point, LOCAL_POINT_M_KEYS);
  return {
    eastM: inRange(`${path}.eastM`, eastM, -1e5, 1e5),
    northM: inRange(`${path}.northM`, northM, -1e5, 1e5),
    upM: inRange(`${path}.upM`, upM, -1e5, 1e5),
  };
}

/** The checked obstacles, each with at least one corner. */
export function checkedObstacles(obstacles: readonly Obstacle[]): readonly Obstacle[] {
  if (!Array.isArray(obstacles)) {
    throw new DomainError({
      code: obstacles === undefined || obstacles === null ? 'missing' : 'malformed',
      parameter: 'obstacles',
      received: obstacles,
      allowed: 'a list of obstacles, which may be empty',
    });
  }
  return (obstacles as readonly Obstacle[]).map((obstacle, index) => {
    const path = `obstacles[${index}]`;
    const { corners } = known(path, obstacle, OBSTACLE_KEYS);
    if (!Array.isArray(corners) || corners.length === 0) {
      throw new DomainError({
        code: corners === undefined || corners === null ? 'missing' : 'empty',
        parameter: `${path}.corners`,
        received: corners,
        allowed: 'a list of at least one corner',
      });
    }
    return {
      corners: (corners as readonly LocalPointM[]).map((corner, number) =>
        checkedPoint(`${path}.corners[${number}]`, corner),
      ),
    };
  });
}

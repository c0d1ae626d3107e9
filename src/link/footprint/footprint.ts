/** EIRP or G/T of a satellite at a place, from the contours of its footprint. */

import { DomainError, finite, inRange, object } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { type Footprint, footprintLevels, type Level, type Ring } from './geoJson.js';
import {
  arcsDistanceDeg,
  insidePolygon,
  type Place,
  placeDistanceDeg,
  ringArcs,
} from './ringGeometry.js';

/** A place on the globe. */
export interface FootprintPlace {
  /** Latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: number;
}

const FOOTPRINT_PLACE_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
} satisfies Keys<FootprintPlace>;

/** Outcome of {@link footprintLevel}; levels in the decibel unit of the footprint's property. */
export type FootprintLevel =
  | {
      /** `between`: inside a contour and outside the next; interpolated. */
      readonly kind: 'between';
      /** Level at the place. */
      readonly levelDb: number;
      /** Level of the contour that the place lies inside. */
      readonly innerLevelDb: number;
      /** Level of the next contour (or peak), which is not reached. */
      readonly nextLevelDb: number;
      /** Distance to the contour behind, as an angle at the Earth's centre, in degrees. */
      readonly fromContourDeg: number;
      /** Distance to the next contour or peak, in degrees. */
      readonly toNextDeg: number;
    }
  | {
      /** `highest`: inside the highest contour, and no peak is given; at least its level. */
      readonly kind: 'highest';
      /** Level of the highest contour. */
      readonly levelDb: number;
    }
  | {
      /** `outside`: outside every contour; less than the lowest level. */
      readonly kind: 'outside';
      /** Level of the lowest contour. */
      readonly lowestLevelDb: number;
      /** Distance to the nearest contour in degrees. */
      readonly toNearestDeg: number;
    };

/** Arcs of a ring. */
type ArcsOf = (ring: Ring) => Float64Array;

/** Arcs that are made once for a ring, for a footprint that is asked for many places. */
export function keptArcs(): ArcsOf {
  const kept = new Map<Ring, Float64Array>();
  return (ring) => {
    const before = kept.get(ring);
    if (before) return before;
    const arcs = ringArcs(ring);
    kept.set(ring, arcs);
    return arcs;
  };
}

/** Distance to whatever marks a level: edges of its polygons or its peaks. */
function levelDistanceDeg({ polygons, peaks }: Level, place: Place, arcsOf: ArcsOf): number {
  let least = 180;
  for (const rings of polygons)
    for (const ring of rings) least = Math.min(least, arcsDistanceDeg(arcsOf(ring), place));
  for (const peak of peaks) least = Math.min(least, placeDistanceDeg(peak, place));
  return least;
}

/** The outcome at a checked place. */
export function levelAt(
  levels: readonly Level[],
  place: Place,
  arcsOf: ArcsOf = ringArcs,
): FootprintLevel {
  const contours = levels.filter(({ polygons }) => polygons.length > 0);
  let inner = -1;
  levels.forEach(({ polygons }, index) => {
    if (polygons.some((rings) => insidePolygon(rings, place))) inner = index;
  });
  if (inner < 0)
    return {
      kind: 'outside',
      lowestLevelDb: contours[0]?.level ?? 0,
      toNearestDeg: Math.min(...contours.map((level) => levelDistanceDeg(level, place, arcsOf))),
    };
  const here = levels[inner] as Level;
  const next = levels[inner + 1];
  if (next === undefined) return { kind: 'highest', levelDb: here.level };
  const fromContourDeg = levelDistanceDeg({ ...here, peaks: [] }, place, arcsOf);
  const toNextDeg = levelDistanceDeg(next, place, arcsOf);
  const whole = fromContourDeg + toNextDeg;
  const share = whole > 0 ? fromContourDeg / whole : 0;
  return {
    kind: 'between',
    levelDb: here.level + share * (next.level - here.level),
    innerLevelDb: here.level,
    nextLevelDb: next.level,
    fromContourDeg,
    toNextDeg,
  };
}

export function checkedPlace(place: FootprintPlace, index?: number): Place {
  const { latitudeDeg, longitudeDeg } = known('place', place, FOOTPRINT_PLACE_KEYS);
  const slip = 'were latitude and longitude swapped?';
  return {
    latitudeDeg: inRange('latitudeDeg', latitudeDeg, -90, 90, slip, index),
    longitudeDeg: finite('longitudeDeg', longitudeDeg, undefined, index) % 360,
  };
}

/** Input of {@link footprintLevel} besides the place. */
export interface FootprintOptions {
  /** Property of each feature that holds its level; default `eirpDbw`. */
  readonly property?: string;
}

/**
 * Level of a footprint at a place, between its contours in proportion to the distances to them.
 *
 * Contours are GeoJSON polygons (holes allowed) inside which their level is reached, in any order; a point gives the
 * peak. Edges are straight in longitude and latitude (RFC 7946). Polygons cut at the date line, and such that cross it uncut, are
 * both understood; a ring once round a pole encloses the pole it is nearer to.
 *
 * @param footprint  The contours.
 * @param where  `latitudeDeg`, `longitudeDeg` of the place; `property` that holds the level, default `eirpDbw`.
 * @throws {@link DomainError} naming the bad part of the footprint by its path, or the bad field.
 *
 * Source: RFC 7946 for the form; interpolation by distance is common practice. Accuracy: exact on a contour, and midway between two
 * that run side by side; elsewhere as good as contours can say.
 * @example
 * ```ts
 * import { footprintLevel } from 'slantpath/link';
 * const box = (half: number) => [
 *   [[-half, -half], [half, -half], [half, half], [-half, half], [-half, -half]],
 * ];
 * const contour = (eirpDbw: number, half: number) => ({
 *   type: 'Feature' as const,
 *   properties: { eirpDbw },
 *   geometry: { type: 'Polygon' as const, coordinates: box(half) },
 * });
 * const footprint = { type: 'FeatureCollection' as const, features: [contour(48, 10), contour(50, 6)] };
 * const result = footprintLevel(footprint, { latitudeDeg: 0, longitudeDeg: 8 });
 * result.kind === 'between' && result.levelDb.toFixed(2); // => '49.00'
 * ```
 */
export function footprintLevel(
  footprint: Footprint,
  where: FootprintPlace & FootprintOptions,
): FootprintLevel {
  const place = checkedPlace(where);
  return levelAt(footprintLevels(footprint, where.property ?? 'eirpDbw'), place);
}

const FOOTPRINT_LEVELS_AT_PLACES_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  property: true,
} satisfies Keys<Parameters<typeof footprintLevelsAt>[1]>;

/**
 * Levels of a footprint at many places; the footprint is read once.
 *
 * @param footprint  The contours.
 * @param places  `latitudeDeg` and `longitudeDeg` as columns of one length; `property` as for {@link footprintLevel}.
 * @returns The same outcomes as {@link footprintLevel}, in the order of the columns.
 * @throws {@link DomainError} naming the bad part of the footprint, or the bad column with the row's index.
 *
 * Source: as {@link footprintLevel}.
 * @example
 * ```ts
 * import { footprintLevelsAt } from 'slantpath/link';
 * const ring = [[0, 0], [20, 0], [20, 20], [0, 20], [0, 0]];
 * const feature = {
 *   type: 'Feature' as const,
 *   properties: { eirpDbw: 47 },
 *   geometry: { type: 'Polygon' as const, coordinates: [ring] },
 * };
 * const footprint = { type: 'FeatureCollection' as const, features: [feature] };
 * footprintLevelsAt(footprint, { latitudeDeg: [10, 40], longitudeDeg: [10, 10] }).map((level) => level.kind); // => ['highest', 'outside']
 * ```
 */
export function footprintLevelsAt(
  footprint: Footprint,
  places: {
    readonly latitudeDeg: ArrayLike<number>;
    readonly longitudeDeg: ArrayLike<number>;
  } & FootprintOptions,
): FootprintLevel[] {
  const { latitudeDeg, longitudeDeg, property } = known(
    'places',
    places,
    FOOTPRINT_LEVELS_AT_PLACES_KEYS,
  );
  const levels = footprintLevels(footprint, property ?? 'eirpDbw');
  const { length } = object('latitudeDeg', latitudeDeg);
  if (object('longitudeDeg', longitudeDeg).length !== length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'longitudeDeg',
      received: longitudeDeg.length,
      allowed: `of the same length as latitudeDeg, ${length}`,
    });
  const arcsOf = keptArcs();
  return Array.from({ length }, (_, index) =>
    levelAt(
      levels,
      checkedPlace(
        {
          latitudeDeg: valueAt(latitudeDeg, index),
          longitudeDeg: valueAt(longitudeDeg, index),
        },
        index,
      ),
      arcsOf,
    ),
  );
}

/** Contours as RFC 7946 writes them, read into rings; own type, since a map needs more of GeoJSON than a contour. */

import { DomainError, inRange, object } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { inRow, valueAt } from '../../numeric/columns.js';

/** A position: longitude first, then latitude, in degrees; a height may follow. */
export type Position = readonly number[];

/** A geometry that a contour may have; a line must be closed and counts as its outer ring. */
export type ContourGeometry =
  | { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] }
  | {
      readonly type: 'MultiPolygon';
      readonly coordinates: readonly (readonly (readonly Position[])[])[];
    }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | { readonly type: 'MultiLineString'; readonly coordinates: readonly (readonly Position[])[] }
  | { readonly type: 'Point'; readonly coordinates: Position };

const CONTOUR_GEOMETRY_KEYS = { type: true, coordinates: true } satisfies Keys<ContourGeometry>;

/** A contour: its geometry and its level. */
export interface ContourFeature {
  readonly type: 'Feature';
  /** Polygon: within it the level is reached. Point: where the peak stands. */
  readonly geometry: ContourGeometry;
  /** Holds the level in the property that the call names. */
  readonly properties: Readonly<Record<string, unknown>> | null;
}

const CONTOUR_FEATURE_KEYS = {
  type: true,
  geometry: true,
  properties: true,
} satisfies Keys<ContourFeature>;

/** A footprint: contours in any order. */
export interface Footprint {
  readonly type: 'FeatureCollection';
  readonly features: readonly ContourFeature[];
}

const FOOTPRINT_KEYS = { type: true, features: true } satisfies Keys<Footprint>;

/** A ring with its longitudes unwrapped, so that neighbours never differ by more than half a turn (or by a whole one, as written). */
export interface Ring {
  readonly longitudeDeg: readonly number[];
  readonly latitudeDeg: readonly number[];
}

/** All areas and peaks of one level. */
export interface Level {
  readonly level: number;
  /** Polygons: outer ring, then holes. */
  readonly polygons: readonly (readonly Ring[])[];
  readonly peaks: readonly { readonly longitudeDeg: number; readonly latitudeDeg: number }[];
}

function malformed(parameter: string, received: unknown, allowed: string, slip?: string): never {
  throw new DomainError({ code: 'malformed', parameter, received, allowed, slip });
}

function position(path: string, given: Position): readonly [number, number] {
  if (!Array.isArray(given) || given.length < 2)
    return malformed(path, given, 'a position of longitude and latitude');
  const slip = 'GeoJSON has the longitude first; were the two swapped?';
  return [
    inRange(`${path}[0]`, inRow(given, 0), -540, 540, slip),
    inRange(`${path}[1]`, inRow(given, 1), -90, 90, slip),
  ];
}

/** Reads a closed ring. */
function ring(path: string, given: readonly Position[]): Ring {
  if (!Array.isArray(given) || given.length < 4)
    return malformed(path, given, 'a ring of at least four positions');
  const points = given.map((one, index) => position(`${path}[${index}]`, one));
  const first = points[0] as readonly [number, number];
  const last = points[points.length - 1] as readonly [number, number];
  if (first[0] !== last[0] || first[1] !== last[1])
    return malformed(path, given, 'closed: its last position equal to its first');
  const longitudeDeg = [first[0]];
  for (let index = 1; index < points.length; index++) {
    const step = (points[index]?.[0] ?? 0) - (points[index - 1]?.[0] ?? 0);
    // A step of more than half a turn is one across the date line that was not cut, but a whole turn is the edge of the map.
    const shortest =
      Math.abs(step) === 360 || Math.abs(step) <= 180 ? step : step - 360 * Math.sign(step);
    longitudeDeg.push(valueAt(longitudeDeg, index - 1) + shortest);
  }
  return { longitudeDeg, latitudeDeg: points.map(([, lat]) => lat) };
}

/** Reads a footprint into its levels, lowest first. */
export function footprintLevels(footprint: Footprint, property: string): Level[] {
  const { type, features } = known('footprint', footprint, FOOTPRINT_KEYS);
  if (type !== 'FeatureCollection' || !Array.isArray(features))
    return malformed('footprint', footprint, 'a GeoJSON FeatureCollection');
  if (features.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'footprint.features',
      received: features,
      allowed: 'at least one contour',
    });
  const levels = new Map<number, { polygons: Ring[][]; peaks: Level['peaks'][number][] }>();
  features.forEach((feature: ContourFeature, index) => {
    const path = `footprint.features[${index}]`;
    const { geometry, properties } = known(path, feature, CONTOUR_FEATURE_KEYS);
    const level = inRange(
      `${path}.properties.${property}`,
      object(`${path}.properties`, properties)?.[property] as number,
      -1000,
      1000,
    );
    const entry = levels.get(level) ?? { polygons: [], peaks: [] };
    levels.set(level, entry);
    const at = `${path}.geometry.coordinates`;
    const shape = known(`${path}.geometry`, geometry, CONTOUR_GEOMETRY_KEYS);
    const list = object(at, shape.coordinates) as readonly unknown[];
    const polygon = (rings: readonly (readonly Position[])[], where: string): void => {
      if (!Array.isArray(rings) || rings.length === 0) malformed(where, rings, 'at least one ring');
      entry.polygons.push(rings.map((one, i) => ring(`${where}[${i}]`, one)));
    };
    switch (shape.type) {
      case 'Point': {
        const [longitudeDeg, latitudeDeg] = position(at, shape.coordinates);
        entry.peaks.push({ longitudeDeg, latitudeDeg });
        break;
      }
      case 'Polygon':
        polygon(shape.coordinates, at);
        break;
      case 'LineString':
        polygon([shape.coordinates], at);
        break;
      case 'MultiPolygon':
      case 'MultiLineString':
        if (list.length === 0) malformed(at, list, 'at least one part');
        list.forEach((part, i) => {
          polygon(
            (shape.type === 'MultiPolygon' ? part : [part]) as readonly (readonly Position[])[],
            `${at}[${i}]`,
          );
        });
        break;
      default:
        malformed(`${path}.geometry`, shape, 'a Polygon, MultiPolygon, closed line or Point');
    }
  });
  return [...levels.entries()]
    .sort(([a], [b]) => a - b)
    .map(([level, { polygons, peaks }]) => ({ level, polygons, peaks }));
}

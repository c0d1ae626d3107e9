/**
 * ITU-R P.1144: digital maps on a regular grid of latitude and longitude, and interpolation in them.
 *
 * Bilinear between four nodes for most maps, bicubic between sixteen for the height of the ground.
 */

import { DomainError, finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { inRow } from '../numeric/columns.js';

/**
 * A map of the whole Earth. Row 0 is latitude +90 and rows step southward to -90; column 0 is longitude
 * -180 and columns step eastward to +180, so that the last column repeats the first.
 */
export interface GlobalMap {
  /** Rows, 2 or more: 180 degrees divided by the step, plus one. */
  readonly rows: number;
  /** Columns, 2 or more: 360 degrees divided by the step, plus one. */
  readonly columns: number;
  /** Values row by row, `rows` times `columns` of them. */
  readonly values: ArrayLike<number>;
}

const GLOBAL_MAP_KEYS = { rows: true, columns: true, values: true } satisfies Keys<GlobalMap>;

/** A place on the map. */
export interface MapPlace {
  /** Latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: number;
}

const MAP_PLACE_KEYS = { latitudeDeg: true, longitudeDeg: true } satisfies Keys<MapPlace>;

/** Where a place falls in a grid: north-west node of its cell and the parts of the cell beyond it. */
export interface MapCell {
  readonly row: number;
  readonly column: number;
  readonly southRatio: number;
  readonly eastRatio: number;
}

/** Checked place; longitude brought to [0, 360) east of the date line. */
function checkedPlace(place: MapPlace): { readonly southDeg: number; readonly eastDeg: number } {
  const { latitudeDeg, longitudeDeg } = known('place', place, MAP_PLACE_KEYS);
  const latitude = inRange(
    'latitudeDeg',
    latitudeDeg,
    -90,
    90,
    'were latitude and longitude swapped?',
  );
  const turned = (finite('longitudeDeg', longitudeDeg) + 180) % 360;
  return { southDeg: 90 - latitude, eastDeg: turned < 0 ? turned + 360 : turned };
}

/** Throws where a map's size and its values do not fit; returns the map. */
export function checkedMap(parameter: string, map: GlobalMap): GlobalMap {
  const { rows, columns, values } = known(parameter, map, GLOBAL_MAP_KEYS);
  for (const [name, count] of [
    ['rows', rows],
    ['columns', columns],
  ] as const)
    if (!(Number.isInteger(count) && count >= 2))
      throw new DomainError({
        code: count === undefined ? 'missing' : 'out-of-range',
        parameter: `${parameter}.${name}`,
        received: count,
        allowed: 'a whole number of 2 or more',
      });
  if (values?.length !== rows * columns)
    throw new DomainError({
      code: values === undefined || values === null ? 'missing' : 'length-mismatch',
      parameter: `${parameter}.values`,
      received: values?.length,
      allowed: `${rows * columns} long, rows times columns`,
    });
  return map;
}

/** Cell of a grid of the whole Earth in which a place falls (unchecked grid, checked place). */
export function mapCell(rows: number, columns: number, place: MapPlace): MapCell {
  const { southDeg, eastDeg } = checkedPlace(place);
  const south = (southDeg * (rows - 1)) / 180;
  const east = (eastDeg * (columns - 1)) / 360;
  const row = Math.min(Math.floor(south), rows - 2);
  const column = Math.min(Math.floor(east), columns - 2);
  return { row, column, southRatio: south - row, eastRatio: east - column };
}

/** Value of a node, refused where it is not a finite number. */
function node(map: GlobalMap, index: number): number {
  return finite('map.values', inRow(map.values, index), undefined, index);
}

/**
 * Value of a map at a place, bilinear between the four nodes around it (P.1144).
 *
 * @param map  A map of the whole Earth; see {@link GlobalMap} for its layout.
 * @param place  Latitude -90 to 90, longitude any turn.
 * @returns The value in the map's own unit.
 * @throws {@link DomainError} naming `latitudeDeg`, `longitudeDeg`, `map.rows`, `map.columns` or `map.values`.
 *
 * Source: ITU-R P.1144, Annex 1, bilinear interpolation on a square grid.
 * Accuracy: exact at nodes.
 * @example
 * ```ts
 * import { mapValue } from 'slantpath/propagation';
 * // A coarse map of three rows and five columns: 0 at the poles, 10 along the equator.
 * const map = { rows: 3, columns: 5, values: [0, 0, 0, 0, 0, 10, 10, 10, 10, 10, 0, 0, 0, 0, 0] };
 * mapValue(map, { latitudeDeg: 45, longitudeDeg: 12 }); // => 5
 * ```
 */
export function mapValue(map: GlobalMap, place: MapPlace): number {
  const { rows, columns } = checkedMap('map', map);
  const { row, column, southRatio, eastRatio } = mapCell(rows, columns, place);
  const north = row * columns + column;
  const south = north + columns;
  return (
    (1 - southRatio) * ((1 - eastRatio) * node(map, north) + eastRatio * node(map, north + 1)) +
    southRatio * ((1 - eastRatio) * node(map, south) + eastRatio * node(map, south + 1))
  );
}

/** Weight of a node `distance` steps away in bicubic interpolation. */
function cubicWeight(distance: number): number {
  const d = Math.abs(distance);
  if (d <= 1) return 1 - d * d * (2.5 - 1.5 * d);
  return d < 2 ? 2 - d * (4 - d * (2.5 - 0.5 * d)) : 0;
}

/**
 * Value of a map at a place, bicubic between the sixteen nodes around it (P.1144), as P.1511 asks for the height of the ground.
 *
 * Beyond a pole the last row is repeated.
 *
 * @param map  A map of the whole Earth; see {@link GlobalMap} for its layout.
 * @param place  Latitude -90 to 90, longitude any turn.
 * @returns The value in the map's own unit; it may overshoot the nodes a little.
 * @throws {@link DomainError} naming `latitudeDeg`, `longitudeDeg`, `map.rows`, `map.columns` or `map.values`.
 *
 * Source: ITU-R P.1144, Annex 1, bicubic interpolation, a = -0.5.
 * Accuracy: exact at nodes.
 * @example
 * ```ts
 * import { mapValueBicubic } from 'slantpath/propagation';
 * const map = { rows: 3, columns: 5, values: [0, 0, 0, 0, 0, 10, 10, 10, 10, 10, 0, 0, 0, 0, 0] };
 * mapValueBicubic(map, { latitudeDeg: 0, longitudeDeg: 90 }); // => 10
 * ```
 */
export function mapValueBicubic(map: GlobalMap, place: MapPlace): number {
  const { rows, columns } = checkedMap('map', map);
  const { row, column, southRatio, eastRatio } = mapCell(rows, columns, place);
  let sum = 0;
  for (let down = -1; down <= 2; down++) {
    const weight = cubicWeight(southRatio - down);
    if (weight === 0) continue;
    const line = Math.min(Math.max(row + down, 0), rows - 1) * columns;
    for (let right = -1; right <= 2; right++) {
      const across = cubicWeight(eastRatio - right);
      if (across === 0) continue;
      const turn = columns - 1;
      sum += weight * across * node(map, line + ((column + right + turn) % turn));
    }
  }
  return sum;
}

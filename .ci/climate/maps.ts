/**
 * Reads a folder of maps in the documented layout: `manifest.json` lists each file with rows and columns; a
 * file is gzip of little-endian float32, row by row, row 0 at latitude +90, column 0 at longitude -180,
 * the last column repeating the first. A map whose nodes lie elsewhere says so by `first_latitude_deg`,
 * `first_longitude_deg` and `step_deg`, and repeats its outermost rows and columns around the seams.
 */

import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { type GlobalMap, type MapPlace, mapValue } from '../../src/propagation/p1144.js';

interface ManifestGrid {
  readonly file: string;
  readonly rows: number;
  readonly columns: number;
  readonly step_deg?: number;
  readonly first_latitude_deg?: number;
  readonly first_longitude_deg?: number;
}

/** A map, and where its first node lies if that is not the pole and the date line. */
export interface PlacedMap extends GlobalMap {
  readonly first?: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
    readonly stepDeg: number;
  };
}

/** Maps by name (file name without its endings), read when asked for. */
export interface Maps {
  (name: string): PlacedMap;
  /** Whether the folder lists a map. */
  readonly has: (name: string) => boolean;
}

/** Value of a map at a place, bilinear, wherever its nodes lie: the place is moved to where a map from the pole has it. */
export function placedValue(map: PlacedMap, place: MapPlace): number {
  if (!map.first) return mapValue(map, place);
  const { latitudeDeg, longitudeDeg, stepDeg } = map.first;
  const east = (((place.longitudeDeg - longitudeDeg) % 360) + 360) % 360;
  const south = latitudeDeg - place.latitudeDeg;
  return mapValue(map, {
    latitudeDeg: 90 - ((south / stepDeg) * 180) / (map.rows - 1),
    longitudeDeg: -180 + ((east / stepDeg) * 360) / (map.columns - 1),
  });
}

export function mapsOf(folder: string): Maps {
  const manifest = JSON.parse(readFileSync(`${folder}/manifest.json`, 'utf8')) as {
    readonly grids: readonly ManifestGrid[];
  };
  const kept = new Map<string, PlacedMap>();
  const listed = (name: string) => manifest.grids.find(({ file }) => file === `${name}.f32.gz`);
  const read = (name: string): PlacedMap => {
    const known = kept.get(name);
    if (known) return known;
    const grid = listed(name);
    if (!grid) throw new Error(`${folder} has no map ${name}`);
    const bytes = gunzipSync(readFileSync(`${folder}/${grid.file}`));
    const count = grid.rows * grid.columns;
    if (bytes.length !== 4 * count)
      throw new Error(`${grid.file}: ${bytes.length} bytes for ${count} values`);
    const values = new Float64Array(count);
    for (let index = 0; index < count; index++) values[index] = bytes.readFloatLE(4 * index);
    const map = { rows: grid.rows, columns: grid.columns, values, ...firstOf(grid) };
    kept.set(name, map);
    return map;
  };
  return Object.assign(read, { has: (name: string) => listed(name) !== undefined });
}

function firstOf(grid: ManifestGrid): Pick<PlacedMap, 'first'> {
  if (grid.first_latitude_deg === undefined) return {};
  const stepDeg = grid.step_deg ?? 0;
  const longitudeDeg = grid.first_longitude_deg ?? -180;
  return { first: { latitudeDeg: grid.first_latitude_deg, longitudeDeg, stepDeg } };
}

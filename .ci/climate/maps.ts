/**
 * Reads a folder of maps in the documented layout: `manifest.json` lists each file with rows and columns; a
 * file is gzip of little-endian float32, row by row, row 0 at latitude +90, column 0 at longitude -180,
 * the last column repeating the first.
 */

import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import type { GlobalMap } from '../../src/propagation/p1144.js';

interface ManifestGrid {
  readonly file: string;
  readonly rows: number;
  readonly columns: number;
}

/** Maps by name (file name without its endings), read when asked for. */
export type Maps = (name: string) => GlobalMap;

export function mapsOf(folder: string): Maps {
  const manifest = JSON.parse(readFileSync(`${folder}/manifest.json`, 'utf8')) as {
    readonly grids: readonly ManifestGrid[];
  };
  const kept = new Map<string, GlobalMap>();
  return (name) => {
    const known = kept.get(name);
    if (known) return known;
    const grid = manifest.grids.find(({ file }) => file === `${name}.f32.gz`);
    if (!grid) throw new Error(`${folder} has no map ${name}`);
    const bytes = gunzipSync(readFileSync(`${folder}/${grid.file}`));
    const count = grid.rows * grid.columns;
    if (bytes.length !== 4 * count)
      throw new Error(`${grid.file}: ${bytes.length} bytes for ${count} values`);
    const values = new Float64Array(count);
    for (let index = 0; index < count; index++) values[index] = bytes.readFloatLE(4 * index);
    const map = { rows: grid.rows, columns: grid.columns, values };
    kept.set(name, map);
    return map;
  };
}

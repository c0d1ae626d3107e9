/**
 * Builds the climate grid from a folder of maps in the documented layout.
 *
 * `tsx .ci/build-climate.ts FOLDER OUT [name=rows,step ...]` codes every layer, prints size and error of each and writes
 * OUT: a module if it ends in .ts, otherwise JSON that `climateFromGrid` reads. `name=rows,step` keeps a layer on a finer
 * or coarser grid than usual (`rainRate001=721,0.01`).
 */

import { writeFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { builtGrid } from './climate/build.js';
import type { BuiltLayer } from './climate/builtLayer.js';
import { PLANS, TILE_ROWS } from './climate/layers.js';
import { mapsOf } from './climate/maps.js';

const [folder, out, ...changes] = process.argv.slice(2);
if (folder === undefined || out === undefined)
  throw new Error('usage: tsx .ci/build-climate.ts FOLDER OUT [name=rows,step ...]');

const plans = PLANS.map((plan) => {
  const change = changes.find((text) => text.startsWith(`${plan.name}=`));
  if (!change) return plan;
  const [rows, step] = change
    .slice(plan.name.length + 1)
    .split(',')
    .map(Number);
  if (!(Number.isInteger(rows) && (step ?? 0) > 0))
    throw new Error(`not name=rows,step: ${change}`);
  return { ...plan, rows: rows as number, step: step as number };
});

const SOURCE =
  'ITU-R P.837-7, P.839-4, P.1510-1, P.453-14, P.836-6, P.840-9 and P.1511-1 digital maps, re-gridded and quantised';

function print({ plan, errors }: BuiltLayer, bytes: number): void {
  const columns = [
    plan.name.padEnd(20),
    `${(180 / (plan.rows - 1)).toFixed(3)} deg`,
    `step ${plan.step}`,
    `${bytes.toFixed(0)} B`,
  ];
  for (const [name, spread] of Object.entries(errors ?? {}))
    columns.push(
      `${name} ${[spread.p50, spread.p95, spread.p99, spread.worst].map((value) => value.toPrecision(2)).join(' ')}`,
      `(${[spread.relative50, spread.relative95, spread.relative99].map((value) => value.toFixed(2)).join(' ')} %)`,
      `worst at ${spread.worstAt.latitudeDeg.toFixed(1)} ${spread.worstAt.longitudeDeg.toFixed(1)}`,
    );
  console.log(columns.join('  '));
}

const grid = builtGrid(plans, mapsOf(folder), SOURCE, TILE_ROWS, print);
const json = JSON.stringify(grid);
const module = `/** The shipped climate grid; made by .ci/build-climate.ts, never edited. */

import type { ClimateGridFile } from './gridFile.js';

/** The grid: layers of the climate with their coding, provenance and errors. */
// biome-ignore format: generated
export const CLIMATE_GRID: ClimateGridFile = ${json};
`;
writeFileSync(out, out.endsWith('.ts') ? module : json);
console.log(`${json.length} characters, ${brotliCompressSync(json).length} bytes with brotli`);

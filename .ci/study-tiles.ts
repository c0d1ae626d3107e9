/**
 * Size of tile against bytes and time: codes the numbers of the shipped grid again by tiles of several sizes, trained anew for
 * each, and prints what the grid costs and what the first place asked for costs, in a fresh process, as CPU time.
 */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync } from 'node:zlib';
import { CLIMATE_GRID } from '../src/climate/grid/gridData.js';
import { tiledLayers } from '../src/climate/grid/tiles.js';
import { tileNodes } from '../src/climate/grid/tiling.js';
import { gridFile } from './climate/build.js';
import type { BuiltLayer } from './climate/builtLayer.js';
import { PLANS } from './climate/layers.js';
import { passed, plainModel } from './climate/training.js';

const TILE_ROWS = [5, 10, 15, 20, 30, 45];
const RUNS = 9;
const PLACES = [
  '46.6 10.3',
  '0.1 101.9',
  '-23 132',
  '39 -98',
  '-34 18.5',
  '60 25',
  '5.2 -5',
  '28 77',
  '-15 -60',
];

const shipped = tiledLayers(CLIMATE_GRID);

/** The shipped layers by tiles of another size. */
function retiled(tileRows: number): BuiltLayer[] {
  const done = new Map<string, BuiltLayer>();
  return PLANS.map((plan) => {
    const { rows, companion, name, refinement } = plan;
    const columns = 2 * (rows - 1);
    const layer = shipped(name);
    const beside = done.get(companion);
    const value = (index: number) => layer.at(Math.floor(index / columns), index % columns);
    let model = plainModel(tileRows, beside !== undefined);
    for (let pass = 0; pass < 2; pass++) model = passed(rows, tileRows, model, beside, value).next;
    const { field, tiles } = passed(rows, tileRows, model, beside, value);
    const finer = Int8Array.from(
      { length: refinement ? (2 * rows - 1) * 2 * columns : 0 },
      (_, index) => layer.refinedBy(Math.floor(index / (2 * columns)), index % (2 * columns)),
    );
    const departures = refinement ? finer : undefined;
    const built = { plan, field, tiles, model, layer, departures, errors: undefined };
    done.set(name, built);
    return built;
  });
}

const scratch = mkdtempSync(join(tmpdir(), 'tiles-'));
const entry = JSON.stringify(fileURLToPath(new URL('../src/climate/index.ts', import.meta.url)));
const program = join(scratch, 'first.mts');
writeFileSync(
  program,
  `import { readFileSync } from 'node:fs';
import { climateFromGrid } from ${entry};
const [path, latitudeDeg, longitudeDeg] = process.argv.slice(2);
const grid = JSON.parse(readFileSync(path, 'utf8'));
const start = process.cpuUsage();
climateFromGrid(grid)({ latitudeDeg: Number(latitudeDeg), longitudeDeg: Number(longitudeDeg), heightM: 100 });
const { user, system } = process.cpuUsage(start);
console.log((user + system) / 1000);
`,
);

const root = fileURLToPath(new URL('..', import.meta.url));
console.log(
  '| tile, degrees | tiles | nodes in a tile | bytes (brotli) | first place, CPU ms: least, median |',
);
console.log('|---|---|---|---|---|');
for (const tileRows of TILE_ROWS) {
  const grid = gridFile(retiled(tileRows), 'a study', tileRows);
  const json = JSON.stringify(grid);
  const file = join(scratch, `${tileRows}.json`);
  writeFileSync(file, json);
  const times = Array.from({ length: RUNS }, (_, run) => {
    const place = (PLACES[run % PLACES.length] as string).split(' ');
    const out = execFileSync(process.execPath, ['--import', 'tsx', program, file, ...place], {
      cwd: root,
    });
    return Number(out);
  }).sort((a, b) => a - b);
  const middle = tileRows * tileRows;
  const nodes = PLANS.reduce((sum, { rows }) => {
    const { height, width } = tileNodes(middle, rows, tileRows);
    return sum + height * width;
  }, 0);
  const cells = [180 / tileRows, grid.tiles.length, nodes, brotliCompressSync(json).length];
  const [least, median] = [times[0] as number, times[RUNS >> 1] as number];
  console.log(`| ${cells.join(' | ')} | ${least.toFixed(1)}, ${median.toFixed(1)} |`);
}
rmSync(scratch, { recursive: true });

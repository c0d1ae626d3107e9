/**
 * Size against error: codes layers of the climate grid on several grids and with several steps and prints what each
 * costs and how far it is from the full-resolution maps. `tsx .ci/study-climate.ts FOLDER [name ...]`
 */

import { builtLayer, gridFile } from './climate/build.js';
import type { BuiltLayer } from './climate/builtLayer.js';
import { type LayerPlan, PLANS, TILE_ROWS } from './climate/layers.js';
import { mapsOf } from './climate/maps.js';

/** Rows, step and tolerance at sea to try for each layer. */
const TRIALS: Readonly<Record<string, readonly (readonly [number, number, number])[]>> = {
  rainRate001: [
    [361, 0.005, 1],
    [361, 0.01, 1],
    [361, 0.015, 0.5],
    [361, 0.015, 1],
    [361, 0.015, 1.5],
    [361, 0.02, 1],
    [361, 0.03, 1],
    [241, 0.015, 1],
    [181, 0.015, 1],
  ],
  rainSeason: [
    [361, 0.03, 1],
    [361, 0.05, 1],
    [361, 0.07, 1],
    [241, 0.05, 1],
    [241, 0.06, 1],
    [181, 0.03, 1],
    [121, 0.03, 1],
  ],
  isothermHeight: [
    [121, 0.01, 1],
    [121, 0.02, 1],
    [121, 0.03, 1],
    [121, 0.04, 1],
    [121, 0.05, 1],
    [61, 0.02, 1],
  ],
  meanTemperature: [
    [241, 0.5, 1],
    [241, 1, 1],
    [121, 0.5, 1],
  ],
  wetRefractivity: [
    [241, 1, 1],
    [241, 2, 1],
    [241, 2.5, 1],
    [121, 1, 1],
  ],
  altitude: [
    [361, 0.1, 0.5],
    [181, 0.1, 0.5],
    [121, 0.1, 0.5],
  ],
  cloudLiquid5: [
    [361, 0.02, 1],
    [181, 0.02, 1],
    [121, 0.01, 1],
    [121, 0.02, 1],
    [91, 0.02, 1],
  ],
  vapourScaleHeight5: [
    [161, 0.1, 1],
    [81, 0.1, 1],
    [81, 0.2, 1],
  ],
  vapourColumn5: [
    [161, 0.02, 1],
    [161, 0.04, 1],
    [161, 0.05, 1],
    [81, 0.05, 1],
  ],
  vapourDensity5: [
    [161, 0.05, 1],
    [81, 0.05, 1],
  ],
};

const [folder, ...names] = process.argv.slice(2);
if (folder === undefined) throw new Error('usage: tsx .ci/study-climate.ts FOLDER [name ...]');
const maps = mapsOf(folder);
const kept = new Map<string, BuiltLayer>();
const done = (name: string): BuiltLayer => {
  const known = kept.get(name);
  if (known) return known;
  const plan = PLANS.find((each) => each.name === name) as LayerPlan;
  const layer = builtLayer(plan, maps, done, TILE_ROWS, 0);
  kept.set(name, layer);
  return layer;
};
/** Bytes of a layer that starts from odds of its own. */
function bytesOf(layer: BuiltLayer): number {
  let bytes = 0;
  const beside = layer.plan.companion === '' ? [] : [done(layer.plan.companion)];
  gridFile([...beside, layer], 'a study', TILE_ROWS, (_, each) => {
    bytes = Math.round(each);
  });
  return bytes;
}

console.log(
  '| layer | grid, degrees | step | sea, steps | bytes | land: median, 95 %, 99 % | sea: median, 95 %, 99 % |',
);
console.log('|---|---|---|---|---|---|---|');
for (const [name, trials] of Object.entries(TRIALS)) {
  if (names.length > 0 && !names.includes(name)) continue;
  const plan = PLANS.find((each) => each.name === name) as LayerPlan;
  for (const [rows, step, seaSteps] of trials) {
    const layer = builtLayer({ ...plan, rows, step, seaSteps }, maps, done, TILE_ROWS);
    const { errors } = layer;
    const bytes = bytesOf(layer);
    const relative = ['rainRate001', 'rainSeason', 'vapourColumn5', 'vapourDensity5'].includes(
      name,
    );
    const cells = [errors?.land, errors?.sea].map((spread) =>
      spread === undefined
        ? ''
        : relative
          ? `${spread.relative50.toFixed(2)}, ${spread.relative95.toFixed(2)}, ${spread.relative99.toFixed(2)} %`
          : [spread.p50, spread.p95, spread.p99].map((value) => value.toPrecision(2)).join(', '),
    );
    const grid = (180 / (rows - 1)).toFixed(3).replace(/\.?0+$/, '');
    console.log(`| ${name} | ${grid} | ${step} | ${seaSteps} | ${bytes} | ${cells.join(' | ')} |`);
  }
}

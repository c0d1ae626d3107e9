/** Codes every layer of a plan from a folder of maps and measures each against the full-resolution maps. */

import type { ClimateGridFile, ClimateLayer } from '../../src/climate/grid/gridFile.js';
import type { Layer } from '../../src/climate/grid/tiles.js';
import type { BuiltLayer } from './builtLayer.js';
import { measured } from './errors.js';
import { type Field, landMask, placeOf, tolerance } from './field.js';
import type { LayerPlan } from './layers.js';
import { fitted } from './leastSquares.js';
import type { Maps } from './maps.js';
import { departures } from './refinement.js';
import { codedTiles } from './tileCode.js';
import { passed, plainModel, type WholeField } from './training.js';

/** Weight of a fine node in the fit: its area, a fifth of it at sea. */
const SEA_WEIGHT = 0.2;

const fits = new WeakMap<Maps, Map<string, { fine: Field; weights: Float64Array; field: Field }>>();

/** A layer's field on its own grid, transformed: fitted to the finest one where that is finer. Kept, as it takes long. */
function fieldOfLayer(plan: LayerPlan, maps: Maps, done: (name: string) => Layer) {
  const kept = fits.get(maps) ?? new Map();
  fits.set(maps, kept);
  const key = `${plan.name} ${plan.rows}`;
  const known = kept.get(key);
  if (known) return known;
  const land = landMask(maps('altitude'));
  const fine = plan.field(maps, done);
  const weights = Float64Array.from(fine.values, (_, index) => {
    const place = placeOf(fine, index);
    const area = Math.max(0.05, Math.cos((place.latitudeDeg * Math.PI) / 180));
    return area * (land(place) ? 1 : SEA_WEIGHT);
  });
  const field = fine.rows > plan.rows ? fitted(fine, plan.rows, weights) : fine;
  const all = { fine, weights, field };
  kept.set(key, all);
  return all;
}

function layerOf(plan: LayerPlan, field: WholeField, finer: Int8Array | undefined): Layer {
  const columns = 2 * (plan.rows - 1);
  const { rows, transform, step, scale } = plan;
  return {
    rows,
    transform,
    step,
    scale,
    refinement: finer ? (plan.refinement?.step ?? 0) : 0,
    landError95: 0,
    at: (row, column) => field.values[row * columns + column] as number,
    refinedBy: (row, column) => finer?.[row * 2 * columns + column] ?? 0,
  };
}

/** Codes one layer by tiles and measures it at so many random places, 0 for none. */
export function builtLayer(
  plan: LayerPlan,
  maps: Maps,
  built: (name: string) => BuiltLayer,
  tileRows: number,
  places = 30000,
): BuiltLayer {
  const land = landMask(maps('altitude'));
  const done = (name: string) => built(name).layer;
  const { fine, weights, field } = fieldOfLayer(plan, maps, done);
  const beside = plan.companion === '' ? undefined : built(plan.companion);
  let model = plainModel(tileRows, beside !== undefined);
  const choose = (index: number, predicted: number): number => {
    const wanted = (field.values[index] as number) / plan.step;
    const place = placeOf(field, index);
    const may = tolerance(place, land(place), plan.seaSteps);
    return Math.abs(wanted - predicted) <= may ? predicted : Math.round(wanted);
  };
  // The first pass learns from plain weights, the next two from what the one before has learnt.
  for (let pass = 0; pass < 2; pass++)
    model = passed(plan.rows, tileRows, model, beside, choose).next;
  const last = passed(plan.rows, tileRows, model, beside, choose);
  const bare = layerOf(plan, last.field, undefined);
  const finer = plan.refinement && departures(bare, fine, weights, plan.refinement, land);
  const layer = layerOf(plan, last.field, finer);
  const errors = places > 0 ? measured(plan.name, maps, layer, done, places) : undefined;
  return { plan, field: last.field, tiles: last.tiles, model, layer, departures: finer, errors };
}

/** The layers of a grid, each after those it stands on. */
function builtLayers(
  plans: readonly LayerPlan[],
  maps: Maps,
  tileRows: number,
  places: number,
): BuiltLayer[] {
  const done = new Map<string, BuiltLayer>();
  const built = (name: string): BuiltLayer => {
    const layer = done.get(name);
    if (!layer) throw new Error(`${name} is needed before it is coded`);
    return layer;
  };
  return plans.map((plan) => {
    const layer = builtLayer(plan, maps, built, tileRows, places);
    done.set(plan.name, layer);
    return layer;
  });
}

/** The grid file of layers, told the bytes of each. */
export function gridFile(
  layers: readonly BuiltLayer[],
  source: string,
  tileRows: number,
  onLayer: (built: BuiltLayer, bytes: number) => void = () => {},
): ClimateGridFile {
  const coded = codedTiles(layers, tileRows);
  return {
    format: 'slantpath-climate-2',
    source,
    tileRows,
    layers: layers.map((built, index): ClimateLayer => {
      onLayer(built, coded.bytes[index] as number);
      const { name, rows, transform, step, scale, companion, refinement } = built.plan;
      return {
        name,
        rows,
        transform,
        step,
        scale,
        refinement: refinement?.step ?? 0,
        companion,
        landError95: built.errors ? Number(built.errors.land.p95.toPrecision(2)) : 0,
        ...built.model,
        odds: coded.sets[index] as number,
      };
    }),
    odds: coded.odds,
    refinementOdds: coded.refinementOdds,
    tiles: coded.tiles,
  };
}

/** The whole grid file from maps. */
export function builtGrid(
  plans: readonly LayerPlan[],
  maps: Maps,
  source: string,
  tileRows: number,
  onLayer: (built: BuiltLayer, bytes: number) => void = () => {},
  places = 30000,
): ClimateGridFile {
  return gridFile(builtLayers(plans, maps, tileRows, places), source, tileRows, onLayer);
}

/** Codes every layer of a plan from a folder of maps and measures each against the full-resolution maps. */

import type { ClimateGridFile, ClimateLayer, Layer } from '../../src/climate/gridFile.js';
import { type ErrorTable, measured } from './errors.js';
import { encoded, landMask, placeOf, tolerance } from './field.js';
import type { LayerPlan } from './layers.js';
import { fitted } from './leastSquares.js';
import type { Maps } from './maps.js';

/** Weight of a fine node in the fit: its area, a fifth of it at sea. */
const SEA_WEIGHT = 0.2;

/** One layer coded, with its size and its errors. */
export interface BuiltLayer {
  readonly shipped: ClimateLayer;
  readonly layer: Layer;
  readonly bytes: number;
  readonly errors: ErrorTable | undefined;
}

/** Codes one layer and measures it at so many random places, 0 for none. */
export function builtLayer(
  plan: LayerPlan,
  maps: Maps,
  done: (name: string) => Layer,
  places = 30000,
): BuiltLayer {
  const land = landMask(maps('altitude'));
  const fine = plan.field(maps, done);
  const steps = { ...fine, values: fine.values.map((value) => value / plan.step) };
  const weights = Float64Array.from(fine.values, (_, index) => {
    const place = placeOf(fine, index);
    const area = Math.max(0.05, Math.cos((place.latitudeDeg * Math.PI) / 180));
    return area * (land(place) ? 1 : SEA_WEIGHT);
  });
  const field = fine.rows > plan.rows ? fitted(steps, plan.rows, weights) : steps;
  const companion = plan.companion === '' ? undefined : done(plan.companion);
  const coded = encoded(
    field,
    (index) => {
      const place = placeOf(field, index);
      return tolerance(place, land(place), plan.seaSteps);
    },
    companion,
  );
  const { transform, step, scale } = plan;
  const bare: Layer = { ...coded.field, transform, step, scale, landError95: 0 };
  const errors = places > 0 ? measured(plan.name, maps, bare, done, places) : undefined;
  const landError95 = errors ? Number(errors.land.p95.toPrecision(2)) : 0;
  const layer = { ...bare, landError95 };
  return {
    layer,
    bytes: coded.bytes.length,
    errors,
    shipped: {
      name: plan.name,
      rows: layer.rows,
      transform,
      step,
      scale,
      companion: plan.companion,
      landError95,
      data: Buffer.from(coded.bytes).toString('base64').replace(/=+$/, ''),
    },
  };
}

/** The whole grid file. */
export function builtGrid(
  plans: readonly LayerPlan[],
  maps: Maps,
  source: string,
  onLayer: (built: BuiltLayer) => void = () => {},
  places = 30000,
): ClimateGridFile {
  const done = new Map<string, Layer>();
  const layerOf = (name: string): Layer => {
    const layer = done.get(name);
    if (!layer) throw new Error(`${name} is needed before it is coded`);
    return layer;
  };
  const layers = plans.map((plan) => {
    const built = builtLayer(plan, maps, layerOf, places);
    done.set(plan.name, built.layer);
    onLayer(built);
    return built.shipped;
  });
  return { format: 'slantpath-climate-1', source, layers };
}

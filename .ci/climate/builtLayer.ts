/** A layer of the grid as built, before it becomes text. */

import type { Padded } from '../../src/climate/grid/predictor.js';
import type { Layer } from '../../src/climate/grid/tiles.js';
import type { ErrorTable } from './errors.js';
import type { LayerPlan } from './layers.js';
import type { LayerModel, WholeField } from './training.js';

/** One layer in whole numbers, with its errors. */
export interface BuiltLayer {
  readonly plan: LayerPlan;
  readonly field: WholeField;
  readonly tiles: readonly Padded[];
  readonly model: LayerModel;
  readonly layer: Layer;
  readonly departures: Int8Array | undefined;
  readonly errors: ErrorTable | undefined;
}

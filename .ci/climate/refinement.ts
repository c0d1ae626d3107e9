/** The refinement of a layer: how nodes half way between those of its grid depart from what lies between them. */

import { refinedValue } from '../../src/climate/grid/layerValue.js';
import type { Layer } from '../../src/climate/grid/tiles.js';
import { type Field, HIDDEN_DEG, placeOf } from './field.js';
import { fitted } from './leastSquares.js';

/** Fits take long and are the same for every size of tile. */
const fineFits = new WeakMap<Field, Field>();

/**
 * Departures on the grid twice as fine, in steps of the refinement; zero where a departure is small, at sea and beyond the
 * satellites' sight.
 *
 * @param fine  The quantity itself, transformed, on its finest grid.
 */
export function departures(
  layer: Layer,
  fine: Field,
  weights: Float64Array,
  refinement: { readonly step: number; readonly from: number },
  land: (place: { latitudeDeg: number; longitudeDeg: number }) => boolean,
): Int8Array {
  const rows = 2 * layer.rows - 1;
  // What is interpolated is the quantity, not its logarithm: the fit is in the quantity, by relative errors.
  const plain = { ...fine, values: fine.values.map((value) => layer.scale * Math.expm1(value)) };
  const relative = weights.map(
    (weight, index) => weight / (1 + (plain.values[index] as number) / (layer.scale * 0.4)) ** 2,
  );
  const wanted = fineFits.get(fine) ?? (fine.rows > rows ? fitted(plain, rows, relative) : plain);
  fineFits.set(fine, wanted);
  const bare = { ...layer, refinement: 0, refinedBy: () => 0 };
  return Int8Array.from(wanted.values, (value, index) => {
    const place = placeOf(wanted, index);
    if (Math.abs(place.latitudeDeg) > HIDDEN_DEG || !land(place)) return 0;
    const row = Math.floor(index / wanted.columns);
    const between = refinedValue(bare, row, index % wanted.columns);
    const departure = Math.log((Math.max(0, value) + layer.scale) / (between + layer.scale));
    if (Math.abs(departure) < refinement.from) return 0;
    const size = Math.max(1, Math.round(Math.abs(departure) / refinement.step));
    return Math.sign(departure) * Math.min(40, size);
  });
}

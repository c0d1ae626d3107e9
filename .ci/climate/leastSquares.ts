/**
 * The coarse grid whose bilinear interpolation comes closest to a fine field, by weighted least squares
 * (conjugate gradients on the normal equations).
 */

import type { Field } from './field.js';

/** Indices and weights of the coarse neighbours of each fine row or column. */
function stencil(fine: number, coarseSteps: number, fineSteps: number, turn: boolean) {
  return Array.from({ length: fine }, (_, index) => {
    const at = (index * coarseSteps) / fineSteps;
    const low = turn ? Math.floor(at + 1e-9) : Math.min(Math.floor(at + 1e-9), coarseSteps - 1);
    return { low, high: turn ? (low + 1) % coarseSteps : low + 1, ratio: at - low };
  });
}

export function fitted(fine: Field, rows: number, weights: Float64Array): Field {
  const columns = 2 * (rows - 1);
  const down = stencil(fine.rows, rows - 1, fine.rows - 1, false);
  const right = stencil(fine.columns, columns, fine.columns, true);
  const spread = (coarse: Float64Array): Float64Array => {
    const out = new Float64Array(fine.values.length);
    down.forEach((d, row) => {
      right.forEach((r, column) => {
        const at = (line: number, place: number) => coarse[line * columns + place] as number;
        out[row * fine.columns + column] =
          (1 - d.ratio) * ((1 - r.ratio) * at(d.low, r.low) + r.ratio * at(d.low, r.high)) +
          d.ratio * ((1 - r.ratio) * at(d.high, r.low) + r.ratio * at(d.high, r.high));
      });
    });
    return out;
  };
  const gather = (values: Float64Array): Float64Array => {
    const out = new Float64Array(rows * columns);
    const add = (index: number, value: number) => {
      out[index] = (out[index] as number) + value;
    };
    down.forEach((d, row) => {
      right.forEach((r, column) => {
        const index = row * fine.columns + column;
        const value = (values[index] as number) * (weights[index] as number);
        add(d.low * columns + r.low, (1 - d.ratio) * (1 - r.ratio) * value);
        add(d.low * columns + r.high, (1 - d.ratio) * r.ratio * value);
        add(d.high * columns + r.low, d.ratio * (1 - r.ratio) * value);
        add(d.high * columns + r.high, d.ratio * r.ratio * value);
      });
    });
    return out;
  };
  const wanted = gather(fine.values);
  const mass = gather(new Float64Array(fine.values.length).fill(1));
  // The weighted mean around each node is the start, and where data are thin it is kept.
  const start = wanted.map((value, index) => value / Math.max(mass[index] as number, 1e-12));
  const keep = 1e-3;
  const normal = (coarse: Float64Array) =>
    gather(spread(coarse)).map((value, index) => value + keep * (coarse[index] as number));
  const x = start.slice();
  const applied = normal(x);
  const residual = wanted.map(
    (value, index) => value + keep * (start[index] as number) - (applied[index] as number),
  );
  const direction = residual.slice();
  const dot = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, value, index) => sum + value * (b[index] as number), 0);
  let length = dot(residual, residual);
  for (let step = 0; step < 60 && length > 1e-18; step++) {
    const moved = normal(direction);
    const ratio = length / dot(direction, moved);
    for (let index = 0; index < x.length; index++) {
      x[index] = (x[index] as number) + ratio * (direction[index] as number);
      residual[index] = (residual[index] as number) - ratio * (moved[index] as number);
    }
    const next = dot(residual, residual);
    for (let index = 0; index < x.length; index++)
      direction[index] =
        (residual[index] as number) + (next / length) * (direction[index] as number);
    length = next;
  }
  for (const row of [0, rows - 1]) {
    const line = x.subarray(row * columns, (row + 1) * columns);
    line.fill(line.reduce((sum, each) => sum + each, 0) / columns);
  }
  return { rows, columns, values: x };
}

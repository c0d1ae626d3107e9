/**
 * The coarse grid whose bilinear interpolation comes closest to a fine field, by weighted least squares
 * (conjugate gradients on the normal equations, whose matrix couples each node with the eight around it).
 */

import type { Field } from './field.js';

/** How much a node is held to the weighted mean around it, where data are thin. */
const KEEP = 1e-3;
const MOST_STEPS = 60;

/** Index of the coarse node before each fine row or column, and the part of the way to the next. */
function stencil(fine: number, coarseSteps: number, fineSteps: number, turn: boolean) {
  const low = new Int32Array(fine);
  const ratio = new Float64Array(fine);
  for (let index = 0; index < fine; index++) {
    const at = (index * coarseSteps) / fineSteps;
    const before = Math.floor(at + 1e-9);
    low[index] = turn ? before : Math.min(before, coarseSteps - 1);
    ratio[index] = at - (low[index] as number);
  }
  return { low, ratio };
}

/** The normal equations: for each node its coupling with itself, east, south-west, south and south-east. */
function normalEquations(fine: Field, rows: number, columns: number, weights: Float64Array) {
  const down = stencil(fine.rows, rows - 1, fine.rows - 1, false);
  const right = stencil(fine.columns, columns, fine.columns, true);
  const count = rows * columns;
  const [own, east, southWest, south, southEast, wanted, mass] = Array.from(
    { length: 7 },
    () => new Float64Array(count),
  ) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const add = (to: Float64Array, index: number, value: number): void => {
    to[index] = (to[index] as number) + value;
  };
  for (let row = 0; row < fine.rows; row++) {
    const top = (down.low[row] as number) * columns;
    const d = down.ratio[row] as number;
    for (let column = 0; column < fine.columns; column++) {
      const index = row * fine.columns + column;
      const weight = weights[index] as number;
      const value = weight * (fine.values[index] as number);
      const left = right.low[column] as number;
      const next = left + 1 === columns ? 0 : left + 1;
      const r = right.ratio[column] as number;
      const [nw, ne, sw, se] = [(1 - d) * (1 - r), (1 - d) * r, d * (1 - r), d * r];
      const [a, b, c, e] = [top + left, top + next, top + columns + left, top + columns + next];
      add(own, a, weight * nw * nw);
      add(own, b, weight * ne * ne);
      add(own, c, weight * sw * sw);
      add(own, e, weight * se * se);
      add(east, a, weight * nw * ne);
      add(east, c, weight * sw * se);
      add(south, a, weight * nw * sw);
      add(south, b, weight * ne * se);
      add(southEast, a, weight * nw * se);
      add(southWest, b, weight * ne * sw);
      add(wanted, a, value * nw);
      add(wanted, b, value * ne);
      add(wanted, c, value * sw);
      add(wanted, e, value * se);
      add(mass, a, weight * nw);
      add(mass, b, weight * ne);
      add(mass, c, weight * sw);
      add(mass, e, weight * se);
    }
  }
  return { own, east, southWest, south, southEast, wanted, mass };
}

export function fitted(fine: Field, rows: number, weights: Float64Array): Field {
  const columns = 2 * (rows - 1);
  const count = rows * columns;
  const equations = normalEquations(fine, rows, columns, weights);
  const { own, east, southWest, south, southEast, wanted, mass } = equations;
  const applied = (x: Float64Array, out: Float64Array): void => {
    for (let index = 0; index < count; index++)
      out[index] = ((own[index] as number) + KEEP) * (x[index] as number);
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++) {
        const index = row * columns + column;
        const line = row * columns;
        const right = line + (column + 1 === columns ? 0 : column + 1);
        const left = line + (column === 0 ? columns : column) - 1;
        const couple = (other: number, by: number): void => {
          out[index] = (out[index] as number) + by * (x[other] as number);
          out[other] = (out[other] as number) + by * (x[index] as number);
        };
        couple(right, east[index] as number);
        if (row === rows - 1) continue;
        couple(index + columns, south[index] as number);
        couple(right + columns, southEast[index] as number);
        couple(left + columns, southWest[index] as number);
      }
  };
  // The weighted mean around each node is the start, and where data are thin it is kept.
  const x = wanted.map((value, index) => value / Math.max(mass[index] as number, 1e-12));
  const start = x.slice();
  const image = new Float64Array(count);
  applied(x, image);
  const residual = wanted.map(
    (value, index) => value + KEEP * (start[index] as number) - (image[index] as number),
  );
  const direction = residual.slice();
  const dot = (a: Float64Array, b: Float64Array): number => {
    let sum = 0;
    for (let index = 0; index < count; index++) sum += (a[index] as number) * (b[index] as number);
    return sum;
  };
  let length = dot(residual, residual);
  for (let step = 0; step < MOST_STEPS && length > 1e-18; step++) {
    applied(direction, image);
    const ratio = length / dot(direction, image);
    for (let index = 0; index < count; index++) {
      x[index] = (x[index] as number) + ratio * (direction[index] as number);
      residual[index] = (residual[index] as number) - ratio * (image[index] as number);
    }
    const next = dot(residual, residual);
    for (let index = 0; index < count; index++)
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

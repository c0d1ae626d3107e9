/** Least squares of a lobe on prepared samples: a parabola in dB, with noise floor and drift where asked. */

import { denseAt, entryAt, valueAt } from '../../numeric/columns.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';
import { gaussNewton } from '../../numeric/gaussNewton.js';
import { linearLeastSquares } from '../../numeric/leastSquares.js';
import type { LobeDesign, LobeEstimate } from '../lobe/lobeDesign.js';
import { fitParabola } from '../lobe/parabolaFit.js';
import { fitAboveFloor } from './floorFit.js';

/** Number of fitted quantities. */
export function fittedQuantities(design: LobeDesign): number {
  return (
    (design.bend === undefined ? 3 : 2) +
    (design.times === undefined ? 0 : 1) +
    (design.fitFloor ? 1 : 0)
  );
}

/** A column by what stands in each row; `map` of a dense column is slower than a loop. */
function column(rows: number, at: (row: number) => number): Float64Array {
  const out = new Float64Array(rows);
  for (let row = 0; row < rows; row++) out[row] = at(row);
  return out;
}

/** Fits the lobe; `undefined` where the samples do not determine it. */
export function fitLobe(design: LobeDesign, weights?: Float64Array): LobeEstimate | undefined {
  const { places, levels, times, bend, floorDb, fitFloor } = design;
  if (floorDb === undefined && times === undefined) return fitParabola(design, weights);
  if (floorDb !== undefined && times === undefined && !fitFloor) {
    const quick = fitAboveFloor(design, floorDb, weights);
    if (quick !== undefined) return quick;
  }
  const n = places.length;
  const squares = column(n, (i) => denseAt(places, i) * denseAt(places, i));
  const columns = [new Float64Array(n).fill(1), places];
  if (bend === undefined) columns.push(squares);
  if (times !== undefined) columns.push(times);
  const offset = column(n, (i) => (bend ?? 0) * denseAt(places, i) * denseAt(places, i));
  if (floorDb === undefined)
    return estimate(
      design,
      linearLeastSquares(
        columns,
        column(n, (i) => denseAt(levels, i) - denseAt(offset, i)),
        weights,
      ),
      undefined,
    );
  // Start from the levels without their noise power, then Gauss-Newton on the readings themselves.
  const floorRatio = dbToRatio(floorDb);
  const clean = column(n, (i) => {
    const ratio = dbToRatio(denseAt(levels, i));
    return ratioToDb(Math.max(ratio - floorRatio, 0.05 * ratio)) - denseAt(offset, i);
  });
  const start = linearLeastSquares(columns, clean, weights);
  if (start === undefined) return undefined;
  const { values, place, linear } = gaussNewton({
    start: [...start.coefficients, ...(fitFloor ? [floorDb] : [])],
    at: (coefficients) =>
      placeOf(design, coefficients, {
        columns,
        offset,
        weights,
        floorDb: fitFloor ? valueAt(coefficients, columns.length) : floorDb,
      }),
    weights,
    rounds: 30,
    halvings: 10,
    settledRatio: 1e-10,
  });
  if (linear === undefined) return undefined;
  const fittedFloor = fitFloor ? values.at(-1) : floorDb;
  return estimate(
    design,
    {
      ...linear,
      coefficients: values,
      residuals: place.residuals,
      sumOfSquares: place.sumOfSquares,
    },
    fittedFloor,
  );
}

/** Residuals of the readings at given coefficients, and their slopes: a reading follows the lobe by the share of signal in its power. */
function placeOf(
  design: LobeDesign,
  coefficients: readonly number[],
  from: {
    readonly columns: readonly Float64Array[];
    readonly offset: Float64Array;
    readonly weights: Float64Array | undefined;
    readonly floorDb: number;
  },
) {
  const { columns, offset, weights, floorDb } = from;
  const n = offset.length;
  const residuals = new Float64Array(n);
  const signalShare = new Float64Array(n);
  let sumOfSquares = 0;
  for (let i = 0; i < n; i++) {
    let level = denseAt(offset, i);
    for (let j = 0; j < columns.length; j++)
      level += valueAt(coefficients, j) * denseAt(entryAt(columns, j), i);
    // Limited so that a wild trial step cannot overflow.
    const excess = dbToRatio(Math.max(-300, Math.min(300, floorDb - level)));
    signalShare[i] = 1 / (1 + excess);
    const residual = denseAt(design.levels, i) - level - ratioToDb(1 + excess);
    residuals[i] = residual;
    sumOfSquares += (weights === undefined ? 1 : denseAt(weights, i)) * residual * residual;
  }
  return {
    residuals,
    sumOfSquares,
    slopes: () => [
      ...columns.map((values) => column(n, (i) => denseAt(values, i) * denseAt(signalShare, i))),
      ...(design.fitFloor ? [column(n, (i) => 1 - denseAt(signalShare, i))] : []),
    ],
  };
}

function estimate(
  design: LobeDesign,
  fit: ReturnType<typeof linearLeastSquares>,
  floorDb: number | undefined,
): LobeEstimate | undefined {
  if (fit === undefined) return undefined;
  const known = design.bend !== undefined;
  const at = (i: number, j: number) =>
    known && (i === 2 || j === 2) ? 0 : (fit.covariance[i]?.[j] ?? 0);
  return {
    a: valueAt(fit.coefficients, 0),
    b: valueAt(fit.coefficients, 1),
    c: design.bend ?? valueAt(fit.coefficients, 2),
    drift: design.times === undefined ? 0 : valueAt(fit.coefficients, known ? 2 : 3),
    floorDb,
    covariance: [0, 1, 2].map((i) => [0, 1, 2].map((j) => at(i, j))),
    residuals: fit.residuals,
    sumOfSquares: fit.sumOfSquares,
    degreesOfFreedom: fit.degreesOfFreedom,
  };
}

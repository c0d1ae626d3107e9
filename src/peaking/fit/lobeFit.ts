/** Least squares of a lobe on prepared samples: a parabola in dB, with noise floor and drift where asked. */

import { denseAt } from '../../numeric/columns.js';
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

/** Fits the lobe; `undefined` where the samples do not determine it. */
export function fitLobe(design: LobeDesign, weights?: readonly number[]): LobeEstimate | undefined {
  const { places, levels, times, bend, floorDb, fitFloor } = design;
  if (floorDb === undefined && times === undefined) return fitParabola(design, weights);
  if (floorDb !== undefined && times === undefined && !fitFloor) {
    const quick = fitAboveFloor(design, floorDb, weights);
    if (quick !== undefined) return quick;
  }
  const columns: number[][] = [places.map(() => 1), [...places]];
  if (bend === undefined) columns.push(places.map((u) => u * u));
  if (times !== undefined) columns.push([...times]);
  const offset = places.map((u) => (bend ?? 0) * u * u);
  if (floorDb === undefined)
    return estimate(
      design,
      linearLeastSquares(
        columns,
        levels.map((y, i) => y - (offset[i] as number)),
        weights,
      ),
      undefined,
    );
  // Start from the levels without their noise power, then Gauss-Newton on the readings themselves.
  const clean = levels.map((y) =>
    ratioToDb(Math.max(dbToRatio(y) - dbToRatio(floorDb), 0.05 * dbToRatio(y))),
  );
  const start = linearLeastSquares(
    columns,
    clean.map((y, i) => y - (offset[i] as number)),
    weights,
  );
  if (start === undefined) return undefined;
  const { values, place, linear } = gaussNewton({
    start: [...start.coefficients, ...(fitFloor ? [floorDb] : [])],
    at: (coefficients) => placeOf(coefficients, columns, offset, design, weights),
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
  coefficients: readonly number[],
  columns: readonly (readonly number[])[],
  offset: readonly number[],
  design: LobeDesign,
  weights: readonly number[] | undefined,
) {
  const n = offset.length;
  const residuals = new Float64Array(n);
  const signalShare = new Float64Array(n);
  const floorDb = design.fitFloor
    ? (coefficients[columns.length] as number)
    : (design.floorDb as number);
  let sumOfSquares = 0;
  for (let i = 0; i < n; i++) {
    let level = offset[i] as number;
    for (let j = 0; j < columns.length; j++)
      level += (coefficients[j] as number) * (columns[j]?.[i] as number);
    // Limited so that a wild trial step cannot overflow.
    const excess = dbToRatio(Math.max(-300, Math.min(300, floorDb - level)));
    signalShare[i] = 1 / (1 + excess);
    const residual = (design.levels[i] as number) - level - ratioToDb(1 + excess);
    residuals[i] = residual;
    sumOfSquares += (weights?.[i] ?? 1) * residual * residual;
  }
  return {
    residuals,
    sumOfSquares,
    slopes: () => [
      ...columns.map((column) => column.map((v, i) => v * denseAt(signalShare, i))),
      ...(design.fitFloor ? [signalShare.map((share) => 1 - share)] : []),
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
    a: fit.coefficients[0] as number,
    b: fit.coefficients[1] as number,
    c: design.bend ?? (fit.coefficients[2] as number),
    drift: design.times === undefined ? 0 : (fit.coefficients[known ? 2 : 3] as number),
    floorDb,
    covariance: [0, 1, 2].map((i) => [0, 1, 2].map((j) => at(i, j))),
    residuals: fit.residuals,
    sumOfSquares: fit.sumOfSquares,
    degreesOfFreedom: fit.degreesOfFreedom,
  };
}

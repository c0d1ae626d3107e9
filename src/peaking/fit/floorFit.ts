/** A lobe above a known noise floor: Gauss-Newton as a weighted parabola, the quick way. */

import { denseAt } from '../../numeric/columns.js';
import type { LobeDesign, LobeEstimate } from '../lobe/lobeDesign.js';
import { fitParabola } from '../lobe/parabolaFit.js';

/** Most rounds. */
const ROUNDS = 20;

/** Relative change of the sum of squares at which a fit has settled; each round squares the distance left. */
const SETTLED = 1e-8;

/** Natural logarithm of the power ratio of one decibel. */
const PER_DB = Math.LN10 / 10;

/**
 * Fits level = lobe + 10 log10(1 + 10^((floor - lobe) / 10)) by repeated weighted parabolas.
 *
 * The reading's slope against the lobe is the share s of signal in its power, so a Gauss-Newton step is a parabola
 * through lobe + residual / s with weights s^2.
 *
 * @returns `undefined` where that does not settle; the general way then tries with shorter steps.
 */
export function fitAboveFloor(
  design: LobeDesign,
  floorDb: number,
  weights?: Float64Array,
): LobeEstimate | undefined {
  const { places, levels } = design;
  const n = places.length;
  const targets = new Float64Array(n);
  const shares = new Float64Array(n);
  const residuals = new Float64Array(n);
  const floorPower = Math.exp(PER_DB * floorDb);
  for (let i = 0; i < n; i++) {
    const power = Math.exp(PER_DB * denseAt(levels, i));
    const clean = Math.max(power - floorPower, 0.05 * power);
    targets[i] = Math.log(clean) / PER_DB;
    // Low readings carry little: their share of signal, squared.
    shares[i] = (weights === undefined ? 1 : denseAt(weights, i)) * (clean / power) ** 2;
  }
  const step = { ...design, levels: targets, floorDb: undefined };
  let fit = fitParabola(step, shares);
  let before = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS && fit !== undefined; round++) {
    const { a, b, c } = fit;
    let sumOfSquares = 0;
    for (let i = 0; i < n; i++) {
      const u = denseAt(places, i);
      const weight = weights === undefined ? 1 : denseAt(weights, i);
      const lobe = a + u * (b + u * c);
      const excess = 1 + Math.exp(PER_DB * Math.min(200, floorDb - lobe));
      const residual = denseAt(levels, i) - lobe - Math.log(excess) / PER_DB;
      residuals[i] = residual;
      targets[i] = lobe + residual * excess;
      shares[i] = weight / (excess * excess);
      sumOfSquares += weight * residual * residual;
    }
    if (Math.abs(before - sumOfSquares) <= SETTLED * (sumOfSquares + SETTLED))
      return { ...fit, floorDb, residuals, sumOfSquares };
    if (sumOfSquares > before * 1.5 + SETTLED) return undefined;
    before = sumOfSquares;
    fit = fitParabola(step, shares);
  }
  return undefined;
}

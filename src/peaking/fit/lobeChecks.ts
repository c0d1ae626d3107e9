/** Checks of a fitted lobe: its shape, its width, and whether the readings contradict it. */

import { chiSquareExceedance } from '../../numeric/chiSquare.js';
import { linearLeastSquares } from '../../numeric/leastSquares.js';
import { studentCoverageFactor } from '../../numeric/student.js';
import { higherOrders } from './higherOrders.js';
import type { LobeDesign, LobeEstimate } from './lobeDesign.js';
import { fitLobe } from './lobeFit.js';
import type { Contradictory } from './peakOutcome.js';

/** Probability below which readings count as contradicting each other. */
const TOO_UNLIKELY = 1e-4;

/** Probability of the shape below which a valley between two maxima counts as real. */
const SHAPE_TOO_UNLIKELY = 2e-3;

/** Ratio of a width to the given one outside which the lobe is not taken for the main one. */
const WIDTH_RATIOS = { least: 0.75, most: 1.4 } as const;

/**
 * Probability that readings of a true parabola gain as much from a third and fourth order as these.
 *
 * With two extra quantities the tail of F has the closed form (1 + 2 F / nu)^(-nu / 2); with a stated
 * scatter that of chi-square is exp(-x / 2). Not told where a noise floor or a drift was fitted too.
 */
export function shapeProbabilityRatio(
  design: LobeDesign,
  fit: LobeEstimate,
  outliers: readonly number[],
  statedDb: number | undefined,
): number | null {
  const spare = fit.degreesOfFreedom - (design.bend === undefined ? 2 : 3);
  if (spare < 1 || design.floorDb !== undefined || design.times !== undefined) return null;
  const orders = higherOrders(design.places, fit.residuals, weightsOf(design, outliers));
  if (orders === undefined) return null;
  if (statedDb !== undefined) return Math.exp(-orders.gain / (2 * statedDb * statedDb));
  return orders.left <= 1e-24 ? 1 : (1 + orders.gain / orders.left) ** (-spare / 2);
}

function weightsOf(design: LobeDesign, outliers: readonly number[]): number[] {
  return design.places.map((_, i) => (outliers.includes(i) ? 0 : 1));
}

/** Readings that contradict the stated scatter, or that show two peaks with a valley between. */
export function contradiction(
  design: LobeDesign,
  fit: LobeEstimate,
  outliers: readonly number[],
  statedDb: number | undefined,
  likely: number | null,
): Contradictory | undefined {
  const standardDeviationDb = Math.sqrt(fit.sumOfSquares / Math.max(1, fit.degreesOfFreedom));
  if (likely !== null && likely < SHAPE_TOO_UNLIKELY && valley(design, fit, outliers))
    return {
      kind: 'contradictory',
      reason: 'two-peaks',
      standardDeviationDb,
      probabilityRatio: likely,
    };
  if (statedDb === undefined || fit.degreesOfFreedom < 1) return undefined;
  const probabilityRatio = chiSquareExceedance(
    Math.min(1e6, fit.sumOfSquares / (statedDb * statedDb)),
    fit.degreesOfFreedom,
  );
  return probabilityRatio < TOO_UNLIKELY
    ? { kind: 'contradictory', reason: 'scatter', standardDeviationDb, probabilityRatio }
    : undefined;
}

/** Whether the fit of fourth order has a minimum between two maxima, all within the samples. */
function valley(design: LobeDesign, fit: LobeEstimate, outliers: readonly number[]): boolean {
  const { places } = design;
  const columns = [0, 1, 2, 3, 4].map((power) => places.map((u) => u ** power));
  const wider = linearLeastSquares(columns, fit.residuals, weightsOf(design, outliers));
  if (wider === undefined) return false;
  const [, e1 = 0, e2 = 0, e3 = 0, e4 = 0] = wider.coefficients;
  const slope = (u: number) => fit.b + e1 + u * (2 * (fit.c + e2) + u * (3 * e3 + u * 4 * e4));
  let maxima = 0;
  let minima = 0;
  for (let k = 0; k < 80; k++) {
    const before = slope(-1 + k / 40);
    const after = slope(-1 + (k + 1) / 40);
    if (before > 0 && after <= 0) maxima++;
    if (before < 0 && after >= 0) minima++;
  }
  return maxima >= 2 && minima >= 1;
}

/**
 * The width that the readings have, relative to the given one, where it departs beyond doubt (99.9 %)
 * from that of the main lobe: below 0.75 or above 1.4 of it.
 */
export function widthMismatch(
  design: LobeDesign,
  outliers: readonly number[],
  standardDeviationDb: number,
  scatterKnown: boolean,
): { readonly ratio: number; readonly place: number } | undefined {
  if (design.bend === undefined) return undefined;
  const free = fitLobe({ ...design, bend: undefined }, weightsOf(design, outliers));
  if (free === undefined || (!scatterKnown && free.degreesOfFreedom < 1)) return undefined;
  const scatter = scatterKnown
    ? standardDeviationDb
    : Math.sqrt(free.sumOfSquares / free.degreesOfFreedom);
  const factor = studentCoverageFactor(
    0.998,
    scatterKnown ? Number.POSITIVE_INFINITY : free.degreesOfFreedom,
  );
  const doubt = factor * scatter * Math.sqrt(free.covariance[2]?.[2] ?? 0);
  const steepest = design.bend / WIDTH_RATIOS.least ** 2;
  const shallowest = design.bend / WIDTH_RATIOS.most ** 2;
  if (free.c >= 0 || !(free.c + doubt < steepest || free.c - doubt > shallowest)) return undefined;
  return { ratio: Math.sqrt(design.bend / free.c), place: -free.b / (2 * free.c) };
}

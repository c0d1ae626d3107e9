/**
 * Readings that do not belong to the lobe: a least trimmed squares fit orders them, an F test over all
 * ways of leaving out as many decides how many are set aside.
 */

import { incompleteBeta, logGamma } from '../../numeric/beta.js';
import { chiSquareExceedance } from '../../numeric/chiSquare.js';
import { denseAt, valueAt } from '../../numeric/columns.js';
import type { LobeDesign, LobeEstimate } from '../lobe/lobeDesign.js';
import { fitParabola } from '../lobe/parabolaFit.js';
import { fitLobe, fittedQuantities } from './lobeFit.js';
import { bestTrimmed } from './trimmedLobe.js';

/** Chance of setting aside anything where nothing is wrong, for one set of samples. */
const FALSE_ALARM = 0.01;

/** Smallest number of readings beyond the fitted quantities at which outliers are looked for. */
const SPARE_READINGS = 4;

/** A fit and the readings left out of it. */
export interface CleanFit {
  readonly fit: LobeEstimate;
  readonly outliers: readonly number[];
}

/**
 * Fits without the readings that a test at 1 % finds foreign; at most a third of them.
 *
 * Leaving out the worst k of n readings always lowers the sum of squares. That the drop is more than
 * chance is tested by its F ratio against the number of ways to choose k (Bonferroni), which holds
 * however the k were found. Once k are accepted, the next are tested against what is left.
 *
 * Source: P. J. Rousseeuw, J. Am. Statist. Assoc. 79, 871 (1984) for trimmed squares; R. D. Cook and
 * S. Weisberg, Residuals and Influence in Regression (1982), ch. 2, for the test.
 *
 * @param knownScatterDb  Standard deviation of a reading, if known: then chi-square decides.
 * @param stepDb  Step of the levels: what is left never counts as less than rounding leaves.
 */
export function fitWithoutOutliers(
  design: LobeDesign,
  full: LobeEstimate,
  knownScatterDb: number | undefined,
  stepDb: number,
): CleanFit {
  const n = design.levels.length;
  const fitted = fittedQuantities(design);
  if (design.fitFloor || n < fitted + SPARE_READINGS) return { fit: full, outliers: [] };
  const order = suspects(design, full, fitted);
  const most = Math.min(Math.floor(n / 3), n - fitted - 2);
  const weights = new Float64Array(n).fill(1);
  let accepted: CleanFit = { fit: full, outliers: [] };
  for (let removed = 1; removed <= most; removed++) {
    weights[valueAt(order, removed - 1)] = 0;
    const fit = fitLobe(design, weights);
    if (fit === undefined) break;
    const more = removed - accepted.outliers.length;
    const chance = FALSE_ALARM * 0.5 ** more;
    if (
      dropProbability(accepted.fit, fit, more, knownScatterDb, stepDb) *
        ways(n - accepted.outliers.length, more) <
      chance
    )
      accepted = { fit, outliers: order.slice(0, removed).sort((a, b) => a - b) };
  }
  return accepted;
}

/** Probability that leaving out `more` given readings lowers the sum of squares as much by chance. */
function dropProbability(
  before: LobeEstimate,
  after: LobeEstimate,
  more: number,
  knownScatterDb: number | undefined,
  stepDb: number,
): number {
  const drop = Math.max(0, before.sumOfSquares - after.sumOfSquares);
  if (knownScatterDb !== undefined)
    return chiSquareExceedance(Math.min(1e8, drop / knownScatterDb ** 2), more);
  if (drop === 0) return 1;
  const left = Math.max(after.sumOfSquares, (after.degreesOfFreedom * stepDb * stepDb) / 12);
  return incompleteBeta(left / (left + drop), after.degreesOfFreedom / 2, more / 2);
}

/** In how many ways `k` of `n` can be chosen. */
function ways(n: number, k: number): number {
  return k < 3
    ? k === 1
      ? n
      : (n * (n - 1)) / 2
    : Math.exp(logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1));
}

/** Indices of the samples, the most foreign first, by residual from a least trimmed squares fit. */
function suspects(design: LobeDesign, full: LobeEstimate, fitted: number): number[] {
  const n = design.levels.length;
  const kept = Math.floor((n + fitted + 1) / 2);
  let { residuals } = full;
  const start = bestTrimmed(design, kept);
  if (start !== undefined) residuals = start;
  const plain = design.floorDb === undefined && design.times === undefined;
  // Concentration steps: fit the closest half, take the closest again.
  for (let round = 0; round < 3; round++) {
    const weights = closest(residuals, kept);
    const next = plain ? fitParabola(design, weights) : fitLobe(design, weights);
    if (next === undefined) break;
    residuals = next.residuals;
  }
  return Array.from({ length: n }, (_, i) => i).sort(
    (i, j) => Math.abs(denseAt(residuals, j)) - Math.abs(denseAt(residuals, i)),
  );
}

/** Weights that keep the samples with the smallest residuals. */
function closest(residuals: Float64Array, kept: number): Float64Array {
  const limit = denseAt(residuals.map(Math.abs).sort(), kept - 1);
  return residuals.map((r) => (Math.abs(r) <= limit ? 1 : 0));
}

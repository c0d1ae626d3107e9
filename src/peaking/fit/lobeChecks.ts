/** Checks of a fitted lobe: its shape, its width, and whether the readings contradict it. */

import { chiSquareExceedance } from '../../numeric/chiSquare.js';
import { denseAt } from '../../numeric/columns.js';
import { linearLeastSquares } from '../../numeric/leastSquares.js';
import { studentCoverageFactor } from '../../numeric/student.js';
import { fiellerInterval } from '../lobe/fieller.js';
import type { ScatterBasis } from '../lobe/foreignReadings.js';
import type { LobeDesign, LobeEstimate } from '../lobe/lobeDesign.js';
import { type LobeProblem, NARROW, PEAK } from '../lobe/lobeModel.js';
import { narrowDoubtOf, settledLobe } from '../lobe/peakInterval.js';
import { higherOrders } from './higherOrders.js';
import type { Contradictory } from './peakOutcome.js';

/** Probability below which readings count as contradicting each other. */
const TOO_UNLIKELY = 1e-4;

/** Probability of the shape below which a valley between two maxima counts as real. */
const SHAPE_TOO_UNLIKELY = 2e-3;

/** Departures of the width, in its standard uncertainties, that no main lobe has: narrower and wider. */
const WIDTH_DEPARTURES = { narrower: 3.5, wider: 5 } as const;
/** Whatever the uncertainty: a first side lobe is hardly half as wide as the main one. */
const LEAST_RATIO = 0.55;
/** A width known exactly still differs from that of the lobe by so much, as ratios. */
const EXACT_RATIOS = { least: 0.75, most: 1.4 } as const;

/** A change of level in dB between the middle of the readings and their end that is rounding of the arithmetic. */
const ROUNDING_DB = 1e-9;

/** What a parabola says at once: no bend and no slope, only a slope, or a bend. */
export function firstLook(
  fit: LobeEstimate,
  statedDb: number | undefined,
): { readonly kind: 'flat' | 'slope' | 'bend'; readonly standardDeviationDb: number } {
  const standardDeviationDb =
    statedDb ?? Math.sqrt(fit.sumOfSquares / Math.max(1, fit.degreesOfFreedom));
  if (Math.abs(fit.b) + Math.abs(fit.c) < ROUNDING_DB) return { kind: 'flat', standardDeviationDb };
  const factor = studentCoverageFactor(
    0.95,
    statedDb === undefined ? Math.max(1, fit.degreesOfFreedom) : Number.POSITIVE_INFINITY,
  );
  const at = (i: number, j: number) => fit.covariance[i]?.[j] ?? 0;
  const covariance = { bb: at(1, 1), bc: at(1, 2), cc: at(2, 2) };
  const slopes = fiellerInterval(fit, covariance, factor * standardDeviationDb);
  if (slopes.kind === 'nothing') return { kind: 'flat', standardDeviationDb };
  return { kind: slopes.kind === 'slope-only' ? 'slope' : 'bend', standardDeviationDb };
}

/** What is left of the readings by a fit. */
export interface Remainder {
  readonly residuals: Float64Array;
  readonly weights: Float64Array;
  readonly sumOfSquares: number;
  /** Readings used less quantities of which nothing was known. */
  readonly spare: number;
}

/**
 * Probability that readings of a true lobe gain as much from a third and fourth order as these.
 *
 * With two extra quantities the tail of F has the closed form (1 + 2 F / nu)^(-nu / 2); with a stated
 * scatter that of chi-square is exp(-x / 2). Not told where a noise floor or a drift was fitted too.
 */
export function shapeProbabilityRatio(
  design: LobeDesign,
  { residuals, weights, spare }: Remainder,
  statedDb: number | undefined,
): number | null {
  const left = spare - (design.bend === undefined ? 2 : 3);
  if (left < 1 || design.floorDb !== undefined || design.times !== undefined) return null;
  const orders = higherOrders(design.places, residuals, weights);
  if (orders === undefined) return null;
  if (statedDb !== undefined) return Math.exp(-orders.gain / (2 * statedDb * statedDb));
  return orders.left <= 1e-24 ? 1 : (1 + orders.gain / orders.left) ** (-left / 2);
}

/** Readings that contradict the stated scatter, or that show two peaks with a valley between. */
export function contradiction(
  design: LobeDesign,
  parabola: LobeEstimate,
  rest: Remainder,
  statedDb: number | undefined,
): Contradictory | undefined {
  const { weights, sumOfSquares, spare } = rest;
  const standardDeviationDb = Math.sqrt(sumOfSquares / Math.max(1, spare));
  const shape = shapeProbabilityRatio(design, rest, statedDb);
  if (shape !== null && shape < SHAPE_TOO_UNLIKELY && valley(design, parabola, weights))
    return {
      kind: 'contradictory',
      reason: 'two-peaks',
      standardDeviationDb,
      probabilityRatio: shape,
    };
  if (statedDb === undefined || spare < 1) return undefined;
  const probabilityRatio = chiSquareExceedance(
    Math.min(1e6, sumOfSquares / (statedDb * statedDb)),
    spare,
  );
  return probabilityRatio < TOO_UNLIKELY
    ? { kind: 'contradictory', reason: 'scatter', standardDeviationDb, probabilityRatio }
    : undefined;
}

/** Whether the fit of fourth order has a minimum between two maxima, all within the samples. */
function valley(design: LobeDesign, fit: LobeEstimate, weights: Float64Array): boolean {
  const { places } = design;
  const columns = [0, 1, 2, 3, 4].map((power) => places.map((u) => u ** power));
  const wider = linearLeastSquares(columns, fit.residuals, weights);
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

/** Whether readings bend less than the main lobe of the given width does, beyond doubt (99.9 %): level ground. */
export function noBend(
  known: LobeDesign,
  free: LobeEstimate,
  statedDb: number | undefined,
): boolean {
  const spare = statedDb === undefined ? free.degreesOfFreedom : Number.POSITIVE_INFINITY;
  if (spare < 1) return false;
  const standardDeviationDb = statedDb ?? Math.sqrt(free.sumOfSquares / spare);
  const doubt =
    studentCoverageFactor(0.998, spare) *
    standardDeviationDb *
    Math.sqrt(free.covariance[2]?.[2] ?? 0);
  return free.c - doubt > (known.bend ?? 0) / EXACT_RATIOS.most ** 2;
}

/**
 * The width that the readings have, relative to the given one, where it departs beyond doubt (99.9 %)
 * from all that a main lobe of uncertain width may have.
 *
 * @param start  State of a lobe of free width.
 */
export function widthMismatch(
  problem: LobeProblem,
  start: Float64Array,
  weights: Float64Array,
  basis: ScatterBasis,
  doubtRatio: number,
): { readonly ratio: number; readonly place: number } | undefined {
  const free = settledLobe({ ...problem, narrowDoubt: undefined }, weights, basis, start);
  if (free === undefined) return undefined;
  const doubt = studentCoverageFactor(0.998, free.spare) * narrowDoubtOf(free);
  const least = Math.min(
    EXACT_RATIOS.least,
    Math.max(LEAST_RATIO, 1 - WIDTH_DEPARTURES.narrower * doubtRatio),
  );
  const most = Math.max(EXACT_RATIOS.most, 1 + WIDTH_DEPARTURES.wider * doubtRatio);
  const narrow = denseAt(free.solution.state, NARROW);
  if (!(narrow - doubt > 1 / least ** 2 || narrow + doubt < 1 / most ** 2)) return undefined;
  return { ratio: 1 / Math.sqrt(narrow), place: denseAt(free.solution.state, PEAK) };
}

/** The peak of a lobe from any samples of level against position. */

import type { LobeDesign, LobeEstimate } from '../lobe/lobeDesign.js';
import { DRIFT, FLOOR, freeQuantities, NARROW, PEAK, TOP } from '../lobe/lobeModel.js';
import { narrowDoubtOf, peakInterval, startState } from '../lobe/peakInterval.js';
import { coverageOf } from './coverage.js';
import {
  contradiction,
  firstLook,
  noBend,
  shapeProbabilityRatio,
  widthMismatch,
} from './lobeChecks.js';
import { fitLobe } from './lobeFit.js';
import { fitWithoutOutliers } from './outliers.js';
import type { PeakFit } from './peakOutcome.js';
import { checkedSamples, type PeakSamples } from './peakSamples.js';
import { countOf, designOf, problemOf, spanS, withinLobe } from './prepared.js';
import { lossesOf } from './residualLoss.js';

/** Least scatter in dB that readings are believed to have: no display shows less. */
const LEAST_SCATTER_DB = 0.01;
const NO_SCATTER_DB = 1e-6;

/** Readings to spare that a stated scatter is worth: it was watched for a while, not measured for ever. */
const STATED_WORTH = 5;

/** A peak so many half spans off the middle of the readings is beyond them, whatever the shape of the lobe. */
const FAR_OUT = 3;

/**
 * Fits the main lobe of a reflector and gives its peak with an honest 95 % interval.
 *
 * Least squares of level against position, with noise floor, drift and scatter known or found. Beyond the half-power points
 * the lobe falls faster than a parabola in dB, by as much as the taper says or as reflectors do, and may be a little lopsided;
 * a given beamwidth counts as no better known than `beamwidthStandardUncertaintyRatio`. What is not known of width and shape
 * widens the interval. Which readings are foreign to the lobe is weighed by probability, and readings beyond the main lobe
 * are left out. With `lobe: 'parabola'` the interval is Fieller's: all positions at which the slope of the fit does not differ
 * from zero, with Student's t for the readings to spare. Readings are taken as independent: flicker slower than the reading
 * (see {@link averagedScatter}) makes every interval too short.
 *
 * @param samples  Positions and levels, and what else is known.
 * @returns One of six outcomes, by `kind`: `peak`, `edge`, `flat`, `not-main-lobe`, `too-few`, `contradictory`.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16, 175 (1954), for the parabola 12 (offset / beamwidth)^2 dB; the lobe of a
 * tapered round aperture for the reflector.
 * Accuracy: where `coverage` does not say `not-assured`, 95 % or more of the intervals (with a fitted drift and nine readings 93 %) hold the peak in every cell of the
 * coverage table (700 simulated runs a cell on lobes of real apertures and bent wavefronts); as priors and limits were chosen on the
 * same simulation, that is no independent proof.
 * @example
 * ```ts
 * import { fitPeak } from 'slantpath/peaking';
 * const fit = fitPeak({
 *   positionDeg: [-1, -0.5, 0, 0.5, 1],
 *   levelDbm: [-44.1, -41.2, -39.9, -40.9, -43.6],
 * });
 * fit.kind === 'peak' && fit.positionDeg.toFixed(2); // => '0.04'
 * ```
 */
export function fitPeak(samples: PeakSamples): PeakFit {
  const checked = checkedSamples(samples);
  const used = withinLobe(checked);
  const { positionDeg, levelDbm } = used;
  const lowDeg = positionDeg.reduce((a, b) => Math.min(a, b));
  const highDeg = positionDeg.reduce((a, b) => Math.max(a, b));
  const middleDeg = (lowDeg + highDeg) / 2;
  const scaleDeg = (highDeg - lowDeg) / 2;
  const topDbm = levelDbm.reduce((a, b) => Math.max(a, b));
  const design = designOf(checked, used, { middleDeg, scaleDeg, topDbm });
  const count = countOf(checked, used, design);
  if (count.readings < count.readingsNeeded)
    return { kind: 'too-few', reason: 'readings', ...count };
  if (count.places < count.placesNeeded) return { kind: 'too-few', reason: 'places', ...count };
  const full = fitLobe(design);
  if (full === undefined)
    return { kind: 'too-few', reason: design.times === undefined ? 'places' : 'drift', ...count };
  // Rounding adds a twelfth of the step squared to a stated scatter; a found one has it already.
  const statedDb =
    checked.standardDeviationDb === undefined
      ? undefined
      : Math.hypot(checked.standardDeviationDb, checked.stepDb / Math.sqrt(12));
  const begun = checked.keepAll
    ? { fit: full, outliers: [] }
    : fitWithoutOutliers(design, full, statedDb, checked.stepDb);
  const first = firstLook(begun.fit, statedDb);
  if (first.kind !== 'bend' || begun.fit.c > 0) {
    const rest = {
      ...begun.fit,
      weights: Float64Array.from(levelDbm, (_, i) => (begun.outliers.includes(i) ? 0 : 1)),
      spare: begun.fit.degreesOfFreedom,
    };
    const wrong = contradiction(design, begun.fit, rest, statedDb);
    if (wrong !== undefined) return wrong;
  }
  if (first.kind === 'flat')
    return {
      kind: 'flat',
      fromDeg: lowDeg,
      toDeg: highDeg,
      standardDeviationDb: first.standardDeviationDb,
    };
  const edge = (side: 'lower' | 'higher', likelyPositionDeg: number | null): PeakFit => ({
    kind: 'edge',
    side,
    edgeDeg: side === 'lower' ? lowDeg : highDeg,
    likelyPositionDeg,
  });
  const { b, c } = begun.fit;
  const place = -b / (2 * c);
  if (first.kind === 'slope') return edge(b < 0 ? 'lower' : 'higher', null);
  if (c > 0)
    return {
      kind: 'not-main-lobe',
      reason: 'dip',
      positionDeg: middleDeg + scaleDeg * place,
      beamwidthDeg: null,
    };
  const farOut = () => edge(place < 0 ? 'lower' : 'higher', middleDeg + scaleDeg * place);
  if (Math.abs(place) > FAR_OUT) return farOut();
  const unitDeg = checked.widthDeg ?? scaleDeg * Math.sqrt(-12 / c);
  const problem = problemOf(checked, used, design, { middleDeg, unitDeg });
  const exact = checked.shape.nullRatio === 0;
  const basis = {
    stated: statedDb !== undefined && exact ? statedDb * statedDb : undefined,
    before:
      statedDb !== undefined && !exact
        ? { readings: STATED_WORTH, square: STATED_WORTH * statedDb * statedDb }
        : { readings: 0, square: 0 },
    least:
      statedDb !== undefined
        ? 0
        : Math.max((exact ? NO_SCATTER_DB : LEAST_SCATTER_DB) ** 2, checked.stepDb ** 2 / 12),
  };
  const toUnits = scaleDeg / unitDeg;
  const stateOf = (fit: LobeEstimate) =>
    startState(
      { a: fit.a, b: fit.b / toUnits, c: fit.c / (toUnits * toUnits) },
      problem.shape,
      fit.floorDb,
    );
  let start = stateOf(begun.fit);
  if (checked.widthDeg !== undefined) {
    const free = freeWidth(design, checked.keepAll, statedDb, checked.stepDb);
    if (free !== undefined && noBend(design, free.fit, statedDb)) {
      const { kind, standardDeviationDb } = firstLook(free.fit, statedDb);
      if (kind === 'flat') return { kind, fromDeg: lowDeg, toDeg: highDeg, standardDeviationDb };
    }
    if (free !== undefined && free.fit.c < 0) {
      const state = stateOf(free.fit);
      const mismatch = widthMismatch(problem, state, free.weights, basis, checked.widthDoubtRatio);
      if (mismatch !== undefined)
        return {
          kind: 'not-main-lobe',
          reason: mismatch.ratio < 1 ? 'too-narrow' : 'too-wide',
          positionDeg: middleDeg + unitDeg * mismatch.place,
          beamwidthDeg: mismatch.ratio * unitDeg,
        };
      if (checked.widthDoubtRatio > 0 && Math.abs(state[PEAK] as number) < toUnits) start = state;
    }
  }
  const all = new Float64Array(positionDeg.length).fill(1);
  const found = peakInterval(problem, basis, start, all, checked.keepAll || checked.fitFloor);
  if (found === undefined) return farOut();
  const { solution, variance } = found.lobe;
  const { state } = solution;
  const positionAt = middleDeg + unitDeg * (state[PEAK] as number);
  const standardDeviationDb = Math.sqrt(variance);
  const outliers = (found.answers[0]?.leftOut ?? []).map((i) => used.index[i] as number);
  const { weights } = found.lobe;
  const rest = {
    ...solution,
    weights,
    spare: weights.reduce((sum, weight) => sum + weight, 0) - freeQuantities(problem),
  };
  const wrong = contradiction(design, begun.fit, rest, statedDb);
  if (wrong !== undefined) return wrong;
  if (positionAt < lowDeg || positionAt > highDeg)
    return edge(positionAt < lowDeg ? 'lower' : 'higher', positionAt);
  const widthRatio = 1 / Math.sqrt(state[NARROW] as number);
  const beamwidthDeg = unitDeg * widthRatio;
  const widthDoubt = narrowDoubtOf(found.lobe) * 0.5 * widthRatio ** 2;
  const interval95Deg = [middleDeg + unitDeg * found.from, middleDeg + unitDeg * found.to] as const;
  const { own, bands } = lossesOf(
    {
      positionDeg: positionAt,
      interval95Deg,
      beamwidthDeg,
      narrowestRatio: 1 / (1 + widthDoubt),
      nullRatio: problem.shape.nullRatio,
      nowDeg: checked.nowDeg,
    },
    checked.bands,
  );
  const minutes = design.times !== undefined ? spanS(used.timeS ?? []) / 60 : 0;
  return {
    kind: 'peak',
    positionDeg: positionAt,
    interval95Deg,
    coverage: coverageOf(problem, found, {
      exactLobe: exact,
      stated: statedDb !== undefined,
      stepDb: checked.stepDb,
    }),
    standardUncertaintyDeg: unitDeg * found.standardUncertainty,
    peakLevelDbm: topDbm + (state[TOP] as number),
    beamwidthDeg,
    beamwidthStandardUncertaintyDeg: beamwidthDeg * widthDoubt,
    standardDeviationDb,
    degreesOfFreedom: statedDb === undefined ? found.lobe.spare : null,
    driftDbPerMin: minutes > 0 ? (2 * (state[DRIFT] as number)) / minutes : 0,
    noiseFloorDbm: problem.floorDb === undefined ? null : topDbm + (state[FLOOR] as number),
    ...own,
    bands,
    outliers,
    outliersProbabilityRatio: found.answers[0]?.probability ?? 1,
    beyondLobe: [...used.leftOut, ...found.beyond.map((i) => used.index[i] as number)].sort(
      (x, y) => x - y,
    ),
    shapeProbabilityRatio: shapeProbabilityRatio(design, rest, statedDb),
  };
}

/** A parabola of free width without foreign readings; `undefined` where the readings determine none. */
function freeWidth(
  known: LobeDesign,
  keepAll: boolean,
  statedDb: number | undefined,
  stepDb: number,
): { readonly fit: LobeEstimate; readonly weights: Float64Array } | undefined {
  const design = { ...known, bend: undefined };
  const full = fitLobe(design);
  if (full === undefined) return undefined;
  const { fit, outliers } = keepAll
    ? { fit: full, outliers: [] }
    : fitWithoutOutliers(design, full, statedDb, stepDb);
  return {
    fit,
    weights: Float64Array.from(design.levels, (_, i) => (outliers.includes(i) ? 0 : 1)),
  };
}

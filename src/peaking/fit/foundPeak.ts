/** The outcome of a fitted lobe: a peak with all that is known of it, unless the readings contradict it. */

import { denseAt, valueAt } from '../../numeric/columns.js';
import type { LobeEstimate } from '../lobe/lobeDesign.js';
import {
  DRIFT,
  FLOOR,
  freeQuantities,
  type LobeProblem,
  NARROW,
  PEAK,
  TOP,
} from '../lobe/lobeModel.js';
import { narrowDoubtOf, type PeakInterval } from '../lobe/peakInterval.js';
import { edgeAt } from './beforeTheLobe.js';
import { coverageOf } from './coverage.js';
import { contradiction, shapeProbabilityRatio } from './lobeChecks.js';
import type { LobeWork } from './lobeWork.js';
import type { PeakFit } from './peakOutcome.js';
import { spanS } from './prepared.js';
import { lossesOf } from './residualLoss.js';

/** A fitted lobe, in units of `unitDeg`, and the parabola with which it began. */
interface FittedLobe {
  readonly problem: LobeProblem;
  readonly found: PeakInterval;
  readonly unitDeg: number;
  readonly begun: LobeEstimate;
}

/** The outcome. */
export function foundPeak(work: LobeWork, fitted: FittedLobe): PeakFit {
  const { checked, used, design, statedDb, lowDeg, highDeg, middleDeg, topDbm } = work;
  const { problem, found, unitDeg, begun } = fitted;
  const { solution, variance, weights } = found.lobe;
  const { state } = solution;
  const positionDeg = middleDeg + unitDeg * denseAt(state, PEAK);
  const rest = {
    ...solution,
    weights,
    spare: weights.reduce((sum, weight) => sum + weight, 0) - freeQuantities(problem),
  };
  const wrong = contradiction(design, begun, rest, statedDb);
  if (wrong !== undefined) return wrong;
  if (positionDeg < lowDeg || positionDeg > highDeg)
    return edgeAt(work, positionDeg < lowDeg ? 'lower' : 'higher', positionDeg);
  const width = widthOf(fitted);
  const interval95Deg = [middleDeg + unitDeg * found.from, middleDeg + unitDeg * found.to] as const;
  const { own, bands } = lossesOf(
    {
      positionDeg,
      interval95Deg,
      beamwidthDeg: width.beamwidthDeg,
      narrowestRatio: 1 / (1 + width.doubt),
      nullRatio: problem.shape.nullRatio,
      nowDeg: checked.nowDeg,
    },
    checked.bands,
  );
  const minutes = design.times !== undefined ? spanS(used.timeS ?? []) / 60 : 0;
  return {
    kind: 'peak',
    positionDeg,
    interval95Deg,
    coverage: coverageOf(problem, found, {
      exactLobe: checked.shape.nullRatio === 0,
      stated: statedDb !== undefined,
      stepDb: checked.stepDb,
    }),
    standardUncertaintyDeg: unitDeg * found.standardUncertainty,
    peakLevelDbm: topDbm + denseAt(state, TOP),
    beamwidthDeg: width.beamwidthDeg,
    beamwidthStandardUncertaintyDeg: width.beamwidthDeg * width.doubt,
    standardDeviationDb: Math.sqrt(variance),
    degreesOfFreedom: statedDb === undefined ? found.lobe.spare : null,
    driftDbPerMin: minutes > 0 ? (2 * denseAt(state, DRIFT)) / minutes : 0,
    noiseFloorDbm: problem.floorDb === undefined ? null : topDbm + denseAt(state, FLOOR),
    ...own,
    bands,
    outliers: (found.answers[0]?.leftOut ?? []).map((i) => valueAt(used.index, i)),
    outliersProbabilityRatio: found.answers[0]?.probability ?? 1,
    beyondLobe: [...used.leftOut, ...found.beyond.map((i) => valueAt(used.index, i))].sort(
      (x, y) => x - y,
    ),
    shapeProbabilityRatio: shapeProbabilityRatio(design, rest, statedDb),
  };
}

/** Half-power beamwidth of a fitted lobe, and its relative uncertainty. */
function widthOf({ found, unitDeg }: FittedLobe): {
  readonly beamwidthDeg: number;
  readonly doubt: number;
} {
  const widthRatio = 1 / Math.sqrt(denseAt(found.lobe.solution.state, NARROW));
  return {
    beamwidthDeg: unitDeg * widthRatio,
    doubt: narrowDoubtOf(found.lobe) * 0.5 * widthRatio ** 2,
  };
}

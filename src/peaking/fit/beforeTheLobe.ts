/** What a parabola says before the lobe is fitted: no peak at all, or where to begin. */

import { denseAt } from '../../numeric/columns.js';
import type { ScatterBasis } from '../lobe/foreignReadings.js';
import type { LobeEstimate } from '../lobe/lobeDesign.js';
import { type LobeProblem, PEAK } from '../lobe/lobeModel.js';
import { startState } from '../lobe/peakInterval.js';
import { contradiction, firstLook, noBend, widthMismatch } from './lobeChecks.js';
import { fitLobe } from './lobeFit.js';
import { type LobeWork, weightsWithout, withoutForeign } from './lobeWork.js';
import type { CleanFit } from './outliers.js';
import type { PeakFit } from './peakOutcome.js';

/** Least scatter in dB that readings are believed to have: no display shows less. */
const LEAST_SCATTER_DB = 0.01;
const NO_SCATTER_DB = 1e-6;

/** Readings to spare that a stated scatter is worth: it was watched for a while, not measured for ever. */
const STATED_WORTH = 5;

/** A peak so many half spans off the middle of the readings is beyond them, whatever the shape of the lobe. */
const FAR_OUT = 3;

/** Where a parabola is level, in half spans from the middle of the readings. */
export const vertex = ({ b, c }: LobeEstimate): number => -b / (2 * c);

/** The outcome that the peak lies beyond the readings, on the side of a place in half spans. */
export function edgeOf(work: LobeWork, place: number): PeakFit {
  return edgeAt(work, place < 0 ? 'lower' : 'higher', work.middleDeg + work.scaleDeg * place);
}

/** The outcome that the peak lies beyond the readings. */
export function edgeAt(
  { lowDeg, highDeg }: LobeWork,
  side: 'lower' | 'higher',
  likelyPositionDeg: number | null,
): PeakFit {
  return {
    kind: 'edge',
    side,
    edgeDeg: side === 'lower' ? lowDeg : highDeg,
    likelyPositionDeg,
  };
}

/** The outcome where a parabola shows that there is no lobe to fit; `undefined` where there is one. */
export function beforeTheLobe(work: LobeWork, { fit, outliers }: CleanFit): PeakFit | undefined {
  const { design, statedDb } = work;
  const first = firstLook(fit, statedDb);
  if (first.kind !== 'bend' || fit.c > 0) {
    const rest = {
      ...fit,
      weights: weightsWithout(design, outliers),
      spare: fit.degreesOfFreedom,
    };
    const wrong = contradiction(design, fit, rest, statedDb);
    if (wrong !== undefined) return wrong;
  }
  if (first.kind === 'flat') return flat(work, first.standardDeviationDb);
  if (first.kind === 'slope') return edgeAt(work, fit.b < 0 ? 'lower' : 'higher', null);
  const place = vertex(fit);
  if (fit.c > 0)
    return {
      kind: 'not-main-lobe',
      reason: 'dip',
      positionDeg: work.middleDeg + work.scaleDeg * place,
      beamwidthDeg: null,
    };
  return Math.abs(place) > FAR_OUT ? edgeOf(work, place) : undefined;
}

const flat = ({ lowDeg, highDeg }: LobeWork, standardDeviationDb: number): PeakFit => ({
  kind: 'flat',
  fromDeg: lowDeg,
  toDeg: highDeg,
  standardDeviationDb,
});

/** What is known of the scatter before the lobe is fitted. */
export function scatterBasis({ checked, statedDb }: LobeWork): ScatterBasis {
  const exact = checked.shape.nullRatio === 0;
  return {
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
}

/** State from which the lobe is fitted, or the outcome where the readings have not the width that was given. */
export function lobeStart(
  work: LobeWork,
  problem: LobeProblem,
  basis: ScatterBasis,
  begun: LobeEstimate,
  unitDeg: number,
): PeakFit | { readonly state: Float64Array } {
  const { checked, design, statedDb, middleDeg } = work;
  const toUnits = work.scaleDeg / unitDeg;
  const stateOf = (fit: LobeEstimate) =>
    startState(
      { a: fit.a, b: fit.b / toUnits, c: fit.c / (toUnits * toUnits) },
      problem.shape,
      fit.floorDb,
    );
  const given = { state: stateOf(begun) };
  if (checked.widthDeg === undefined) return given;
  // The same readings with the width free: do they have the one given?
  const freely = { ...design, bend: undefined };
  const full = fitLobe(freely);
  if (full === undefined) return given;
  const { fit, outliers } = withoutForeign(work, freely, full);
  if (noBend(design, fit, statedDb)) {
    const { kind, standardDeviationDb } = firstLook(fit, statedDb);
    if (kind === 'flat') return flat(work, standardDeviationDb);
  }
  if (!(fit.c < 0)) return given;
  const state = stateOf(fit);
  const weights = weightsWithout(freely, outliers);
  const mismatch = widthMismatch(problem, state, weights, basis, checked.widthDoubtRatio);
  if (mismatch !== undefined)
    return {
      kind: 'not-main-lobe',
      reason: mismatch.ratio < 1 ? 'too-narrow' : 'too-wide',
      positionDeg: middleDeg + unitDeg * mismatch.place,
      beamwidthDeg: mismatch.ratio * unitDeg,
    };
  return checked.widthDoubtRatio > 0 && Math.abs(denseAt(state, PEAK)) < toUnits
    ? { state }
    : given;
}

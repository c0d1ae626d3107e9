/** Samples made ready for the fit: the part on the main lobe, its scaling, and what is known beforehand. */

import { dense, valueAt } from '../../numeric/columns.js';
import type { LobeDesign } from '../lobe/lobeDesign.js';
import type { LobeProblem } from '../lobe/lobeModel.js';
import { fittedQuantities } from './lobeFit.js';
import type { CheckedSamples } from './peakSamples.js';

/** The samples that the fit uses. */
export interface UsedSamples {
  readonly positionDeg: readonly number[];
  readonly levelDbm: readonly number[];
  readonly timeS: readonly number[] | undefined;
  /** Index among all samples. */
  readonly index: readonly number[];
  /** Indices of those that lie too low for the main lobe. */
  readonly leftOut: readonly number[];
}

/** So far below the highest reading the main lobe has ended, in dB. */
const LOBE_DEPTH_DB = 15;

/** Standard deviation in dB of half the drift that is allowed for where no times are given. */
const UNTIMED_DRIFT_DB = 0.1;

/** Leaves out readings below the main lobe of a reflector, as long as enough are left. */
export function withinLobe(checked: CheckedSamples): UsedSamples {
  const { positionDeg, levelDbm, timeS, shape } = checked;
  const topDbm = levelDbm.reduce((a, b) => Math.max(a, b));
  const all = levelDbm.map((_, i) => i);
  const kept =
    shape.nullRatio === 0 || checked.fitFloor
      ? all
      : all.filter((i) => valueAt(levelDbm, i) >= topDbm - LOBE_DEPTH_DB);
  const index = new Set(kept.map((i) => positionDeg[i])).size < 3 || kept.length < 4 ? all : kept;
  return {
    positionDeg: index.map((i) => valueAt(positionDeg, i)),
    levelDbm: index.map((i) => valueAt(levelDbm, i)),
    timeS: timeS === undefined ? undefined : index.map((i) => valueAt(timeS, i)),
    index,
    leftOut: all.filter((i) => !index.includes(i)),
  };
}

/** How many readings and places there are and how many are needed. */
export function countOf(checked: CheckedSamples, used: UsedSamples, design: LobeDesign) {
  return {
    readings: used.levelDbm.length,
    places: new Set(used.positionDeg).size,
    readingsNeeded: fittedQuantities(design) + (checked.standardDeviationDb === undefined ? 1 : 0),
    placesNeeded: (design.bend === undefined ? 3 : 2) + (design.fitFloor ? 1 : 0),
  };
}

/** Samples scaled for the first look: a parabola. */
export function designOf(
  checked: CheckedSamples,
  { positionDeg, levelDbm, timeS }: UsedSamples,
  scaling: { readonly middleDeg: number; readonly scaleDeg: number; readonly topDbm: number },
): LobeDesign {
  const { widthDeg, floorDbm, fitFloor } = checked;
  const { middleDeg, topDbm } = scaling;
  const scale = scaling.scaleDeg > 0 ? scaling.scaleDeg : 1;
  const levels = dense(levelDbm.map((y) => y - topDbm));
  const lowest = levels.reduce((a, b) => Math.min(a, b));
  return {
    places: dense(positionDeg.map((x) => (x - middleDeg) / scale)),
    levels,
    times: timeS !== undefined && spanS(timeS) > 0 ? scaledTimes(timeS) : undefined,
    bend: widthDeg === undefined ? undefined : -12 * (scale / widthDeg) ** 2,
    floorDb:
      floorDbm === undefined
        ? fitFloor
          ? lowest - 1
          : undefined
        : Math.min(floorDbm - topDbm, -0.01),
    fitFloor,
  };
}

/** The same for the fit of the lobe, places in beamwidths. */
export function problemOf(
  checked: CheckedSamples,
  { positionDeg }: UsedSamples,
  design: LobeDesign,
  scaling: { readonly middleDeg: number; readonly unitDeg: number },
): LobeProblem {
  const plain = checked.shape.nullRatio === 0;
  return {
    places: dense(positionDeg.map((x) => (x - scaling.middleDeg) / scaling.unitDeg)),
    levels: design.levels,
    // Without times the readings may have been taken in one sweep: drift that goes with the place does most harm.
    times: design.times ?? design.places,
    shape: checked.shape,
    narrowDoubt: checked.widthDeg === undefined ? undefined : 2 * checked.widthDoubtRatio,
    driftDoubt: design.times !== undefined ? undefined : plain ? 0 : UNTIMED_DRIFT_DB,
    floorDb: design.floorDb,
    fitFloor: design.fitFloor,
  };
}

/** Time from the first to the last reading in seconds. */
export function spanS(timeS: readonly number[]): number {
  return timeS.reduce((a, b) => Math.max(a, b)) - timeS.reduce((a, b) => Math.min(a, b));
}

function scaledTimes(timeS: readonly number[]): Float64Array {
  const first = timeS.reduce((a, b) => Math.min(a, b));
  const span = spanS(timeS);
  return dense(timeS.map((t) => (2 * (t - first)) / span - 1));
}

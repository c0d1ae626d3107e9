/** What the steps of a fit share: the samples used, their span, the first design, and the scatter that was stated. */

import type { LobeDesign, LobeEstimate } from '../lobe/lobeDesign.js';
import { type CleanFit, fitWithoutOutliers } from './outliers.js';
import type { CheckedSamples } from './peakSamples.js';
import { designOf, type UsedSamples, withinLobe } from './prepared.js';

/** The state of work of a fit. */
export interface LobeWork {
  readonly checked: CheckedSamples;
  readonly used: UsedSamples;
  readonly design: LobeDesign;
  /** Lowest and highest position used, their middle and half their distance, in degrees. */
  readonly lowDeg: number;
  readonly highDeg: number;
  readonly middleDeg: number;
  readonly scaleDeg: number;
  /** Highest level used. */
  readonly topDbm: number;
  /** Scatter of a reading as stated, with that of rounding, in dB. */
  readonly statedDb: number | undefined;
}

/** Samples made ready. */
export function lobeWork(checked: CheckedSamples): LobeWork {
  const used = withinLobe(checked);
  const { positionDeg, levelDbm } = used;
  const lowDeg = positionDeg.reduce((a, b) => Math.min(a, b));
  const highDeg = positionDeg.reduce((a, b) => Math.max(a, b));
  const middleDeg = (lowDeg + highDeg) / 2;
  const scaleDeg = (highDeg - lowDeg) / 2;
  const topDbm = levelDbm.reduce((a, b) => Math.max(a, b));
  // Rounding adds a twelfth of the step squared to a stated scatter; a found one has it already.
  const statedDb =
    checked.standardDeviationDb === undefined
      ? undefined
      : Math.hypot(checked.standardDeviationDb, checked.stepDb / Math.sqrt(12));
  const design = designOf(checked, used, { middleDeg, scaleDeg, topDbm });
  return { checked, used, design, lowDeg, highDeg, middleDeg, scaleDeg, topDbm, statedDb };
}

/** A parabola without foreign readings, or with all of them where they are to be kept. */
export function withoutForeign(
  { checked, statedDb }: LobeWork,
  design: LobeDesign,
  full: LobeEstimate,
): CleanFit {
  return checked.keepAll
    ? { fit: full, outliers: [] }
    : fitWithoutOutliers(design, full, statedDb, checked.stepDb);
}

/** Weights of the readings without those that were set aside. */
export function weightsWithout(design: LobeDesign, outliers: readonly number[]): Float64Array {
  return Float64Array.from(design.levels, (_, i) => (outliers.includes(i) ? 0 : 1));
}

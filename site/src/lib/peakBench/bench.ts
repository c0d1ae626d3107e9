/** A bench of the peak page: what it hides, and the levels that its meter shows. */

import { simulatedReadings } from 'slantpath/peaking';
import type { Point } from '../pictures/plot.js';

/** Scatter and step of three meters in dB. */
export const METERS = {
  fine: { standardDeviationDb: 0.1, levelStepDb: 0.1 },
  ordinary: { standardDeviationDb: 0.3, levelStepDb: 0.5 },
  coarse: { standardDeviationDb: 0.5, levelStepDb: 1 },
} as const;
export type Meter = keyof typeof METERS;

export const TARGET_DB = 0.1;
const PEAK_DBM = -38;
export const FLOOR_DBM = -56;

/** Further down than this the lobe is lost in the noise. */
export const LOSS_SEEN_DB = PEAK_DBM - FLOOR_DBM;

/** A level noted at a place of the adjuster. */
export interface Note {
  readonly placeTurns: number;
  readonly levelDbm: number;
}

/** What a bench hides. One turn of its thread moves the beam by one degree. */
export const lobeOf = (bench: number) => {
  const number = Math.abs(Math.round(bench));
  return { peakTurns: ((number * 37) % 41) / 10 - 2, widthTurns: 2 + ((number * 13) % 11) / 10 };
};

/** Five levels in a row where the adjuster stands, the newest first; a new note brings new ones. */
export function levelsAt(bench: number, meter: Meter, placeTurns: number, notes: number) {
  const { peakTurns, widthTurns } = lobeOf(bench);
  return simulatedReadings({
    offsetDeg: new Array<number>(5).fill(placeTurns - peakTurns),
    lobe: { beamwidthDeg: widthTurns },
    peakLevelDbm: PEAK_DBM,
    noiseFloorDbm: FLOOR_DBM,
    correlationRatio: 0.3,
    seed: Math.round(bench) * 10_007 + notes * 101 + Math.round(placeTurns * 8),
    ...METERS[meter],
  });
}

/** The lobe as a curve over the adjuster. */
export const lobeCurve = (
  peakTurns: number,
  widthTurns: number,
  from: number,
  to: number,
): Point[] =>
  Array.from({ length: 81 }, (_, i) => from + ((to - from) * i) / 80).map((x) => ({
    x,
    y:
      simulatedReadings({
        offsetDeg: [x - peakTurns],
        lobe: { beamwidthDeg: widthTurns },
        peakLevelDbm: PEAK_DBM,
        noiseFloorDbm: FLOOR_DBM,
        seed: 0,
      })[0] ?? 0,
  }));

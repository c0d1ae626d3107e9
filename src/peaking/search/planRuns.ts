/** Simulated runs of four ways of peaking one axis, on the same lobe and the same kind of readings. */

import type { RandomStream } from '../../numeric/random.js';
import { bracketPeak } from '../bracket/bracketPeak.js';
import { usefulDrop } from '../bracket/usefulDrop.js';
import { fitPeak } from '../fit/fitPeak.js';
import { reflectorShape, shapeLevelDb } from '../lobe/lobeShape.js';
import { nextMove } from './nextMove.js';
import { peakBound } from './peakBound.js';
import { afterMove, afterReading, beginPeakSearch } from './peakSearch.js';

/** A technician's axis: places in beamwidths, the peak at `peak`. */
export interface SimulatedAxis {
  readonly peak: number;
  readonly standardDeviationDb: number;
  readonly stepDb: number;
  readonly targetDb: number;
  /** Turns between readings while turning steadily, in beamwidths. */
  readonly stride: number;
  readonly random: RandomStream;
}

/** What one run came to, in beamwidths and dB. */
export interface PlanRun {
  readonly readings: number;
  readonly turning: number;
  readonly lossDb: number;
  /** Whether the plan ended by itself. */
  readonly finished: boolean;
}

/** Drop of the reference level in dB: at least half power, at most what is still above the noise. */
const LEAST_DROP_DB = 3;
const MOST_DROP_DB = 8;

/** The lobe of an ordinary reflector. */
const LOBE = reflectorShape();

/** Most passes or repeats of one run. */
const MOST_REPEATS = 200;

function read({ peak, standardDeviationDb, stepDb, random }: SimulatedAxis, place: number): number {
  const level =
    shapeLevelDb(place - peak, LOBE.nullRatio, LOBE.bend) + standardDeviationDb * random.normal();
  return stepDb > 0 ? stepDb * Math.round(level / stepDb) : level;
}

function run(axis: SimulatedAxis, place: number, readings: number, turning: number): PlanRun {
  const lossDb = -shapeLevelDb(place - axis.peak, LOBE.nullRatio, LOBE.bend) + 0;
  return { readings, turning, lossDb, finished: Number.isFinite(lossDb) };
}

/** Repeats after which a bound falls to the target: its square falls as one over the repeats. */
function repeatsFor(lossDb: number, targetDb: number): number {
  return Math.min(MOST_REPEATS, Math.max(1, Math.ceil(lossDb / targetDb - 1e-9)));
}

/**
 * Bracketing: read every stride on the way out and back; both places of the reference level are taken
 * between the two readings around them. Passes are repeated until the stated 95 % bound meets the target.
 */
export function bracketingRun(axis: SimulatedAxis): PlanRun {
  const useful = usefulDrop({
    levelStepDb: axis.stepDb,
    standardDeviationDb: axis.standardDeviationDb,
    wantedLossDb: axis.targetDb,
  });
  const wanted = Math.min(MOST_DROP_DB, Math.max(LEAST_DROP_DB, useful));
  let readings = 1;
  let turning = 0;
  let place = 0;
  let highest = read(axis, place);
  const pass = (sense: number, stop: (level: number) => boolean) => {
    let before = { place, level: Number.NaN };
    for (let k = 0; k < 100; k++) {
      const here = { place: place + sense * axis.stride, level: 0 };
      here.level = read(axis, here.place);
      readings++;
      turning += axis.stride;
      place = here.place;
      highest = Math.max(highest, here.level);
      if (stop(here.level)) return { before, here };
      before = here;
    }
    return { before, here: before };
  };
  const crossing = ({ before, here }: ReturnType<typeof pass>, level: number) =>
    Number.isNaN(before.level) || before.level === here.level
      ? here.place
      : before.place +
        ((here.place - before.place) * (before.level - level)) / (before.level - here.level);
  const first = pass(1, (level) => level <= highest - wanted);
  const reference = highest - wanted;
  let sum = 0;
  let near = crossing(first, reference);
  let repeats = 1;
  for (let done = 0; done < repeats; done++) {
    const sense = done % 2 === 0 ? -1 : 1;
    let top = Number.NEGATIVE_INFINITY;
    const leg = pass(sense, (level) => {
      top = Math.max(top, level);
      return top > reference && level <= reference;
    });
    const far = crossing(leg, reference);
    sum += (near + far) / 2;
    if (done === 0) {
      const path = Math.max(1e-3, Math.abs(near - far));
      const bracket = bracketPeak({
        peakLevelDbm: highest,
        referenceLevelDbm: Math.min(reference, highest - 1e-6),
        turnsOut: path,
        turnsBack: path,
        levelStepDb: axis.stepDb,
        standardDeviationDb: axis.standardDeviationDb,
      });
      repeats = repeatsFor(bracket.lossUpper95Db ?? axis.targetDb * MOST_REPEATS, axis.targetDb);
    }
    near = far;
  }
  const found = sum / repeats;
  return run(axis, found, readings, turning + Math.abs(place - found));
}

/** Three points half a beamwidth apart about the start, each read as often as the bound asks for. */
export function threePointRun(axis: SimulatedAxis): PlanRun {
  return plannedRun(axis, [-0.5, 0, 0.5]);
}

/** A sweep over one beamwidth to each side of the start, in one sense, nine places. */
export function sweepRun(axis: SimulatedAxis): PlanRun {
  return plannedRun(
    axis,
    Array.from({ length: 9 }, (_, i) => -1 + i / 4),
  );
}

/** Fixed places about the start, each read `repeats` times, then the fit of a lobe of unknown width. */
function plannedRun(axis: SimulatedAxis, places: readonly number[]): PlanRun {
  const bound = peakBound({
    positionDeg: places,
    peakDeg: 0,
    beamwidthDeg: 1,
    standardDeviationDb: Math.max(axis.standardDeviationDb, 1e-3),
    levelStepDb: axis.stepDb,
  });
  const repeats = repeatsFor(bound.kind === 'bound' ? bound.lossUpper95Db : 1, axis.targetDb);
  const positionDeg = places.flatMap((place) => new Array<number>(repeats).fill(place));
  const levelDbm = positionDeg.map((place) => read(axis, place));
  const fit = fitPeak({
    positionDeg,
    levelDbm,
    standardDeviationDb: Math.max(axis.standardDeviationDb, 1e-3),
    levelStepDb: axis.stepDb,
    outliers: 'keep',
  });
  const first = places[0] ?? 0;
  const last = places[places.length - 1] ?? 0;
  const found =
    fit.kind === 'peak'
      ? fit.positionDeg
      : fit.kind === 'edge'
        ? (fit.likelyPositionDeg ?? fit.edgeDeg)
        : 0;
  return {
    ...run(axis, found, positionDeg.length, -first + (last - first) + Math.abs(last - found)),
    finished: fit.kind === 'peak',
  };
}

/** The adaptive search, one instruction at a time. */
export function adaptiveRun(axis: SimulatedAxis): PlanRun {
  let search = beginPeakSearch({
    beamwidthTurns: 1,
    targetLossDb: axis.targetDb,
    standardDeviationDb: Math.max(axis.standardDeviationDb, 1e-3),
    levelStepDb: axis.stepDb,
    mostReadings: 200,
  });
  for (let k = 0; k < 500; k++) {
    const move = nextMove(search);
    if (move.kind === 'done' || move.kind === 'stop')
      return {
        ...run(axis, search.placeTurns, search.readings.length, search.turnsMade),
        finished: move.kind === 'done',
      };
    search = afterMove(search, move);
    if (move.kind === 'turn-and-read') search = afterReading(search, read(axis, search.placeTurns));
  }
  return {
    ...run(axis, search.placeTurns, search.readings.length, search.turnsMade),
    finished: false,
  };
}

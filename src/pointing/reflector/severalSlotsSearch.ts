/** The search behind several slots with one reflector: losses for a trial boresight, and the least worst. */

import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { leastWorst, leastWorstOf } from '../../numeric/leastWorst.js';
import { dot, type EastNorthUp, pictureAxes, unit } from '../look/sightLine.js';
import { type BeamCosines, bestFieldPlace, fieldLossDb } from './reflectorField.js';
import {
  type Aperture,
  apertureOf,
  beamOfFeedPlace,
  bestFeedPlace,
  type FeedPlace,
  scanLossDb,
} from './reflectorOptics.js';
import type { CheckedSeveralSlots } from './severalSlotsInput.js';
import { beamwidthDeg, beside, slotLosses } from './slotLosses.js';

/** One slot under a trial boresight. */
export interface SlotTrial {
  readonly rightCosine: number;
  readonly upCosine: number;
  readonly place: FeedPlace;
  readonly errorDeg: number;
  readonly bands: readonly {
    readonly frequencyGHz: number;
    readonly errorLossDb: number;
    readonly scanLossDb: number;
    readonly lossDb: number;
    readonly beyondModel: boolean;
  }[];
}

/** A boresight on the sky, and the turn of a rigid bar. */
export interface Setting {
  readonly boresight: EastNorthUp;
  readonly tiltDeg: number;
}

/** Everything that a trial needs, made once. */
export interface SlotsProblem {
  readonly checked: CheckedSeveralSlots;
  readonly aperture: Aperture;
  readonly directions: readonly EastNorthUp[];
  /** `rays`: losses by the variance of ray lengths; `fields`: by the sum of fields, which is slower. */
  readonly losses: 'rays' | 'fields';
}

/** Above this loss in dB the variance of ray lengths no longer stands for the sum of fields. */
const RAYS_HOLD_DB = 3;

export function slotsProblem(
  checked: CheckedSeveralSlots,
  directions: readonly EastNorthUp[],
  losses: 'rays' | 'fields' = 'rays',
): SlotsProblem {
  return { checked, aperture: apertureOf(checked.shape), directions, losses };
}

/** Places, errors and losses of all slots for a setting. */
export function slotTrials(problem: SlotsProblem, setting: Setting): readonly SlotTrial[] {
  const { checked, aperture, directions } = problem;
  const axes = pictureAxes(setting.boresight);
  return checked.slots.map((slot, index): SlotTrial => {
    const direction = directions[index] as EastNorthUp;
    const rightCosine = dot(direction, axes.right);
    const upCosine = dot(direction, axes.up);
    const along = checked.placesM?.[index];
    let place: FeedPlace;
    let varianceM2: number;
    let errorDeg = 0;
    let beam: BeamCosines = { rightCosine, upCosine };
    // Without a bar each feed may stand where its slot wants it; then no pointing error is left, only scan loss.
    if (along === undefined)
      ({ place, varianceM2 } = bestFeedPlace(aperture, rightCosine, upCosine));
    else {
      // Clockwise as seen from behind: the right end of the bar goes down.
      place = [along * cosDeg(setting.tiltDeg), -along * sinDeg(setting.tiltDeg), 0];
      const found = beamOfFeedPlace(aperture, place);
      beam = found;
      varianceM2 = found.varianceM2;
      errorDeg =
        Math.hypot(rightCosine - beam.rightCosine, upCosine - beam.upCosine) * DEGREES_PER_RADIAN;
    }
    // The highest frequency has the narrowest beam, so its best place is the one that must be met.
    if (problem.losses === 'fields' && along === undefined)
      place = bestFieldPlace(aperture, Math.max(...slot.frequenciesGHz), place, {
        rightCosine,
        upCosine,
      });
    const loss = (frequencyGHz: number): readonly [error: number, scan: number] => {
      if (problem.losses === 'rays')
        return [
          gaussianLobeLossDb(errorDeg, beamwidthDeg(checked, frequencyGHz)),
          scanLossDb(varianceM2, frequencyGHz),
        ];
      const field = (towards: BeamCosines) => fieldLossDb(aperture, frequencyGHz, place, towards);
      // The sum of fields gives both losses at once; that of the feed's own beam is the scan loss, the rest is error.
      const all = field({ rightCosine, upCosine });
      const scan = Math.min(all, field(beam));
      return [all - scan, scan];
    };
    const bands = slot.frequenciesGHz.map((frequencyGHz) => {
      const [errorLossDb, scanDb] = loss(frequencyGHz);
      const lossDb = errorLossDb + scanDb;
      // Kept beside the number, so that the caller can say it or go over to fields.
      const beyondModel = lossDb > RAYS_HOLD_DB;
      return { frequencyGHz, errorLossDb, scanLossDb: scanDb, lossDb, beyondModel };
    });
    return { rightCosine, upCosine, place, errorDeg, bands };
  });
}

/** The largest weighted loss of a setting in dB. */
export function worstWeightedLossDb(problem: SlotsProblem, setting: Setting): number {
  return Math.max(...weightedLosses(problem, setting));
}

function weightedLosses(problem: SlotsProblem, setting: Setting): readonly number[] {
  return slotTrials(problem, setting).flatMap(({ bands }, index) =>
    // Each band counts by itself: the search lessens the worst, and that is not always the highest frequency's.
    bands.map(({ lossDb }) => lossDb * (problem.checked.slots[index]?.weightRatio ?? 1)),
  );
}

/** A problem with the setting whose largest weighted loss is least. */
export interface Solved {
  readonly problem: SlotsProblem;
  readonly setting: Setting;
}

/** The least worst setting by ray lengths, and where a loss is beyond them, by the sum of fields from there on. */
export function leastWorstSetting(problem: SlotsProblem): Solved {
  const { checked, directions } = problem;
  const sum = directions.reduce(
    (total, d): EastNorthUp => [total[0] + d[0], total[1] + d[1], total[2] + d[2]],
  );
  // The mean direction is near the answer for slots of like weight.
  const middle = unit(sum);
  const guess = checked.placesM ? rigidGuess(problem, middle) : { boresight: middle, tiltDeg: 0 };
  // Near the zenith "right" and "up" turn quickly with the boresight, so the search starts at every slot too.
  const starts = [guess];
  if (middle[2] > 0.98)
    for (const boresight of directions) starts.push({ boresight, tiltDeg: guess.tiltDeg });
  const setting = bestFrom(problem, starts);
  const beyond = slotTrials(problem, setting).some(({ bands }) =>
    bands.some(({ beyondModel }) => beyondModel),
  );
  if (!beyond) return { problem, setting };
  // Rays first, since they are far quicker and end close by; fields start from there.
  const fields = { ...problem, losses: 'fields' as const };
  return { problem: fields, setting: bestFrom(fields, [setting]) };
}

/** Slots stay at least this near to the boresight (cosine): further aside no reflector works. */
const NEAR_COSINE = 0.5;

/** The best of what the search finds from several starts. */
function bestFrom(problem: SlotsProblem, starts: readonly Setting[]): Setting {
  const { checked, directions } = problem;
  let [best] = starts as readonly [Setting, ...Setting[]];
  let least = Number.POSITIVE_INFINITY;
  const consider = (setting: Setting, value: number): void => {
    // A search may stray to where the small-angle theory promises little loss for a beam behind the reflector.
    const near = directions.every((d) => dot(d, setting.boresight) > NEAR_COSINE);
    if (!near || !(value < least)) return;
    least = value;
    best = setting;
  };
  for (const start of starts) {
    const setting = (point: readonly number[]): Setting => ({
      boresight: beside(start.boresight, valueAt(point, 0), valueAt(point, 1)),
      tiltDeg: start.tiltDeg + (point[2] ?? 0),
    });
    // Coordinates beside the start, not azimuth and elevation: near the zenith those have a seam.
    const middle = checked.placesM ? [0, 0, 0] : [0, 0];
    const found =
      problem.losses === 'rays'
        ? leastWorstOf(slotLosses(problem, start), middle)
        : leastWorst((point) => weightedLosses(problem, setting(point)), middle, 0.01);
    // The start counts too: where the search makes it worse, the start stays.
    consider(start, worstWeightedLossDb(problem, start));
    const reached = setting(found.at);
    consider(reached, worstWeightedLossDb(problem, reached));
  }
  return best;
}

/** A rigid bar laid along the slots: turn and boresight that fit the small-angle theory in the mean. */
function rigidGuess({ checked, aperture, directions }: SlotsProblem, middle: EastNorthUp): Setting {
  const places = checked.placesM ?? [];
  const mean = places.reduce((a, b) => a + b, 0) / places.length;
  const { right, up } = pictureAxes(middle);
  let [alongRight, alongUp] = [0, 0];
  directions.forEach((direction, index) => {
    const place = valueAt(places, index) - mean;
    // Feed and beam lie on opposite sides, hence the minus; upwards the clockwise turn brings a second one.
    alongRight -= place * dot(direction, right);
    alongUp += place * dot(direction, up);
  });
  const tiltDeg =
    alongRight === 0 && alongUp === 0 ? 0 : Math.atan2(alongUp, alongRight) * DEGREES_PER_RADIAN;
  const beam = beamOfFeedPlace(aperture, [mean * cosDeg(tiltDeg), -mean * sinDeg(tiltDeg), 0]);
  return {
    boresight: beside(
      middle,
      -beam.rightCosine * DEGREES_PER_RADIAN,
      -beam.upCosine * DEGREES_PER_RADIAN,
    ),
    tiltDeg,
  };
}

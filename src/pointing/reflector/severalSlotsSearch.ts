/** The search behind several slots with one reflector: losses for a trial boresight, and the least worst. */

import { cosDeg, DEGREES_PER_RADIAN, sinDeg, turnDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { type LeastWorst, leastWorst, leastWorstOf } from '../../numeric/leastWorst.js';
import { dot, type EastNorthUp, pictureAxes, unit } from '../look/sightLine.js';
import { barStarts } from './barStarts.js';
import { type BeamCosines, bestFieldPlace, fieldLossDb } from './reflectorField.js';
import {
  type Aperture,
  apertureOf,
  beamOfFeedPlace,
  type FeedPlace,
  scanLossDb,
} from './reflectorOptics.js';
import { scanVariance } from './scanVariance.js';
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
      ({ place, varianceM2 } = scanVariance(aperture, rightCosine, upCosine));
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

/** A problem with the setting whose largest weighted loss is least, and its trials. */
export interface Solved {
  readonly problem: SlotsProblem;
  readonly setting: Setting;
  readonly trials: readonly SlotTrial[];
}

/** The least worst setting by ray lengths, and where a loss is beyond them, by the sum of fields from there on. */
export function leastWorstSetting(problem: SlotsProblem): Solved {
  const byRays = leastWorstFrom(problem, startsOf(problem));
  const best = solvedAt(problem, byRays[0]);
  if (!best.trials.some(({ bands }) => bands.some(({ beyondModel }) => beyondModel))) return best;
  // Rays first, since they are far quicker and end close by; fields start from there.
  const near = byRays
    .map((setting) => solvedAt(problem, setting))
    .filter((solved) => missesAtMost(solved, SUM_HOLDS_DB));
  if (near.length === 0) return best;
  const fields = { ...problem, losses: 'fields' as const };
  const starts = near.map(({ setting }) => setting) as [Setting, ...Setting[]];
  const summed = solvedAt(fields, leastWorstFrom(fields, starts)[0]);
  // Beside its feed's beam a slot has only side lobes, on which nobody counts: there the least miss stays the aim.
  return missesAtMost(summed, BEAM_ENDS_DB) ? summed : best;
}

/** Loss in dB near the edge of the main lobe, and the error loss by which a slot may miss for 96 points to sum up rightly. */
const BEAM_ENDS_DB = 15;
const SUM_HOLDS_DB = 30;

function solvedAt(problem: SlotsProblem, setting: Setting): Solved {
  return { problem, setting, trials: slotTrials(problem, setting) };
}

/** Whether no slot misses its feed's beam by more than an error loss. */
function missesAtMost({ trials }: Solved, mostDb: number): boolean {
  return trials.every(({ bands }) => bands.every(({ errorLossDb }) => errorLossDb <= mostDb));
}

/** Where the search starts. */
function startsOf(problem: SlotsProblem): readonly [Setting, ...Setting[]] {
  const { checked, directions } = problem;
  const sum = directions.reduce(
    (total, d): EastNorthUp => [total[0] + d[0], total[1] + d[1], total[2] + d[2]],
  );
  // The mean direction is near the answer for slots of like weight.
  const middle = unit(sum);
  const boresights = [middle];
  // Near the zenith "right" and "up" turn quickly with the boresight, so the search starts at every slot too.
  if (middle[2] > 0.98) boresights.push(...directions);
  const starts = checked.placesM
    ? boresights
        .flatMap((boresight) => barStarts(problem, boresight))
        .sort((a, b) => a.missDb - b.missDb)
        .slice(0, MOST_STARTS)
    : boresights.map((boresight) => ({ boresight, tiltDeg: 0 }));
  return starts as readonly Setting[] as [Setting, ...Setting[]];
}

/** Most starts for a bar, from whichever boresight. */
const MOST_STARTS = 8;

/** The least worst near a start; the point is in coordinates beside it, since azimuth and elevation have a seam at the zenith. */
function leastWorstBeside(
  problem: SlotsProblem,
  start: Setting,
  setting: (point: readonly number[]) => Setting,
): LeastWorst {
  const middle = problem.checked.placesM ? [0, 0, 0] : [0, 0];
  if (problem.losses === 'fields')
    return leastWorst((point) => weightedLosses(problem, setting(point)), middle, 0.01, SHARP);
  const losses = slotLosses(problem, start);
  const found = leastWorstOf(losses, middle);
  if (!problem.checked.placesM || found.value < RAYS_HOLD_DB) return found;
  // A bar that misses its slots has many turns of like loss; a sharp search does not leave the one it starts from.
  const sharp = leastWorstOf(losses, middle, SHARP);
  return sharp.value < found.value ? sharp : found;
}
const SHARP = 10;

/** Slots stay at least this near to the boresight (cosine): further aside no reflector works. */
const NEAR_COSINE = 0.5;

/** Settings nearer to each other than this are one: cosine between the boresights, degrees between the turns. */
const SAME_COSINE = 1 - 1e-6;
const SAME_TURN_DEG = 0.5;

/** Most settings that the search goes on with. */
const MOST_REACHED = 3;

/** What the search reaches from several starts, the best first. */
function leastWorstFrom(
  problem: SlotsProblem,
  starts: readonly [Setting, ...Setting[]],
): readonly [Setting, ...Setting[]] {
  const { directions } = problem;
  const reached = starts.map((start) => {
    const setting = (point: readonly number[]): Setting => ({
      boresight: beside(start.boresight, valueAt(point, 0), valueAt(point, 1)),
      tiltDeg: start.tiltDeg + (point[2] ?? 0),
    });
    const { at, value } = leastWorstBeside(problem, start, setting);
    const found = setting(at);
    // A search may stray to where the small-angle theory promises little loss for a beam behind the reflector.
    return directions.every((d) => dot(d, found.boresight) > NEAR_COSINE)
      ? { setting: found, value }
      : { setting: start, value: worstWeightedLossDb(problem, start) };
  });
  reached.sort((a, b) => a.value - b.value);
  const settings: Setting[] = [];
  for (const { setting } of reached) {
    const same = (other: Setting): boolean =>
      dot(other.boresight, setting.boresight) > SAME_COSINE &&
      Math.abs(turnDeg(other.tiltDeg, setting.tiltDeg)) < SAME_TURN_DEG;
    if (settings.length < MOST_REACHED && !settings.some(same)) settings.push(setting);
  }
  return settings as [Setting, ...Setting[]];
}

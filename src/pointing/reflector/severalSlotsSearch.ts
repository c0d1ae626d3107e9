/** The search behind several slots with one reflector: losses for a trial boresight, and the least worst. */

import { turnDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { type LeastWorst, leastWorst, leastWorstOf } from '../../numeric/leastWorst.js';
import { dot, type EastNorthUp, unit } from '../look/sightLine.js';
import { barStarts } from './barStarts.js';
import { beside, slotLosses } from './slotLosses.js';
import {
  type LastPlaces,
  RAYS_HOLD_DB,
  type Setting,
  type SlotsProblem,
  type SlotTrial,
  slotTrials,
} from './slotTrials.js';

/** The largest weighted loss of a setting in dB. */
export function worstWeightedLossDb(problem: SlotsProblem, setting: Setting): number {
  return Math.max(...weightedLosses(problem, setting));
}

function weightedLosses(
  problem: SlotsProblem,
  setting: Setting,
  lasts?: LastPlaces,
): readonly number[] {
  return slotTrials(problem, setting, lasts).flatMap(({ bands }, index) =>
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
  if (problem.losses === 'fields') {
    const lasts: LastPlaces = [];
    const losses = (point: readonly number[]) => weightedLosses(problem, setting(point), lasts);
    // Where two foci of a slot change places the slopes jump; coarser differences see over that, finer ones finish.
    const coarse = leastWorst(losses, middle, 0.05, SHARP);
    return leastWorst(losses, coarse.at, 0.01, 10 * SHARP);
  }
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

/** The next move of a search for the peak: one instruction at a time. */

import { bestFlank } from './bestFlank.js';
import { checkedSearch, type PeakSearch } from './peakSearch.js';
import { type SearchFit, sameLobe, searchFit } from './searchFit.js';
import { legsTo, legsToBear, legsToPeak } from './searchLegs.js';

/** What to do next; read `kind` first. */
export type NextMove =
  | {
      /** Turn the legs (none: stay), then read the level. */
      readonly kind: 'turn-and-read';
      /** Turns of each leg in order, positive to higher turns, lost turns included; empty to read where it stands. */
      readonly legsTurns: readonly number[];
      /** Place after the legs, in turns. */
      readonly toTurns: number;
      /** Not the move to the peak. */
      readonly toPeak: false;
      /**
       * `start`: nothing was read yet; legs there are take up the play of the thread. `flank`: to a steep part of the lobe.
       * `climb`: the level still rises that way. `other-lobe`: the lobe is too narrow for a main one; where the main one
       * would be if this were a side lobe.
       */
      readonly purpose: 'start' | 'flank' | 'climb' | 'other-lobe';
    }
  | {
      /** The peak is known well enough: turn there, the last leg in the sense of the approach. */
      readonly kind: 'go-to-peak';
      /** Turns of each leg in order, lost turns included. */
      readonly legsTurns: readonly number[];
      /** Place of the peak, in turns. */
      readonly toTurns: number;
      /** The move to the peak. */
      readonly toPeak: true;
      /** Interval that holds the peak with 95 % confidence, in turns. */
      readonly interval95Turns: readonly [number, number];
      /** Upper bound of the pointing loss after the move, with 95 % confidence, in dB. */
      readonly lossUpper95Db: number;
    }
  | {
      /** The antenna stands on the peak within the target. */
      readonly kind: 'done';
      /** Interval that holds the peak with 95 % confidence, in turns. */
      readonly interval95Turns: readonly [number, number];
      /** Upper bound of the pointing loss here with 95 % confidence, in dB. */
      readonly lossUpper95Db: number;
    }
  | {
      /** No peak in reach, for the reason given. */
      readonly kind: 'stop';
      /**
       * `end-stop`: the peak lies beyond the adjuster's reach. `no-lobe`: nothing but scatter. `contradictory`: the
       * readings show two tops or far more scatter than one lobe explains, and more readings did not help: look for what moves
       * or blocks the antenna before reading on. `too-many`: the readings allowed are used up.
       */
      readonly reason: 'end-stop' | 'contradictory' | 'no-lobe' | 'too-many';
      /** Most likely place of the peak in turns all the same; `null` where there is none. */
      readonly likelyTurns: number | null;
    };

type TurnAndRead = Extract<NextMove, { kind: 'turn-and-read' }>;

/** Most readings where the search does not say. */
const MOST_READINGS = 40;

/** Longest way from the highest reading to the next one, in beamwidths. */
const LONGEST_STEP = 0.65;

/** First step off the start, in beamwidths: 3 dB down if it stood on the peak. */
const FIRST_STEP = 0.5;

/** Fewest readings before the peak is believed: the third checks the width, the fourth the others. */
const FEWEST_READINGS = 4;
const FEWEST_IF_DOUBTFUL = 6;

/** Readings on the lobe below which the next one is taken nearer to the highest, and how much nearer each time. */
const FEWEST_ON_LOBE = 4;
const NARROWER = 0.75;

/** Readings after which a level that shows no lobe, or no single one, is given up. */
const ENOUGH_TO_SEE = 8;
const ENOUGH_TO_FIT = 15;

/** Distance of the first side lobe from the main one in beamwidths, and how near to it counts as read. */
const SIDE_LOBE_AT = 1.6;
const SIDE_LOBE_SEEN = 0.35;

/**
 * Where to go next, and when to stop.
 *
 * First the play of the thread is taken up. After each reading the lobe is fitted, the beamwidth counting as no better known
 * than it is. A lobe far narrower than expected is either a side lobe or of another width: one reading to each side where
 * the main lobe would be decides. Until the 95 % bound of the pointing loss at the peak found is within the target, the next
 * reading is taken on the flank where it lowers the Cramer-Rao bound most for the turning. Then the peak is approached in the
 * sense asked for, by way of a place before it if need be.
 *
 * @param search  State from {@link beginPeakSearch}, {@link afterReading}, {@link afterMove}.
 * @throws {@link DomainError} naming a wrong field of the state.
 *
 * Accuracy: in every setting of the search table (700 simulated runs each on lobes of real apertures, beamwidth off by 5 to
 * 15 % in one standard deviation, play up to a fifth of it) 99 % of the searches or more end on the peak, and at most 4 % of
 * them lose more than the stated bound. A start on the side lobe below the main one, or a beamwidth further off, can be worse.
 * @example
 * ```ts
 * import { afterReading, beginPeakSearch, nextMove } from 'slantpath/peaking';
 * const search = beginPeakSearch({ beamwidthTurns: 3, standardDeviationDb: 0.3 });
 * const move = nextMove(afterReading(search, -41));
 * move.kind === 'turn-and-read' && move.toTurns; // => 1.5
 * ```
 */
export function nextMove(search: PeakSearch): NextMove {
  const { settings, readings, placeTurns } = checkedSearch(search);
  const limits = settings.limitsTurns ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const [least, most] = limits;
  if (readings.length === 0)
    return {
      kind: 'turn-and-read',
      legsTurns: legsToBear(search),
      toTurns: placeTurns,
      toPeak: false,
      purpose: 'start',
    };
  if (readings.length === 1) {
    const width = settings.beamwidthTurns;
    const way = (settings.approach ?? 'up') === 'up' ? FIRST_STEP * width : -FIRST_STEP * width;
    const there = placeTurns + way;
    return readAt(search, there > most || there < least ? placeTurns - way : there, 'flank');
  }
  const fit = fitOrOtherLobe(search, limits);
  if (typeof fit === 'number') return readAt(search, fit, 'other-lobe');
  const end = peakMove(search, fit);
  if (end !== undefined) return end;
  const reason = reasonToStop(search, fit, { least, most });
  if (reason !== undefined) return { kind: 'stop', reason, likelyTurns: fit.positionTurns };
  return flankMove(search, fit);
}

const targetDbOf = ({ settings }: PeakSearch): number => settings.targetLossDb ?? 0.1;

/** The move to a place within the adjuster's reach, to read there. */
function readAt(search: PeakSearch, place: number, purpose: TurnAndRead['purpose']): NextMove {
  const [least, most] = search.settings.limitsTurns ?? [
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ];
  const toTurns = Math.min(most, Math.max(least, place));
  return {
    kind: 'turn-and-read',
    legsTurns: legsTo(search, toTurns),
    toTurns,
    toPeak: false,
    purpose,
  };
}

/** The lobe as the readings have it; a place where a higher lobe would be if this may be a side lobe and nothing was read there. */
function fitOrOtherLobe(search: PeakSearch, limits: readonly [number, number]): SearchFit | number {
  const { settings, readings } = search;
  let fit = searchFit(search, 'given');
  if (fit.kind === 'not-main-lobe' || fit.kind === 'contradictory') {
    const unread = fit.maybeSideLobe ? otherLobe(search, fit.positionTurns, limits) : undefined;
    if (unread !== undefined && readings.length < (settings.mostReadings ?? MOST_READINGS))
      return unread;
    // No higher lobe beside it: this is the main one, and the width was wrong.
    fit = searchFit(search, 'free');
  }
  // So many readings without an end: the width given may be what does not fit.
  if (
    readings.length >= ENOUGH_TO_SEE &&
    fit.kind !== 'flat' &&
    !(fit.kind === 'peak' && fit.lossAtPeakUpper95Db <= targetDbOf(search))
  ) {
    const free = searchFit(search, 'free');
    if (free.kind === 'peak') fit = free;
  }
  return fit;
}

/** The end of the search: there already, or the move to a peak that is known well enough. */
function peakMove(search: PeakSearch, fit: SearchFit): NextMove | undefined {
  if (fit.kind !== 'peak') return undefined;
  const { interval95Turns, positionTurns } = fit;
  const targetDb = targetDbOf(search);
  if (search.atPeak && fit.lossNowUpper95Db <= targetDb * 1.0001)
    return { kind: 'done', interval95Turns, lossUpper95Db: fit.lossNowUpper95Db };
  if (
    search.readings.length < (fit.doubtful ? FEWEST_IF_DOUBTFUL : FEWEST_READINGS) ||
    !(fit.lossAtPeakUpper95Db <= targetDb) ||
    !readOnBothSides(search, positionTurns)
  )
    return undefined;
  return {
    kind: 'go-to-peak',
    legsTurns: legsToPeak(search, positionTurns),
    toTurns: positionTurns,
    toPeak: true,
    interval95Turns,
    lossUpper95Db: fit.lossAtPeakUpper95Db,
  };
}

/** The move to the flank that tells most, held near the highest reading. */
function flankMove(search: PeakSearch, fit: SearchFit): NextMove {
  const places = sameLobe(search).map((reading) => reading.placeTurns);
  const lowest = places.reduce((a, b) => Math.min(a, b));
  const highest = places.reduce((a, b) => Math.max(a, b));
  const plan = planningWidth(search, fit.widthTurns);
  const wanted = bestFlank(search, fit.positionTurns, plan);
  // The highest reading is the surest sign of the lobe: an extrapolation does not lead far from it.
  const top = search.readings.reduce((a, b) => (b.levelDbm > a.levelDbm ? b : a)).placeTurns;
  const held = Math.min(top + LONGEST_STEP * plan, Math.max(top - LONGEST_STEP * plan, wanted));
  const outside = fit.positionTurns < lowest || fit.positionTurns > highest;
  return readAt(search, held, outside ? 'climb' : 'flank');
}

/** Width to plan the next reading with: as long as hardly any reading lies on the lobe, ever nearer to the highest one. */
function planningWidth(search: PeakSearch, widthTurns: number): number {
  const more = search.readings.length - FEWEST_READINGS;
  return sameLobe(search).length < FEWEST_ON_LOBE && more >= 0
    ? widthTurns * NARROWER ** Math.min(more + 1, 6)
    : widthTurns;
}

/** Place beside the lobe where a main lobe would stand and nothing was read yet, the nearer first. */
function otherLobe(
  { settings, readings, placeTurns }: PeakSearch,
  peak: number,
  [least, most]: readonly [number, number],
): number | undefined {
  const width = settings.beamwidthTurns;
  return [peak - SIDE_LOBE_AT * width, peak + SIDE_LOBE_AT * width]
    .filter((place) => place >= least && place <= most)
    .filter(
      (place) =>
        !readings.some((reading) => Math.abs(reading.placeTurns - place) < SIDE_LOBE_SEEN * width),
    )
    .sort((a, b) => Math.abs(a - placeTurns) - Math.abs(b - placeTurns))[0];
}

/** Whether the lobe was read on both flanks, at least a fifth of the beamwidth from the peak. */
function readOnBothSides({ settings, readings }: PeakSearch, peak: number): boolean {
  const least = settings.beamwidthTurns / 5;
  return (
    readings.some(({ placeTurns }) => placeTurns < peak - least) &&
    readings.some(({ placeTurns }) => placeTurns > peak + least)
  );
}

function reasonToStop(
  { settings, readings }: PeakSearch,
  fit: SearchFit,
  { least, most }: { readonly least: number; readonly most: number },
): (NextMove & { kind: 'stop' })['reason'] | undefined {
  if (readings.length >= ENOUGH_TO_FIT && fit.kind === 'contradictory') return fit.kind;
  if (fit.kind === 'flat' && readings.length >= ENOUGH_TO_SEE) return 'no-lobe';
  if (readings.length >= (settings.mostReadings ?? MOST_READINGS)) return 'too-many';
  const readAt = (stop: number) => readings.some(({ placeTurns }) => placeTurns === stop);
  const beyond =
    (fit.positionTurns < least && readAt(least)) || (fit.positionTurns > most && readAt(most));
  return beyond ? 'end-stop' : undefined;
}

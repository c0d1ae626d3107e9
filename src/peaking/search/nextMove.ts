/** The next move of a search for the peak: one instruction at a time. */

import { bestFlank } from './bestFlank.js';
import { checkedSearch, type PeakSearch } from './peakSearch.js';
import { legsTo, legsToPeak, type SearchFit, searchFit } from './searchFit.js';

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
      /** `start`: nothing was read yet. `flank`: to a steep part of the lobe. `climb`: the level still rises that way. */
      readonly purpose: 'start' | 'flank' | 'climb';
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
       * `end-stop`: the peak lies beyond the adjuster's reach. `not-main-lobe`: the readings have another width; look for
       * the main lobe. `contradictory`: the readings do not fit together; begin again. `no-lobe`: nothing but scatter.
       * `too-many`: the readings allowed are used up.
       */
      readonly reason: 'end-stop' | 'not-main-lobe' | 'contradictory' | 'no-lobe' | 'too-many';
      /** Most likely place of the peak in turns all the same; `null` where there is none. */
      readonly likelyTurns: number | null;
    };

/** Longest step beyond what was read, in beamwidths. */
const LONGEST_STEP = 1;

/** First step off the start, in beamwidths: 3 dB down if it stood on the peak. */
const FIRST_STEP = 0.5;

/** Fewest readings before the peak is believed: the third checks the width. */
const FEWEST_READINGS = 3;

/** Readings after which a level that shows no lobe is given up. */
const ENOUGH_TO_SEE = 8;

/**
 * Where to go next, and when to stop.
 *
 * After each reading the lobe is fitted. Until its 95 % bound of the pointing loss at the peak found is
 * within the target, the next reading is taken on the flank where it lowers the Cramer-Rao bound most
 * for the turning. Then the peak is approached in the sense asked for, by way of a place before it if need be.
 *
 * @param search  State from {@link beginPeakSearch}, {@link afterReading}, {@link afterMove}.
 * @throws {@link DomainError} naming a wrong field of the state.
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
  const width = settings.beamwidthTurns;
  const [least, most] = settings.limitsTurns ?? [
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ];
  const readAt = (place: number, purpose: 'start' | 'flank' | 'climb'): NextMove => {
    const toTurns = Math.min(most, Math.max(least, place));
    return {
      kind: 'turn-and-read',
      legsTurns: legsTo(search, toTurns),
      toTurns,
      toPeak: false,
      purpose,
    };
  };
  if (readings.length === 0) return readAt(placeTurns, 'start');
  if (readings.length === 1) {
    const up = placeTurns + FIRST_STEP * width;
    return readAt(up > most ? placeTurns - FIRST_STEP * width : up, 'flank');
  }
  const fit = searchFit(search);
  const targetDb = settings.targetLossDb ?? 0.1;
  if (fit.kind === 'peak') {
    const { interval95Turns, positionTurns } = fit;
    if (search.atPeak && fit.lossNowUpper95Db <= targetDb * 1.0001)
      return { kind: 'done', interval95Turns, lossUpper95Db: fit.lossNowUpper95Db };
    if (
      readings.length >= FEWEST_READINGS &&
      fit.lossAtPeakUpper95Db <= targetDb &&
      readOnBothSides(search, positionTurns)
    )
      return {
        kind: 'go-to-peak',
        legsTurns: legsToPeak(search, positionTurns),
        toTurns: positionTurns,
        toPeak: true,
        interval95Turns,
        lossUpper95Db: fit.lossAtPeakUpper95Db,
      };
  }
  const reason = reasonToStop(search, fit, { least, most });
  if (reason !== undefined) return { kind: 'stop', reason, likelyTurns: fit.positionTurns };
  const places = readings.map((reading) => reading.placeTurns);
  const lowest = places.reduce((a, b) => Math.min(a, b));
  const highest = places.reduce((a, b) => Math.max(a, b));
  const wanted = bestFlank(search, fit.positionTurns);
  const held = Math.min(
    highest + LONGEST_STEP * width,
    Math.max(lowest - LONGEST_STEP * width, wanted),
  );
  const outside = fit.positionTurns < lowest || fit.positionTurns > highest;
  return readAt(held, outside ? 'climb' : 'flank');
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
  if (fit.kind === 'not-main-lobe' || fit.kind === 'contradictory') return fit.kind;
  if (fit.kind === 'flat' && readings.length >= ENOUGH_TO_SEE) return 'no-lobe';
  if (readings.length >= (settings.mostReadings ?? 40)) return 'too-many';
  const readAt = (stop: number) => readings.some(({ placeTurns }) => placeTurns === stop);
  const beyond =
    (fit.positionTurns < least && readAt(least)) || (fit.positionTurns > most && readAt(most));
  return beyond ? 'end-stop' : undefined;
}

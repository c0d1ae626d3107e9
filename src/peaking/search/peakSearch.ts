/** A search for the peak as plain data: what was read so far, and what is known of the adjuster. */

import { DomainError, inRange, object, oneOf, positive } from '../../errors.js';
import { type Keys, known } from '../../keys.js';

/** What is known before the search. Places are turns of the adjuster from any zero. */
export interface PeakSearchSettings {
  /** Half-power beamwidth in turns of the adjuster: beamwidth over degrees per turn. */
  readonly beamwidthTurns: number;
  /** Standard uncertainty of that width over itself, 0 to 0.5; default 0.1, as a rule of thumb or a data sheet knows it. */
  readonly beamwidthStandardUncertaintyRatio?: number;
  /** Pointing loss in dB to be reached with 95 % confidence; default 0.1. */
  readonly targetLossDb?: number;
  /** Standard deviation of one reading in dB, if known: watch the level for a while; default found on the way. */
  readonly standardDeviationDb?: number;
  /** Step of the displayed level in dB; default 0. */
  readonly levelStepDb?: number;
  /** Level without signal in dBm, if known; default none. */
  readonly noiseFloorDbm?: number;
  /** Turns lost when the sense of turning changes; default 0. */
  readonly backlashTurns?: number;
  /** Sense of the last approach, so that the thread always bears on the same side; default `up` (to higher turns). */
  readonly approach?: 'up' | 'down';
  /** Most readings before the search is given up; default 40. */
  readonly mostReadings?: number;
  /** Turns of the adjuster's end stops, lowest and highest; default none. */
  readonly limitsTurns?: readonly [number, number];
}

const PEAK_SEARCH_SETTINGS_KEYS = {
  beamwidthTurns: true,
  beamwidthStandardUncertaintyRatio: true,
  targetLossDb: true,
  standardDeviationDb: true,
  levelStepDb: true,
  noiseFloorDbm: true,
  backlashTurns: true,
  approach: true,
  mostReadings: true,
  limitsTurns: true,
} satisfies Keys<PeakSearchSettings>;

/** One reading of the search. */
export interface SearchReading {
  /** Place in turns. */
  readonly placeTurns: number;
  /** Level in dBm. */
  readonly levelDbm: number;
}

const SEARCH_READING_KEYS = { placeTurns: true, levelDbm: true } satisfies Keys<SearchReading>;

/** The whole state of a search: JSON, to be kept, sent and resumed. */
export interface PeakSearch {
  readonly settings: PeakSearchSettings;
  /** Where the antenna stands, in turns. */
  readonly placeTurns: number;
  /** Sense of the last turning; `none` before the first. */
  readonly sense: 'up' | 'down' | 'none';
  /** Readings in order. */
  readonly readings: readonly SearchReading[];
  /** Turns made so far, lost ones included. */
  readonly turnsMade: number;
  /** Whether the antenna was brought to the peak found. */
  readonly atPeak: boolean;
}

const PEAK_SEARCH_KEYS = {
  settings: true,
  placeTurns: true,
  sense: true,
  readings: true,
  turnsMade: true,
  atPeak: true,
} satisfies Keys<PeakSearch>;

/**
 * Begins a search at a place of the adjuster.
 *
 * @param settings  What is known; at least the beamwidth in turns.
 * @param placeTurns  Where the adjuster stands, in turns from any zero; default 0.
 * @throws {@link DomainError} naming the field that is wrong.
 * @example
 * ```ts
 * import { beginPeakSearch } from 'slantpath/peaking';
 * beginPeakSearch({ beamwidthTurns: 3, standardDeviationDb: 0.3 }).readings.length; // => 0
 * ```
 */
export function beginPeakSearch(settings: PeakSearchSettings, placeTurns = 0): PeakSearch {
  const start = inRange('placeTurns', placeTurns, -1e5, 1e5);
  return checkedSearch({
    settings,
    placeTurns: start,
    sense: 'none',
    readings: [],
    turnsMade: 0,
    atPeak: false,
  });
}

/**
 * The search after a reading where the antenna stands.
 *
 * @throws {@link DomainError} naming `levelDbm` or a wrong field of the state.
 * @example
 * ```ts
 * import { afterReading, beginPeakSearch } from 'slantpath/peaking';
 * const search = afterReading(beginPeakSearch({ beamwidthTurns: 3 }), -41.5);
 * search.readings.length; // => 1
 * ```
 */
export function afterReading(search: PeakSearch, levelDbm: number): PeakSearch {
  const { placeTurns } = checkedSearch(search);
  const reading = { placeTurns, levelDbm: inRange('levelDbm', levelDbm, -300, 300) };
  return { ...search, readings: [...search.readings, reading] };
}

const AFTER_MOVE_MOVE_KEYS = { legsTurns: true, toTurns: true, toPeak: true } satisfies Keys<
  Parameters<typeof afterMove>[1]
>;

/**
 * The search after the legs of a move were turned, as {@link nextMove} gave them.
 *
 * @param move  The move that was made.
 * @throws {@link DomainError} naming a wrong field.
 * @example
 * ```ts
 * import { afterMove, beginPeakSearch } from 'slantpath/peaking';
 * const search = beginPeakSearch({ beamwidthTurns: 3 });
 * afterMove(search, { legsTurns: [1.5], toTurns: 1.5, toPeak: false }).placeTurns; // => 1.5
 * ```
 */
export function afterMove(
  search: PeakSearch,
  move: {
    /** Turns of each leg, in order. */
    readonly legsTurns: readonly number[];
    /** Place where the last leg ends. */
    readonly toTurns: number;
    /** Whether this was the move to the peak. */
    readonly toPeak: boolean;
  },
): PeakSearch {
  checkedSearch(search);
  const placeTurns = inRange(
    'toTurns',
    known('move', move, AFTER_MOVE_MOVE_KEYS).toTurns,
    -1e6,
    1e6,
  );
  const legs = Array.from(object('legsTurns', move.legsTurns), (leg, i) =>
    inRange('legsTurns', leg, -1e6, 1e6, undefined, i),
  );
  const last = legs.filter((leg) => leg !== 0).at(-1) ?? 0;
  return {
    ...search,
    placeTurns,
    sense: last > 0 ? 'up' : last < 0 ? 'down' : search.sense,
    turnsMade: search.turnsMade + legs.reduce((sum, leg) => sum + Math.abs(leg), 0),
    atPeak: move.toPeak === true,
  };
}

/** Checks a state that may come from outside. */
export function checkedSearch(search: PeakSearch): PeakSearch {
  const { settings, readings } = known('search', search, PEAK_SEARCH_KEYS);
  known('settings', settings, PEAK_SEARCH_SETTINGS_KEYS);
  const width = positive('settings.beamwidthTurns', settings.beamwidthTurns);
  inRange('settings.beamwidthTurns', width, 1e-4, 1e4);
  inRange(
    'settings.beamwidthStandardUncertaintyRatio',
    settings.beamwidthStandardUncertaintyRatio ?? 0.1,
    0,
    0.5,
    'is it a share of the beamwidth?',
  );
  inRange('settings.targetLossDb', settings.targetLossDb ?? 0.1, 1e-4, 3);
  if (settings.standardDeviationDb !== undefined)
    inRange(
      'settings.standardDeviationDb',
      positive('settings.standardDeviationDb', settings.standardDeviationDb),
      1e-6,
      50,
    );
  inRange('settings.levelStepDb', settings.levelStepDb ?? 0, 0, 20);
  if (settings.noiseFloorDbm !== undefined)
    inRange('settings.noiseFloorDbm', settings.noiseFloorDbm, -400, 300);
  inRange('settings.backlashTurns', settings.backlashTurns ?? 0, 0, 100);
  oneOf('settings.approach', settings.approach ?? 'up', ['up', 'down']);
  inRange('settings.mostReadings', settings.mostReadings ?? 40, 3, 1000);
  if (settings.limitsTurns !== undefined) {
    const low = inRange(
      'settings.limitsTurns',
      object('settings.limitsTurns', settings.limitsTurns)[0],
      -1e5,
      1e5,
      undefined,
      0,
    );
    inRange(
      'settings.limitsTurns',
      settings.limitsTurns[1],
      low,
      1e5,
      'are the limits swapped?',
      1,
    );
  }
  inRange('placeTurns', search.placeTurns, -1e6, 1e6);
  oneOf('sense', search.sense, ['up', 'down', 'none']);
  inRange('turnsMade', search.turnsMade, 0, 1e9);
  if (!Array.isArray(readings))
    throw new DomainError({
      code: 'malformed',
      parameter: 'readings',
      received: readings,
      allowed: 'a list of readings',
    });
  readings.forEach((reading: SearchReading, i) => {
    known(`readings[${i}]`, reading, SEARCH_READING_KEYS);
    inRange(`readings[${i}].placeTurns`, reading.placeTurns, -1e6, 1e6);
    inRange(`readings[${i}].levelDbm`, reading.levelDbm, -300, 300);
  });
  return search;
}

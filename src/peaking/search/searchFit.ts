/** The lobe that the readings of a search show, in turns, and the legs that lead to a place. */

import { fitPeak } from '../fit/fitPeak.js';
import { fitParabola } from '../fit/parabolaFit.js';
import type { PeakFit } from '../fit/peakOutcome.js';
import type { PeakSearch } from './peakSearch.js';

/** What the readings say so far. */
export type SearchFit =
  | {
      readonly kind: 'peak';
      readonly positionTurns: number;
      readonly interval95Turns: readonly [number, number];
      readonly peakLevelDbm: number;
      readonly lossNowUpper95Db: number;
      readonly lossAtPeakUpper95Db: number;
    }
  | {
      readonly kind: Exclude<PeakFit['kind'], 'peak'>;
      /** Best guess, at most two beamwidths beyond what was read. */
      readonly positionTurns: number;
    };

/** Farthest guess beyond the readings, in beamwidths. */
const FARTHEST_GUESS = 2;

/** Fits the readings (two at least), with places in beamwidths from the first. */
export function searchFit({ settings, readings, placeTurns }: PeakSearch): SearchFit {
  const width = settings.beamwidthTurns;
  const zero = readings[0]?.placeTurns ?? 0;
  const known = settings.beamwidth !== 'rough';
  const positionDeg = readings.map((reading) => (reading.placeTurns - zero) / width);
  const levelDbm = readings.map((reading) => reading.levelDbm);
  const fit = fitPeak({
    positionDeg,
    levelDbm,
    currentPositionDeg: (placeTurns - zero) / width,
    levelStepDb: settings.levelStepDb ?? 0,
    ...(known ? { beamwidthDeg: 1 } : {}),
    ...(settings.standardDeviationDb === undefined
      ? {}
      : { standardDeviationDb: settings.standardDeviationDb }),
    ...(settings.noiseFloorDbm === undefined ? {} : { noiseFloorDbm: settings.noiseFloorDbm }),
  });
  const turns = (beamwidths: number) => zero + beamwidths * width;
  if (fit.kind === 'peak')
    return {
      kind: 'peak',
      positionTurns: turns(fit.positionDeg),
      interval95Turns: [turns(fit.interval95Deg[0]), turns(fit.interval95Deg[1])],
      peakLevelDbm: fit.peakLevelDbm,
      lossNowUpper95Db: fit.lossNowUpper95Db,
      lossAtPeakUpper95Db: fit.lossAtPeakUpper95Db,
    };
  // A lobe of the expected width points the way even where the fit has no answer yet.
  const guess = fitParabola({
    places: positionDeg,
    levels: levelDbm,
    times: undefined,
    bend: -12,
    floorDb: undefined,
    fitFloor: false,
  });
  const likely = guess === undefined ? 0 : guess.b / 24;
  const lowest = positionDeg.reduce((a, b) => Math.min(a, b)) - FARTHEST_GUESS;
  const highest = positionDeg.reduce((a, b) => Math.max(a, b)) + FARTHEST_GUESS;
  return { kind: fit.kind, positionTurns: turns(Math.min(highest, Math.max(lowest, likely))) };
}

/** Legs that lead straight to a place, the lost turns added where the sense changes; none to stay. */
export function legsTo(search: PeakSearch, toTurns: number): readonly number[] {
  const way = toTurns - search.placeTurns;
  if (way === 0) return [];
  const sense = way > 0 ? 'up' : 'down';
  const reversed = search.sense !== 'none' && search.sense !== sense;
  const lost = reversed ? (search.settings.backlashTurns ?? 0) : 0;
  return [way + Math.sign(way) * lost];
}

/** Legs to the peak whose last is in the sense of the approach: by way of a place before it where need be. */
export function legsToPeak(search: PeakSearch, peakTurns: number): readonly number[] {
  const { settings, placeTurns } = search;
  const lost = settings.backlashTurns ?? 0;
  const up = (settings.approach ?? 'up') === 'up';
  const way = peakTurns - placeTurns;
  if (lost === 0 || (way !== 0 && way > 0 === up)) return legsTo(search, peakTurns);
  // A tenth of the beamwidth beyond, so that the thread bears before the peak is reached.
  const margin = settings.beamwidthTurns / 10;
  const before = peakTurns + (up ? -margin : margin);
  const back = (up ? 1 : -1) * (margin + lost);
  return [...legsTo(search, before), back];
}

/** The lobe that the readings of a search show, in turns. */

import { dense } from '../../numeric/columns.js';
import { fitPeak } from '../fit/fitPeak.js';
import type { PeakFit } from '../fit/peakOutcome.js';
import { fitParabola } from '../lobe/parabolaFit.js';
import type { PeakSearch, SearchReading } from './peakSearch.js';

/** What the readings say so far. */
export type SearchFit =
  | {
      readonly kind: 'peak';
      readonly positionTurns: number;
      readonly interval95Turns: readonly [number, number];
      readonly peakLevelDbm: number;
      /** Half-power beamwidth that the readings and the given one make together, in turns. */
      readonly widthTurns: number;
      readonly lossNowUpper95Db: number;
      readonly lossAtPeakUpper95Db: number;
      /** Whether one of the readings may be foreign: they fit the stated scatter or the given width badly. */
      readonly doubtful: boolean;
    }
  | {
      readonly kind: Exclude<PeakFit['kind'], 'peak'>;
      /** Best guess, at most two beamwidths beyond what was read. */
      readonly positionTurns: number;
      /** Half-power beamwidth to plan with, in turns. */
      readonly widthTurns: number;
      /** Whether the lobe is narrower than a main one can be, or shows two tops: it may be a side lobe. */
      readonly maybeSideLobe: boolean;
    };

/** Farthest guess beyond the readings, in beamwidths. */
const FARTHEST_GUESS = 2;
/** Readings farther from the highest one than this are on another lobe, in beamwidths. */
const SAME_LOBE = 1.1;
/** From here on few readings count as doubtful: departures of scatter and width, probability that none is foreign. */
const MUCH_SCATTER = 1.1;
const MUCH_WIDTH = 1.2;
const SURE = 0.9;
/** Standard uncertainty of a beamwidth that is hardly known, over itself. */
const FREE_WIDTH = 0.5;
/** Readings on the lobe from which its width can be found from them alone. */
const FREE_FROM = 5;
/** So far below the highest reading the main lobe has ended, in dB. */
const LOBE_DEPTH_DB = 15;

/** How the width is taken: as given, or, once a side lobe is excluded, found from the readings. */
export type WidthTrust = 'given' | 'free';

/** Fits the readings about the highest one (two at least), with places in beamwidths from the first. */
export function searchFit(search: PeakSearch, trust: WidthTrust): SearchFit {
  const { settings, placeTurns } = search;
  const width = settings.beamwidthTurns;
  const readings = sameLobe(search);
  const zero = readings[0]?.placeTurns ?? 0;
  const positionDeg = readings.map((reading) => (reading.placeTurns - zero) / width);
  const levelDbm = readings.map((reading) => reading.levelDbm);
  const samples = {
    positionDeg,
    levelDbm,
    currentPositionDeg: (placeTurns - zero) / width,
    levelStepDb: settings.levelStepDb ?? 0,
    ...(trust === 'free' && readings.length >= FREE_FROM ? {} : { beamwidthDeg: 1 }),
    beamwidthStandardUncertaintyRatio:
      trust === 'free' ? FREE_WIDTH : (settings.beamwidthStandardUncertaintyRatio ?? 0.1),
    ...(settings.noiseFloorDbm === undefined ? {} : { noiseFloorDbm: settings.noiseFloorDbm }),
  };
  const told =
    settings.standardDeviationDb === undefined
      ? {}
      : { standardDeviationDb: settings.standardDeviationDb };
  let fit = fitPeak({ ...samples, ...told });
  // More departure than was stated: another width may explain it, or else more scatter, which takes a few readings to find.
  if (fit.kind === 'contradictory' && fit.reason === 'scatter')
    fit = fitPeak({ ...samples, ...told, beamwidthStandardUncertaintyRatio: FREE_WIDTH });
  if (fit.kind === 'contradictory' && fit.reason === 'scatter') fit = fitPeak(samples);
  const turns = (beamwidths: number) => zero + beamwidths * width;
  if (fit.kind === 'peak')
    return {
      kind: 'peak',
      positionTurns: turns(fit.positionDeg),
      interval95Turns: [turns(fit.interval95Deg[0]), turns(fit.interval95Deg[1])],
      peakLevelDbm: fit.peakLevelDbm,
      widthTurns: fit.beamwidthDeg * width,
      lossNowUpper95Db: fit.lossNowUpper95Db,
      lossAtPeakUpper95Db: fit.lossAtPeakUpper95Db,
      doubtful:
        fit.outliersProbabilityRatio < SURE ||
        Math.abs(fit.beamwidthDeg - 1) > MUCH_WIDTH * samples.beamwidthStandardUncertaintyRatio ||
        (settings.standardDeviationDb !== undefined &&
          fit.standardDeviationDb >
            MUCH_SCATTER *
              Math.hypot(settings.standardDeviationDb, samples.levelStepDb / Math.sqrt(12))),
    };
  const maybeSideLobe =
    (fit.kind === 'not-main-lobe' && fit.reason === 'too-narrow') || fit.kind === 'contradictory';
  if (fit.kind === 'not-main-lobe' && fit.reason !== 'dip')
    return {
      kind: fit.kind,
      positionTurns: turns(fit.positionDeg),
      widthTurns: (fit.beamwidthDeg ?? 1) * width,
      maybeSideLobe,
    };
  // A lobe of the expected width points the way even where the fit has no answer yet.
  const guess = fitParabola({
    places: dense(positionDeg),
    levels: dense(levelDbm),
    times: undefined,
    bend: -12,
    floorDb: undefined,
    fitFloor: false,
  });
  const likely = guess === undefined ? 0 : guess.b / 24;
  const lowest = positionDeg.reduce((a, b) => Math.min(a, b)) - FARTHEST_GUESS;
  const highest = positionDeg.reduce((a, b) => Math.max(a, b)) + FARTHEST_GUESS;
  return {
    kind: fit.kind,
    positionTurns: turns(Math.min(highest, Math.max(lowest, likely))),
    widthTurns: width,
    maybeSideLobe,
  };
}

/** Readings on the lobe of the highest one; all of them where that leaves fewer than two. */
export function sameLobe({ settings, readings }: PeakSearch): readonly SearchReading[] {
  const top = readings.reduce((a, b) => (b.levelDbm > a.levelDbm ? b : a));
  const reach = SAME_LOBE * settings.beamwidthTurns;
  const near = readings.filter(
    ({ placeTurns, levelDbm }) =>
      Math.abs(placeTurns - top.placeTurns) <= reach && levelDbm >= top.levelDbm - LOBE_DEPTH_DB,
  );
  return near.length < 2 ? readings : near;
}

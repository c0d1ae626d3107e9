/** What each method of finding a peak makes of the same notes. */

import { bracketPeak, fitPeak } from 'slantpath/peaking';
import { FLOOR_DBM, lobeOf, METERS, type Meter, type Note } from './bench.js';

/** What each method makes of the notes: a place, or why there is none. */
export function methods(bench: number, meter: Meter, notes: readonly Note[]) {
  const { widthTurns } = lobeOf(bench);
  const samples = {
    positionDeg: notes.map((note) => note.placeTurns),
    levelDbm: notes.map((note) => note.levelDbm),
    noiseFloorDbm: FLOOR_DBM,
    // The bench's lobe is one by statement, as in the arithmetic by hand.
    lobe: 'parabola' as const,
    ...METERS[meter],
  };
  const known = fitPeak({ ...samples, beamwidthDeg: widthTurns });
  const free = fitPeak(samples);
  const highest = notes.reduce((a, b) => (b.levelDbm > a.levelDbm ? b : a));
  const ends = [...notes].sort((a, b) => a.placeTurns - b.placeTurns);
  const [low, high] = [ends[0], ends[ends.length - 1]];
  const way = low && high ? high.placeTurns - low.placeTurns : 0;
  const bracket =
    low && high && way > 0 && notes.length > 2
      ? bracketPeak({
          peakLevelDbm: highest.levelDbm,
          referenceLevelDbm: high.levelDbm,
          farLevelDbm: low.levelDbm,
          turnsOut: way,
          turnsBack: way,
          ...METERS[meter],
        })
      : undefined;
  return {
    known,
    free,
    highestTurns: highest.placeTurns,
    bracketTurns:
      bracket && low && bracket.kind !== 'blind' ? low.placeTurns + bracket.moveBackTurns : null,
  };
}

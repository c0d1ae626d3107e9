/** Peaking: a fit beside the bare sums of its parabola, the robust way, the noise floor, and one move of the search. */

import { randomStream } from '../../src/numeric/random.js';
import {
  afterMove,
  afterReading,
  beginPeakSearch,
  bracketPeak,
  fitPeak,
  nextMove,
} from '../../src/peaking/index.js';
import { type BenchRow, measure } from './measure.js';

const ITEMS = 500;
const random = randomStream(1);
const positionDeg = Array.from({ length: 9 }, (_, i) => -1 + i / 4);
const sets = Array.from({ length: ITEMS }, () =>
  positionDeg.map((x) => -40 - 6 * (x - 0.1) ** 2 + 0.3 * random.normal()),
);

/** Vertex of the parabola through evenly spaced samples by its normal equations. */
function bareVertex(levels: readonly number[]): number {
  let s2 = 0;
  let s4 = 0;
  let y = 0;
  let xy = 0;
  let x2y = 0;
  for (let i = 0; i < levels.length; i++) {
    const x = positionDeg[i] as number;
    const level = levels[i] as number;
    s2 += x * x;
    s4 += x ** 4;
    y += level;
    xy += x * level;
    x2y += x * x * level;
  }
  const n = levels.length;
  return -xy / s2 / ((2 * (n * x2y - s2 * y)) / (n * s4 - s2 * s2));
}

const position = (fit: ReturnType<typeof fitPeak>) => (fit.kind === 'peak' ? fit.positionDeg : 0);
const sum = (work: (levels: readonly number[]) => number) => () =>
  sets.reduce((total, levels) => total + work(levels), 0);

export default function bench(): BenchRow[] {
  let search = beginPeakSearch({ beamwidthTurns: 3, standardDeviationDb: 0.3 });
  for (const level of [-40, -43, -42.8]) {
    const move = nextMove(search);
    if (move.kind === 'turn-and-read') search = afterReading(afterMove(search, move), level);
  }
  return measure('a peak from 9 readings', ITEMS, [
    { name: 'bare vertex of the parabola', run: sum(bareVertex) },
    {
      name: 'fitPeak, every reading kept',
      run: sum((levelDbm) => position(fitPeak({ positionDeg, levelDbm, outliers: 'keep' }))),
    },
    {
      name: 'fitPeak, outliers looked for',
      run: sum((levelDbm) => position(fitPeak({ positionDeg, levelDbm }))),
    },
    {
      name: 'fitPeak, noise floor known',
      run: sum((levelDbm) =>
        position(fitPeak({ positionDeg, levelDbm, noiseFloorDbm: -52, outliers: 'keep' })),
      ),
    },
    {
      name: 'nextMove after three readings',
      run: sum(() => (nextMove(search).kind === 'go-to-peak' ? 1 : 0)),
    },
    {
      name: 'bracketPeak',
      run: sum(
        (levels) =>
          bracketPeak({
            peakLevelDbm: -40,
            referenceLevelDbm: -44,
            turnsOut: 2,
            turnsBack: 4 + (levels[0] ?? 0) / 1000,
            levelStepDb: 1,
          }).moveBackTurns,
      ),
    },
  ]);
}

/** Searches by the next move on real lobes, with a thread that has play: how they end, and whether the bound holds. */

import { afterMove, afterReading, beginPeakSearch, nextMove } from '../../../src/peaking/index.js';
import { generator, normals } from './aperture.js';
import { type AnyLobe, anyLobe } from './lobes.js';

export interface SearchSetting {
  readonly lobe: AnyLobe;
  readonly standardDeviationDb: number;
  readonly stepDb?: number;
  readonly widthError: number;
  readonly scatterTold?: boolean;
  /** Play of the thread in beamwidths, told to the search, and at the start anywhere within itself. */
  readonly play?: number;
  readonly outliers?: number;
  /** The start lies within so many beamwidths of the peak. */
  readonly startWithin?: number;
  /** The start, in beamwidths from the peak: a side lobe. */
  readonly startAt?: number;
}

export interface SearchFigures {
  readonly done: number;
  /** Share of the finished ones that lose more than the stated bound. */
  readonly beyondBound: number;
  readonly beyondTarget: number;
  readonly medianReadings: number;
  readonly meanReadings: number;
  /** Readings of each search, rising. */
  readonly readings: readonly number[];
  readonly reasons: Readonly<Record<string, number>>;
}

export function simulateSearches(
  setting: SearchSetting,
  runs: number,
  seed: number,
): SearchFigures {
  const lobe = anyLobe(setting.lobe);
  const next = generator(seed);
  const normal = normals(next);
  const { standardDeviationDb, stepDb = 0, play = 0, outliers = 0, startWithin = 0.5 } = setting;
  const reasons: Record<string, number> = {};
  const readings: number[] = [];
  let done = 0;
  let beyondBound = 0;
  let beyondTarget = 0;
  for (let run = 0; run < runs; run++) {
    // True beamwidth 3 turns; the search believes another.
    const width = 3;
    const believed = width * Math.max(0.4, 1 + setting.widthError * normal());
    const start = setting.startAt === undefined ? startWithin * (2 * next() - 1) : setting.startAt;
    // The thread's nut stands anywhere within the play.
    let antenna = start * width;
    let slack = play * width * next();
    let search = beginPeakSearch({
      beamwidthTurns: believed,
      levelStepDb: stepDb,
      backlashTurns: play * width,
      ...(setting.scatterTold === false ? {} : { standardDeviationDb }),
    });
    const turn = (turns: number) => {
      // Turning up closes the slack towards the play, turning down towards nothing.
      const wanted = slack + turns;
      slack = Math.min(play * width, Math.max(0, wanted));
      antenna += wanted - slack;
    };
    let ended = 'endless';
    for (let k = 0; k < 200; k++) {
      const move = nextMove(search);
      if (move.kind === 'done' || move.kind === 'stop') {
        ended = move.kind === 'done' ? 'done' : move.reason;
        if (move.kind === 'done') {
          done++;
          const loss = -lobe(antenna / width);
          if (loss > move.lossUpper95Db) beyondBound++;
          if (loss > 0.1) beyondTarget++;
        }
        break;
      }
      for (const leg of move.legsTurns) turn(leg);
      search = afterMove(search, move);
      if (move.kind !== 'turn-and-read') continue;
      let level = -40 + lobe(antenna / width) + standardDeviationDb * normal();
      if (next() < outliers) level += (next() < 0.2 ? 1 : -1) * (1 + 5 * next());
      search = afterReading(search, stepDb > 0 ? stepDb * Math.round(level / stepDb) : level);
    }
    reasons[ended] = (reasons[ended] ?? 0) + 1;
    readings.push(search.readings.length);
  }
  readings.sort((a, b) => a - b);
  return {
    done: done / runs,
    beyondBound: beyondBound / Math.max(1, done),
    beyondTarget: beyondTarget / Math.max(1, done),
    medianReadings: readings[Math.floor(runs / 2)] as number,
    meanReadings: readings.reduce((a, b) => a + b, 0) / runs,
    readings,
    reasons,
  };
}

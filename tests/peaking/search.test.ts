import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import { randomStream } from '../../src/numeric/random.js';
import {
  afterMove,
  afterReading,
  beginPeakSearch,
  comparePlans,
  type NextMove,
  nextMove,
  type PeakSearch,
  type PeakSearchSettings,
} from '../../src/peaking/index.js';
import { FULL_RUNS, runs } from '../support/runs.js';

/** Plays a search on a lobe with a thread that has play, counting only what the hand turns. */
function play(
  settings: PeakSearchSettings,
  truth: {
    peak: number;
    width: number;
    standardDeviationDb?: number;
    floorDbm?: number;
    seed?: number;
    lostTurns?: number;
  },
) {
  const random = randomStream(truth.seed ?? 1);
  let search = beginPeakSearch(settings);
  let hand = 0;
  let antenna = 0;
  let sense = 0;
  const moves: NextMove[] = [];
  for (let k = 0; k < 300; k++) {
    // The state goes through JSON each time, as an app would keep it.
    search = JSON.parse(JSON.stringify(search)) as PeakSearch;
    const move = nextMove(search);
    moves.push(move);
    if (move.kind === 'done' || move.kind === 'stop') break;
    for (const leg of move.legsTurns) {
      const reversed = sense !== 0 && Math.sign(leg) !== sense;
      antenna += leg - (reversed ? Math.sign(leg) * (truth.lostTurns ?? 0) : 0);
      sense = Math.sign(leg) || sense;
      hand += Math.abs(leg);
    }
    search = afterMove(search, move);
    if (move.kind === 'turn-and-read') {
      const lobe = -40 - 12 * ((antenna - truth.peak) / truth.width) ** 2;
      const level =
        truth.floorDbm === undefined
          ? lobe
          : 10 * Math.log10(10 ** (lobe / 10) + 10 ** (truth.floorDbm / 10));
      search = afterReading(search, level + (truth.standardDeviationDb ?? 0) * random.normal());
    }
  }
  return { search, moves, hand, antenna, last: moves.at(-1) as NextMove };
}

describe('next move', () => {
  test('finds the peak within the target, from either side, without running off', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.integer({ min: 1, max: 1e6 }),
        (peak, seed) => {
          const settings = { beamwidthTurns: 3, standardDeviationDb: 0.2 };
          const { last, antenna, search } = play(settings, {
            peak,
            width: 3,
            standardDeviationDb: 0.2,
            seed,
          });
          expect(last.kind).toBe('done');
          expect(12 * ((antenna - peak) / 3) ** 2).toBeLessThan(0.3);
          expect(search.readings.length).toBeLessThan(12);
        },
      ),
      { numRuns: runs(200, 20) },
    );
  });

  test('play in the thread: the hand turns more, the antenna stands right, the last leg goes up', () => {
    for (const peak of [-1.4, 0.3, 2]) {
      const { last, antenna, hand, search, moves } = play(
        { beamwidthTurns: 3, standardDeviationDb: 0.05, backlashTurns: 0.4 },
        { peak, width: 3, lostTurns: 0.4 },
      );
      expect(last.kind).toBe('done');
      // The test's lobe is a parabola, the search's a reflector's that may be lopsided: they differ by a few hundredths of a turn.
      expect(12 * ((antenna - peak) / 3) ** 2).toBeLessThan(0.01);
      expect(hand).toBeCloseTo(search.turnsMade, 9);
      const go = moves.find((move) => move.kind === 'go-to-peak');
      expect(go?.kind === 'go-to-peak' && (go.legsTurns.at(-1) ?? 0)).toBeGreaterThan(0);
    }
    const down = play(
      { beamwidthTurns: 3, standardDeviationDb: 0.05, backlashTurns: 0.4, approach: 'down' },
      { peak: 0.3, width: 3, lostTurns: 0.4 },
    );
    const go = down.moves.find((move) => move.kind === 'go-to-peak');
    expect(go?.kind === 'go-to-peak' && (go.legsTurns.at(-1) ?? 0)).toBeLessThan(0);
    expect(down.antenna).toBeCloseTo(0.3, 1);
  });

  test('width only roughly known, scatter unknown, noise floor: more readings, the same end', () => {
    const { last, antenna } = play(
      {
        beamwidthTurns: 2.6,
        beamwidthStandardUncertaintyRatio: 0.25,
        noiseFloorDbm: -55,
        levelStepDb: 0,
      },
      { peak: 0.8, width: 3, standardDeviationDb: 0.1, floorDbm: -55, seed: 4 },
    );
    expect(last.kind).toBe('done');
    expect(12 * ((antenna - 0.8) / 3) ** 2).toBeLessThan(0.1);
  });

  test('the target is kept in 95 of 100 runs', () => {
    const count = runs(200, 30);
    let within = 0;
    for (let seed = 1; seed <= count; seed++) {
      const { antenna, last } = play(
        { beamwidthTurns: 3, standardDeviationDb: 1 },
        { peak: 0.5, width: 3, standardDeviationDb: 1, seed },
      );
      if (last.kind === 'done' && 12 * ((antenna - 0.5) / 3) ** 2 <= 0.1) within++;
    }
    expect(within).toBeGreaterThan(0.935 * count - (FULL_RUNS ? 0 : 2));
  });

  test('stops: end of the thread, side lobe, no lobe, too many', () => {
    const end = play(
      { beamwidthTurns: 3, standardDeviationDb: 0.1, limitsTurns: [-2, 2] },
      { peak: 4, width: 3 },
    );
    expect(end.last).toMatchObject({ kind: 'stop', reason: 'end-stop' });
    const nothing = play(
      { beamwidthTurns: 3 },
      { peak: 1e4, width: 3, floorDbm: -60, standardDeviationDb: 0.3 },
    );
    expect(nothing.last).toMatchObject({ kind: 'stop' });
    const few = play(
      { beamwidthTurns: 3, standardDeviationDb: 3, mostReadings: 5 },
      { peak: 0.4, width: 3, standardDeviationDb: 3 },
    );
    expect(few.last).toMatchObject({ kind: 'stop', reason: 'too-many' });
  });

  test('tells a wrong width from a wrong lobe: looks where the main lobe would be, then goes on', () => {
    const side = play({ beamwidthTurns: 3, standardDeviationDb: 0.1 }, { peak: 0.4, width: 1.4 });
    expect(side.moves.some((move) => 'purpose' in move && move.purpose === 'other-lobe')).toBe(
      true,
    );
    expect(side.last.kind).toBe('done');
    expect(12 * ((side.antenna - 0.4) / 1.4) ** 2).toBeLessThan(0.1);
  });

  test('takes up the play before the first reading, in the sense of the approach', () => {
    const up = nextMove(beginPeakSearch({ beamwidthTurns: 3, backlashTurns: 0.4 }));
    expect(up).toMatchObject({ purpose: 'start', legsTurns: [0.4], toTurns: 0 });
    const down = beginPeakSearch({
      beamwidthTurns: 3,
      backlashTurns: 0.4,
      approach: 'down',
    });
    expect(nextMove(down)).toMatchObject({ legsTurns: [-0.4] });
    expect(nextMove(beginPeakSearch({ beamwidthTurns: 3 }))).toMatchObject({
      legsTurns: [],
    });
  });

  test('two readings and the width point to the peak', () => {
    // 12 / 3^2 dB per square turn: 0.75 - 6 / (4 / 1.5 * 1.5) = -0.75; then a flank on the other side of it.
    let search = beginPeakSearch({ beamwidthTurns: 3 });
    search = afterReading(search, -40);
    search = afterReading({ ...search, placeTurns: 1.5 }, -46);
    const move = nextMove(search);
    if (move.kind !== 'turn-and-read') throw new Error(move.kind);
    const offset = (move.toTurns + 0.75) / 3;
    expect([-0.7, -0.55, -0.4].some((flank) => Math.abs(flank - offset) < 1e-9)).toBe(true);
  });

  test('a reading at the peak that speaks against it sends the search on', () => {
    let search = beginPeakSearch({ beamwidthTurns: 3, standardDeviationDb: 0.3 });
    for (let k = 0; k < 4; k++) {
      const move = nextMove(search);
      if (move.kind !== 'turn-and-read') throw new Error(move.kind);
      search = afterReading(afterMove(search, move), -40 - 12 * (move.toTurns / 3) ** 2);
    }
    const go = nextMove(search);
    expect(go.kind).toBe('go-to-peak');
    if (go.kind !== 'go-to-peak') return;
    search = afterMove(search, go);
    expect(nextMove(search).kind).toBe('done');
    // One such reading may be foreign, three are not.
    for (let k = 0; k < 3; k++) search = afterReading(search, -46);
    expect(nextMove(search).kind).not.toBe('done');
  });

  test.each([
    ['settings.beamwidthTurns', { beamwidthTurns: 0 }],
    ['settings.targetLossDb', { beamwidthTurns: 3, targetLossDb: 0 }],
    ['settings.limitsTurns', { beamwidthTurns: 3, limitsTurns: [2, -2] as const }],
    ['settings.approach', { beamwidthTurns: 3, approach: 'left' as 'up' }],
  ])('refuses a bad %s', (parameter, settings) => {
    expect(() => beginPeakSearch(settings)).toThrow(DomainError);
    expect(() => beginPeakSearch(settings)).toThrow(expect.objectContaining({ parameter }));
  });

  test('refuses a state that was spoiled', () => {
    const search = beginPeakSearch({ beamwidthTurns: 3 });
    expect(() =>
      nextMove({ ...search, readings: [{ placeTurns: 0, levelDbm: Number.NaN }] }),
    ).toThrow(DomainError);
    expect(() => nextMove({ ...search, readings: 3 as never })).toThrow(DomainError);
    expect(() => nextMove(null as never)).toThrow(DomainError);
    expect(() => afterReading(search, Number.POSITIVE_INFINITY)).toThrow(DomainError);
    expect(() => afterMove(search, { legsTurns: [1], toTurns: Number.NaN, toPeak: false })).toThrow(
      DomainError,
    );
  });
});

describe('comparison of plans', () => {
  test('the same seed gives the same figures, and bad input is refused', () => {
    const input = { beamwidthTurns: 3, standardDeviationDb: 0.3, runs: 100 };
    expect(comparePlans(input)).toEqual(comparePlans(input));
    expect(() => comparePlans({ ...input, standardDeviationDb: 0 })).toThrow(DomainError);
    expect(() => comparePlans({ ...input, runs: 5 })).toThrow(DomainError);
  });

  test('turns grow with the beamwidth in turns, readings do not', () => {
    const one = comparePlans({ beamwidthTurns: 1, standardDeviationDb: 0.3, runs: runs(200, 100) });
    const five = comparePlans({
      beamwidthTurns: 5,
      standardDeviationDb: 0.3,
      runs: runs(200, 100),
    });
    five.forEach((plan, i) => {
      expect(plan.turns / (one[i]?.turns ?? 1)).toBeCloseTo(5, 6);
      expect(plan.readings).toBeCloseTo(one[i]?.readings ?? 0, 6);
    });
  });
});

import { expectTypeOf, test } from 'vitest';
import {
  adjusterAngle,
  bracketPeak,
  type CoupledPeak,
  fitCoupledPeak,
  fitPeak,
  type NextMove,
  nextMove,
  type PeakFit,
  peakBound,
} from '../../src/peaking/index.js';

test('a peak is read only after its kind', () => {
  const fit = fitPeak({ positionDeg: [0, 1, 2, 3], levelDbm: [1, 2, 2, 1] });
  expectTypeOf(fit.kind).toEqualTypeOf<
    'peak' | 'edge' | 'flat' | 'not-main-lobe' | 'too-few' | 'contradictory'
  >();
  // @ts-expect-error a fit without a peak has no position
  fit.interval95Deg;
  if (fit.kind === 'peak')
    expectTypeOf(fit.interval95Deg).toEqualTypeOf<readonly [number, number]>();
  if (fit.kind === 'edge') expectTypeOf(fit.side).toEqualTypeOf<'lower' | 'higher'>();
  expectTypeOf<Extract<PeakFit, { kind: 'flat' }>>().not.toHaveProperty('positionDeg');
});

test('typed columns and plain arrays serve alike', () => {
  expectTypeOf(fitPeak).toBeCallableWith({
    positionDeg: new Float64Array(4),
    levelDbm: [1, 2, 3, 4],
  });
  // @ts-expect-error a level in another unit
  fitPeak({ positionDeg: [0], levelDbuv: [1] });
  // @ts-expect-error turns are not degrees
  fitPeak({ positionTurns: [0], levelDbm: [1] });
});

test('what a bracketing needs cannot be left out', () => {
  // @ts-expect-error the way back is missing
  bracketPeak({ peakLevelDbm: -40, referenceLevelDbm: -44, turnsOut: 2 });
  const bracket = bracketPeak({
    peakLevelDbm: -40,
    referenceLevelDbm: -44,
    turnsOut: 2,
    turnsBack: 4,
  });
  expectTypeOf(bracket.worstErrorTurns).toEqualTypeOf<number | null>();
});

test('a move tells whether it leads to the peak', () => {
  expectTypeOf<NextMove['kind']>().toEqualTypeOf<
    'turn-and-read' | 'go-to-peak' | 'done' | 'stop'
  >();
  expectTypeOf(nextMove).returns.toEqualTypeOf<NextMove>();
});

test('bound, two axes and adjuster', () => {
  const bound = peakBound({
    positionDeg: [0],
    peakDeg: 0,
    beamwidthDeg: 1,
    standardDeviationDb: 0.1,
  });
  // @ts-expect-error an undetermined bound has no deviation
  bound.standardUncertaintyDeg;
  expectTypeOf(fitCoupledPeak).returns.toEqualTypeOf<CoupledPeak>();
  // @ts-expect-error a strut needs both arms
  adjusterAngle({ kind: 'strut', threadPitchM: 0.002, leverArmM: 0.1 }, 1);
});

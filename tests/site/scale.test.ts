/** Scales and ticks: for any numbers there is an axis, and it ends. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { extent, linear, roundTicks } from '../../site/src/lib/drawing/scale.js';

const any = fc.double({ min: -1e12, max: 1e12, noNaN: true });

describe('ticks', () => {
  test('are round, in order, and within the ends', () => {
    expect(roundTicks(0, 10)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(roundTicks(-0.1, 0.12)).toEqual([-0.1, -0.05, 0, 0.05, 0.1]);
  });

  test('end for any span, however small beside its place', () => {
    fc.assert(
      fc.property(any, fc.double({ min: 0, max: 1, noNaN: true }), (low, span) => {
        const ticks = roundTicks(low, low + span);
        expect(ticks.length).toBeLessThanOrEqual(101);
      }),
    );
  });

  test('a span of rounding errors is widened like a single value', () => {
    const [low, high] = extent([36.236, 36.236 + 7e-15]);
    expect(low).toBeCloseTo(34.42, 2);
    expect(high).toBeCloseTo(38.05, 2);
    expect(linear(low, high, 0, 100).ticks.length).toBeGreaterThan(2);
  });

  test('an extent without a margin keeps its ends', () => {
    expect(extent([1, 4, 2], 0)).toEqual([1, 4]);
    expect(extent([], 0)).toEqual([0, 1]);
    fc.assert(
      fc.property(fc.array(any, { minLength: 1 }), (values) => {
        const [low, high] = extent(values);
        expect(low).toBeLessThan(high);
      }),
    );
  });
});

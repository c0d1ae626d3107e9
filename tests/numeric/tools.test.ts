import { DomainError, sumPowerDbm } from 'slantpath';
import { describe, expect, test } from 'vitest';
import { minimumBetween } from '../../src/numeric/minimum.js';
import { randomStream } from '../../src/numeric/random.js';
import { bracketedRoot } from '../../src/numeric/root.js';

describe('bracketed root', () => {
  test('solves cos x = x (Dottie number, 0.739085133215160641655...)', () => {
    expect(bracketedRoot((x) => Math.cos(x) - x, { from: 0, to: 1 })).toBeCloseTo(
      0.7390851332151607,
      15,
    );
  });
  test('is undefined without a change of sign, and bounded on a jump', () => {
    expect(bracketedRoot((x) => x * x + 1, { from: -1, to: 1 })).toBeUndefined();
    expect(bracketedRoot((x) => (x < 0.3 ? -1 : 1), { from: 0, to: 1 })).toBeCloseTo(0.3, 12);
    expect(bracketedRoot(() => Number.NaN, { from: 0, to: 1 })).toBeUndefined();
  });
});

describe('minimum', () => {
  test('finds the minimum of a parabola and at an end', () => {
    expect(minimumBetween((x) => (x - 2) ** 2, { from: -5, to: 9 }).at).toBeCloseTo(2, 7);
    expect(minimumBetween((x) => x, { from: 1, to: 2 }).at).toBeCloseTo(1, 6);
  });
});

describe('random stream', () => {
  test('repeats for a seed and differs between seeds', () => {
    const draw = (seed: number) => {
      const stream = randomStream(seed);
      return Array.from({ length: 5 }, () => stream.uniform());
    };
    expect(draw(1)).toEqual(draw(1));
    expect(draw(1)).not.toEqual(draw(2));
  });
  test('has the moments of its distributions within five standard errors', () => {
    const stream = randomStream(20260615);
    const count = 200_000;
    let uniform = 0;
    let normal = 0;
    let square = 0;
    let fourth = 0;
    for (let i = 0; i < count; i++) {
      uniform += stream.uniform();
      const z = stream.normal();
      normal += z;
      square += z * z;
      fourth += z ** 4;
    }
    const within = (sum: number, mean: number, sd: number) =>
      expect(Math.abs(sum / count - mean)).toBeLessThan((5 * sd) / Math.sqrt(count));
    within(uniform, 0.5, Math.sqrt(1 / 12));
    within(normal, 0, 1);
    within(square, 1, Math.SQRT2);
    within(fourth, 3, Math.sqrt(96));
  });
});

describe('power sum', () => {
  test('doubling the power adds 10 log 2', () => {
    expect(sumPowerDbm([0, 0])).toBeCloseTo(10 * Math.log10(2), 14);
    expect(sumPowerDbm([-300, -300])).toBeCloseTo(-300 + 10 * Math.log10(2), 12);
    expect(sumPowerDbm([-47.3])).toBe(-47.3);
  });
  test('names the row of a bad level and refuses an empty list', () => {
    expect(() => sumPowerDbm([1, Number.NaN])).toThrow(
      expect.objectContaining({ index: 1, code: 'not-finite' }),
    );
    expect(() => sumPowerDbm([])).toThrow(DomainError);
  });
});

import fc from 'fast-check';
import { combinedReading, decideConformity, decideRepeated } from 'slantpath/acceptance';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

// In tenths, so that a failure shrinks in a few steps where numbers hang on one another.
const finite = fc.integer({ min: -20_000, max: 20_000 }).map((tenths) => tenths / 10);

describe('repeated readings', () => {
  test('the instrument adds as a root sum of squares, with effective degrees of freedom', () => {
    const readings = [52.1, 51.6, 52.4, 51.9];
    const alone = combinedReading({ readings });
    const both = combinedReading({ readings, instrumentStandardUncertainty: 0.4 });
    expect(both.standardUncertainty).toBeCloseTo(Math.hypot(alone.standardUncertainty, 0.4), 12);
    const share = alone.standardUncertainty / both.standardUncertainty;
    expect(both.degreesOfFreedom).toBeCloseTo(3 / share ** 4, 9);
  });

  test('a common shift moves the mean and nothing else', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 2, maxLength: 20 }),
        finite,
        (readings, shift) => {
          const a = combinedReading({ readings });
          const b = combinedReading({ readings: readings.map((value) => value + shift) });
          expect(b.mean).toBeCloseTo(a.mean + shift, 6);
          expect(b.standardUncertainty).toBeCloseTo(a.standardUncertainty, 6);
        },
      ),
    );
  });

  test('one reading counts with its instrument only', () => {
    expect(combinedReading({ readings: [50], instrumentStandardUncertainty: 0.5 })).toMatchObject({
      mean: 50,
      standardDeviation: null,
      degreesOfFreedom: null,
      standardUncertainty: 0.5,
    });
    expect(() => combinedReading({ readings: [50] })).toThrow(
      expect.objectContaining({ code: 'too-few' }),
    );
    expect(() => combinedReading({ readings: [] })).toThrow(
      expect.objectContaining({ code: 'empty' }),
    );
    expect(() => combinedReading({ readings: [1, Number.NaN] })).toThrow('readings[1]');
  });

  test('a failure is repeated before it is believed', () => {
    const question = { instrumentStandardUncertainty: 0.3, lowerLimit: 47 };
    expect(decideRepeated({ ...question, readings: [45] }).next).toBe('repeat');
    expect(decideRepeated({ ...question, readings: [45, 45.1] }).next).toBe('repeat');
    expect(decideRepeated({ ...question, readings: [45, 45.1, 44.9] }).next).toBe('refuse');
    expect(decideRepeated({ ...question, readings: [48.5] }).next).toBe('accept');
    expect(decideRepeated({ ...question, readings: [45, 45.1], refusalReadings: 2 }).next).toBe(
      'refuse',
    );
  });

  test('equal readings give a verdict, not a division by zero', () => {
    const { decision } = decideRepeated({ readings: [48, 48, 48], lowerLimit: 47 });
    expect(decision.verdict).toBe('conforms');
    expect(decision.conformityProbabilityRatio).toBeGreaterThan(0.999);
  });

  test('no junk gets through as a number that is not one', () => {
    const anything = fc.oneof(fc.anything(), fc.double(), fc.array(fc.double()));
    fc.assert(
      fc.property(
        fc.record({
          readings: anything,
          reading: anything,
          standardUncertainty: anything,
          lowerLimit: anything,
          upperLimit: anything,
          rule: anything,
        }),
        (given) => {
          for (const call of [decideConformity, combinedReading, decideRepeated]) {
            try {
              const text = JSON.stringify(call(given as never), (_, value) =>
                typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
              );
              expect(text).not.toContain('NOT FINITE');
            } catch (error) {
              expect((error as Error).name).toBe('DomainError');
            }
          }
        },
      ),
      { numRuns: runs(500) },
    );
  });
});

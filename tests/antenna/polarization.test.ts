import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { crossPolarIsolation, polarizationMismatchLoss } from 'slantpath/antenna';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'antenna',
  quantity: 'polarization mismatch',
  unit: 'dB',
  source: 'Maini and Agrawal (2010), Example 7.3',
  status: 'published',
  limit: 5e-3,
  reason: 'printed digits',
  count: 2,
  cases: () => [
    { name: '75 deg', expected: 11.74, got: polarizationMismatchLoss(75) },
    { name: '3 deg', expected: 0.012, got: polarizationMismatchLoss(3), limit: 5e-4 },
  ],
});

describe('isolation', () => {
  test('a rotation alone isolates by its tangent', () => {
    for (const [angle, isolation] of [
      [1, 35.16],
      [2, 29.14],
      [5, 21.16],
      [45, 0],
    ] as const) {
      const purity = { kind: 'linear', rotationErrorDeg: angle, antennaIsolationDb: 100 } as const;
      expect(crossPolarIsolation(purity).isolationDb).toBeCloseTo(isolation, 2);
    }
  });

  test('an axial ratio of 1 dB isolates by 24.8 dB, of 3 dB by 15.3 dB', () => {
    for (const [ratio, isolation] of [
      [1, 24.81],
      [3, 15.34],
    ] as const) {
      const purity = { kind: 'circular', antennaAxialRatioDb: ratio, waveAxialRatioDb: 0 } as const;
      expect(crossPolarIsolation(purity).isolationDb).toBeCloseTo(isolation, 2);
    }
    const round = { kind: 'circular', antennaAxialRatioDb: 0, waveAxialRatioDb: 0 } as const;
    expect(crossPolarIsolation(round).isolationDb).toBe(200);
  });

  test('the worst case is never better, even in the angle, falling with it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 44, noNaN: true }),
        fc.double({ min: 10, max: 60, noNaN: true }),
        (rotationErrorDeg, antennaIsolationDb) => {
          const here = crossPolarIsolation({
            kind: 'linear',
            rotationErrorDeg,
            antennaIsolationDb,
          });
          expect(here.worstCaseIsolationDb).toBeLessThanOrEqual(here.isolationDb + 1e-9);
          expect(
            crossPolarIsolation({
              kind: 'linear',
              rotationErrorDeg: -rotationErrorDeg,
              antennaIsolationDb,
            }),
          ).toEqual(here);
          const more = {
            kind: 'linear',
            rotationErrorDeg: rotationErrorDeg + 1,
            antennaIsolationDb,
          } as const;
          expect(crossPolarIsolation(more).isolationDb).toBeLessThan(here.isolationDb);
        },
      ),
    );
  });

  test.each([
    [() => polarizationMismatchLoss(90), 'rotationErrorDeg'],
    [
      () => crossPolarIsolation({ kind: 'linear', rotationErrorDeg: 60, antennaIsolationDb: 30 }),
      'rotationErrorDeg',
    ],
    [
      () => crossPolarIsolation({ kind: 'linear', rotationErrorDeg: 1 } as never),
      'antennaIsolationDb',
    ],
    [() => crossPolarIsolation({ kind: 'slanted' } as never), 'kind'],
    [
      () => crossPolarIsolation({ kind: 'circular', antennaAxialRatioDb: -1, waveAxialRatioDb: 1 }),
      'antennaAxialRatioDb',
    ],
  ])('refuses bad input %#', (call, parameter) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });
});

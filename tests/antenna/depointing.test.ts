import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { type Depointing, depointingExceedance, depointingLoss } from 'slantpath/antenna';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'antenna',
  quantity: 'time beyond a pointing error',
  unit: '%',
  source: 'noncentral chi-square law averaged over the box, recomputed with a statistics library',
  status: 'recomputed',
  limit: 2e-6,
  reason: 'quadrature, in percent of time',
  count: 54,
  cases: () =>
    referenceTable('antenna/depointing.csv').map((row) => {
      const radius = cell(row, 'radius_deg');
      const beamwidthDeg = 1;
      return {
        name: Object.values(row).slice(0, 6).join(' '),
        expected: cell(row, 'exceeded_percent'),
        got: depointingExceedance(
          {
            beamwidthDeg,
            alongArcOffsetDeg: cell(row, 'offset_along_deg'),
            acrossArcOffsetDeg: cell(row, 'offset_across_deg'),
            windStandardDeviationDeg: cell(row, 'sigma_deg'),
            eastWestBoxDeg: cell(row, 'box_along_deg'),
            northSouthBoxDeg: cell(row, 'box_across_deg'),
          },
          12 * radius * radius,
        ),
      };
    }),
});

describe('depointing', () => {
  test('without offset and box it is the Rayleigh law', () => {
    for (const percent of [50, 10, 1, 0.1, 0.01]) {
      const loss = depointingLoss(
        {
          beamwidthDeg: 1.5,
          installationStandardDeviationDeg: 0.06,
          windStandardDeviationDeg: 0.08,
        },
        percent,
      );
      expect(loss.standardDeviationDeg).toBeCloseTo(0.1, 12);
      expect(loss.lossDb).toBeCloseTo(-24 * (0.1 / 1.5) ** 2 * Math.log(percent / 100), 6);
      expect(loss.meanLossDb).toBeCloseTo(24 * (0.1 / 1.5) ** 2, 12);
    }
  });

  test('a steady error alone is exceeded never or always', () => {
    const still: Depointing = {
      beamwidthDeg: 2,
      alongArcOffsetDeg: 0.3,
      acrossArcOffsetDeg: 0.4,
    };
    expect(depointingLoss(still, 1).offsetDeg).toBeCloseTo(0.5, 9);
    expect(depointingLoss(still, 99).lossDb).toBeCloseTo(0.75, 9);
    expect(depointingExceedance(still, 0.7)).toBe(100);
    expect(depointingExceedance(still, 0.8)).toBe(0);
    expect(depointingLoss({ beamwidthDeg: 2 }, 1).lossDb).toBe(0);
  });

  test('loss and share are inverse of each other, and the loss falls with the share', () => {
    const part = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(
        part(0.2),
        part(0.2),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        part(0.15),
        part(0.15),
        fc.double({ min: 0.01, max: 90, noNaN: true }),
        (
          alongArcOffsetDeg,
          acrossArcOffsetDeg,
          windStandardDeviationDeg,
          eastWestBoxDeg,
          northSouthBoxDeg,
          percent,
        ) => {
          const mount = {
            beamwidthDeg: 1.2,
            alongArcOffsetDeg,
            acrossArcOffsetDeg,
            windStandardDeviationDeg,
            eastWestBoxDeg,
            northSouthBoxDeg,
          };
          const { lossDb } = depointingLoss(mount, percent);
          expect(Math.abs(depointingExceedance(mount, lossDb) - percent)).toBeLessThan(1e-6);
          expect(depointingLoss(mount, percent / 2).lossDb).toBeGreaterThan(lossDb);
        },
      ),
      { numRuns: 60 },
    );
  });

  test.each([
    [{ beamwidthDeg: 0 }, 1, 'beamwidthDeg'],
    [{ beamwidthDeg: 1, windStandardDeviationDeg: -0.1 }, 1, 'windStandardDeviationDeg'],
    [{ beamwidthDeg: 1, eastWestBoxDeg: 10 }, 1, 'eastWestBoxDeg'],
    [{ beamwidthDeg: 1 }, 0, 'exceededPercent'],
    [{ beamwidthDeg: 1 }, Number.NaN, 'exceededPercent'],
  ])('refuses bad input %#', (mount, percent, parameter) => {
    const call = () => depointingLoss(mount, percent);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });
});

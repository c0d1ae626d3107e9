import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bivariateNormalExceedance } from '../../src/numeric/bivariateNormal.js';
import { normalExceedance } from '../../src/numeric/normal.js';
import { cell, referenceTable } from '../support/csv.js';

test('agrees with 30-digit integration', () => {
  const rows = referenceTable('numeric/bivariate-normal.csv');
  expect(rows).toHaveLength(14);
  for (const row of rows) {
    const expected = cell(row, 'probability');
    const got = bivariateNormalExceedance(cell(row, 'h'), cell(row, 'k'), cell(row, 'r'));
    expect(Math.abs(got / expected - 1), JSON.stringify(row)).toBeLessThan(2e-13);
  }
});

test('symmetric, between its bounds, and growing with correlation', () => {
  const value = fc.double({ min: -6, max: 6, noNaN: true });
  const correlation = fc.double({ min: -1, max: 1, noNaN: true });
  fc.assert(
    fc.property(value, value, correlation, (h, k, r) => {
      const joint = bivariateNormalExceedance(h, k, r);
      expect(joint).toBeCloseTo(bivariateNormalExceedance(k, h, r), 14);
      expect(joint).toBeLessThanOrEqual(normalExceedance(Math.max(h, k)) + 1e-14);
      expect(joint).toBeGreaterThanOrEqual(0);
      expect(bivariateNormalExceedance(h, k, r / 2 + 0.5)).toBeGreaterThanOrEqual(joint - 1e-14);
    }),
    { numRuns: 200 },
  );
});

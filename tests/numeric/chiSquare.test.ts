import { expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import { chiSquareExceedance } from '../../src/numeric/chiSquare.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('numeric/chi-square-tail.csv');

publishedTable({
  part: 'numeric',
  quantity: 'chi-square tail',
  unit: '',
  source: 'regularised incomplete gamma function at 30 digits (mpmath)',
  status: 'recomputed',
  limit: 1e-12,
  reason: 'double precision; up to 600 units in the exponent',
  relative: true,
  count: rows.length,
  cases: () =>
    rows.map((row) => ({
      name: `${row['degrees_of_freedom']} at ${row['x']}`,
      expected: cell(row, 'exceedance'),
      got: chiSquareExceedance(cell(row, 'x'), cell(row, 'degrees_of_freedom')),
    })),
});

test('starts at one and refuses what it cannot', () => {
  expect(chiSquareExceedance(0, 1)).toBe(1);
  expect(chiSquareExceedance(0, 6)).toBe(1);
  expect(() => chiSquareExceedance(-1, 3)).toThrow(DomainError);
  expect(() => chiSquareExceedance(1, 0)).toThrow(DomainError);
});

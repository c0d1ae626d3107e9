import { expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import { fExceedance, incompleteBeta, logGamma } from '../../src/numeric/beta.js';
import { studentExceedance } from '../../src/numeric/student.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const betas = referenceTable('numeric/incomplete-beta.csv');
const gammas = referenceTable('numeric/log-gamma.csv');

publishedTable({
  part: 'numeric',
  quantity: 'incomplete beta function',
  unit: '',
  source: 'mpmath at 30 digits',
  status: 'recomputed',
  limit: 1.8e-12,
  reason: 'double precision; logarithms of gamma up to 7000 lose four digits',
  relative: true,
  count: betas.length,
  cases: () =>
    betas.map((row) => ({
      name: `I(${row['x']}; ${row['a']}, ${row['b']})`,
      expected: cell(row, 'value'),
      got: incompleteBeta(cell(row, 'x'), cell(row, 'a'), cell(row, 'b')),
    })),
});

publishedTable({
  part: 'numeric',
  quantity: 'logarithm of gamma',
  unit: '',
  source: 'mpmath at 30 digits',
  status: 'recomputed',
  limit: 1e-13,
  reason: 'double precision',
  relative: true,
  count: 9,
  cases: () =>
    gammas.map((row) => ({
      name: `${row['x']}`,
      expected: cell(row, 'value'),
      got: logGamma(cell(row, 'x')),
    })),
});

test('F with one degree above is t squared', () => {
  for (const t of [0.3, 1, 2.5, 7])
    expect(fExceedance(t * t, 1, 8)).toBeCloseTo(2 * studentExceedance(t, 8), 12);
  expect(fExceedance(0, 3, 3)).toBe(1);
});

test('refuses what it cannot', () => {
  expect(() => incompleteBeta(1.1, 1, 1)).toThrow(DomainError);
  expect(() => incompleteBeta(0.5, 0, 1)).toThrow(DomainError);
  expect(() => logGamma(0)).toThrow(DomainError);
  expect(() => fExceedance(-1, 1, 1)).toThrow(DomainError);
});

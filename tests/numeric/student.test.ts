import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import {
  studentCoverageFactor,
  studentExceedance,
  studentProbability,
  studentQuantile,
} from '../../src/numeric/student.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const factors = referenceTable('numeric/student-factors.csv');
const columns = Object.keys(factors[0] ?? {}).filter((name) => name.includes('sided'));

publishedTable({
  part: 'numeric',
  quantity: 'Student t factor',
  unit: '',
  source: 'JCGM 100:2008 Table G.2, with six digits from scipy.stats.t',
  status: 'recomputed',
  limit: 5.1e-7,
  reason: 'last printed digit',
  count: 28 * 8,
  cases: () =>
    factors.flatMap((row) =>
      columns.map((column) => {
        const [, sides, percent] = /^(one|two)_sided_(.+)$/.exec(column) ?? [];
        const nu =
          row['degrees_of_freedom'] === 'infinity' ? Infinity : cell(row, 'degrees_of_freedom');
        const level = Number(percent) / 100;
        return {
          name: `${row['degrees_of_freedom']} ${column}`,
          expected: cell(row, column),
          got: sides === 'two' ? studentCoverageFactor(level, nu) : studentQuantile(level, nu),
        };
      }),
    ),
});

const tails = referenceTable('numeric/student-tail.csv');

publishedTable({
  part: 'numeric',
  quantity: 'Student t tail',
  unit: '',
  source: 'regularised incomplete beta function at 30 digits (mpmath)',
  status: 'recomputed',
  limit: 9e-13,
  reason:
    'double precision; the largest is 30 standard deviations out, where the exponent has 450 units',
  relative: true,
  count: tails.length,
  cases: () =>
    tails.map((row) => ({
      name: `${row['degrees_of_freedom']} at ${row['t']}`,
      expected: cell(row, 'exceedance'),
      got: studentExceedance(cell(row, 't'), cell(row, 'degrees_of_freedom')),
    })),
});

describe('Student t', () => {
  test('quantile and probability are inverse', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        (nu, p) => {
          expect(studentProbability(studentQuantile(p, nu), nu) / p).toBeCloseTo(1, 10);
          expect(studentProbability(1.3, nu) + studentExceedance(1.3, nu)).toBeCloseTo(1, 14);
        },
      ),
    );
  });

  test('one degree of freedom is the Cauchy distribution', () => {
    expect(studentExceedance(1, 1)).toBeCloseTo(0.25, 15);
    expect(studentQuantile(0.5, 3)).toBe(0);
  });

  test.each([
    ['degreesOfFreedom', () => studentExceedance(1, 0.5)],
    ['degreesOfFreedom', () => studentQuantile(0.5, Number.NaN)],
    ['probability', () => studentQuantile(0, 5)],
    ['probability', () => studentQuantile(95, 5)],
    ['coverageRatio', () => studentCoverageFactor(95, 5)],
  ])('refuses a bad %s', (parameter, call) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });
});

import { describe, expect, test } from 'vitest';
import {
  normalExceedance,
  normalExceedanceQuantile,
  normalProbability,
  normalQuantile,
} from '../../src/numeric/normal.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const table = referenceTable('numeric/normal.csv');

publishedTable({
  part: 'numeric',
  quantity: 'normal exceedance',
  unit: '',
  source: 'mpmath 1.3, 40 digits',
  status: 'recomputed',
  limit: 1e-13,
  reason: 'rounding z alone moves the tail by z^2 1.1e-16, 1e-13 at z = 30',
  relative: true,
  count: 23,
  cases: () =>
    table.map((row) => ({
      name: `z = ${row['z']}`,
      expected: cell(row, 'exceedance'),
      got: normalExceedance(cell(row, 'z')),
    })),
});

publishedTable({
  part: 'numeric',
  quantity: 'normal exceedance quantile',
  unit: '',
  source: 'mpmath 1.3, 40 digits',
  status: 'recomputed',
  limit: 5e-12,
  reason: 'near 1 the probability itself has few digits of the tail',
  count: 23,
  cases: () =>
    table.map((row) => ({
      name: `Q = ${row['exceedance']}`,
      expected: cell(row, 'z'),
      got: normalExceedanceQuantile(cell(row, 'exceedance')),
      ...(cell(row, 'z') === -6 ? { limit: 1e-7 } : {}),
    })),
});

describe('normal distribution', () => {
  test('probability and quantile undo each other', () => {
    for (const probability of [1e-12, 1e-6, 0.025, 0.3, 0.5, 0.8, 0.999])
      expect(normalProbability(normalQuantile(probability)) / probability).toBeCloseTo(1, 13);
  });
  test('the two tails mirror', () => {
    for (const z of [0, 0.3, 1, 2.5]) expect(normalProbability(-z)).toBe(normalExceedance(z));
  });
});

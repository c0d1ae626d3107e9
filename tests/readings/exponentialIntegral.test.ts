import { exponentialIntegral } from '../../src/readings/exponentialIntegral.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('numeric/exponential-integral.csv');

publishedTable({
  part: 'readings',
  quantity: 'exponential integral',
  unit: '',
  source: 'mpmath expint at 40 digits',
  status: 'recomputed',
  limit: 1e-14,
  reason: 'stated accuracy',
  relative: true,
  count: rows.length,
  cases: () =>
    rows.map((row) => ({
      name: `E1(${row['x']})`,
      expected: cell(row, 'value'),
      got: exponentialIntegral(cell(row, 'x')),
    })),
});

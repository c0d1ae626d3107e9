import { noncentralTProbability } from '../../src/numeric/noncentralT.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('numeric/noncentral-t.csv');

publishedTable({
  part: 'numeric',
  quantity: 'noncentral t probability',
  unit: '',
  source: 'mpmath quadrature of the definition, beside scipy.stats.nct',
  status: 'recomputed',
  limit: 1e-9,
  reason: 'stated accuracy',
  count: rows.length,
  cases: () =>
    rows.map((row) => ({
      name: `t ${row['t']}, ${row['degrees_of_freedom']} degrees of freedom, shift ${row['shift']}`,
      expected: cell(row, 'probability'),
      got: noncentralTProbability(
        cell(row, 't'),
        cell(row, 'degrees_of_freedom'),
        cell(row, 'shift'),
      ),
    })),
});

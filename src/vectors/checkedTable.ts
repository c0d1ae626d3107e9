/** The guard of a table of test vectors, which comes from a file. */

import { DomainError, finite, object, oneOf, text } from '../errors.js';
import { type Keys, known } from '../keys.js';
import type { VectorField, VectorTable } from './vectorTable.js';

/** A list out of a JSON file. */
function list<T>(parameter: string, value: readonly T[]): readonly T[] {
  if (Array.isArray(value)) return value;
  throw new DomainError({
    code: value === undefined || value === null ? 'missing' : 'malformed',
    parameter,
    received: value,
    allowed: 'a list',
  });
}

const TABLE_KEYS = {
  name: true,
  calls: true,
  source: true,
  status: true,
  licence: true,
  note: true,
  inputs: true,
  expected: true,
  rows: true,
} satisfies Keys<VectorTable>;
const FIELD_KEYS = { name: true, tolerance: true, compare: true } satisfies Keys<VectorField>;

const COMPARE = ['absolute', 'relative', 'direction', 'text'] as const;

/**
 * The table, if it has the form of one.
 *
 * @throws DomainError naming the place in it that is wrong.
 */
export function checkedTable(given: VectorTable): VectorTable {
  const table = known('table', object('table', given), TABLE_KEYS);
  text('table.name', table.name);
  for (const [index, name] of list('table.inputs', table.inputs).entries())
    text(`table.inputs[${index}]`, name);
  for (const [index, field] of list('table.expected', table.expected).entries()) {
    const at = `table.expected[${index}]`;
    text(`${at}.name`, known(at, object(at, field), FIELD_KEYS).name);
    finite(`${at}.tolerance`, field.tolerance);
    oneOf(`${at}.compare`, field.compare, COMPARE);
  }
  const width = table.inputs.length + table.expected.length;
  for (const [index, row] of list('table.rows', table.rows).entries()) {
    const cells = list(`table.rows[${index}]`, row);
    if (cells.length !== width)
      throw new DomainError({
        code: 'length-mismatch',
        parameter: `table.rows[${index}]`,
        received: cells.length,
        allowed: `${width} long, an entry for each input and expected field`,
      });
    for (const cell of cells)
      if (cell !== null && typeof cell !== 'string') finite(`table.rows[${index}]`, cell);
  }
  return table;
}

/** Columns of a batch call laid out for speed: one `Float64Array` per input, whatever was given. */

import { finite } from '../errors.js';
import type { Column } from './columns.js';

/**
 * The column as a `Float64Array` of `rows` values: the one given as it is, anything else copied.
 *
 * A loop over four dense columns runs about a tenth faster than one that asks in each row what it was given.
 *
 * @throws {@link DomainError} with the row of a value in a plain list that is not a finite number; the values of a
 *   typed array are left to the caller's own guards.
 */
export function denseColumn(parameter: string, column: Column, rows: number): Float64Array {
  if (column instanceof Float64Array) return column;
  if (typeof column === 'number') return new Float64Array(rows).fill(column);
  const dense = new Float64Array(rows);
  for (let row = 0; row < rows; row++)
    // A hole in the list is the caller's: the guard names its row.
    dense[row] = finite(parameter, column[row] as number, undefined, row);
  return dense;
}

/** Columns of a batch call: each input is one number for all rows or a list with one number per row. */

import { DomainError, list } from '../errors.js';

/** One number for all rows, or one per row. */
export type Column = number | ArrayLike<number>;

/** The error of the readers below, made apart from them so that they stay small enough for engines to build into the loops. */
const missing = (list: ArrayLike<unknown>, index: number) =>
  new RangeError(`No value at ${index} of ${list.length}`);

/**
 * The value of a list at an index that the caller knows to be within it: a slip of an index stops here instead of
 * going on as NaN.
 *
 * @throws RangeError where the list has no such value; never for an input that was checked.
 */
export function valueAt(list: ArrayLike<number>, index: number): number {
  const value = list[index];
  if (value === undefined) throw missing(list, index);
  return value;
}

/** The same for dense columns alone, which the inner loops read: a reader that meets one kind of list stays quick. */
export function denseAt(column: Float64Array, index: number): number {
  const value = column[index];
  if (value === undefined) throw missing(column, index);
  return value;
}

/** A list as a dense column, for those loops: itself where it is one. */
export const dense = (list: ArrayLike<number>): Float64Array =>
  list instanceof Float64Array ? list : new Float64Array(list);

/** The value of a list of anything: a row of a matrix, a part of a chain. */
export function entryAt<T>(list: readonly T[], index: number): T {
  const entry = list[index];
  if (entry === undefined) throw missing(list, index);
  return entry;
}

/** The same for values by name, such as the symbols of a formula. */
export function valueNamed(values: Readonly<Record<string, number>>, name: string): number {
  const value = values[name];
  if (value === undefined) throw new RangeError(`No value of ${name}`);
  return value;
}

/** Value of a column in a row, as the caller gave it: a guard around it says what is wrong with a hole. */
export function inRow(column: Column, row: number): number {
  return typeof column === 'number' ? column : (column[row] as number);
}

/**
 * How many rows the columns describe: the common length of the lists, 1 where all are single numbers.
 *
 * @throws {@link DomainError} `missing` for a column that is neither, `length-mismatch` naming the list whose length
 *   differs from the first one's, `empty` for lists without rows.
 */
export function rowCount(columns: Readonly<Record<string, Column>>): number {
  let rows: number | undefined;
  for (const [parameter, column] of Object.entries(columns)) {
    if (typeof column === 'number') continue;
    if (typeof column !== 'object' || column === null || !Number.isInteger(column.length))
      throw new DomainError({
        code: column === undefined || column === null ? 'missing' : 'malformed',
        parameter,
        received: column,
        allowed: 'a number or a list of numbers',
      });
    if (column.length === 0)
      throw new DomainError({
        code: 'empty',
        parameter,
        received: column,
        allowed: 'at least one row',
      });
    list(parameter, column);
    if (rows !== undefined && column.length !== rows)
      throw new DomainError({
        code: 'length-mismatch',
        parameter,
        received: column.length,
        allowed: `of the same length as the other columns (${rows} rows)`,
      });
    rows = column.length;
  }
  return rows ?? 1;
}

/**
 * The result column to write into: a new one, or the one given if it has room for every row.
 *
 * @throws {@link DomainError} `length-mismatch` for one that is too short, `malformed` for anything but a `Float64Array`.
 */
export function outColumn(
  parameter: string,
  given: Float64Array | undefined,
  rows: number,
): Float64Array {
  if (given === undefined) return new Float64Array(rows);
  if (!(given instanceof Float64Array))
    throw new DomainError({
      code: 'malformed',
      parameter,
      received: given,
      allowed: 'a Float64Array',
    });
  if (given.length !== rows)
    throw new DomainError({
      code: 'length-mismatch',
      parameter,
      received: given.length,
      allowed: `exactly ${rows} long`,
    });
  return given;
}

/**
 * The same for a column of codes or marks, which is set to 0.
 *
 * @throws {@link DomainError} as {@link outColumn}.
 */
export function outBytes(
  parameter: string,
  given: Uint8Array | undefined,
  rows: number,
): Uint8Array {
  if (given === undefined) return new Uint8Array(rows);
  if (given instanceof Uint8Array && given.length === rows) return given.fill(0);
  throw new DomainError({
    code: given instanceof Uint8Array ? 'length-mismatch' : 'malformed',
    parameter,
    received: given instanceof Uint8Array ? given.length : given,
    allowed: `a Uint8Array exactly ${rows} long`,
  });
}

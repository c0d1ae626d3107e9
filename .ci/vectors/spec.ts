/** How a committed table of reference values becomes a table of test vectors: names and units of the library for its columns. */

import { type CsvRow, cell } from '../../tests/support/csv.js';

/** A column by its name, or what is to be made of the row: a unit changed, a value that the table's head gives. */
export type From = string | ((row: CsvRow) => number | string);

/** An expected value: its column, the largest error and how it is measured. */
type Expected = readonly [
  from: From,
  tolerance: number,
  compare?: 'absolute' | 'relative' | 'direction' | 'text',
];

/** A table and its columns. */
export interface Spec {
  /** Committed table, in `tests/reference/`. */
  readonly file: string;
  /** Name of the vectors; that of the table where not given. */
  readonly name?: string;
  /** Where the values are from, for a table that has no head. */
  readonly source?: string;
  /** Which function of the library answers it, or what is to be computed in words. */
  readonly calls: string;
  readonly inputs: Readonly<Record<string, From>>;
  readonly expected: Readonly<Record<string, Expected>>;
  readonly status: 'published' | 'recomputed' | 'practice';
  readonly keep?: (row: CsvRow) => boolean;
  /** Rows that the table spreads over lines. */
  readonly rows?: (rows: readonly CsvRow[]) => readonly CsvRow[];
  /** What one who tests a formula must know besides. */
  readonly note?: string;
}

/** Kilometres of a column as metres. */
export const metres =
  (column: string): From =>
  (row) =>
    Number((cell(row, column) * 1000).toPrecision(15));
/** A text of a column. */
export const text =
  (column: string): From =>
  (row) =>
    row[column] ?? '';
/** A value that holds for all rows. */
export const always =
  (value: number | string): From =>
  () =>
    value;

/** Latitude, longitude and height under the names that most tables use. */
export const place = (latitude: string, longitude: string, height: string) => ({
  latitudeDeg: latitude,
  longitudeDeg: longitude,
  heightM: height,
});

/** Files that the command reads and writes: how DuckDB is told to. */

import { text } from './duckdb.js';
import { refuse } from './refuse.js';

export type FileKind = 'csv' | 'ndjson' | 'parquet';

const ENDINGS: Readonly<Record<string, FileKind>> = {
  csv: 'csv',
  tsv: 'csv',
  ndjson: 'ndjson',
  jsonl: 'ndjson',
  parquet: 'parquet',
};

/** Kind of a file by its ending. */
export function fileKind(parameter: string, path: string): FileKind {
  const ending = /\.([a-z]+)$/i.exec(path)?.[1]?.toLowerCase() ?? '';
  return (
    (Object.hasOwn(ENDINGS, ending) ? ENDINGS[ending] : undefined) ??
    refuse(parameter, path, `a path that ends in ${Object.keys(ENDINGS).join(', ')}`)
  );
}

const separator = (path: string) => (/\.tsv$/i.test(path) ? '\t' : ',');

/** Table function that reads a file. */
export function reading(kind: FileKind, path: string): string {
  // Text stays text: a column is not read as numbers because its first thousand fields are, and is written as it was.
  if (kind === 'csv')
    return `read_csv(${text(path)}, header = true, all_varchar = true, delim = ${text(separator(path))})`;
  // All lines are looked at before a type is chosen: a text among numbers makes no error.
  if (kind === 'ndjson')
    return `read_json(${text(path)}, format = 'newline_delimited', sample_size = -1)`;
  return `read_parquet(${text(path)})`;
}

/** How a part is written: the head of a CSV file stands in the first alone, so that parts can be put end to end. */
export function writing(kind: FileKind, path: string, first: boolean): string {
  if (kind === 'csv') return `(FORMAT csv, HEADER ${first}, DELIMITER ${text(separator(path))})`;
  return kind === 'ndjson' ? '(FORMAT json)' : '(FORMAT parquet)';
}

/** A column of whatever type as a number: NULL where the field is empty, NaN where it holds none. */
export const asNumber = (column: string) =>
  `CASE WHEN ${column} IS NULL THEN NULL ELSE coalesce(TRY_CAST(${column}::VARCHAR AS DOUBLE), 'NaN'::DOUBLE) END`;

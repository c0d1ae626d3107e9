/** Files that the command reads and writes: how DuckDB is told to. */

import { type CsvForm, csvForm, headOf } from './csvForm.js';
import { text } from './duckdb.js';
import { refuse } from './refuse.js';

type FileKind = 'csv' | 'ndjson' | 'parquet';

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

/** How a file is read and written. */
export type FileForm =
  | ({ readonly kind: 'csv' } & CsvForm)
  | { readonly kind: 'ndjson' | 'parquet' };

/** The form of a file by its ending and, if it is CSV, its head. */
export function fileForm(path: string, decimal: string | undefined): FileForm {
  const kind = fileKind('input', path);
  if (kind === 'csv') return { kind, ...csvForm(headOf(path), path, decimal) };
  if (decimal === undefined) return { kind };
  return refuse('--decimal', decimal, 'left out for a file that is no CSV');
}

/** Table function that reads a file. */
export function reading(form: FileForm, path: string): string {
  // Text stays text: a column is not read as numbers because its first thousand fields are, and is written as it was.
  if (form.kind === 'csv') {
    const columns = form.columns.map((name) => `${text(name)}: 'VARCHAR'`).join(', ');
    return `read_csv(${text(path)}, auto_detect = false, header = true, delim = ${text(form.separator)}, quote = '"', escape = '"', columns = {${columns}})`;
  }
  // All lines are looked at before a type is chosen: a text among numbers makes no error.
  if (form.kind === 'ndjson')
    return `read_json(${text(path)}, format = 'newline_delimited', sample_size = -1)`;
  return `read_parquet(${text(path)})`;
}

/** How a CSV file is written; the side file too, which has the form of the output. */
export const writingCsv = (form: FileForm, head: boolean) =>
  `(FORMAT csv, HEADER ${head}, DELIMITER ${text(form.kind === 'csv' ? form.separator : ',')})`;

/** How a part is written: the head of a CSV file stands in the first alone, so that parts can be put end to end. */
export function writing(form: FileForm, first: boolean): string {
  if (form.kind === 'csv') return writingCsv(form, first);
  return form.kind === 'ndjson' ? '(FORMAT json)' : '(FORMAT parquet)';
}

/** Whether numbers have a decimal comma. */
const withComma = (form: FileForm) => form.kind === 'csv' && form.decimal === 'comma';

/**
 * A column of whatever type as a number: NULL where the field is empty, NaN where it holds none. With decimal commas a point is none:
 * 1.234 would be a thousand and more to some.
 */
export function asNumber(form: FileForm, column: string): string {
  const [bad, digits] = withComma(form)
    ? [`WHEN contains(${column}, '.') THEN 'NaN'::DOUBLE `, `replace(${column}, ',', '.')`]
    : ['', `${column}::VARCHAR`];
  return `CASE WHEN ${column} IS NULL THEN NULL ${bad}ELSE coalesce(TRY_CAST(${digits} AS DOUBLE), 'NaN'::DOUBLE) END`;
}

/** A number as the file writes it. */
export const asWritten = (form: FileForm, number: string) =>
  withComma(form) ? `replace(${number}::VARCHAR, '.', ',')` : number;

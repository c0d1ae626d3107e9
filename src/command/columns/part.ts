/** One part of the rows: read as numbers, and written with what was added. */

import { renameSync } from 'node:fs';
import type { ComputedPart, ReadColumn } from './computePart.js';
import { type DuckChunk, type DuckConnection, type DuckDb, quoted, text } from './duckdb.js';
import type { ColumnsPlan } from './plan.js';
import { asNumber, asWritten, type FileForm, writing, writingCsv } from './source.js';

/** Rows of a part unless another number is asked for: seconds of work, a few megabytes. */
export const PART_ROWS = 50_000;
/** Most rows of a chunk of DuckDB. */
const CHUNK_ROWS = 2048;

/** Table of the source in the scratch database, and number of a row in it from 0. */
export const SOURCE = 'source';
const rowsOf = ({ part, partRows }: Pick<PartFiles, 'part' | 'partRows'>) =>
  `FROM ${SOURCE} s WHERE s.rowid >= ${part * partRows} AND s.rowid < ${(part + 1) * partRows}`;

/** Reads the columns of a part that the plan takes, each as numbers. */
export async function readPart(
  connection: DuckConnection,
  where: Pick<PartFiles, 'plan' | 'form' | 'part' | 'partRows'>,
  rows: number,
): Promise<readonly ReadColumn[]> {
  const { plan, form } = where;
  const values = plan.reads.map(() => new Float64Array(rows));
  const missing = plan.reads.map((): Uint8Array | null => null);
  if (plan.reads.length > 0) {
    const list = plan.reads.map((name) => asNumber(form, `s.${quoted(name)}`)).join(', ');
    const result = await connection.stream(`SELECT ${list} ${rowsOf(where)} ORDER BY s.rowid`);
    let from = 0;
    for (let chunk = await result.fetchChunk(); chunk?.rowCount; ) {
      for (const [place, column] of values.entries()) {
        const vector = chunk.getColumnVector(place);
        for (let row = 0; row < chunk.rowCount; row++) {
          const value = vector.getItem(row);
          if (value !== null) column[from + row] = Number(value);
          else {
            missing[place] ??= new Uint8Array(rows);
            (missing[place] as Uint8Array)[from + row] = 1;
          }
        }
      }
      from += chunk.rowCount;
      chunk = await result.fetchChunk();
    }
  }
  return values.map((column, place) => ({ values: column, missing: missing[place] ?? null }));
}

/** Puts columns into a temporary table. */
async function append(
  connection: DuckConnection,
  duckdb: DuckDb,
  table: string,
  columns: readonly (readonly [type: unknown, values: ArrayLike<unknown>])[],
): Promise<void> {
  const appender = await connection.createAppender(table, 'main', 'temp');
  const rows = columns[0]?.[1].length ?? 0;
  const types = columns.map(([type]) => type);
  let chunk: DuckChunk | undefined;
  for (let from = 0; from < rows; from += CHUNK_ROWS) {
    const count = Math.min(CHUNK_ROWS, rows - from);
    if (chunk?.rowCount !== count) chunk = duckdb.DuckDBDataChunk.create(types, count);
    for (const [place, [, values]] of columns.entries())
      chunk.setColumnValues(
        place,
        values instanceof Float64Array
          ? values.subarray(from, from + count)
          : Array.prototype.slice.call(values, from, from + count),
      );
    appender.appendDataChunk(chunk);
  }
  appender.closeSync();
}

/** SQL of an added column: empty where there is no answer, the word of a code. */
const addedSql = (form: FileForm, { name, words }: ColumnsPlan['adds'][number], place: number) =>
  words
    ? `CASE a.c${place} ${words.map((word, code) => (word === '' ? '' : `WHEN ${code} THEN ${text(word)}`)).join(' ')} END AS ${quoted(name)}`
    : `CASE WHEN isnan(a.c${place}) THEN NULL ELSE ${asWritten(form, `a.c${place}`)} END AS ${quoted(name)}`;

/** What the file holds where a field was refused. */
function receivedSql(plan: ColumnsPlan): string {
  const places = new Map<string, string>();
  for (const { fields } of plan.steps)
    for (const [field, source] of Object.entries(fields))
      if (source.kind === 'column') places.set(field, source.column);
  const list = [...places];
  const cases = (value: (column: string) => string) =>
    list.length === 0
      ? 'NULL'
      : `CASE b.field ${list.map(([field, column]) => `WHEN ${text(field)} THEN ${value(column)}`).join(' ')} END`;
  return `${cases(text)} AS "column", coalesce(${cases((column) => `s.${quoted(column)}::VARCHAR`)}, b.received) AS received`;
}

/** Writes a part and its refused rows; their names are given them when they are whole. */
export async function writePart(
  connection: DuckConnection,
  duckdb: DuckDb,
  files: PartFiles,
  { columns, badRows }: ComputedPart,
): Promise<void> {
  const { plan, form, part, path, badPath } = files;
  const first = part * files.partRows;
  const doubles = columns.map((_, place) => `c${place} DOUBLE`).join(', ');
  await connection.run(`CREATE OR REPLACE TEMP TABLE added("row" DOUBLE, ${doubles})`);
  await connection.run(
    'CREATE OR REPLACE TEMP TABLE bad("row" DOUBLE, field VARCHAR, received VARCHAR, code VARCHAR, reason VARCHAR)',
  );
  const rows = columns[0]?.length ?? 0;
  await append(connection, duckdb, 'added', [
    [duckdb.DOUBLE, Float64Array.from({ length: rows }, (_, row) => first + row)],
    ...columns.map((column) => [duckdb.DOUBLE, column] as const),
  ]);
  const texts = (key: 'field' | 'received' | 'code' | 'reason') =>
    [duckdb.VARCHAR, badRows.map((bad) => bad[key])] as const;
  await append(connection, duckdb, 'bad', [
    [duckdb.DOUBLE, Float64Array.from(badRows, ({ row }) => first + row)],
    texts('field'),
    texts('received'),
    texts('code'),
    texts('reason'),
  ]);
  await connection.run(
    `COPY (SELECT b."row"::BIGINT + 1 AS "row", b.field, ${receivedSql(plan)}, b.code, b.reason
     FROM temp.bad b JOIN (SELECT s.rowid AS place, s.* ${rowsOf(files)}) s ON s.place = b."row" ORDER BY b."row")
     TO ${text(`${badPath}.new`)} ${writingCsv(form, part === 0)}`,
  );
  // Both tables lie in the order of the rows, so they are laid side by side; the condition refuses to be wrong about it.
  const place = quoted('place of the row');
  const written = await connection.runAndReadAll(
    `COPY (SELECT s.* EXCLUDE (${place}), ${plan.adds.map((added, place) => addedSql(form, added, place)).join(', ')}
     FROM (SELECT s.rowid AS ${place}, s.* ${rowsOf(files)}) s POSITIONAL JOIN temp.added a WHERE s.${place} = a."row")
     TO ${text(`${path}.new`)} ${writing(form, part === 0)}`,
  );
  const count = Number(written.getRowsJson()[0]?.[0]);
  if (count !== rows) throw new Error(`part ${part}: ${count} of ${rows} rows were written`);
  renameSync(`${badPath}.new`, badPath);
  renameSync(`${path}.new`, path);
}

/** Where a part goes. */
export interface PartFiles {
  readonly plan: ColumnsPlan;
  readonly form: FileForm;
  readonly part: number;
  readonly partRows: number;
  readonly path: string;
  readonly badPath: string;
}

/** A run: the file into a scratch database, its parts through the workers, the parts to one file. */

import { existsSync } from 'node:fs';
import { type DuckConnection, type DuckDb, quoted, text } from './duckdb.js';
import { malformedFile } from './malformed.js';
import { readPart, SOURCE, writePart } from './part.js';
import type { ColumnsPlan } from './plan.js';
import { progressOf } from './progress.js';
import {
  closeScratch,
  fileFacts,
  joinFiles,
  openScratch,
  type Scratch,
  scratchOf,
} from './scratch.js';
import { type FileForm, reading } from './source.js';
import { startWorkers } from './workers.js';

/** Memory that DuckDB may take; what goes beyond it, it keeps on the disk. */
const MEMORY = '1GB';

export interface Run {
  readonly input: string;
  readonly output: string;
  readonly form: FileForm;
  readonly badOutput: string;
  readonly threads: number;
  /** Rows of a part: what a stop costs at most. */
  readonly partRows: number;
  /** The program of a worker. */
  readonly worker: URL;
  /** The plan, once the columns of the file are known. */
  readonly planFor: (columns: readonly string[]) => ColumnsPlan;
}

const firstRow = async (connection: DuckConnection, sql: string) =>
  (await connection.runAndReadAll(sql)).getRowsJson();

/** Waits for a file to be read; what DuckDB says of a bad one is told in a line. */
async function readable<T>(path: string, done: Promise<T>): Promise<T> {
  try {
    return await done;
  } catch (error) {
    throw malformedFile(path, error instanceof Error ? error.message : String(error));
  }
}

/** Names of the columns of a file, looked up before anything is written. */
async function columnsOf(
  duckdb: DuckDb,
  { form, input }: Run,
  source: string,
): Promise<readonly string[]> {
  if (form.kind === 'csv') return form.columns;
  const memory = await duckdb.DuckDBInstance.create(':memory:');
  const looking = await memory.connect();
  const described = await readable(input, firstRow(looking, `DESCRIBE SELECT * FROM ${source}`));
  looking.closeSync();
  memory.closeSync();
  return described.map(([name]) => String(name));
}

/** The side file: CSV, with the separator of the output. */
const badForm = (form: FileForm): FileForm => ({
  kind: 'csv',
  byteOrderMark: false,
  separator: form.kind === 'csv' ? form.separator : ',',
  decimal: 'point',
  columns: ['row', 'field', 'column', 'received', 'code', 'reason'],
});

/** Puts the parts together into the two files of the run; returns how many rows were refused. */
async function joinParts(
  main: DuckConnection,
  run: Run,
  { good, bad }: { readonly good: readonly string[]; readonly bad: readonly string[] },
): Promise<number> {
  await joinFiles(bad, run.badOutput);
  if (run.form.kind === 'parquet')
    await main.run(
      `COPY (SELECT * FROM read_parquet([${good.map(text).join(', ')}])) TO ${text(run.output)} (FORMAT parquet)`,
    );
  else {
    const marked = run.form.kind === 'csv' && run.form.byteOrderMark;
    await joinFiles(good, run.output, marked ? '\uFEFF' : '');
  }
  const [[refused] = []] = await firstRow(
    main,
    `SELECT count(*) FROM ${reading(badForm(run.form), run.badOutput)}`,
  );
  return Number(refused);
}

/** Opens the scratch database with the file in it. */
async function openSource(duckdb: DuckDb, run: Run, scratch: Scratch, source: string) {
  const database = await duckdb.DuckDBInstance.create(scratch.database, {
    threads: String(run.threads),
    memory_limit: MEMORY,
    temp_directory: `${scratch.folder}/spill`,
  });
  const main = await database.connect();
  try {
    // Compressing a table that is read once takes longer than reading and writing it.
    await main.run("SET force_compression = 'uncompressed'");
    await readable(
      run.input,
      main.run(`CREATE TABLE IF NOT EXISTS ${SOURCE} AS SELECT * FROM ${source}`),
    );
    return { database, main };
  } catch (error) {
    // Nothing of the run is worth keeping: the file must be mended first, and is another one then.
    main.closeSync();
    database.closeSync();
    closeScratch(scratch);
    throw error;
  }
}

/** Runs; returns what is to be said at the end. */
export async function runColumns(duckdb: DuckDb, run: Run): Promise<string> {
  const { form, partRows } = run;
  const source = reading(form, run.input);
  const facts = fileFacts(run.input);
  const plan = run.planFor(await columnsOf(duckdb, run, source));
  const scratch = scratchOf(run.output);
  const { goesOn } = openScratch(scratch, {
    input: run.input,
    ...facts,
    partRows,
    form,
    plan,
  });

  const { database, main } = await openSource(duckdb, run, scratch, source);
  const total = Number((await firstRow(main, `SELECT count(*) FROM ${SOURCE}`))[0]?.[0]);
  const parts = Math.max(1, Math.ceil(total / partRows));
  const rowsIn = (part: number) => Math.min(partRows, total - part * partRows);
  const open = Array.from({ length: parts }, (_, part) => part).filter(
    (part) => !existsSync(scratch.partPath(part)),
  );
  let done = total - open.reduce((sum, part) => sum + rowsIn(part), 0);
  let refused = 0;
  const progress = progressOf(total, done);
  progress.say(
    goesOn
      ? `goes on after ${done} of ${total} rows, ${run.threads} threads`
      : `${total} rows, ${run.threads} threads`,
  );

  const workers = startWorkers(run.worker, plan, run.threads);
  try {
    // Each lane reads, waits for a worker and writes; one lane more than workers, so that none waits for the disk.
    const lane = async () => {
      const connection = await database.connect();
      for (let part = open.shift(); part !== undefined; part = open.shift()) {
        const rows = rowsIn(part);
        const read = await readPart(connection, { plan, form, part, partRows }, rows);
        const computed = await workers.compute({ part, rows, read });
        const files = {
          plan,
          form,
          part,
          partRows,
          path: scratch.partPath(part),
          badPath: scratch.badPath(part),
        };
        await writePart(connection, duckdb, files, computed);
        done += rows;
        refused += computed.badRows.length;
        progress.rows(done, refused);
      }
      connection.closeSync();
    };
    await Promise.all(Array.from({ length: run.threads + 1 }, lane));
  } finally {
    await workers.end();
  }

  const list = (path: (part: number) => string) => Array.from({ length: parts }, (_, i) => path(i));
  const bad = await joinParts(main, run, {
    good: list(scratch.partPath),
    bad: list(scratch.badPath),
  });
  main.closeSync();
  database.closeSync();
  closeScratch(scratch);
  const added = plan.adds.map(({ name }) => quoted(name)).join(', ');
  return `${total} rows to ${run.output} with ${added}; ${bad} refused, see ${run.badOutput}\n`;
}

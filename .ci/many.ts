/**
 * A gate: files of many places through the command, and the single files in the engines, with few rows: `tsx .ci/many.ts [FOLDER]`, after a build.
 *
 * DuckDB is fetched into FOLDER, which is kept, by default one of the system's for temporary files. Where it cannot be fetched, that
 * is said and the gate passes: what needs no DuckDB is tested in `tests/command`.
 */

import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fetchInto } from './duckdb.js';

/** Rows of a file: twenty parts, so that the run is stopped in the middle. */
const ROWS = '20000';
/** Rows that an engine asks for. */
const ENGINE_ROWS = '20000';

const folder = resolve(process.argv[2] ?? join(tmpdir(), 'slantpath-many'));
const absent = fetchInto(folder, ['@duckdb/node-api']);
if (absent !== undefined)
  console.log(
    `LEFT OUT: files of many places and engines, because DuckDB cannot be fetched: ${absent}`,
  );
else {
  for (const kind of ['semicolons', 'ndjson', 'parquet'])
    execFileSync('npx', ['tsx', '.ci/columns.ts', folder, ROWS, kind], { stdio: 'inherit' });
  execFileSync(
    process.execPath,
    [resolve('.ci/engines/run.mjs'), resolve('dist/single'), folder, ENGINE_ROWS],
    { stdio: 'inherit' },
  );
}

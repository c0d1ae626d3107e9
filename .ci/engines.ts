/**
 * The single-file builds in a bare context, in SQLite and in DuckDB: `tsx .ci/engines.ts [FOLDER]`, after a build.
 *
 * What it needs besides (a Node with node:sqlite, DuckDB) is fetched into FOLDER, a temporary one where none is given: it is a
 * hundred megabytes that no other gate needs, so it stands in no list of dependencies.
 */

import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fetchInto } from './duckdb.js';

const folder = resolve(process.argv[2] ?? mkdtempSync(join(tmpdir(), 'slantpath-engines-')));
const absent = fetchInto(folder, ['node@24', '@duckdb/node-api']);
if (absent !== undefined)
  throw new Error(`a Node with node:sqlite and DuckDB cannot be fetched: ${absent}`);
execFileSync('npx', ['tsx', '.ci/single.ts'], { stdio: 'inherit' });
execFileSync(
  join(folder, 'node_modules', '.bin', 'node'),
  [resolve('.ci/engines/run.mjs'), resolve('dist/single'), folder],
  { stdio: 'inherit' },
);

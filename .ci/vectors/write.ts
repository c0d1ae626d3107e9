/** The test vectors as files: a JSON for each table, a list of them and of what was left out, and the runner in Python. */

import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { vectorTables } from './build.js';
import { LEFT_OUT } from './otherTables.js';

/** Writes everything into a folder; says how much. */
export function writeVectors(folder: string): { readonly tables: number; readonly rows: number } {
  const tables = vectorTables();
  for (const table of tables) {
    const path = `${folder}/${table.name}.json`;
    mkdirSync(dirname(path), { recursive: true });
    const { rows, ...rest } = table;
    // One row a line, so that a change shows in a comparison of two versions.
    const lines = rows.map((row) => JSON.stringify(row)).join(',\n');
    writeFileSync(
      path,
      `${JSON.stringify(rest, null, 1).slice(0, -2)},\n "rows": [\n${lines}\n]\n}\n`,
    );
  }
  const list = tables.map(({ name, calls, status, inputs, expected, rows }) => ({
    name,
    calls,
    status,
    inputs,
    expected: expected.map((field) => field.name),
    rows: rows.length,
  }));
  const index = { tables: list, leftOut: LEFT_OUT };
  writeFileSync(`${folder}/index.json`, `${JSON.stringify(index, null, 1)}\n`);
  copyFileSync('src/vectors/check.py', `${folder}/check.py`);
  return { tables: tables.length, rows: list.reduce((sum, { rows }) => sum + rows, 0) };
}

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { columnsRun } from '../../../src/command/columns/columnsCommand.js';
import { loadDuckDb } from '../../../src/command/columns/duckdb.js';
import { columnsPlan } from '../../../src/command/columns/plan.js';
import { progressOf } from '../../../src/command/columns/progress.js';
import {
  closeScratch,
  joinFiles,
  openScratch,
  scratchOf,
} from '../../../src/command/columns/scratch.js';
import { fileKind } from '../../../src/command/columns/source.js';
import { FILE, WORDS } from './sites.js';

/** The command on real files, with DuckDB and its workers, stopped and gone on with: `.ci/columns.ts`. */
const folder = mkdtempSync(join(tmpdir(), 'slantpath-columns-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('without DuckDB the command says how to install it', async () => {
  const absent = () => Promise.reject(new Error("Cannot find package '@duckdb/node-api'"));
  await expect(loadDuckDb(absent)).rejects.toMatchObject({
    code: 'missing',
    message:
      "@duckdb/node-api must be installed beside slantpath to read and write files: npm install @duckdb/node-api, got undefined; Cannot find package '@duckdb/node-api'",
  });
});

describe('files', () => {
  test('kinds by their endings', () => {
    expect(
      ['a.CSV', 'a.tsv', 'a.ndjson', 'a.jsonl', 'b/c.parquet'].map((path) =>
        fileKind('input', path),
      ),
    ).toEqual(['csv', 'csv', 'ndjson', 'ndjson', 'parquet']);
    expect(() => fileKind('input', 'a.xlsx')).toThrow('input must be a path that ends in csv');
  });

  test('words of the command', () => {
    const input = join(folder, 'sites.csv');
    writeFileSync(input, 'lat,lon\n');
    const worker = new URL('file:///worker.js');
    const run = columnsRun(
      [
        input,
        join(folder, 'out.csv'),
        '--add',
        'lookAngles,declination',
        'latitudeDeg=lat',
        '--threads',
        '3',
      ],
      worker,
    );
    expect(run).toMatchObject({ threads: 3, badOutput: join(folder, 'out.csv.bad.csv') });
    expect(() => columnsRun([input], worker)).toThrow('arguments must be INPUT OUTPUT --add');
    expect(() => columnsRun([input, 'out.parquet'], worker)).toThrow(
      'output must be a file of the same kind',
    );
    expect(() => columnsRun([input, input], worker)).toThrow(
      'output must be a path at which there is no file yet',
    );
    expect(() => columnsRun([input, 'out.csv', '--threads', '0'], worker)).toThrow(
      '--threads must be a whole number',
    );
    expect(() => columnsRun([input, 'out.csv', '--link', 'no.json'], worker)).toThrow(
      '--link must be a readable JSON file',
    );
  });

  test('a folder of another run is refused, one of the same goes on', () => {
    const scratch = scratchOf(join(folder, 'out.csv'));
    const facts = {
      input: 'a.csv',
      bytes: 10,
      changedAt: 1,
      partRows: 50_000,
      form: { kind: 'parquet' as const },
      plan: columnsPlan(['lookAngles'], WORDS, FILE),
    };
    expect(openScratch(scratch, facts)).toEqual({ goesOn: false });
    expect(openScratch(scratch, facts)).toEqual({ goesOn: true });
    expect(() => openScratch(scratch, { ...facts, bytes: 11 })).toThrow(
      'was it left by an earlier run',
    );
    closeScratch(scratch);
    expect(openScratch(scratch, { ...facts, bytes: 11 })).toEqual({ goesOn: false });
  });

  test('parts are put end to end', async () => {
    const paths = ['1', '2', '3'].map((name) => join(folder, name));
    for (const path of paths) writeFileSync(path, `${path.at(-1)}\n`);
    await joinFiles(paths, join(folder, 'all'));
    expect(readFileSync(join(folder, 'all'), 'utf8')).toBe('1\n2\n3\n');
  });
});

test('progress tells rows of this run alone by the second', () => {
  const lines: string[] = [];
  const write = process.stderr.write;
  process.stderr.write = ((line: string) => lines.push(line) > 0) as never;
  try {
    let now = 0;
    const progress = progressOf(1000, 400, () => now);
    now = 2000;
    progress.rows(600, 1);
    now = 6000;
    progress.rows(700, 2);
    progress.rows(1000, 3);
  } finally {
    process.stderr.write = write;
  }
  expect(lines.length).toBe(2);
  expect(lines[0]).toMatch(/^700 of 1,000 rows \(70 %\), 50 rows\/s, 6 s, [\d,]+ MB, 2 refused\n$/);
});

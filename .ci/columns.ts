/**
 * The command `slantpath columns` on a file of many places: `tsx .ci/columns.ts FOLDER ROWS [csv|semicolons|ndjson|parquet] [climate]`, after a build.
 *
 * Makes a file of invented places, a few of them bad, runs the command, stops it once and lets it go on, and compares a hundred
 * rows with the functions for one station. FOLDER has (or is given) `@duckdb/node-api`; COMMAND in the environment is another build.
 */

import { spawn } from 'node:child_process';
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { attenuationAt, climateAt } from 'slantpath/climate';
import { lookAngles, polarizationSkew } from 'slantpath/pointing';
import type { DuckDb } from '../src/command/columns/duckdb.js';
import { fetchInto } from './duckdb.js';

const [given = '', count = '100000', kind = 'csv', climate] = process.argv.slice(2);
const folder = resolve(given);
const rows = Number(count);
const command = resolve(process.env['COMMAND'] ?? 'dist/command/slantpath.js');
const SLOT = 16.4;
const PATH = { frequencyGHz: 12, tiltDeg: 45, diameterM: 0.9, exceededPercent: 0.1 };

const absent = fetchInto(folder, ['@duckdb/node-api']);
if (absent !== undefined) throw new Error(`DuckDB cannot be fetched: ${absent}`);
const found = createRequire(join(folder, 'here.js')).resolve('@duckdb/node-api');
const duckdb = (await import(pathToFileURL(found).href)) as DuckDb;
const connection = await (
  await duckdb.DuckDBInstance.create(':memory:', { threads: '1' })
).connect();
const ask = async (sql: string) => (await connection.runAndReadAll(sql)).getRowsJson();

const semicolons = kind === 'semicolons';
const ending = semicolons ? 'csv' : kind;
const input = join(folder, `places-${kind}-${rows}.${ending}`);
const output = join(folder, `places-${kind}-${rows}-out.${ending}`);
for (const path of [output, `${output}.bad.csv`, `${output}.parts`])
  rmSync(path, { force: true, recursive: true });
const format = {
  csv: 'csv, HEADER',
  semicolons: "csv, HEADER, DELIMITER ';'",
  ndjson: 'json',
  parquet: 'parquet',
}[kind];
/** A number in SQL as the file writes it. */
const written = (number: string) => (semicolons ? `replace(${number}::VARCHAR, '.', ',')` : number);
/** A field of the file as a number. */
const number = (field: string) => `replace(${field}::VARCHAR, ',', '.')::DOUBLE`;
if (!existsSync(input))
  // The hash of a row's number is the seed: the same places on every machine with this version of DuckDB.
  await connection.run(
    `COPY (SELECT i AS id,
       CASE WHEN i % 10007 = 5 THEN '95' WHEN i % 20011 = 7 THEN NULL WHEN i % 30011 = 11 THEN 'north'
         ELSE ${written("printf('%.5f', -55 + hash(i, 1) % 11000000 / 100000.0)")} END AS lat,
       ${written('round(-60 + hash(i, 2) % 14000000 / 100000.0, 5)')} AS lon, hash(i, 3) % 2500 AS alt, 'street ' || hash(i, 4) % 1000 AS street
     FROM range(${rows}) t(i)) TO '${input}' (FORMAT ${format})`,
  );
const badMade = [...Array(rows).keys()].filter(
  (i) => i % 10007 === 5 || i % 20011 === 7 || i % 30011 === 11,
).length;

const words = [
  'columns',
  input,
  output,
  '--add',
  climate ? 'lookAngles,polarizationSkew,attenuationAt' : 'lookAngles,polarizationSkew',
  ...['latitudeDeg=lat', 'longitudeDeg=lon', 'heightM=alt', `orbitalLongitudeDeg=${SLOT}`],
  ...['--part', String(Math.min(50_000, Math.ceil(rows / 20)))],
  ...(semicolons ? ['--decimal', 'comma'] : []),
  ...(climate ? Object.entries(PATH).map(([field, value]) => `${field}=${value}`) : []),
];

/** How much of the file is done, in percent: whole parts in the folder of the run. */
const donePercent = () => {
  const folder = `${output}.parts`;
  const parts = existsSync(folder) ? readdirSync(folder) : [];
  const whole = parts.filter((name) => name.startsWith('part-') && name.endsWith(ending));
  return (100 * whole.length) / Math.ceil(rows / Math.min(50_000, Math.ceil(rows / 20)));
};

/** Runs the command; stops it by force when so much of the file is done, where that is asked. */
function run(stopAtPercent?: number): Promise<void> {
  const begun = performance.now();
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [command, ...words], { cwd: folder });
    let most = 0;
    child.stdout.on('data', (text) => process.stdout.write(text));
    child.stderr.on('data', (data) => {
      const text = String(data);
      process.stdout.write(text);
      most = Math.max(most, Number(/ ([\d,]+) MB/.exec(text)?.[1]?.replaceAll(',', '') ?? 0));
    });
    const watching =
      stopAtPercent === undefined
        ? undefined
        : setInterval(() => {
            if (donePercent() >= stopAtPercent) child.kill('SIGKILL');
          }, 5);
    child.on('exit', (code, signal) => {
      clearInterval(watching);
      const seconds = (performance.now() - begun) / 1000;
      const percent = existsSync(output) ? 100 : donePercent();
      console.log(
        `ended by ${signal ?? code} after ${seconds.toFixed(0)} s with ${percent.toFixed(0)} % done, at most ${most} MB`,
      );
      if (signal === 'SIGKILL' || code === 0) done();
      else failed(new Error(`exit code ${code}`));
    });
  });
}
console.log(
  `${rows} rows, ${(statSync(input).size / 1e6).toFixed(0)} MB, ${badMade} of them bad; node ${process.version}`,
);
await run(30);
const stopped = !existsSync(output);
await run();

const reader = (path: string) =>
  ending === 'csv'
    ? `read_csv('${path}', header = true, all_varchar = true, delim = '${semicolons ? ';' : ','}')`
    : kind === 'ndjson'
      ? `read_json('${path}', format = 'newline_delimited', sample_size = -1)`
      : `'${path}'`;
const [[lines, refused, disorder] = []] = await ask(
  `SELECT count(*), count(*) FILTER (rowOutcome = 'refused'), count(*) FILTER (id::BIGINT <> place) FROM
     (SELECT *, row_number() OVER () - 1 AS place FROM ${reader(output)})`,
);
const sample = await ask(
  `SELECT ${['lat', 'lon', 'alt', 'elevationDeg', 'azimuthDeg', 'skewDeg'].map(number).join(', ')}, ${climate ? number('attenuationDb') : '0'}
   FROM (SELECT * FROM ${reader(output)} WHERE rowOutcome = 'computed') USING SAMPLE reservoir(100 ROWS) REPEATABLE (7)`,
);
// Attenuation refuses what stands within a tenth of a degree of the horizon besides.
const [[badFound] = []] = await ask(
  `SELECT count(*) FROM read_csv('${output}.bad.csv', all_varchar = true, header = true, delim = '${semicolons ? ';' : ','}') WHERE field = 'latitudeDeg'`,
);
let wrong = 0;
for (const row of sample) {
  const [latitudeDeg = 0, longitudeDeg = 0, heightM = 0, elevation, azimuth, skew, loss] =
    row.map(Number);
  const station = { latitudeDeg, longitudeDeg, heightM };
  const look = lookAngles(station, SLOT);
  const turn = polarizationSkew({ station, orbitalLongitudeDeg: SLOT });
  const same =
    look.kind === 'visible' &&
    look.elevationDeg === elevation &&
    look.azimuthDeg === azimuth &&
    turn.kind === 'visible' &&
    turn.skewDeg === skew &&
    (!climate ||
      attenuationAt(climateAt(station), { ...PATH, elevationDeg: look.elevationDeg })
        .attenuationDb === loss);
  if (!same) wrong++;
}
console.log(
  `${stopped ? 'stopped and gone on with' : 'NOT STOPPED'}; ${lines} rows in the output, ${refused} refused, ${badFound} of them for their latitude, ${disorder} out of order; ${sample.length} rows compared with the single functions, ${wrong} differ`,
);
if (
  !stopped ||
  Number(lines) !== rows ||
  Number(badFound) !== badMade ||
  Number(disorder) !== 0 ||
  wrong > 0
)
  process.exitCode = 1;

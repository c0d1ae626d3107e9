/**
 * Rows per second of the single-file builds in the engines that a firm has: `node run.mjs SINGLE MODULES [ROWS]`, with the
 * folder of the builds and one that has `@duckdb/node-api`; on a Node with node:sqlite, where that is to be tried. Started by `.ci/engines.ts` and,
 * with few rows, by `.ci/many.ts`.
 */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import vm from 'node:vm';

const [single, modules, rows = '200000'] = process.argv.slice(2);
const text = (group) => readFileSync(`${single}/${group}.js`, 'utf8');
const ROWS = Number(rows);
/** Processor time of all threads in seconds, so that a busy machine does not make an engine look slow. */
const now = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};
const print = (engine, what, rows, begin) => {
  const rate = (rows / (now() - begin)).toExponential(1);
  console.log(
    `${engine.padEnd(25)} ${what.padEnd(30)} ${String(rows).padStart(8)} rows ${rate} rows/s of processor time`,
  );
};
const fail = (message) => {
  console.error(message);
  process.exitCode = 1;
};

// A bare context: no console, no clock of the host, no modules; and none of the built-ins that came after ECMAScript 2020.
const context = vm.createContext(Object.create(null));
vm.runInContext(
  `delete Object.hasOwn; delete Array.prototype.at; delete String.prototype.at; delete String.prototype.replaceAll;
   delete Array.prototype.findLast; delete Array.prototype.toSorted; delete Array.prototype.flat;
   delete globalThis.structuredClone; delete globalThis.WeakRef; Object.getPrototypeOf(Int8Array).prototype.at = undefined;
   Date.now = undefined; Intl = undefined; Math.random = undefined;`,
  context,
);
for (const group of ['pointing', 'magnetic', 'propagation']) vm.runInContext(text(group), context);
const answer = vm.runInContext(
  `(() => {
    const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
    const climate = slantpath.propagation.climateAt(hut);
    return JSON.stringify([
      slantpath.pointing.lookAngles(hut, 16.4),
      slantpath.magnetic.magneticField(hut, 2026.5),
      slantpath.propagation.attenuationAt(climate, { frequencyGHz: 12, elevationDeg: 36, tiltDeg: 0, diameterM: 0.9, exceededPercent: 0.1 }),
    ]);
  })()`,
  context,
);
console.log(`bare context: ${answer.length} characters of results, first ${answer.slice(0, 90)}`);
if (!answer.includes('"elevationDeg":36.23')) fail('the bare context gives another elevation');
let begin = now();
vm.runInContext(
  `for (let i = 0; i < ${ROWS}; i++) slantpath.pointing.lookAngles({ latitudeDeg: -60 + i % 120, longitudeDeg: i % 360, heightM: 0 }, 16.4).elevationDeg;`,
  context,
);
print('bare context', 'look angles per row', ROWS, begin);
begin = now();
vm.runInContext(
  `for (let i = 0; i < ${ROWS / 100}; i++) slantpath.propagation.climateAt({ latitudeDeg: -60 + i % 120, longitudeDeg: i % 360, heightM: 0 });`,
  context,
);
print('bare context', 'climate per row, whole Earth', ROWS / 100, begin);

// What an engine calls: numbers in, a number or null out; a bad row is null, its reason in a function of its own.
const host = {};
for (const group of ['pointing', 'propagation'])
  vm.runInThisContext(`${text(group)};globalThis.slantpath = slantpath;`);
host.pointing = globalThis.slantpath.pointing;
host.propagation = globalThis.slantpath.propagation;
const look = (latitudeDeg, longitudeDeg, heightM, slot) => {
  if (latitudeDeg === null || longitudeDeg === null || heightM === null || slot === null)
    return null;
  return host.pointing.lookAngles({ latitudeDeg, longitudeDeg, heightM }, slot).elevationDeg;
};
const orNull =
  (compute) =>
  (...values) => {
    try {
      return compute(...values);
    } catch (error) {
      if (!host.pointing.isDomainError(error)) throw error;
      return null;
    }
  };
const reason = (...values) => {
  try {
    look(...values);
    return null;
  } catch (error) {
    return error.message;
  }
};

const { DatabaseSync } = await import('node:sqlite').catch(() => ({}));
if (DatabaseSync === undefined) console.log('node:sqlite: not in this Node, left out');
else {
  const database = new DatabaseSync(':memory:');
  database.function('elevation', { deterministic: true, varargs: true }, orNull(look));
  database.function('refusal', { deterministic: true, varargs: true }, reason);
  database.exec(
    `CREATE TABLE site AS WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < ${ROWS - 1})
     SELECT i, CASE i WHEN 5 THEN 116.2 WHEN 9 THEN NULL ELSE -60.0 + i % 120 END lat, i % 360 * 1.0 lon, 0.0 height FROM n`,
  );
  begin = now();
  const { total, missing } = database
    .prepare(
      'SELECT sum(e) total, sum(e IS NULL) missing FROM (SELECT elevation(lat, lon, height, 16.4) e FROM site)',
    )
    .get();
  print('SQLite (node:sqlite)', 'elevation per row', ROWS, begin);
  const bad = database
    .prepare(
      'SELECT i, refusal(lat, lon, height, 16.4) why FROM site WHERE refusal(lat, lon, height, 16.4) IS NOT NULL',
    )
    .all();
  console.log(
    `  sum ${total}, NULL in ${missing} rows; refused: ${bad.map(({ i, why }) => `row ${i}: ${why}`).join('; ')}`,
  );
  if (missing !== 2 || bad.length !== 1) fail('SQLite: other rows than 5 and 9 are NULL');
}

const duckdb = await import(createRequire(`${modules}/`).resolve('@duckdb/node-api')).catch(
  () => undefined,
);
if (duckdb === undefined) fail('@duckdb/node-api: not in the folder');
else {
  const { DuckDBInstance, DuckDBScalarFunction, DOUBLE } = duckdb;
  const connection = await (await DuckDBInstance.create(':memory:')).connect();
  const register = (name, count, mainFunction) =>
    connection.registerScalarFunction(
      DuckDBScalarFunction.create({
        name,
        mainFunction,
        returnType: DOUBLE,
        parameterTypes: Array.from({ length: count }, () => DOUBLE),
        // The function sees NULL itself, so that a row without a height is marked and not passed over.
        specialHandling: true,
      }),
    );
  const write = (output, values) => {
    for (const [row, value] of values.entries())
      output.setItem(row, Number.isNaN(value) ? null : value);
    output.flush();
  };
  register('elevation_row', 4, (_info, input, output) => {
    const columns = input.getColumns();
    const one = orNull(look);
    write(
      output,
      columns[0].map((_, row) => one(...columns.map((column) => column[row])) ?? Number.NaN),
    );
  });
  let refused = [];
  register('elevation_chunk', 4, (_info, input, output) => {
    const [latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg] = input.getColumns();
    const marked = host.pointing.markBadRows(host.pointing.lookAnglesBatch, {
      latitudeDeg,
      longitudeDeg,
      heightM,
      orbitalLongitudeDeg,
    });
    refused.push(...marked.badRows.map(({ message }) => message));
    write(output, marked.columns.elevationDeg ?? new Float64Array(input.rowCount).fill(Number.NaN));
  });
  register('rain_chunk', 5, (_info, input, output) => {
    const [latitudeDeg, heightM, rainRate001MmPerH, frequencyGHz, elevationDeg] =
      input.getColumns();
    const marked = host.propagation.markBadRows(host.propagation.rainAttenuationBatch, {
      latitudeDeg,
      heightM,
      rainHeightKm: 3,
      rainRate001MmPerH,
      frequencyGHz,
      elevationDeg,
      tiltDeg: 0,
      exceededPercent: 0.01,
    });
    write(
      output,
      marked.columns.attenuationDb ?? new Float64Array(input.rowCount).fill(Number.NaN),
    );
  });
  await connection.run(
    `CREATE TABLE site AS SELECT i, CASE i WHEN 5 THEN 116.2 WHEN 9 THEN NULL ELSE -60.0 + i % 120 END::DOUBLE lat,
     (i % 360)::DOUBLE lon, 0.0::DOUBLE height FROM range(${5 * ROWS}) r(i)`,
  );
  const ask = async (name, sql, rows) => {
    begin = now();
    const result = await connection.runAndReadAll(sql);
    print('DuckDB (@duckdb/node-api)', name, rows, begin);
    return result.getRows()[0];
  };
  const many = 5 * ROWS;
  await ask('plain sum, no function', 'SELECT sum(lat + lon), 0 FROM site', many);
  const perRow = await ask(
    'elevation per row',
    'SELECT sum(e), count(*) - count(e) FROM (SELECT elevation_row(lat, lon, height, 16.4) e FROM site)',
    many,
  );
  refused = [];
  const perChunk = await ask(
    'elevation per chunk',
    'SELECT sum(e), count(*) - count(e) FROM (SELECT elevation_chunk(lat, lon, height, 16.4) e FROM site)',
    many,
  );
  console.log(
    `  sums ${perRow[0]} and ${perChunk[0]}, NULL in ${perRow[1]} and ${perChunk[1]} rows; refused: ${refused.join('; ')}`,
  );
  if (Number(perChunk[1]) !== 2 || Number(perRow[1]) !== 2)
    fail('DuckDB: other rows than 5 and 9 are NULL');
  await ask(
    'rain attenuation per chunk',
    'SELECT sum(rain_chunk(lat, height, 35, 12, 36)), 0 FROM site',
    many,
  );
}

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { attenuationAt, climateAt } from 'slantpath/climate';
import { availabilityForMargin, dvbMode, type LinkBudgetInput, rainFade } from 'slantpath/link';
import { magneticField, trueToMagneticBearing } from 'slantpath/magnetic';
import { lookAngles, polarizationSkew } from 'slantpath/pointing';
import { afterAll, describe, expect, test } from 'vitest';
import { columnsRun } from '../../src/command/columns/columnsCommand.js';
import { computePart, type ReadColumn } from '../../src/command/columns/computePart.js';
import { loadDuckDb } from '../../src/command/columns/duckdb.js';
import { columnsPlan, ROW_OUTCOMES } from '../../src/command/columns/plan.js';
import { progressOf } from '../../src/command/columns/progress.js';
import {
  closeScratch,
  joinFiles,
  openScratch,
  scratchOf,
} from '../../src/command/columns/scratch.js';
import { fileKind } from '../../src/command/columns/source.js';
import { runs } from '../support/runs.js';

/** The command on real files, with DuckDB and its workers, stopped and gone on with: `.ci/columns.ts`. */
const folder = mkdtempSync(join(tmpdir(), 'slantpath-columns-'));
afterAll(() => rmSync(folder, { recursive: true }));

const FILE = ['id', 'lat', 'lon', 'alt'];
const WORDS = {
  latitudeDeg: 'lat',
  longitudeDeg: 'lon',
  heightM: 'alt',
  orbitalLongitudeDeg: '16.4',
};
const LINK: LinkBudgetInput = {
  carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 2/3') },
  downlink: { eirpDbw: 52, frequencyGHz: 12, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
  receiver: { diameterM: 0.6, noiseFigureDb: 0.8 },
};

/** The lowest path that attenuationAt takes, ITU-R P.618; lower ones are refused. */
const LOWEST_RAIN_PATH_DEG = 0.1;

const read = (values: readonly (number | null)[]): ReadColumn => ({
  values: Float64Array.from(values, (value) => value ?? 0),
  missing: values.includes(null)
    ? Uint8Array.from(values, (value) => Number(value === null))
    : null,
});

test('without DuckDB the command says how to install it', async () => {
  const absent = () => Promise.reject(new Error("Cannot find package '@duckdb/node-api'"));
  await expect(loadDuckDb(absent)).rejects.toMatchObject({
    code: 'missing',
    message:
      "@duckdb/node-api must be installed beside slantpath to read and write files: npm install @duckdb/node-api, got undefined; Cannot find package '@duckdb/node-api'",
  });
});

describe('plan', () => {
  test('takes fields from words, from earlier functions and from columns of their name', () => {
    const plan = columnsPlan(
      ['lookAngles', 'rainAttenuation'],
      {
        latitudeDeg: 'lat',
        longitudeDeg: 'lon',
        orbitalLongitudeDeg: '16.4',
        frequencyGHz: '12',
        tiltDeg: '0',
        exceededPercent: '1e-1',
        rainHeightKm: '3',
        'rainAttenuation.rainRate001MmPerH': 'rain',
      },
      ['lat', 'lon', 'heightM', 'rain'],
    );
    expect(plan.reads).toEqual(['lat', 'lon', 'heightM', 'rain']);
    expect(plan.steps[1]?.fields).toMatchObject({
      elevationDeg: { kind: 'result', name: 'elevationDeg' },
      heightM: { kind: 'column', column: 'heightM' },
      rainRate001MmPerH: { kind: 'column', column: 'rain' },
      exceededPercent: { kind: 'number', value: 0.1 },
    });
    expect(plan.adds.map(({ name }) => name)).toEqual([
      'azimuthDeg',
      'elevationDeg',
      'slantRangeKm',
      'rainDb',
      'rainAttenuationOutsideStatedRange',
      'rowOutcome',
    ]);
  });

  test.each([
    [['lookAngle'], WORDS, '--add must be one of lookAngles'],
    [['toString'], WORDS, '--add must be one of lookAngles'],
    [[], WORDS, '--add must be one of lookAngles'],
    [
      ['lookAngles'],
      { ...WORDS, heightM: 'height' },
      'heightM must be a number or a column of the file (id, lat, lon, alt)',
    ],
    [
      ['lookAngles'],
      { latitudeDeg: 'lat' },
      'longitudeDeg must be given for lookAngles: longitudeDeg=COLUMN',
    ],
    [
      ['lookAngles'],
      { ...WORDS, tiltDeg: '3' },
      'arguments must be a field that one of lookAngles takes, got "tiltDeg"',
    ],
    [
      ['lookAngles', 'lookAngles'],
      WORDS,
      '--add must be columns that the file or an earlier function does not have',
    ],
    [['availability'], WORDS, '--link must be a file with the link for availability'],
  ])('refuses %j', (names, words, message) => {
    expect(() => columnsPlan(names as string[], words as never, FILE)).toThrow(message);
  });

  test('refuses to write over a column of the file', () => {
    expect(() => columnsPlan(['lookAngles'], WORDS, [...FILE, 'AzimuthDeg'])).toThrow(
      '"azimuthDeg"',
    );
  });
});

describe('part', () => {
  test('each row is what the single functions give; bad and hidden rows stay empty', () => {
    const rows = runs(400);
    const latitudes = Array.from({ length: rows }, (_, i) =>
      i % 50 === 7
        ? 95
        : i % 50 === 9
          ? null
          : i % 50 === 11
            ? Number.NaN
            : -60 + ((i * 7.31) % 120),
    );
    const longitudes = Array.from({ length: rows }, (_, i) => -80 + ((i * 13.7) % 180));
    const plan = columnsPlan(
      ['lookAngles', 'polarizationSkew', 'declination', 'trueToMagneticBearing', 'attenuationAt'],
      {
        ...WORDS,
        'polarizationSkew.tiltDeg': '3',
        heightM: '0',
        decimalYear: '2026.5',
        frequencyGHz: '12',
        tiltDeg: '45',
        diameterM: '0.9',
        exceededPercent: '0.1',
      },
      FILE,
    );
    const { columns, badRows } = computePart(plan, rows, [read(latitudes), read(longitudes)]);
    const at = (name: string, row: number) =>
      columns[plan.adds.findIndex((added) => added.name === name)]?.[row];
    let refused = 0;
    for (let row = 0; row < rows; row++) {
      const latitudeDeg = latitudes[row] ?? Number.NaN;
      const outcome = ROW_OUTCOMES[at('rowOutcome', row) ?? 0];
      if (!(Math.abs(latitudeDeg) <= 90)) {
        refused++;
        expect(outcome).toBe('refused');
        expect(at('elevationDeg', row)).toBeNaN();
        expect(badRows.find((bad) => bad.row === row)).toMatchObject({
          field: 'latitudeDeg',
          code:
            latitudes[row] === null
              ? 'missing'
              : latitudeDeg === 95
                ? 'out-of-range'
                : 'not-a-number',
        });
        continue;
      }
      const station = { latitudeDeg, longitudeDeg: longitudes[row] ?? 0, heightM: 0 };
      const look = lookAngles(station, 16.4);
      const declinationDeg = magneticField(station, 2026.5).declinationDeg;
      expect(at('declinationDeg', row)).toBe(declinationDeg);
      expect(at('elevationDeg', row)).toBe(look.elevationDeg);
      if (look.kind === 'below-horizon') {
        expect(outcome).toBe('below-horizon');
        expect(at('attenuationDb', row)).toBeNaN();
        continue;
      }
      if (look.elevationDeg < LOWEST_RAIN_PATH_DEG) {
        refused++;
        // The satellite is up, but too low for the rain methods: the single function refuses too.
        expect(outcome).toBe('refused');
        expect(badRows.find((bad) => bad.row === row)).toMatchObject({
          field: 'elevationDeg',
          code: 'out-of-range',
        });
        continue;
      }
      expect(outcome).toBe('computed');
      if (look.kind !== 'visible') continue;
      expect(at('magneticBearingDeg', row)).toBe(
        trueToMagneticBearing({ azimuthDeg: look.azimuthDeg, declinationDeg }),
      );
      const skew = polarizationSkew({
        station,
        orbitalLongitudeDeg: 16.4,
        polarization: { kind: 'linear', tiltDeg: 3 },
      });
      if (skew.kind === 'visible') expect(at('skewDeg', row)).toBe(skew.skewDeg);
      const path = {
        frequencyGHz: 12,
        elevationDeg: look.elevationDeg,
        tiltDeg: 45,
        diameterM: 0.9,
        exceededPercent: 0.1,
      };
      expect(at('attenuationDb', row)).toBe(attenuationAt(climateAt(station), path).attenuationDb);
    }
    expect(badRows.length).toBe(refused);
  });

  test('a row refused by a later function keeps what earlier ones gave', () => {
    const plan = columnsPlan(
      ['lookAngles', 'rainAttenuation'],
      {
        ...WORDS,
        frequencyGHz: '12',
        tiltDeg: '0',
        exceededPercent: '0.1',
        rainHeightKm: '3',
        rainRate001MmPerH: 'id',
      },
      FILE,
    );
    const { columns, badRows } = computePart(
      plan,
      2,
      [
        [46, 46],
        [9, 9],
        [0, 0],
        [35, -1],
      ].map(read),
    );
    expect(columns[1]?.[1]).toBe(columns[1]?.[0]);
    expect([...(columns[3] ?? [])].map(Number.isNaN)).toEqual([false, true]);
    expect([...(columns[4] ?? [])]).toEqual([0, Number.NaN]);
    expect([...(columns[5] ?? [])]).toEqual([0, 1]);
    expect(badRows).toMatchObject([
      { row: 1, field: 'rainRate001MmPerH', received: '-1', code: 'out-of-range' },
    ]);
  });

  test('availability takes what stands in the file and says better or worse in a word', () => {
    const file = [
      'latitudeDeg',
      'heightM',
      'rainHeightKm',
      'rainRate001MmPerH',
      'elevationDeg',
      'diameterM',
    ];
    const plan = columnsPlan(
      ['availability'],
      { tiltDeg: '0', 'availability.diameterM': 'diameterM' },
      file,
      LINK,
    );
    const columns = [
      [46.4, 1.2, 1.2],
      [1900, 20, 20],
      [2.9, 4.9, 4.9],
      [35, 95, 95],
      [36, 60, 60],
      [0.6, 0.6, 0.1],
    ];
    const computed = computePart(plan, 3, columns.map(read));
    expect(plan.adds.map(({ name }) => name)).toEqual([
      'marginDb',
      'availabilityExceededPercent',
      'availabilityOutcome',
      'rowOutcome',
    ]);
    for (const row of [0, 1, 2]) {
      const [
        latitudeDeg = 0,
        heightM = 0,
        rainHeightKm = 0,
        rainRate001MmPerH = 0,
        elevationDeg = 0,
        diameterM = 0,
      ] = columns.map((column) => column[row] ?? 0);
      const path = {
        latitudeDeg,
        heightM,
        rainHeightKm,
        rainRate001MmPerH,
        elevationDeg,
        tiltDeg: 0,
        frequencyGHz: 12,
      };
      const one = availabilityForMargin({
        link: { ...LINK, receiver: { ...LINK.receiver, diameterM } },
        fade: rainFade(path),
      });
      expect(computed.columns[1]?.[row]).toBe(one.exceededPercent);
      expect(plan.adds[2]?.words?.[computed.columns[2]?.[row] ?? -1]).toBe(one.kind);
    }
  });

  test('a number for all rows that is out of range ends the run, and no rows are no error', () => {
    const plan = (slot: string) => columnsPlan(['lookAngles'], { ...WORDS, heightM: slot }, FILE);
    expect(() =>
      computePart(
        plan('200000'),
        2,
        [
          [46, 46],
          [9, 9],
        ].map(read),
      ),
    ).toThrow('heightM');
    expect(
      computePart(plan('0'), 0, [[], []].map(read)).columns.map(({ length }) => length),
    ).toEqual([0, 0, 0, 0]);
  });

  test('numbers alone give every row the same', () => {
    const plan = columnsPlan(
      ['lookAngles'],
      { latitudeDeg: '46', longitudeDeg: '9', heightM: '0', orbitalLongitudeDeg: '16.4' },
      FILE,
    );
    expect(new Set(computePart(plan, 3, []).columns[1]).size).toBe(1);
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

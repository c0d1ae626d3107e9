/** The test vectors: made of committed tables alone, met by the library, and quick to name the slips of others. */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { lookAngles } from 'slantpath/pointing';
import { checkVectors, type VectorQuestion, type VectorTable } from 'slantpath/vectors';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { unaccounted, vectorTables } from '../../.ci/vectors/build.js';
import { writeVectors } from '../../.ci/vectors/write.js';
import { vectorsCommand } from '../../src/command/vectorsCommand.js';
import { OWN } from './own.js';

const tables = vectorTables();
const named = (name: string): VectorTable => {
  const table = tables.find((one) => one.name === name);
  if (!table) throw new Error(`no table ${name}`);
  return table;
};

describe('the tables', () => {
  test('each committed table has vectors or a reason', () => expect(unaccounted()).toEqual([]));

  test('nothing that makes them computes with the library', () => {
    const files = readdirSync('.ci/vectors').map((file) =>
      readFileSync(`.ci/vectors/${file}`, 'utf8'),
    );
    const imports = files.flatMap((text) =>
      [...text.matchAll(/from '([^']+)'/g)].map((found) => found[1] ?? ''),
    );
    expect(imports.length).toBeGreaterThan(10);
    for (const from of imports)
      expect(from).toMatch(/^node:|^\.\/|tests\/support\/(csv|worked)\.js$|vectorTable\.js$/);
  });

  test('names, rows and sources are whole', () => {
    expect(new Set(tables.map(({ name }) => name)).size).toBe(tables.length);
    for (const { name, source, inputs, expected, rows } of tables) {
      expect(source.length, name).toBeGreaterThan(20);
      expect(rows.length, name).toBeGreaterThan(0);
      for (const row of rows) expect(row.length, name).toBe(inputs.length + expected.length);
    }
  });

  test.each(
    tables.filter(({ calls }) => calls in OWN).map((table) => [table.name, table] as const),
  )('the library conforms: %s', (_name, table) => {
    const own = OWN[table.calls];
    // The layers of the air take a while: all rows are met by the tests of propagation.
    const rows = table.rows.slice(0, table.calls === 'gasSlantAttenuation' ? 2 : undefined);
    const report = checkVectors({ ...table, rows }, (questions) =>
      questions.map((one) => own?.(one) as never),
    );
    expect(report.fields.filter(({ badCount }) => badCount > 0)).toEqual([]);
    expect(report.kind).toBe('conforms');
  });

  test('every function of the library that they name is asked', () => {
    const called = tables
      .map(({ calls }) => calls)
      .filter((calls) => /^[a-z]+[A-Z]\w+$/.test(calls));
    expect(called.filter((calls) => !(calls in OWN))).toEqual([]);
    expect(new Set(called).size).toBeGreaterThan(35);
  });
});

/** Look angles on a sphere as a person writes them down, with room for a slip. */
function foreign(q: VectorQuestion, slip: string) {
  const degree = slip === 'radians-in' ? 1 : Math.PI / 180;
  const sense = slip === 'input-sign' ? -1 : 1;
  const latitude = Number(q['latitudeDeg']) * degree;
  const turn = (Number(q['orbitalLongitudeDeg']) - sense * Number(q['longitudeDeg'])) * degree;
  const ratio =
    ((slip === 'input-unit' ? 0.001 : 1) * Number(q['earthRadiusKm'])) / Number(q['orbitRadiusKm']);
  const cosine = Math.cos(latitude) * Math.cos(turn);
  const elevation = Math.atan2(cosine - ratio, Math.sqrt(1 - cosine ** 2)) * (180 / Math.PI);
  const azimuth =
    Math.atan2(Math.sin(turn), -Math.sin(latitude) * Math.cos(turn)) * (180 / Math.PI);
  const rest = 1 + ratio ** 2 - 2 * ratio * cosine;
  return {
    azimuthDeg:
      slip === 'half-turn' ? azimuth + 180 : slip === 'other-sense' ? 360 - azimuth : azimuth,
    elevationDeg:
      slip === 'sign'
        ? -elevation
        : slip === 'constant'
          ? elevation + 0.5
          : slip === 'radians-out'
            ? elevation * (Math.PI / 180)
            : elevation,
    slantRangeKm: (slip === 'factor' ? 1000 : 1) * Number(q['orbitRadiusKm']) * Math.sqrt(rest),
  };
}

describe('a foreign formula', () => {
  const sphere = named('pointing/spherical-look-angles');

  test('that is right conforms, one that knows nothing is not scolded', () => {
    const right = checkVectors(sphere, (questions) => questions.map((q) => foreign(q, '')));
    expect(right.kind).toBe('conforms');
    expect(checkVectors(sphere, (questions) => questions.map(() => null)).kind).toBe(
      'not-answered',
    );
  });

  test.each([
    'sign',
    'half-turn',
    'other-sense',
    'constant',
    'factor',
    'radians-out',
    'radians-in',
    'input-sign',
    'input-unit',
  ])('that is wrong by %s is told so', (slip) => {
    const report = checkVectors(sphere, (questions) => questions.map((q) => foreign(q, slip)));
    expect(report.kind).toBe('does-not-conform');
    const slips = report.fields.flatMap((field) => field.slip?.slip ?? []);
    expect(slips.length).toBeGreaterThan(0);
    expect(new Set(slips)).toEqual(new Set([slip]));
  });

  test('that swaps latitude and longitude is told so', () => {
    const table = named('pointing/look-angles-wgs84');
    const report = checkVectors(table, (questions) =>
      questions.map((q) => {
        const latitudeDeg = Number(q['longitudeDeg']);
        const longitudeDeg = Number(q['latitudeDeg']);
        if (Math.abs(latitudeDeg) > 90) return null;
        const station = { latitudeDeg, longitudeDeg, heightM: Number(q['heightM']) };
        return lookAngles(station, Number(q['orbitalLongitudeDeg']));
      }),
    );
    expect(report.fields.map((field) => field.slip?.slip)).toContain('swapped');
  });

  test('of a wrong number of answers is refused', () => {
    expect(() => checkVectors(sphere, () => [])).toThrow(
      expect.objectContaining({ code: 'length-mismatch' }),
    );
    expect(() => checkVectors({} as never, () => [])).toThrow(
      expect.objectContaining({ parameter: 'table.name' }),
    );
    expect(() => checkVectors(sphere, undefined as never)).toThrow(
      expect.objectContaining({ parameter: 'ask' }),
    );
  });
});

describe('programs of others', () => {
  const folder = mkdtempSync(join(tmpdir(), 'slantpath-vectors-'));
  const wrong = join(folder, 'wrong.mjs');
  beforeAll(() => {
    writeVectors(folder);
    // The last step, from radians to degrees, is missing.
    writeFileSync(
      wrong,
      `import { readFileSync } from 'node:fs';
for (const line of readFileSync(0, 'utf8').trim().split('\\n')) {
  const { calls, input } = JSON.parse(line);
  const cosine = Math.cos(input.latitudeDeg * Math.PI / 180) * Math.cos((input.orbitalLongitudeDeg - input.longitudeDeg) * Math.PI / 180);
  const elevationDeg = Math.atan2(cosine - input.earthRadiusKm / input.orbitRadiusKm, Math.sqrt(1 - cosine * cosine));
  console.log(JSON.stringify(calls === 'sphericalLookAngles' ? { elevationDeg } : null));
}`,
    );
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('the command names the slip of a program that answers JSON lines', () => {
    const name = 'pointing/spherical-look-angles';
    const address = new URL(`file://${folder}/`);
    const { text, conforms } = vectorsCommand(
      ['--table', name, '--', process.execPath, wrong],
      address,
    );
    expect(conforms).toBe(false);
    expect(text).toMatch(/does not conform/);
    expect(text).toMatch(/slip: elevationDeg comes out in radians/);
    expect(vectorsCommand(['--list'], address).text).toContain(name);
    expect(() => vectorsCommand(['--table', 'none', '--', 'x'], address)).toThrow(
      expect.objectContaining({ parameter: '--table' }),
    );
    expect(() => vectorsCommand([], address)).toThrow(
      expect.objectContaining({ parameter: 'arguments' }),
    );
  });

  const python = spawnSync('python3', ['--version']).status === 0;
  test.skipIf(!python)(
    'the runner in Python finds the same rows wrong (skipped where python3 is missing)',
    () => {
      const script = `
import sys
sys.path.insert(0, ${JSON.stringify(folder)})
import check, json, math
one = check.table("pointing/spherical-look-angles")
def look(latitudeDeg, longitudeDeg, orbitalLongitudeDeg, earthRadiusKm, orbitRadiusKm):
    a, t = math.radians(latitudeDeg), math.radians(orbitalLongitudeDeg - longitudeDeg)
    c = math.cos(a) * math.cos(t)
    r = earthRadiusKm / orbitRadiusKm
    return {"elevationDeg": math.degrees(math.atan2(c - r, math.sqrt(1 - c * c))), "azimuthDeg": math.degrees(math.atan2(math.sin(t), -math.sin(a) * math.cos(t))) + 1, "slantRangeKm": orbitRadiusKm * math.sqrt(1 + r * r - 2 * r * c)}
print(json.dumps(check.check(one, look)))`;
      const { stdout, stderr } = spawnSync('python3', ['-c', script], { encoding: 'utf8' });
      expect(stderr).toBe('');
      const report = JSON.parse(stdout) as { field: string; rows: number; bad: number }[];
      expect(report.map(({ field, rows, bad }) => [field, rows, bad])).toEqual([
        ['azimuthDeg', 19, 19],
        ['elevationDeg', 19, 0],
        ['slantRangeKm', 19, 0],
      ]);
      const asked = spawnSync(
        'python3',
        [
          join(folder, 'check.py'),
          '--table',
          'pointing/spherical-look-angles',
          '--',
          process.execPath,
          wrong,
        ],
        { encoding: 'utf8' },
      );
      expect(asked.status).toBe(1);
      expect(asked.stdout).toMatch(/elevationDeg: 0 of 19 rows/);
    },
  );
});

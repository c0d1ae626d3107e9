/** The dictionary of DEVELOPERS.md against the declared types: one quantity, one name, one unit. */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { type PublicNumber, publicNumbers } from '../support/publicNumbers.js';
import { FULL_RUNS } from '../support/runs.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const text = (file: string) => readFileSync(root + file, 'utf8');

/** Rows of the tables below a heading, each a list of cells. */
function rowsUnder(document: string, heading: string): readonly (readonly string[])[] {
  const [, after = ''] = document.split(`${heading}\n`);
  const section = after.split(/\n#{2,3} /)[0] ?? '';
  return section
    .split('\n')
    .filter((line) => line.startsWith('| ') && !line.startsWith('| ---'))
    .map((line) =>
      line
        .slice(2, -2)
        .split(' | ')
        .map((cell) => cell.trim()),
    );
}

const quoted = (cell = '') => [...cell.matchAll(/`([^`]+)`/g)].map(([, name = '']) => name);

const guide = rowsUnder(text('DEVELOPERS.md'), '## Dictionary');
const dictionary = guide.filter((row) => row.length === 4 && row[0] !== 'Quantity');
const endless = new Set(guide.filter((row) => row.length === 2).flatMap((row) => quoted(row[1])));
const retired = rowsUnder(text('docs/reference/changes.mdx'), '### Renamed before the release')
  .filter((row) => row.length === 4 && row[0] !== 'Old name')
  .map(([old, now, where = '']) => ({
    old: quoted(old)[0] ?? '',
    now: quoted(now)[0] ?? '',
    types: where === 'all parts' ? null : quoted(where),
  }));

/** Endings that say a unit; a longer one first where one ends another. */
const UNIT =
  /(Deg|Db|Dbm|Dbuv|Dbmv|Dbw|Dbi|DbHz|Km|Mm|M|K|C|Percent|[rR]atio|GHz|MHz|KHz|S|T|V|Vpp|A|H|Min|Turns?|NUnits|W|MBd|Mbps|Ohm|Nt|Ppm|N|Nm|Pa|Hpa|MPa|GPa|Kg|Cm4|Per(Km|Km2|K|M|H|S|Min|Turn|Year|Day|M2|M3|MHz|Reading|100m)|SAtMost)$/;

// A compiler reads every declared type for it, which takes some seconds: where everything is run.
describe.skipIf(!FULL_RUNS)('one quantity, one name, one unit', () => {
  let numbers: readonly PublicNumber[];
  beforeAll(() => {
    numbers = publicNumbers();
  });

  test('the tables are read', () => {
    expect(numbers.length).toBeGreaterThan(1000);
    expect(dictionary.length).toBeGreaterThan(30);
    expect(endless.size).toBeGreaterThan(80);
    expect(retired.length).toBeGreaterThan(50);
  });

  test('every number says its unit, or stands in the table of those that have none', () => {
    const bare = numbers.filter(({ name }) => !UNIT.test(name) && !endless.has(name));
    expect(bare.map(({ part, owner, name }) => `${part} ${owner}.${name}`)).toEqual([]);
  });

  test('no number bears a retired name', () => {
    const back = numbers.filter(({ owner, name }) =>
      retired.some(({ old, types }) => old === name && (types === null || types.includes(owner))),
    );
    expect(back.map(({ part, owner, name }) => `${part} ${owner}.${name}`)).toEqual([]);
  });

  test('every name of the tables exists', () => {
    // The fields of the job file are told by its schema, not by a declared type.
    const schema = text('docs/schemas/job-2.schema.json');
    const fields = [...schema.matchAll(/"(\w+)": \{/g)].map(([, name = '']) => name);
    const names = new Set([...numbers.map(({ name }) => name), ...fields]);
    const said = [
      ...dictionary.flatMap((row) => quoted(row[1])),
      ...endless,
      ...retired.map(({ now }) => now),
    ];
    expect(said.filter((name) => !names.has(name))).toEqual([]);
  });

  test('a unit in the table is that of the name', () => {
    const endings: Readonly<Record<string, RegExp>> = {
      m: /M$/,
      km: /Km$/,
      dB: /Db$/,
      dBHz: /DbHz$/,
      'dB/km': /DbPerKm$/,
      degree: /Deg$/,
      'degree, turns': /(Deg|Turns)$/,
      GHz: /GHz$/,
      MHz: /MHz$/,
      K: /K$/,
      'mm/h': /MmPerH$/,
      '%': /Percent$/,
      hPa: /Hpa$/,
      '-': /Ratio$/,
      'as the value': /(Db|Deg|Ratio)$/,
    };
    for (const [quantity, names, unit = ''] of dictionary) {
      const ending = endings[unit];
      expect(ending, `${quantity}: ${unit}`).toBeDefined();
      for (const name of quoted(names)) expect(name, quantity).toMatch(ending as RegExp);
    }
  });
});

describe('retired names', () => {
  test('a name retired everywhere is in no source, page or example', () => {
    const gone = retired.filter(({ types }) => types === null).map(({ old }) => old);
    const word = new RegExp(`(?<![A-Za-z0-9_$])(${gone.join('|')})(?![A-Za-z0-9_$])`);
    const files = ['src', 'site/src', 'docs', 'examples']
      .flatMap((folder) =>
        (readdirSync(root + folder, { recursive: true }) as string[]).map(
          (file) => `${folder}/${file}`,
        ),
      )
      .filter((file) => /\.(ts|astro|mdx?|txt|json)$/.test(file))
      .filter((file) => !/^docs\/(decisions|reference\/changes)/.test(file));
    expect(files.length).toBeGreaterThan(300);
    const found = files.flatMap((file) => {
      const [, name] = word.exec(text(file)) ?? [];
      return name === undefined ? [] : [`${file}: ${name}`];
    });
    expect(found).toEqual([]);
  });
});

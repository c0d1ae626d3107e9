import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { csvForm, headOf } from '../../../src/command/columns/csvForm.js';
import { malformedFile } from '../../../src/command/columns/malformed.js';
import { joinFiles } from '../../../src/command/columns/scratch.js';
import {
  asNumber,
  asWritten,
  fileForm,
  reading,
  writing,
} from '../../../src/command/columns/source.js';

const folder = mkdtempSync(join(tmpdir(), 'slantpath-form-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('the form of a CSV file', () => {
  test.each([
    ['lat,lon\n46.4,9.6\n', undefined, ',', 'point', ['lat', 'lon']],
    ['lat,lon\r\n"46,4","9,6"\r\n', 'comma', ',', 'comma', ['lat', 'lon']],
    ['lat;lon\r\n46,4;9,6\r\n', 'comma', ';', 'comma', ['lat', 'lon']],
    ['lat;lon\n46.4;9.6\n', 'point', ';', 'point', ['lat', 'lon']],
    ['\uFEFFlat;"h, m; sea";lon', 'comma', ';', 'comma', ['lat', 'h, m; sea', 'lon']],
    ['lat;height, m;lon\n', 'comma', ';', 'comma', ['lat', 'height, m', 'lon']],
    ['lat\n46.4\n', undefined, ',', 'point', ['lat']],
    [
      'a,A,,a_1,"say ""b"""\n',
      undefined,
      ',',
      'point',
      ['a', 'A_1', 'column2', 'a_1_1', 'say "b"'],
    ],
  ])('%s', (head, decimal, separator, numbers, columns) => {
    const form = csvForm(head, 'sites.csv', decimal);
    expect(form).toEqual({
      separator,
      decimal: numbers,
      columns,
      byteOrderMark: head.startsWith('\uFEFF'),
    });
  });

  test('semicolons are not read before the decimals are known', () => {
    expect(() => csvForm('lat;lon\n46,4;9,6\n', 'a.csv', undefined)).toThrow(
      '--decimal must be comma or point for a file with semicolons between its fields',
    );
    expect(() => csvForm('lat,lon', 'a.csv', 'dot')).toThrow('--decimal must be point or comma');
    expect(csvForm('a;b\tc', 'a.tsv', undefined)).toMatchObject({ columns: ['a;b', 'c'] });
  });

  test('is that of the file at a path, and of CSV alone', () => {
    const path = join(folder, 'sites.csv');
    writeFileSync(path, 'lat;lon\n46,4;9,6\n');
    expect(headOf(path)).toBe('lat;lon\n46,4;9,6\n');
    const form = fileForm(path, 'comma');
    expect(form).toMatchObject({ kind: 'csv', separator: ';' });
    expect(reading(form, path)).toContain("delim = ';'");
    expect(writing(form, true)).toBe("(FORMAT csv, HEADER true, DELIMITER ';')");
    expect(asNumber(form, 'lat')).toContain("replace(lat, ',', '.')");
    expect(asWritten(form, 'c0')).toBe("replace(c0::VARCHAR, '.', ',')");
    expect(asWritten({ kind: 'ndjson' }, 'c0')).toBe('c0');
    expect(() => fileForm('a.parquet', 'comma')).toThrow('--decimal must be left out');
  });

  test('a byte order mark stands before the first part alone', async () => {
    const paths = ['a', 'b'].map((name) => join(folder, name));
    for (const path of paths) writeFileSync(path, `${path.at(-1)}\n`);
    await joinFiles(paths, join(folder, 'all'), '\uFEFF');
    expect(readFileSync(join(folder, 'all'), 'utf8')).toBe('\uFEFFa\nb\n');
  });
});

/** What DuckDB 1.5 said of such files. */
const BEHIND = "Possible fixes:\n* Disable the parser's strict mode (strict_mode=false)\n";
test.each([
  [
    `Invalid Input Error: CSV Error on Line: 25002\nOriginal Line: 7;8;9\nExpected Number of Columns: 4 Found: 3\n${BEHIND}`,
    'row 25001 after the head has 3 fields where the head has 4',
  ],
  [
    `Invalid Input Error: CSV Error on Line: 7\nOriginal Line: 7;8;9;"unicode\n8;9\nValue with unterminated quote found.\n${BEHIND}`,
    'row 6 after the head has a quotation mark without its other one',
  ],
  [
    `Invalid Input Error: CSV Error on Line: 2\nOriginal Line: 1;M?nchen\nInvalid unicode (byte sequence mismatch) detected. This file is not utf-8 encoded.\n${BEHIND}`,
    'row 1 after the head is not in UTF-8; save the file in that encoding',
  ],
  ['Invalid Input Error: CSV Error on Line: 1\nsomething new', 'its head cannot be read'],
  [
    'Invalid Input Error: Malformed JSON in file "b.ndjson", at byte 17 in line 3: unexpected end of data.\nmore',
    'Malformed JSON in file "b.ndjson", at byte 17 in line 3: unexpected end of data.',
  ],
])('a file that cannot be read is told in one line %#', (message, told) => {
  const error = malformedFile('/far/away/sites.csv', message);
  expect(error.message).toBe(
    `input must be a file that is whole in every row, got "sites.csv"; ${told}`,
  );
  expect(error.code).toBe('malformed');
});

/** The test vectors, made from the committed tables of `tests/reference/` and from nothing else. */

import { readdirSync, readFileSync } from 'node:fs';
import type { VectorTable, VectorValue } from '../../src/vectors/vectorTable.js';
import { type CsvRow, cell, referenceTable } from '../../tests/support/csv.js';
import { type WorkedRow, workedRows } from '../../tests/support/worked.js';
import { AIR_TABLES } from './airTables.js';
import { LEFT_OUT, OTHER_TABLES, WORKED_TABLES } from './otherTables.js';
import { POINTING_TABLES } from './pointingTables.js';
import type { From, Spec } from './spec.js';

const SPECS = [...POINTING_TABLES, ...AIR_TABLES, ...OTHER_TABLES];

/** The lines with # at the head of a table: what it is and where it is from. */
function head(file: string): string {
  return readFileSync(`tests/reference/${file}`, 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('#'))
    .map((line) => line.slice(1).trim())
    .join(' ');
}

const LICENCES = {
  published: 'Values read in the document named as the source; facts, cited.',
  recomputed: 'Values recomputed for this project; MIT, like its code.',
  practice: 'Common practice of the trade, worked by hand; MIT, like the code.',
} as const;

function cellOf(from: From, row: CsvRow): VectorValue {
  if (typeof from === 'function') return from(row);
  return row[from] === '' ? null : cell(row, from);
}

function tableOf(spec: Spec): VectorTable {
  const rows = referenceTable(spec.file).filter(spec.keep ?? (() => true));
  return {
    name: spec.name ?? spec.file.replace('.csv', ''),
    calls: spec.calls,
    source: spec.source ?? head(spec.file),
    status: spec.status,
    licence: LICENCES[spec.status],
    ...(spec.note === undefined ? {} : { note: spec.note }),
    inputs: Object.keys(spec.inputs),
    expected: Object.entries(spec.expected).map(([name, [, tolerance, compare]]) => ({
      name,
      tolerance,
      compare: compare ?? 'absolute',
    })),
    rows: rows.map((row) => [
      ...Object.values(spec.inputs).map((from) => cellOf(from, row)),
      ...Object.values(spec.expected).map(([from]) => cellOf(from, row)),
    ]),
  };
}

/** A value of a worked table: lists and pairs go as JSON text. */
const plain = (value: unknown): VectorValue =>
  typeof value === 'number' || typeof value === 'string' || value === null
    ? value
    : typeof value === 'boolean'
      ? Number(value)
      : JSON.stringify(value);

/** Tables of a worked file: one for each quantity and set of inputs, fields named `value1`, `value2` in the order of its words. */
function workedTables(file: string): readonly VectorTable[] {
  const groups = new Map<string, WorkedRow[]>();
  for (const row of workedRows(file)) {
    const count = Array.isArray(row.expected) ? row.expected.length : 1;
    const key = JSON.stringify([
      row.quantity,
      count,
      row.tolerance,
      row.relative,
      Object.keys(row.inputs),
    ]);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  const names = new Map<string, number>();
  return [...groups.values()].map((rows) => {
    const first = rows[0] as WorkedRow;
    const base = `${file.replace('.csv', '')}-${first.quantity
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .slice(0, 48)
      .replace(/^-|-$/g, '')}`;
    names.set(base, (names.get(base) ?? 0) + 1);
    const nth = names.get(base) ?? 1;
    const status = rows.some(({ source }) => /memory|practice/i.test(source))
      ? 'practice'
      : 'recomputed';
    const values = rows.map(({ expected }) =>
      (Array.isArray(expected) ? expected : [expected]).map(plain),
    );
    const inputs = Object.keys(first.inputs);
    return {
      name: nth === 1 ? base : `${base}-${nth}`,
      calls: first.quantity,
      source: `${head(file)} ${[...new Set(rows.map(({ source }) => source))].join('; ')}`,
      status,
      licence: LICENCES[status],
      inputs,
      expected: (values[0] ?? []).map((value, index) => ({
        name: `value${index + 1}`,
        // The tables print ten digits: half a unit of the last one is no error.
        tolerance: typeof value === 'string' ? 0 : Math.max(first.tolerance, 5e-10),
        compare: typeof value === 'string' ? 'text' : first.relative ? 'relative' : 'absolute',
      })),
      rows: rows.map((row, index) => [
        ...inputs.map((name) => plain(row.inputs[name] ?? null)),
        ...(values[index] ?? []),
      ]),
    } satisfies VectorTable;
  });
}

/** Every table of vectors. */
export function vectorTables(): readonly VectorTable[] {
  return [...SPECS.map(tableOf), ...WORKED_TABLES.flatMap(workedTables)];
}

/** Committed tables of which neither vectors are made nor said why not; and those listed that are not there. */
export function unaccounted(): readonly string[] {
  const there = readdirSync('tests/reference', { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => /\.[ct]sv$/.test(file));
  const known = new Set([
    ...SPECS.map(({ file }) => file),
    ...WORKED_TABLES,
    ...Object.keys(LEFT_OUT),
  ]);
  return [
    ...there.filter((file) => !known.has(file)),
    ...[...known].filter((file) => !there.includes(file)),
  ];
}

/**
 * Published checks: a table of values from outside the code against what the library gives.
 *
 * Each call makes one test, prints the largest error beside its limit, asserts the count of rows, and
 * leaves a JSON summary in `tests/.validation/` from which the site's Validation page is made.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

/** One value to compare. */
export interface PublishedCase {
  /** The case in words or numbers, as a reader would find it in the source. */
  readonly name: string;
  /** The published value. */
  readonly expected: number;
  /** What the library gives. */
  readonly got: number;
  /** Limit of this case, where it is not the table's. */
  readonly limit?: number;
}

/** A table of published values of one quantity. */
export interface PublishedTable {
  /** Part of the library: `pointing`. */
  readonly part: string;
  /** Quantity: `azimuth`. */
  readonly quantity: string;
  /** Unit of values and errors: `deg`; empty for a ratio. */
  readonly unit: string;
  /** Document, edition, section or table. */
  readonly source: string;
  /** `published` (read in a document), `recomputed` (an independent library) or `practice` (of the trade). */
  readonly status: 'published' | 'recomputed' | 'practice';
  /** Largest error allowed, from the digits of the source, absolute in `unit` or relative. */
  readonly limit: number;
  /** Why the limit is what it is. */
  readonly reason: string;
  /** Compare |got - expected| / |expected| instead of |got - expected|. */
  readonly relative?: boolean;
  /** Compare as directions, through a full turn. */
  readonly circularDeg?: boolean;
  /**
   * The values lie outside the repository (`../shared/checks`, `../shared/climate`): they are checked and printed, but the
   * Validation page does not show them, so that a clone makes the same page.
   */
  readonly outside?: true;
  /** How many cases there must be, so that none is dropped in silence. */
  readonly count: number;
  /** The cases, computed inside the test so that a throw is reported there. */
  readonly cases: () => readonly PublishedCase[];
}

const folder = fileURLToPath(new URL('../.validation/', import.meta.url));

/** Error of a case in the table's sense. */
function caseError(
  table: Pick<PublishedTable, 'relative' | 'circularDeg'>,
  row: PublishedCase,
): number {
  const difference = row.got - row.expected;
  if (table.circularDeg) return Math.abs(((((difference + 180) % 360) + 360) % 360) - 180);
  return table.relative && row.expected !== 0
    ? Math.abs(difference / row.expected)
    : Math.abs(difference);
}

/** Leaves the figures of a table for the Validation page. */
function keep(table: PublishedTable, rows: readonly PublishedCase[]): void {
  const { cases: _cases, ...head } = table;
  mkdirSync(folder, { recursive: true });
  const slug = `${table.part}-${table.quantity}-${table.source}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 120);
  writeFileSync(`${folder}${slug}.json`, `${JSON.stringify({ ...head, rows }, null, 1)}\n`);
}

/** Makes the test of a table. */
export function publishedTable(table: PublishedTable): void {
  test(`${table.part}: ${table.quantity} as in ${table.source}`, () => {
    const rows = table.cases().map((row) => ({ ...row, error: caseError(table, row) }));
    expect(rows.length).toBe(table.count);
    const worst = rows.reduce((a, b) => (b.error > a.error ? b : a));
    console.log(
      `${table.part} ${table.quantity}: ${rows.length} cases, largest error ${worst.error.toExponential(2)}${table.relative ? ' relative' : ` ${table.unit}`} (limit ${table.limit}) at ${worst.name}`,
    );
    if (!table.outside) keep(table, rows);
    for (const row of rows) {
      // A comparison with NaN is false, so the test is written to fail on it.
      expect(
        row.error <= (row.limit ?? table.limit),
        `${row.name}: expected ${row.expected}, got ${row.got}, error ${row.error} over ${row.limit ?? table.limit}`,
      ).toBe(true);
    }
  });
}

/** The official tables as cases: the committed half, and the full table of check values where it lies beside. */

import { type CsvRow, cell, referenceTable, sharedTable } from '../support/csv.js';
import { type PublishedCase, publishedTable } from '../support/published.js';

/** A table of the ITU-R validation examples and how its rows are computed. */
export interface OfficialTable {
  /** Name of the file, here and among the shared check values. */
  readonly file: string;
  readonly quantity: string;
  readonly unit: string;
  readonly source: string;
  readonly limit: number;
  readonly reason: string;
  readonly relative?: boolean;
  readonly count: number;
  /** Column that holds the expected value. */
  readonly column: string;
  readonly keep?: (row: CsvRow) => boolean;
  readonly got: (row: CsvRow) => number;
  /** False where the shared table lacks the inputs that the committed one carries. */
  readonly shared?: boolean;
}

function cases({ column, got, keep }: OfficialTable, rows: readonly CsvRow[]): PublishedCase[] {
  return rows.filter(keep ?? (() => true)).map((row) => ({
    name: Object.values(row).slice(0, 8).join(' '),
    expected: cell(row, column),
    got: got(row),
  }));
}

/** Makes the test of the committed table, and that of the shared one where it is present. */
export function officialTable(table: OfficialTable): void {
  const { file, quantity, unit, source, limit, reason, count } = table;
  const head = {
    part: 'propagation',
    quantity,
    unit,
    source,
    status: 'published' as const,
    limit,
    reason,
    ...(table.relative ? { relative: true } : {}),
  };
  publishedTable({
    ...head,
    count,
    cases: () => cases(table, referenceTable(`propagation/${file}`)),
  });
  const shared = table.shared === false ? undefined : sharedTable(`itu-r/${file}`);
  if (shared) {
    const all = cases(table, shared);
    publishedTable({
      ...head,
      outside: true,
      source: `${source} (full table)`,
      count: Math.max(count, all.length),
      cases: () => all,
    });
  }
}

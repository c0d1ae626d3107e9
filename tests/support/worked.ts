/** Worked rows: inputs and results as JSON in the cells of a committed table. */

import { type CsvRow, referenceTable } from './csv.js';
import type { PublishedCase } from './published.js';

/** A worked row with its cells read. */
export interface WorkedRow {
  /** Quantity, as the table calls it. */
  readonly quantity: string;
  /** Inputs by name. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** Expected value or values. */
  readonly expected: unknown;
  /** Largest error allowed. */
  readonly tolerance: number;
  /** Whether the tolerance is relative. */
  readonly relative: boolean;
  /** How sure the rule is. */
  readonly source: string;
}

/** Rows of a committed worked table, those of one quantity where it is named by its beginning. */
export function workedRows(path: string, quantity = ''): WorkedRow[] {
  return referenceTable(path)
    .filter((row: CsvRow) => row['quantity']?.startsWith(quantity))
    .map((row: CsvRow) => ({
      quantity: row['quantity'] ?? '',
      inputs: JSON.parse(row['inputs'] ?? '{}') as Record<string, unknown>,
      expected: JSON.parse(row['expected'] ?? 'null') as unknown,
      tolerance: Number.parseFloat(row['tolerance'] ?? '0'),
      relative: /relative/.test(row['tolerance'] ?? ''),
      source: row['source'] ?? '',
    }));
}

/** A number among the inputs of a row; fails loudly where it is missing. */
export function input(row: WorkedRow, name: string): number {
  const value = row.inputs[name];
  if (typeof value !== 'number') throw new Error(`${row.quantity}: no number ${name}`);
  return value;
}

/** Cases of one row: each expected number beside what the library gives, in the same order. */
export function workedCases(row: WorkedRow, got: readonly unknown[]): PublishedCase[] {
  const expected = Array.isArray(row.expected) ? row.expected : [row.expected];
  if (expected.length !== got.length)
    throw new Error(`${row.quantity}: ${expected.length} values expected, ${got.length} given`);
  return expected.flatMap((value, index) => {
    const here = got[index];
    const name = `${row.quantity} ${JSON.stringify(row.inputs)}${got.length > 1 ? ` #${index + 1}` : ''}`;
    if (typeof value === 'number' && typeof here === 'number') {
      const scale = row.relative && value !== 0 ? Math.abs(value) : 1;
      // The tables print ten digits: half a unit of the last one is no error.
      const printed = value === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value))) - 9);
      const limit = Math.max(row.tolerance * scale, printed);
      return [{ name, expected: value, got: here, limit }];
    }
    if (value !== here) throw new Error(`${name}: expected ${value}, got ${here}`);
    return [];
  });
}

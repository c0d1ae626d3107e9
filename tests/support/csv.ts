/** Reads a small comma-separated table with a header line; quoted cells may hold commas. */

import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** One row by column name, as text. */
export type CsvRow = Readonly<Record<string, string>>;

/** Rows of CSV text; lines that begin with # are comments. */
function parseCsv(text: string): CsvRow[] {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const cells = (line: string): string[] =>
    [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(,|$)/g)]
      .slice(0, line.endsWith(',') ? undefined : -1)
      .map((match) => (match[1] ?? '').replace(/^"|"$/g, '').replace(/""/g, '"'));
  const header = cells(lines[0] ?? '');
  return lines.slice(1).map((line) => {
    const values = cells(line);
    return Object.fromEntries(header.map((name, column) => [name, values[column] ?? '']));
  });
}

/** Number in a cell; fails loudly on an empty or unreadable one. */
export function cell(row: CsvRow, name: string): number {
  const text = row[name];
  const value = Number(text);
  if (text === undefined || text === '' || Number.isNaN(value))
    throw new Error(`column ${name}: not a number: ${text}`);
  return value;
}

/** A committed table of `tests/reference/`, by its path in there. */
export function referenceTable(path: string): CsvRow[] {
  return parseCsv(
    readFileSync(fileURLToPath(new URL(`../reference/${path}`, import.meta.url)), 'utf8'),
  );
}

/**
 * A full table of the check values that may lie beside the checkout (`../shared/checks`), or
 * `undefined` where it does not; tests must pass without it.
 */
export function sharedTable(path: string): CsvRow[] | undefined {
  const file = fileURLToPath(new URL(`../../../shared/checks/${path}`, import.meta.url));
  return existsSync(file) ? parseCsv(readFileSync(file, 'utf8')) : undefined;
}

/** How a CSV file is written: what stands between fields, and how its numbers are. */

import { closeSync, openSync, readSync } from 'node:fs';
import { DomainError } from '../../errors.js';
import { refuse } from './refuse.js';

/** The form of a CSV file; the output has that of the input. */
export interface CsvForm {
  /** Whether the file begins with a byte order mark, by which spreadsheets know UTF-8. */
  readonly byteOrderMark: boolean;
  readonly separator: string;
  /** What stands before the decimals of a number. */
  readonly decimal: 'point' | 'comma';
  /** Names of the columns, as the head has them; a name that is missing or there before gets a number. */
  readonly columns: readonly string[];
}

/** The fields of the first row of a text. */
function firstRow(text: string, separator: string): readonly string[] {
  const fields: string[] = [];
  let field = '';
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charAt(at);
    if (quoted && sign === '"' && text[at + 1] === '"') field += text[++at];
    else if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === '\n' || sign === '\r')) return [...fields, field];
    else if (!quoted && sign === separator) {
      fields.push(field);
      field = '';
    } else field += sign;
  }
  return [...fields, field];
}

/** How often a sign stands between fields. */
const times = (head: string, separator: string) => firstRow(head, separator).length - 1;

function named(fields: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return fields.map((field, place) => {
    const plain = field === '' ? `column${place}` : field;
    let name = plain;
    for (let again = 1; seen.has(name.toLowerCase()); again++) name = `${plain}_${again}`;
    seen.add(name.toLowerCase());
    return name;
  });
}

/**
 * The form of a CSV file from its head.
 *
 * Semicolons are seen, decimal commas are not: `1,234` may be either, so a file with semicolons is not read before it is said.
 *
 * @param head  The beginning of the file.
 * @param path  Its path: `.tsv` has tabs.
 * @param decimal  What `--decimal` says.
 */
export function csvForm(head: string, path: string, decimal: string | undefined): CsvForm {
  if (decimal !== undefined && decimal !== 'point' && decimal !== 'comma')
    return refuse('--decimal', decimal, 'point or comma');
  const text = head.replace(/^\uFEFF/, '');
  const more = times(text, ';') - times(text, ',');
  const semicolons = more > 0 || (more === 0 && decimal === 'comma');
  const separator = /\.tsv$/i.test(path) ? '\t' : semicolons ? ';' : ',';
  if (separator === ';' && decimal === undefined)
    throw new DomainError({
      code: 'missing',
      parameter: '--decimal',
      received: undefined,
      allowed: 'comma or point for a file with semicolons between its fields',
      slip: 'is 46,4 or 46.4 written in it?',
    });
  return {
    byteOrderMark: text !== head,
    separator,
    decimal: decimal ?? 'point',
    columns: named(firstRow(text, separator)),
  };
}

/** Longest head of a file that is read. */
const LONGEST_HEAD = 1 << 20;

/** The beginning of a file. */
export function headOf(path: string): string {
  const file = openSync(path, 'r');
  const bytes = Buffer.alloc(LONGEST_HEAD);
  const length = readSync(file, bytes, 0, LONGEST_HEAD, 0);
  closeSync(file);
  return bytes.toString('utf8', 0, length);
}

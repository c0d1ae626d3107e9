/** A worksheet as CSV (RFC 4180): one exercise a line. */

import { DomainError } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { printedUnit } from '../print/units.js';
import type { Worksheet } from './worksheet.js';

/** A cell; quoted where it must be, and kept from being read as a formula by a spreadsheet. */
function cell(value: string | number, separator: string): string {
  const text = String(value);
  const number = typeof value === 'number' || /^-?\d+([.,]\d+)?$/.test(text);
  const safe = !number && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /["\r\n]/.test(safe) || safe.includes(separator) ? `"${safe.replace(/"/g, '""')}"` : safe;
}

/** How {@link worksheetCsv} writes. */
export interface CsvOptions {
  /** What parts the cells; a spreadsheet with decimal commas wants a semicolon or a tab. A comma by default. */
  readonly separator?: ',' | ';' | '\t';
  /** Sign before the decimals; a comma with another separator only. A point by default. */
  readonly decimalSign?: '.' | ',';
}

const CSV_OPTIONS_KEYS = { separator: true, decimalSign: true } satisfies Keys<CsvOptions>;

function oneOf<T extends string>(parameter: string, received: T, allowed: readonly T[]): T {
  if (allowed.includes(received)) return received;
  throw new DomainError({
    code: 'not-an-option',
    parameter,
    received,
    allowed: allowed.map((each) => JSON.stringify(each)).join(' or '),
  });
}

/**
 * A worksheet with its key as comma-separated values.
 *
 * @param sheet  From `worksheet`.
 * @param options  Separator and decimal sign; a negative answer stays a number.
 * @returns Text with a header line: number, plan, question, answer, unit, decimals, tolerance, hints; lines end in CR LF.
 *
 * @throws {@link DomainError} naming `separator` or `decimalSign`.
 *
 * Source: RFC 4180.
 * @example
 * ```ts
 * import { worksheet, worksheetCsv } from 'slantpath/teaching';
 * worksheetCsv(worksheet({ seed: 3, count: 2 })).split('\r\n').length; // => 4
 * ```
 */
export function worksheetCsv(sheet: Worksheet, options: CsvOptions = {}): string {
  const { separator: parting, decimalSign: sign } = knownOnly('options', options, CSV_OPTIONS_KEYS);
  const separator = oneOf('separator', parting ?? ',', [',', ';', '\t']);
  const decimalSign = oneOf('decimalSign', sign ?? '.', separator === ',' ? ['.'] : ['.', ',']);
  const written = (text: string) => text.replace('.', decimalSign);
  const lines = [
    ['number', 'plan', 'question', 'answer', 'unit', 'decimals', 'tolerance', 'hints'],
    ...sheet.exercises.map((each, index) => [
      index + 1,
      each.plan,
      each.text,
      written(each.answer.toFixed(each.decimals)),
      printedUnit(each.unit),
      each.decimals,
      written(String(Number(each.tolerance.toPrecision(3)))),
      each.hints.join(' | '),
    ]),
  ];
  return lines
    .map((line) => `${line.map((value) => cell(value, separator)).join(separator)}\r\n`)
    .join('');
}

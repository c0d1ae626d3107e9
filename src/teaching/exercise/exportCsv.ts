/** A worksheet as CSV (RFC 4180): one exercise a line. */

import type { Worksheet } from './worksheet.js';

/** A cell; quoted where it must be, and kept from being read as a formula by a spreadsheet. */
function cell(value: string | number): string {
  const text = String(value);
  const safe = typeof value === 'string' && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}

/**
 * A worksheet with its key as comma-separated values.
 *
 * @returns Text with a header line: number, plan, question, answer, unit, decimals, tolerance, hints; lines end in CR LF.
 *
 * Source: RFC 4180.
 * @example
 * ```ts
 * import { worksheet, worksheetCsv } from 'slantpath/teaching';
 * worksheetCsv(worksheet({ seed: 3, count: 2 })).split('\r\n').length; // => 4
 * ```
 */
export function worksheetCsv(sheet: Worksheet): string {
  const lines = [
    ['number', 'plan', 'question', 'answer', 'unit', 'decimals', 'tolerance', 'hints'],
    ...sheet.exercises.map((each, index) => [
      index + 1,
      each.plan,
      each.text,
      each.answer.toFixed(each.decimals),
      each.unit,
      each.decimals,
      each.tolerance,
      each.hints.join(' | '),
    ]),
  ];
  return lines.map((line) => `${line.map(cell).join(',')}\r\n`).join('');
}

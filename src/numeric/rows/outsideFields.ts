/** Fields outside their stated range, as a column of a batch. */

import { inRange, isInside } from '../../errors.js';
import { type Column, inRow } from '../columns.js';

/**
 * Fields that a batch function can find outside the range that its recommendation or model states, in the order of their marks: the first
 * counts 1, the second 2, then 4 and 8.
 */
export const outsideStatedFields = [
  'frequencyGHz',
  'elevationDeg',
  'exceededPercent',
  'decimalYear',
] as const;

/**
 * The fields that a row of a column `outsideStatedRange` names, as the function for one station names them.
 *
 * @param marks  Number in that row, 0 to 255: 0 for none; 255, which `markBadRows` puts into a row that was refused, names none either.
 * @throws {@link DomainError} naming `marks`.
 *
 * Source: none; it reads marks.
 * @example
 * ```ts
 * import { fieldsOutside } from 'slantpath';
 * import { rainAttenuationBatch } from 'slantpath/propagation';
 * const { outsideStatedRange } = rainAttenuationBatch({
 *   latitudeDeg: 46.4, heightM: 600, rainHeightKm: 2.9, rainRate001MmPerH: 35,
 *   frequencyGHz: [12, 70], elevationDeg: 36, tiltDeg: 0, exceededPercent: 10,
 * });
 * [...outsideStatedRange]; // => [4, 5]
 * fieldsOutside(outsideStatedRange[1] ?? 0); // => ['frequencyGHz', 'exceededPercent']
 * ```
 */
export function fieldsOutside(marks: number): readonly string[] {
  const bits = inRange('marks', marks, 0, 255);
  if (bits >= 2 ** outsideStatedFields.length) return [];
  return outsideStatedFields.filter((_, place) => (bits >> place) & 1);
}

/** Marks the rows in which a field lies outside the interval stated for it. */
export function markOutside(
  marks: Uint8Array,
  field: (typeof outsideStatedFields)[number],
  column: Column,
  from: number,
  to: number,
): void {
  const mark = 1 << outsideStatedFields.indexOf(field);
  const outside = (value: number) => !isInside(value, from, to);
  if (typeof column === 'number' && !outside(column)) return;
  for (let row = 0; row < marks.length; row++)
    if (outside(inRow(column, row))) marks[row] = (marks[row] ?? 0) | mark;
}

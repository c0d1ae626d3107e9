/** A sheet of a job as plain text. */

import type { JobRecord } from '../job/index.js';
import { pageText } from './paper/text.js';
import { type SheetOptions, writtenSheet } from './sheetPage.js';

/**
 * Sheet of a record as plain text of at most 84 characters a line: before the visit with blanks to write in, after it
 * with the outcome and the findings first.
 *
 * @param record  From `recordJob`; one that came from elsewhere goes through `checkedRecord` first.
 * @param options  Which of the two sheets, and the words of another language.
 * @returns The sheet. Times of shadows and Sun outages and aids for peaking are worked out here; all else stands in the record.
 * @throws {@link DomainError} `malformed` at `record` for what is not a record.
 *
 * Source: the record. Accuracy: rounded for reading, the record keeps all digits.
 * @example
 * ```ts
 * import { recordJob } from 'slantpath/job';
 * import { jobSheet } from 'slantpath/sheet';
 * const record = recordJob({
 *   format: 'slantpath-job', version: 2, title: 'One slot', date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4 }],
 * });
 * const lines = jobSheet(record, { visit: 'after' }).split('\n');
 * lines.find((line) => line.startsWith('Outcome:'))?.slice(0, 19); // => 'Outcome: incomplete'
 * ```
 */
export function jobSheet(record: JobRecord, options: SheetOptions = {}): string {
  return writtenSheet(record, options, pageText);
}

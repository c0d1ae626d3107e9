/** A sheet of a job as one HTML document that prints on one or two pages. */

import type { JobRecord } from '../job/index.js';
import { pageHtml } from './paper/html.js';
import { type SheetOptions, writtenSheet } from './sheetPage.js';

/**
 * Sheet of a record as one self-contained HTML document for the printer: page numbers and the job's name on each page,
 * a drawing of the feeds, lines to write on.
 *
 * @param record  From `recordJob`; one that came from elsewhere goes through `checkedRecord` first. Its texts are escaped, so
 *   that a title cannot carry markup.
 * @param options  Which of the two sheets, and the words of another language.
 * @returns The document; no script, no outside file.
 * @throws {@link DomainError} `malformed` at `record` for what is not a record.
 *
 * Source: the record. Accuracy: rounded for reading, the record keeps all digits.
 * @example
 * ```ts
 * import { recordJob } from 'slantpath/job';
 * import { jobSheetHtml } from 'slantpath/sheet';
 * const record = recordJob({
 *   format: 'slantpath-job', version: 2, title: 'Hut <1>', date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4 }],
 * });
 * jobSheetHtml(record, { visit: 'before' }).includes('<h1>Before the visit: Hut &lt;1&gt;</h1>'); // => true
 * ```
 */
export function jobSheetHtml(record: JobRecord, options: SheetOptions = {}): string {
  return writtenSheet(record, options, pageHtml);
}

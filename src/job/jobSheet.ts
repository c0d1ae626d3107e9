/** The job sheet as plain text: a record in the order in which the work is done. */

import type { JobRecord } from './recordJob.js';
import { planBlocks } from './sheetPlan.js';
import { resultBlocks } from './sheetResults.js';
import { blockText, SHEET_WIDTH } from './text.js';

/**
 * Job sheet of a record, as plain text of at most 100 characters a line.
 *
 * @param record  From {@link recordJob}.
 * @returns The sheet; every figure on it stands in the record.
 *
 * Source: the record. Accuracy: rounded for reading, the record keeps all digits.
 * @example
 * ```ts
 * import { jobSheet } from 'slantpath/job';
 * typeof jobSheet; // => 'function'
 * ```
 */
export function jobSheet(record: JobRecord): string {
  const { job } = record;
  return `${[
    '='.repeat(SHEET_WIDTH),
    `Job sheet: ${job.title}`,
    `Day of the work ${job.date}, record format ${record.format} ${record.version}`,
    '='.repeat(SHEET_WIDTH),
    ...[...planBlocks(record), ...resultBlocks(record)].map(blockText),
  ].join('\n')}\n`;
}

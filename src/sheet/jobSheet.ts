/** The job sheet as plain text: a record in the order in which the work is done. */

import type { JobRecord } from '../job/index.js';
import { planBlocks } from './planBlocks.js';
import { resultBlocks } from './resultBlocks.js';
import { blockText, SHEET_WIDTH } from './text.js';
import { englishWords, type SheetWords } from './words/en.js';

/**
 * Job sheet of a record, as plain text.
 *
 * @param record  From `recordJob`.
 * @param words  The words; English when left out.
 * @returns The sheet; every figure on it stands in the record.
 *
 * Source: the record. Accuracy: rounded for reading, the record keeps all digits.
 * @example
 * ```ts
 * import { parseJob, recordJob } from 'slantpath/job';
 * import { jobSheet } from 'slantpath/sheet';
 * const job = parseJob({
 *   format: 'slantpath-job', version: 1, title: 'One slot', date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   antenna: { diameterM: 0.9, apertureEfficiencyRatio: 0.65, offsetAngleDeg: 24.6 },
 *   receiver: { noiseFigureDb: 0.7, gainDb: 56 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4, carriers: [{
 *     name: 'Ku', frequencyGHz: 12.5, polarization: 'horizontal', eirpDbw: 51,
 *     symbolRateMBd: 27.5, mode: 'QPSK 3/4', intermediateFrequencyMHz: 1900,
 *   }] }],
 *   horizon: { north: 'true', samples: [] },
 *   rain: { source: 'climate-grid' },
 *   target: { exceededPercent: 0.1, pointingLossDb: 0.3 },
 *   distribution: { kind: 'outlet', name: 'desk' },
 *   peaking: [],
 *   readings: [{
 *     quantity: 'level', testPoint: 'desk', slot: 'middle', carrier: 'Ku', levelDbuv: 46.9, expandedUncertaintyDb: 2,
 *   }],
 *   limits: [{ testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 }],
 * });
 * const sheet = jobSheet(recordJob(job)).split('\n');
 * sheet.find((line) => line.startsWith('middle ')); // => 'middle    16.4° E        171.63     167.7      36.10     38081  -5.8'
 * ```
 */
export function jobSheet(record: JobRecord, words: SheetWords = englishWords): string {
  const { job } = record;
  return `${[
    '='.repeat(SHEET_WIDTH),
    words.head.title(job.title),
    words.head.day(job.date ?? '-', `${record.format} ${record.version}`),
    '='.repeat(SHEET_WIDTH),
    ...[...planBlocks(record, words), ...resultBlocks(record, words)].map(blockText),
  ].join('\n')}\n`;
}

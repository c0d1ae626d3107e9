/** Comparison of records with the climate grid that is shipped. */

import { SHIPPED } from '../plan/withShippedClimate.js';
import { compareRecordsWith, type RecordComparison } from './compareRecords.js';
import { checkedRecordWith } from './readRecord.js';
import type { JobRecord } from './recordJob.js';

/**
 * A record that can be printed or compared without a surprise: every field where it belongs and of its kind. A record of an older
 * version is computed anew from its inputs.
 *
 * Figures are not judged here: a changed figure is found by `recheckRecord`.
 *
 * @param input  A record as JSON text or as the value that `JSON.parse` gave.
 * @throws {@link DomainError} naming the first field that is missing, of another kind or too much.
 *
 * Source: own definition.
 * @example
 * ```ts
 * import { DomainError } from 'slantpath';
 * import { checkedRecord, recordJob } from 'slantpath/job';
 * const record = recordJob({
 *   format: 'slantpath-job', version: 2,
 *   station: { latitudeDeg: 46.6, longitudeDeg: 10.3 }, slots: [{ orbitalLongitudeDeg: 16.4 }],
 * });
 * checkedRecord(JSON.stringify(record)).outcome; // => 'incomplete'
 * let parameter = '';
 * try {
 *   checkedRecord({ ...record, findings: 'none' });
 * } catch (error) {
 *   if (error instanceof DomainError) parameter = error.parameter;
 * }
 * parameter; // => 'findings'
 * ```
 */
export function checkedRecord(input: unknown): JobRecord {
  return checkedRecordWith(input, SHIPPED);
}

/**
 * Compares a later record of the same installation with the first one.
 *
 * Changes that are each within their doubt are pooled as well: a dozen levels that all fell by the same 1.5 dB are a change.
 *
 * @param first  The record of the first visit, from `recordJob`, as a value or as JSON text.
 * @param later  The record of the later visit.
 * @returns Inputs that differ, each repeated reading with its change and whether that exceeds the uncertainty,
 *   the changes pooled, and what the pattern means.
 * @throws {@link DomainError} naming the field of `first` or `later` that is not that of a record.
 *
 * Source: GUM (JCGM 100:2008) 5.1.2, uncertainty of a difference; the meanings are common practice of the trade.
 * @example
 * ```ts
 * import { compareRecords, recordJob } from 'slantpath/job';
 * const job = (levelDbuv: number) => ({
 *   format: 'slantpath-job' as const, version: 2 as const,
 *   station: { latitudeDeg: 46.6, longitudeDeg: 10.3 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4, carriers: [
 *     { name: 'Ku', frequencyGHz: 12.5, polarization: 'horizontal' as const },
 *   ] }],
 *   visits: [{ kind: 'installation' as const, date: '2026-07-14', readings: [{
 *     quantity: 'level' as const, testPoint: 'antenna', slot: 'middle', carrier: 'Ku', levelDbuv, expandedUncertaintyDb: 2,
 *   }] }],
 * });
 * const comparison = compareRecords(recordJob(job(74)), recordJob(job(68)));
 * comparison.readings[0]?.change; // => -6
 * comparison.readings[0]?.significant; // => true
 * ```
 */
export function compareRecords(
  first: JobRecord | string,
  later: JobRecord | string,
): RecordComparison {
  return compareRecordsWith(first, later, SHIPPED);
}

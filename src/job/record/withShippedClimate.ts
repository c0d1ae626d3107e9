/** Records with the climate grid that is shipped. */

import type { JobInput } from '../file/jobOf.js';
import { SHIPPED } from '../plan/withShippedClimate.js';
import { type Recheck, recheckRecordWith } from './recheckRecord.js';
import { type JobRecord, recordJobWith } from './recordJob.js';

/**
 * Record of a job: plan, peaking, verdicts, findings and the outcome.
 *
 * @param input  A job file of either version: JSON text, a parsed value or what `parseJob` gave.
 * @throws {@link DomainError} naming the field by its path in the job file.
 *
 * Source: the parts of the library; each result names its own.
 * @example
 * ```ts
 * import { recordJob } from 'slantpath/job';
 * const record = recordJob({
 *   format: 'slantpath-job', version: 2, date: '2026-07-14',
 *   station: { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4, carriers: [{
 *     name: 'Ku', frequencyGHz: 12.5, polarization: 'horizontal', eirpDbw: 51,
 *     symbolRateMBd: 27.5, mode: 'QPSK 3/4', intermediateFrequencyMHz: 1900,
 *   }] }],
 *   mounts: [{ kind: 'fixed', reflector: { diameterM: 0.9, offsetAngleDeg: 24.6 } }],
 *   units: [{ name: 'LNB', noiseFigureDb: 0.7, gainDb: 56 }],
 *   distribution: { trees: [{ kind: 'outlet', name: 'desk' }] },
 *   limits: [{ testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 }],
 *   visits: [{ kind: 'installation', date: '2026-07-14', readings: [{
 *     quantity: 'level', testPoint: 'desk', slot: 'middle', carrier: 'Ku', levelDbuv: 44, expandedUncertaintyDb: 2,
 *   }] }],
 * });
 * record.outcome; // => 'does-not-conform'
 * record.findings[0]?.code; // => 'planned-level-outside-limit'
 * ```
 */
export function recordJob(input: JobInput): JobRecord {
  return recordJobWith(input, SHIPPED);
}

/**
 * Recomputes a record from the inputs it holds and lists every field that differs.
 *
 * @param input  A record as JSON text or as the value that `JSON.parse` gave.
 * @returns `agrees`; `differs` with each field's path, recorded and recomputed value; or `other-rules` for a record of an older
 *   version, with the figures of both. Angles and decibels count as equal within 1e-5, other figures within what any instrument
 *   could tell apart, since engines differ in the last digit of a sine.
 * @throws {@link DomainError} where the document is not a record, its version is not known, or its inputs are
 *   not a valid job; paths begin with `job.`.
 *
 * Source: own definition; the document's format is fixed by `format` and `version`.
 * Accuracy: as told under what is returned.
 * @example
 * ```ts
 * import { DomainError } from 'slantpath';
 * import { recheckRecord } from 'slantpath/job';
 * let parameter = '';
 * try {
 *   recheckRecord({ format: 'slantpath-record', version: 7 });
 * } catch (error) {
 *   if (error instanceof DomainError) parameter = error.parameter;
 * }
 * parameter; // => 'version'
 * ```
 */
export function recheckRecord(input: unknown): Recheck {
  return recheckRecordWith(input, SHIPPED);
}

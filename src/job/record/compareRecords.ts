/** A later record against the first one of the same installation: what changed, and what it means. */

import { within } from '../../errors.js';
import type { PlanSources } from '../plan/planJob.js';
import { type Changes, changesBetween } from '../results/changes.js';
import { type Difference, differences } from './differences.js';
import { checkedRecordWith } from './readRecord.js';
import type { JobRecord } from './recordJob.js';

/** What changed between two records. */
export interface RecordComparison extends Changes {
  /** Inputs that differ, visits aside. */
  readonly inputs: readonly Difference[];
}

/**
 * Compares two records with a climate of the caller's own; as `compareRecords`.
 *
 * @param sources  `climate`: where the climate comes from; the one with which the records were made.
 * @throws {@link DomainError} naming the field of `first` or `later` that is not that of a record.
 *
 * Source: as `compareRecords`.
 * @example
 * ```ts
 * import { compareRecordsWith, recordJobWith } from 'slantpath/job';
 * const sources = { climate: null };
 * const record = recordJobWith(
 *   {
 *     format: 'slantpath-job', version: 2,
 *     station: { latitudeDeg: 46.6, longitudeDeg: 10.3 }, slots: [{ orbitalLongitudeDeg: 16.4 }],
 *   },
 *   sources,
 * );
 * compareRecordsWith(record, record, sources).meaning; // => 'no-common-readings'
 * ```
 */
export function compareRecordsWith(
  first: unknown,
  later: unknown,
  sources: PlanSources,
): RecordComparison {
  const before = within('first', () => checkedRecordWith(first, sources));
  const after = within('later', () => checkedRecordWith(later, sources));
  const plain = ({ visits: _visits, ...rest }: JobRecord['job']) => rest;
  return {
    inputs: differences(plain(before.job), plain(after.job)),
    ...changesBetween(before.verdicts, after.verdicts),
  };
}

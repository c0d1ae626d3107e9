/** A record computed again from its own inputs: does it still say what it said? */

import type { PlanSources } from '../plan/planJob.js';
import { type Difference, recordDifferences } from './differences.js';
import { recomputed, recordDocument, withLaterFields } from './readRecord.js';
import type { JobRecord } from './recordJob.js';

/** What a recheck found; read `kind` first. */
export type Recheck =
  | {
      /** `agrees`: every figure comes out again. */
      readonly kind: 'agrees';
      /** The record as computed now. */
      readonly record: JobRecord;
    }
  | {
      /** `differs`: at least one field does not. */
      readonly kind: 'differs';
      /** The fields, with what the record says (`before`) and what comes out (`after`). */
      readonly differences: readonly Difference[];
      /** The record as computed now. */
      readonly record: JobRecord;
    }
  | {
      /** `other-rules`: the record was made by the rules of an older version, so that it cannot be judged by those of now. */
      readonly kind: 'other-rules';
      /** Version whose rules the record keeps. */
      readonly recordVersion: number;
      /** Version since which the rules are others. */
      readonly sinceVersion: number;
      /** The fields that both versions have and that say something else now: old (`before`) and new (`after`). */
      readonly differences: readonly Difference[];
      /** The record as computed now. */
      readonly record: JobRecord;
    };

/** Version of the rules of now. */
const RULES_VERSION = 2;

/**
 * Rechecks a record with a climate of the caller's own; as `recheckRecord`.
 *
 * @param input  A record as JSON text or as the value that `JSON.parse` gave.
 * @param sources  `climate`: where the climate comes from; the one with which the record was made.
 * @throws {@link DomainError} as `recheckRecord`.
 *
 * Source: as `recheckRecord`.
 * @example
 * ```ts
 * import { recheckRecordWith, recordJobWith } from 'slantpath/job';
 * const sources = { climate: null };
 * const record = recordJobWith(
 *   {
 *     format: 'slantpath-job', version: 2,
 *     station: { latitudeDeg: 46.6, longitudeDeg: 10.3 }, slots: [{ orbitalLongitudeDeg: 16.4 }],
 *   },
 *   sources,
 * );
 * recheckRecordWith(JSON.stringify(record), sources).kind; // => 'agrees'
 * ```
 */
export function recheckRecordWith(input: unknown, sources: PlanSources): Recheck {
  const document = recordDocument(input);
  const record = recomputed(document, sources);
  // What has no value in JSON is gone from a record that was kept as text.
  const now: unknown = JSON.parse(JSON.stringify(record));
  if (document.version < RULES_VERSION)
    return {
      kind: 'other-rules',
      recordVersion: document.version,
      sinceVersion: RULES_VERSION,
      differences: recordDifferences(inVersion2(document), now).filter(
        ({ path }) => path !== 'version' && !path.startsWith('job.') && path !== 'job',
      ),
      record,
    };
  const found = recordDifferences(withLaterFields(document, now), now);
  return found.length === 0
    ? { kind: 'agrees', record }
    : { kind: 'differs', differences: found, record };
}

type Tree = Readonly<Record<string, unknown>>;

const tree = (value: unknown): Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Tree) : {};

/** Lists of a version 1 record that stand elsewhere in version 2. */
function inVersion2(document: Tree): Tree {
  const plan = tree(document['plan']);
  const { mount, ...rest } = plan;
  const old = tree(mount);
  return {
    ...document,
    plan: {
      ...rest,
      ...(mount === undefined
        ? {}
        : {
            mounts: [{ ...old, ...(old['kind'] === 'shared' ? { kind: 'several-slots' } : {}) }],
          }),
    },
    ...(document['outcome'] === 'no-readings' ? { outcome: 'incomplete' } : {}),
  };
}

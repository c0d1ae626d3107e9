/** A record computed again from its own inputs: does it still say what it said? */

import { DomainError, within } from '../errors.js';
import { type Difference, differences } from './differences.js';
import { parseJob } from './parseJob.js';
import { type JobRecord, recordJob } from './recordJob.js';

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
    };

/** Versions of the record that can be read. */
const READABLE_VERSIONS = [1] as const;

/**
 * Recomputes a record from the inputs it holds and lists every field that differs.
 *
 * @param input  A record as JSON text or as the value that `JSON.parse` gave.
 * @returns `agrees`, or `differs` with each field's path, recorded and recomputed value. Numbers within 1e-9
 *   of each other count as equal.
 * @throws {@link DomainError} where the document is not a record, its version is not known, or its inputs are
 *   not a valid job; paths begin with `job.`.
 *
 * Source: own definition; the document's format is fixed by `format` and `version`.
 * Accuracy: a change of a figure by more than 1e-9 of its size is found.
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
  const recorded = readRecord(input);
  const job = within('job', () => parseJob(recorded['job']));
  const record = recordJob(job);
  // What has no value in JSON is gone from a record that was kept as text.
  const found = differences(recorded, JSON.parse(JSON.stringify(record)));
  return found.length === 0
    ? { kind: 'agrees', record }
    : { kind: 'differs', differences: found, record };
}

/** The document, if it says that it is a record of a version that can be read. */
function readRecord(input: unknown): Readonly<Record<string, unknown>> {
  let value = input;
  if (typeof input === 'string') {
    try {
      value = JSON.parse(input);
    } catch {
      throw new DomainError({
        code: 'malformed',
        parameter: 'record',
        received: input.trim(),
        allowed: 'JSON',
      });
    }
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new DomainError({
      code: value === undefined || value === null ? 'missing' : 'malformed',
      parameter: 'record',
      received: value,
      allowed: 'an object',
    });
  const record = value as Readonly<Record<string, unknown>>;
  if (record['format'] !== 'slantpath-record')
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'format',
      received: record['format'],
      allowed: 'slantpath-record',
      slip:
        record['format'] === 'slantpath-job' ? 'is it a job file, not yet a record?' : undefined,
    });
  if (!(READABLE_VERSIONS as readonly unknown[]).includes(record['version']))
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'version',
      received: record['version'],
      allowed: `one of ${READABLE_VERSIONS.join(', ')}`,
    });
  return record;
}

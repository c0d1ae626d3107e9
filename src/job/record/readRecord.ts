/** A record read from JSON: what it is, its version, its inputs checked, its figures in their places. */

import { DomainError, within } from '../../errors.js';
import { parseJob } from '../file/parseJob.js';
import type { PlanSources } from '../plan/planJob.js';
import { type JobRecord, recordOf } from './recordJob.js';

/** Versions of the record that can be read. */
const READABLE_VERSIONS = [1, 2] as const;

/** A document that says that it is a record of a version that can be read. */
export type RecordDocument = Readonly<Record<string, unknown>> & {
  readonly version: (typeof READABLE_VERSIONS)[number];
};

/** The document, if it is one. */
export function recordDocument(input: unknown): RecordDocument {
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
  return record as RecordDocument;
}

/** The record of a document's own inputs, computed now. */
export function recomputed(document: RecordDocument, sources: PlanSources): JobRecord {
  const job = within('job', () => parseJob(document['job']));
  return within('job', () => recordOf(job, sources));
}

/** Fields that records of this version got after the first of them were written, by their path. */
const LATER_FIELDS = [
  ['firstLook', 'unseen'],
  ['plan', 'rain', 'wetFeed'],
] as const;

/** The document with later fields as computed now where it does not have them: it could not say them. */
export function withLaterFields(document: RecordDocument, now: unknown): RecordDocument {
  return LATER_FIELDS.reduce<RecordDocument>(
    (told, path) => withField(told, now, path) as RecordDocument,
    document,
  );
}

/** A value with the field at a path as in another one, where the other has it and the value only lacks the last step. */
function withField(told: unknown, now: unknown, [field, ...rest]: readonly string[]): unknown {
  if (field === undefined || !isObject(told) || !isObject(now)) return told;
  const had = Object.hasOwn(told, field);
  if (rest.length === 0)
    return had || !Object.hasOwn(now, field) ? told : { ...told, [field]: now[field] };
  return had ? { ...told, [field]: withField(told[field], now[field], rest) } : told;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  kindOf(value) === 'object';

/** A record whose every field is where it belongs and of its kind; as `checkedRecord`. */
export function checkedRecordWith(input: unknown, sources: PlanSources): JobRecord {
  const document = recordDocument(input);
  const now = recomputed(document, sources);
  if (document.version === 1) return now;
  const plain: unknown = JSON.parse(JSON.stringify(now));
  const told = withLaterFields(document, plain);
  sameShape(told, plain, '');
  return told as unknown as JobRecord;
}

const kindOf = (value: unknown): string =>
  value === null ? 'null' : Array.isArray(value) ? 'list' : typeof value;

/** Refuses the first field that has not the kind of the one computed; fixed words must be the same. */
function sameShape(told: unknown, wanted: unknown, path: string): void {
  const kind = kindOf(wanted);
  const refuse = (allowed: string, at = path): never => {
    throw new DomainError({
      code: told === undefined ? 'missing' : 'malformed',
      parameter: at === '' ? 'record' : at,
      received: told,
      allowed,
      slip: 'was the record changed? recheck it',
    });
  };
  if (kindOf(told) !== kind || (kind === 'number' && !Number.isFinite(told))) refuse(`a ${kind}`);
  if (kind === 'string' && told !== wanted && !path.startsWith('job.')) refuse(String(wanted));
  if (kind !== 'list' && kind !== 'object') return;
  const a = told as Readonly<Record<string, unknown>>;
  const b = wanted as Readonly<Record<string, unknown>>;
  const list = kind === 'list';
  const inner = (key: string) => (list ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`);
  for (const key of Object.keys(a))
    if (!Object.hasOwn(b, key)) refuse('left out: its inputs give no such field', inner(key));
  for (const key of Object.keys(b)) sameShape(a[key], b[key], inner(key));
}

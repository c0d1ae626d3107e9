/** Job files in and out: what a file holds, and why one is not taken. */

import { DomainError } from 'slantpath';
import { parseJob } from 'slantpath/job';
import type { Draft } from './draft.js';
import { isDraft } from './isDraft.js';
import { valueAt } from './paths.js';
import { type Fault, faultsOf, prepared } from './prepared.js';

/** Largest file that is read, in bytes. */
export const LARGEST_FILE_BYTES = 5_000_000;

/** What came of reading a file. */
export type Taken =
  | { readonly kind: 'job'; readonly draft: Draft; readonly from: 'job' | 'record' }
  /** `too-large`; `not-json`; `other`: JSON of another kind; `faults`: a job file that the library refuses. */
  | { readonly kind: 'too-large'; readonly bytes: number }
  | { readonly kind: 'not-json' }
  | { readonly kind: 'other' }
  | { readonly kind: 'faults'; readonly faults: readonly Fault[] };

/** A job from the text of a file: a job file of either version, or a record, of which the job is taken. */
export function takenFrom(text: string): Taken {
  if (text.length > LARGEST_FILE_BYTES) return { kind: 'too-large', bytes: text.length };
  let value: unknown;
  try {
    // A mark at the beginning comes with files that some editors have saved.
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return { kind: 'not-json' };
  }
  const format = (value as { readonly format?: unknown } | null)?.format;
  if (format !== 'slantpath-job' && format !== 'slantpath-record') return { kind: 'other' };
  const record = format === 'slantpath-record';
  const job = record ? (value as { readonly job?: unknown }).job : value;
  try {
    // Names that a file leaves out are put in, so that rows can refer to them.
    return { kind: 'job', draft: plain(parseJob(job)), from: record ? 'record' : 'job' };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    // A job of this page that was saved half-filled, or with a value out of range, is opened as it was left.
    if (!record && isDraft(value) && opens(value))
      return { kind: 'job', draft: value, from: 'job' };
    return { kind: 'faults', faults: faultsOf(error) };
  }
}

/** Whether all that is wrong with a draft are values of its fields, which the page shows and lets mend. */
function opens(draft: Draft): boolean {
  return prepared(draft).faults.every(({ path, allowed }) => {
    const value = valueAt(draft, path);
    return (
      !allowed.startsWith('left out') && (typeof value === 'number' || typeof value === 'string')
    );
  });
}

/** Data without fields that have no value. */
const plain = (value: unknown): Draft => JSON.parse(JSON.stringify(value)) as Draft;

/** The text of a job file. */
export const fileOf = (job: unknown): string => `${JSON.stringify(job, null, 2)}\n`;

/** A name for the file: the title in letters that every system takes. */
export function fileName(title: string, ending: string): string {
  const plainTitle = title
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plainTitle === '' ? 'job' : plainTitle}.${ending}`;
}

/** From a draft to the job that is computed: what waits is left out, what cannot be read is told by its field. */

import { DomainError } from 'slantpath';
import { type JobFile, parseJob } from 'slantpath/job';
import type { Draft } from './draft.js';
import { type Waiting, waitingOf, withoutWaiting } from './required.js';

/** A field that the job file refuses. */
export interface Fault {
  /** Where it stands in the draft. */
  readonly path: string;
  /** What would have been right, as the library says it: `90 or less`. */
  readonly allowed: string;
  /** The likely slip as a question; empty where there is none. */
  readonly slip: string;
}

/** A draft made ready. */
export interface Prepared {
  /** The job; `null` where it lacks a place or a slot, or has faults. */
  readonly job: JobFile | null;
  readonly waiting: readonly Waiting[];
  readonly faults: readonly Fault[];
  /** What a path of the job is in the draft. */
  readonly pathBack: (path: string) => string;
}

/** A line of the library's message: `path must be …, got …; slip`. */
const LINE = /^(\S+) must be (.*?), got .*?(?:; (.*\?))?$/;

/** All faults that one error of `parseJob` tells. */
export function faultsOf(error: DomainError): readonly Fault[] {
  const found = error.message.split('\n').flatMap((line): Fault[] => {
    const [, path, allowed, slip = ''] = LINE.exec(line) ?? [];
    return path !== undefined && allowed !== undefined ? [{ path, allowed, slip }] : [];
  });
  return found.length > 0
    ? found
    : [{ path: error.parameter, allowed: error.allowed, slip: error.slip ?? '' }];
}

/** The job of a draft. */
export function prepared(draft: Draft): Prepared {
  const waiting = waitingOf(draft);
  const { job, pathBack } = withoutWaiting(draft, waiting);
  const { latitudeDeg, longitudeDeg } = draft.station ?? {};
  const placed = latitudeDeg !== undefined && longitudeDeg !== undefined;
  if (!placed || (job.slots ?? []).length === 0)
    return { job: null, waiting, faults: [], pathBack };
  try {
    return { job: parseJob(job), waiting, faults: [], pathBack };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const faults = faultsOf(error).map((fault) => ({ ...fault, path: pathBack(fault.path) }));
    return { job: null, waiting, faults, pathBack };
  }
}

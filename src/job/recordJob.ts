/** The record: the job, its plan, what was read and what it means, in one JSON document. */

import type { JobFile } from './jobFile.js';
import { type JobPlan, planJob } from './planJob.js';
import { type FirstLook, firstLook } from './sections/causes.js';
import { type PeakingResult, peakingResults } from './sections/peaking.js';
import { type ReadingVerdict, readingVerdicts } from './sections/verdicts.js';

/** A record, version 1: plain data that can be kept as JSON and computed again. */
export interface JobRecord {
  /** What the document is. */
  readonly format: 'slantpath-record';
  /** Version of the format. */
  readonly version: 1;
  /** The inputs, complete. */
  readonly job: JobFile;
  /** What was planned from them. */
  readonly plan: JobPlan;
  /** What the peaking samples say. */
  readonly peaking: readonly PeakingResult[];
  /** Each reading against limit and expectation. */
  readonly verdicts: readonly ReadingVerdict[];
  /** What to look at first; `null` where nothing is wrong. */
  readonly firstLook: FirstLook | null;
  /** `conforms` if every reading does, `does-not-conform` if one does not, else `undecided`; `no-readings` before the visit. */
  readonly outcome: 'conforms' | 'does-not-conform' | 'undecided' | 'no-readings';
}

/**
 * Record of a job: plan, peaking, verdicts.
 *
 * @param job  A checked job, from {@link parseJob}.
 * @throws {@link DomainError} naming the field by its path in the job file.
 *
 * Source: the parts of the library; each result names its own.
 * @example
 * ```ts
 * import { parseJob, recordJob } from 'slantpath/job';
 * typeof recordJob; // => 'function'
 * ```
 */
export function recordJob(job: JobFile): JobRecord {
  const plan = planJob(job);
  const verdicts = readingVerdicts(job, plan);
  return {
    format: 'slantpath-record',
    version: 1,
    job,
    plan,
    peaking: peakingResults(job),
    verdicts,
    firstLook: firstLook(job, plan, verdicts),
    outcome: outcome(verdicts),
  };
}

function outcome(verdicts: readonly ReadingVerdict[]): JobRecord['outcome'] {
  const decisions = verdicts.flatMap(({ decision }) => (decision ? [decision.verdict] : []));
  if (decisions.length === 0) return 'no-readings';
  if (decisions.includes('does-not-conform')) return 'does-not-conform';
  return decisions.includes('undecided') ? 'undecided' : 'conforms';
}

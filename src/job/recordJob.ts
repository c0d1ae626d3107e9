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
 * const record = recordJob(job);
 * record.outcome; // => 'undecided'
 * record.verdicts[0]?.underExpectation; // => true
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

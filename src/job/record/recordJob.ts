/** The record: the job, its plan, what was read and what it means, in one JSON document. */

import type { JobFile } from '../file/jobFile.js';
import { type JobInput, jobOf } from '../file/jobOf.js';
import { allFindings } from '../findings/allFindings.js';
import { type Finding, type Outcome, outcomeOf } from '../findings/finding.js';
import { type JobPlan, type PlanSources, planOf } from '../plan/planJob.js';
import { type FirstLook, firstLook } from '../results/causes.js';
import { type Changes, changesBetween } from '../results/changes.js';
import { type PeakingResult, peakingResults } from '../results/peaking.js';
import { latestVerdicts, type ReadingVerdict, visitVerdicts } from '../results/verdicts.js';

/** A later visit against what was read before it. */
export interface VisitChanges extends Changes {
  /** The later visit, from 0. */
  readonly visit: number;
}

/** A record, version 2: plain data that can be kept as JSON and computed again. */
export interface JobRecord {
  /** What the document is. */
  readonly format: 'slantpath-record';
  /** Version of the format and of the rules. */
  readonly version: 2;
  /** The inputs, complete. */
  readonly job: JobFile;
  /** What was planned from them. */
  readonly plan: JobPlan;
  /** What the peaking samples say, the latest of each axis and slot. */
  readonly peaking: readonly PeakingResult[];
  /** Each place against limit and expectation, by its latest reading. */
  readonly verdicts: readonly ReadingVerdict[];
  /** What to look at first; `null` where nothing is wrong. */
  readonly firstLook: FirstLook | null;
  /** Every later visit against what was read before it. */
  readonly changes: readonly VisitChanges[];
  /** What is wrong, open, not read or worth knowing, the worst first. */
  readonly findings: readonly Finding[];
  /** The worst of the findings. */
  readonly outcome: Outcome;
}

/**
 * Record of a job with a climate of the caller's own; as {@link planJobWith}.
 *
 * @param input  A job file of either version: JSON text, a parsed value or what `parseJob` gave.
 * @param sources  `climate`: where the climate comes from; `null` to plan without rain.
 * @throws {@link DomainError} naming the field by its path in the job file.
 *
 * Source: the parts of the library; each result names its own.
 * @example
 * ```ts
 * import { recordJobWith } from 'slantpath/job';
 * const record = recordJobWith(
 *   {
 *     format: 'slantpath-job', version: 2,
 *     station: { latitudeDeg: 46.6, longitudeDeg: 10.3 },
 *     slots: [{ orbitalLongitudeDeg: 16.4 }],
 *   },
 *   { climate: null },
 * );
 * record.outcome; // => 'incomplete'
 * ```
 */
export function recordJobWith(input: JobInput, sources: PlanSources): JobRecord {
  return recordOf(jobOf(input), sources);
}

/** The record of a checked job. */
export function recordOf(job: JobFile, sources: PlanSources): JobRecord {
  const plan = planOf(job, sources);
  const visits = job.visits.map((_, index) => visitVerdicts(job, plan, index));
  const verdicts = latestVerdicts(visits);
  const peaking = peakingResults(job, plan);
  const look = firstLook(job, plan, verdicts);
  const changes = visits.slice(1).map((later, index): VisitChanges => {
    const before = latestVerdicts(visits.slice(0, index + 1));
    return { visit: index + 1, ...changesBetween(before, later) };
  });
  const findings = allFindings(job, plan, { peaking, verdicts, firstLook: look, changes });
  return withoutNegativeZero({
    format: 'slantpath-record',
    version: 2,
    job,
    plan,
    peaking,
    verdicts,
    firstLook: look,
    changes,
    findings,
    outcome: outcomeOf(findings),
  });
}

/** The same document as JSON keeps it: no -0, no field without a value. */
function withoutNegativeZero<T>(value: T): T {
  if (typeof value === 'number') return (value + 0) as T;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(withoutNegativeZero) as T;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .map(([key, inner]) => [key, withoutNegativeZero(inner)]),
  ) as T;
}

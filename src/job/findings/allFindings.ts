/** Everything that a job has to say about itself, the worst first. */

import type { JobFile } from '../file/jobFile.js';
import type { JobPlan } from '../plan/planJob.js';
import type { FirstLook } from '../results/causes.js';
import type { Changes } from '../results/changes.js';
import type { PeakingResult } from '../results/peaking.js';
import type { ReadingVerdict } from '../results/verdicts.js';
import { cableFindings } from './cableFindings.js';
import { type Finding, worstFirst } from './finding.js';
import { commissioningFindings, windFindings } from './outdoorFindings.js';
import { pointingFindings, polarizationFindings } from './peakingFindings.js';
import {
  distributionFindings,
  levelFindings,
  missingFindings,
  promiseFindings,
  transmitFindings,
  tuningFindings,
} from './planFindings.js';
import {
  changeFindings,
  coverageFindings,
  limitFindings,
  pooledFindings,
  readingFindings,
} from './readingFindings.js';
import { mountFindings, viewFindings } from './siteFindings.js';
import { rangeFindings } from './tuningFindings.js';

/** What was read and worked out. */
export interface Results {
  readonly peaking: readonly PeakingResult[];
  readonly verdicts: readonly ReadingVerdict[];
  readonly firstLook: FirstLook | null;
  readonly changes: readonly (Changes & { readonly visit: number })[];
}

/** All findings: the worst first, those of one weight in the order of the work. */
export function allFindings(job: JobFile, plan: JobPlan, results: Results): readonly Finding[] {
  const { peaking, verdicts, firstLook, changes } = results;
  return worstFirst([
    ...viewFindings(job, plan),
    ...mountFindings(job, plan),
    ...pointingFindings(job, plan, peaking),
    ...polarizationFindings(job, plan, verdicts),
    ...tuningFindings(job, plan),
    ...rangeFindings(job, plan),
    ...promiseFindings(job, plan),
    ...levelFindings(plan, verdicts),
    ...distributionFindings(plan),
    ...cableFindings(job, plan),
    ...transmitFindings(job, plan),
    ...commissioningFindings(job, plan),
    ...windFindings(job, plan),
    ...readingFindings(verdicts),
    ...pooledFindings(verdicts),
    ...changeFindings(firstLook, changes),
    ...coverageFindings(job, plan, verdicts),
    ...limitFindings(job),
    ...missingFindings(plan),
  ]);
}

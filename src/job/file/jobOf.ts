/** A job from whatever a caller has: text, a parsed value, a checked job. */

import type { JobFile, JobFile1, JobFile2 } from './jobFile.js';
import { parseJob } from './parseJob.js';

/** A job file of either version: checked or not, as text or as a value. */
export type JobInput = JobFile | JobFile2 | JobFile1 | string;

/** The job, checked. */
export function jobOf(input: JobInput): JobFile {
  return parseJob(input);
}

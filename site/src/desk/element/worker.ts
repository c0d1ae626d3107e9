/** Computes the record of a job beside the page, so that no answer holds up a finger. */

import { DomainError } from 'slantpath';
import { type JobFile, type JobRecord, recordJob } from 'slantpath/job';

/** A job to compute, by its number. */
export interface Asked {
  readonly number: number;
  readonly job: JobFile;
}

/** Its record, or why there is none. */
export interface Answered {
  readonly number: number;
  readonly record: JobRecord | null;
  readonly path: string;
  readonly allowed: string;
}

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const { number, job } = data;
  const answer = (of: Omit<Answered, 'number'>) =>
    postMessage({ number, ...of } satisfies Answered);
  try {
    answer({ record: recordJob(job), path: '', allowed: '' });
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    answer({ record: null, path: error.parameter, allowed: error.allowed });
  }
});

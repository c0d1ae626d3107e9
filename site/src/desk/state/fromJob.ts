/** What an example must know of the job that it was opened from. */

/** The mark in an example's address by which it knows that a job waits for its result. */
export const FROM_JOB = '#from-job';

/** Examples whose inputs the job takes back. */
export const RETURNING: readonly string[] = [
  'is-the-view-clear',
  'how-much-rain-margin',
  'half-way-back',
];

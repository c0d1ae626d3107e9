/** What an example must know of the job that it was opened from. */

/** The mark in an example's address by which it knows that a job waits for its result; behind it, for which slot and carrier. */
export const FROM_JOB = '#from-job';

/** Examples whose inputs the job takes back. */
export const RETURNING: readonly string[] = [
  'is-the-view-clear',
  'how-much-rain-margin',
  'half-way-back',
  'where-is-the-satellite',
  'north-by-the-sun',
  'sun-outages',
  'how-far-to-turn-the-feed',
  'what-does-a-leaning-mast-do',
  'when-to-peak-on-a-moving-satellite',
  'can-one-reflector-take-them-all',
  'how-is-a-polar-mount-set',
  'do-the-neighbours-disturb',
  'main-lobe-or-side-lobe',
  'does-the-link-close',
  'which-mode-when',
  'which-reflector',
  'how-is-a-two-way-terminal-lined-up',
  'how-far-is-safe',
  'how-much-ballast-does-a-flat-roof-need',
];

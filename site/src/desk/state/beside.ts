/** What is kept beside a job and is no part of its file. */

import type { Draft } from './draft.js';

/** What is known of the level display. */
export interface Display {
  /** Flicker of one reading, standard deviation in dB. */
  readonly standardDeviationDb: number;
  /** Step of the display in dB. */
  readonly levelStepDb: number;
  /** How levels are read. */
  readonly unit: 'dBm' | 'dBuV';
}

/** What is kept beside a job. */
export interface Beside {
  /** The visit that is worked on. */
  readonly visit: number;
  readonly display: Display;
}

/** What a new job begins with: the last visit, and an ordinary field instrument (practice of the trade). */
export const newBeside: Beside = {
  visit: Number.MAX_SAFE_INTEGER,
  display: { standardDeviationDb: 0.3, levelStepDb: 0.5, unit: 'dBuV' },
};

/** The visit that is worked on: the one chosen, else the last; -1 for none. */
export function visitOf({
  draft,
  beside,
}: {
  readonly draft: Draft;
  readonly beside: Beside;
}): number {
  const count = draft.visits?.length ?? 0;
  return Math.min(Math.max(0, beside.visit), count - 1);
}

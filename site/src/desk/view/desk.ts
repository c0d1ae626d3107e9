/** What the forms and answers are drawn from. */

import type { JobRecord } from 'slantpath/job';
import { type Display, USUAL_DISPLAY } from '../state/bench.js';
import type { Draft } from '../state/draft.js';
import type { DeskWords } from '../words/words.js';

/** What is kept beside the job and is no part of its file. */
export interface Beside {
  /** The visit that is worked on. */
  readonly visit: number;
  readonly display: Display;
}

/** What stands on the page. */
export interface Desk {
  readonly draft: Draft;
  /** The last complete answer; `null` before the first. */
  readonly record: JobRecord | null;
  readonly beside: Beside;
  readonly words: DeskWords;
}

/** The visit that is worked on: the one chosen, else the last; -1 for none. */
export function visitOf({ draft, beside }: Pick<Desk, 'draft' | 'beside'>): number {
  const count = draft.visits?.length ?? 0;
  return Math.min(Math.max(0, beside.visit), count - 1);
}

/** What a new job begins with. */
export const newBeside: Beside = { visit: Number.MAX_SAFE_INTEGER, display: USUAL_DISPLAY };

/** What the forms and answers are drawn from. */

import type { JobRecord } from 'slantpath/job';
import type { Beside } from '../state/beside.js';
import type { Draft } from '../state/draft.js';
import type { DeskWords } from '../words/words.js';

/** What stands on the page. */
export interface Desk {
  readonly draft: Draft;
  /** The last complete answer; `null` before the first. */
  readonly record: JobRecord | null;
  readonly beside: Beside;
  readonly words: DeskWords;
}

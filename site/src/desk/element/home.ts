/** What the listeners of the page ask of the element that they listen in. */

import type { Beside } from '../state/beside.js';
import type { Draft } from '../state/draft.js';
import type { StageName } from '../state/stages.js';
import type { Desk } from '../view/desk.js';
import type { DeskWords } from '../words/words.js';

/** The element of the page, as its listeners see it. */
export interface DeskHome extends HTMLElement {
  readonly words: DeskWords;
  readonly desk: Desk;
  readonly draft: Draft;
  /** Says something where it is seen and read out. */
  say(text: string): void;
  /** Takes over a change of the job; `reshaped` where the form has other fields now. */
  change(draft: Draft, reshaped: boolean, beside?: Beside): void;
  show(id: string): void;
  fill(stage: StageName): void;
  go(stage: StageName): void;
  choose(open: boolean): void;
  begin(demo: string): Promise<void>;
  open(file: File): Promise<void>;
  undo(): void;
  removeJob(): Promise<void>;
  save(what: string): void;
  print(visit: 'before' | 'after'): void;
  link(): Promise<void>;
  saveDamaged(id: string): void;
  removeDamaged(id: string): Promise<void>;
}

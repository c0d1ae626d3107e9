/** Runs before each test file: which mutant is alive comes from the environment of the run, which ones were met goes to a file. */

import { appendFileSync } from 'node:fs';
import { afterAll, inject } from 'vitest';

declare module 'vitest' {
  interface ProvidedContext {
    /** The mutant that is alive; -1 for none, with a record of which are met. */
    mutant: number;
    /** Where the record goes. */
    record: string;
  }
}

const alive = inject('mutant');
const record = inject('record');
const met = new Set<number>();
let calls = 0;
/** A mutant that a loop asks for this often has lost its end. */
const MOST_CALLS = 3e7;

(globalThis as { __mutant?: (id: number) => boolean }).__mutant = (id) => {
  if (alive < 0) met.add(id);
  else if (id === alive) {
    if (++calls > MOST_CALLS) throw new Error('the mutant does not come to an end');
    return true;
  }
  return false;
};

afterAll(() => {
  if (alive < 0) appendFileSync(record, `${JSON.stringify({ met: [...met] })}\n`);
});

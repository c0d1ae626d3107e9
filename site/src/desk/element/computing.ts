/** Asks the worker for the record of a job; only the newest question counts. */

import type { JobFile } from 'slantpath/job';
import type { Answered, Asked } from './worker.js';

/** Asks one question at a time; while one is being answered, only the newest of those that wait is kept. */
export class Computing {
  readonly #worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  readonly #answered: (answer: Answered) => void;
  #number = 0;
  #busy = false;
  #waiting: JobFile | undefined;

  constructor(answered: (answer: Answered) => void, failed: () => void) {
    this.#answered = answered;
    this.#worker.addEventListener('message', ({ data }: MessageEvent<Answered>) =>
      this.#take(data),
    );
    this.#worker.addEventListener('error', () => {
      this.#busy = false;
      failed();
    });
  }

  /** Asks for a job's record. */
  ask(job: JobFile): void {
    this.#number += 1;
    if (this.#busy) this.#waiting = job;
    else this.#post(job);
  }

  /** Forgets what was asked: another job is shown. */
  forget(): void {
    this.#number += 1;
    this.#waiting = undefined;
  }

  #post(job: JobFile): void {
    this.#busy = true;
    this.#worker.postMessage({ number: this.#number, job } satisfies Asked);
  }

  #take(answer: Answered): void {
    this.#busy = false;
    const next = this.#waiting;
    this.#waiting = undefined;
    if (next) this.#post(next);
    if (answer.number === this.#number) this.#answered(answer);
  }
}

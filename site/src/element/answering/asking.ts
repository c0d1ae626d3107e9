/** Asks for the answers of an example: a worker, or this page where no worker comes to life. */

import workerUrl from 'virtual:answering-worker';
import type { Example } from '../../lib/example.js';
import { ENGLISH, type Language, spoken } from '../../lib/language/language.js';
import type { Session } from './session.js';
import type { Answered, Opening, Question } from './worker.js';

/** Answers the questions of a page about its example, in the order they are asked. */
export type Asking = <Q extends Question>(
  question: Q,
  ...of: Parameters<Session[Q]>
) => Promise<Awaited<ReturnType<Session[Q]>>>;

/** Asks in the page itself. */
async function inPage(name: string, example: Example, wide: boolean): Promise<Session> {
  const { Session } = await import('./session.js');
  return new Session(name, example, wide);
}

/** The present language as it can be sent. */
function sent(language: Language): Opening['language'] {
  const { code, decimal, words, pairs } = language;
  return language === ENGLISH ? undefined : { code, decimal, words, pairs };
}

export function askingAbout(name: string, example: Example, wide: boolean): Asking {
  let page: Promise<Session> | undefined;
  let worker: Worker | undefined;
  let number = 0;
  const waiting = new Map<number, { again: () => void; done: (answer: Answered) => void }>();

  /** Goes on in the page with everything that has no answer yet. */
  const goOnHere = () => {
    worker?.terminate();
    worker = undefined;
    page ??= inPage(name, example, wide);
    const open = [...waiting.values()];
    waiting.clear();
    for (const { again } of open) again();
  };
  try {
    worker = new Worker(workerUrl, { type: 'module' });
    worker.addEventListener('error', goOnHere);
    worker.addEventListener('messageerror', goOnHere);
    worker.addEventListener('message', ({ data }: MessageEvent<Answered>) => {
      const one = waiting.get(data.number);
      waiting.delete(data.number);
      one?.done(data);
    });
    worker.postMessage({ example: name, wide, language: sent(spoken()) } satisfies Opening);
  } catch {
    goOnHere();
  }

  return <Q extends Question>(question: Q, ...of: Parameters<Session[Q]>) =>
    new Promise<Awaited<ReturnType<Session[Q]>>>((resolve, reject) => {
      type Answer = Awaited<ReturnType<Session[Q]>>;
      const here = () => {
        void page
          ?.then((session) =>
            (session[question] as (...of: readonly unknown[]) => unknown).apply(session, [...of]),
          )
          .then((answer) => resolve(answer as Answer), reject);
      };
      if (!worker) {
        here();
        return;
      }
      number += 1;
      waiting.set(number, {
        again: here,
        done: ({ answer, failed }) =>
          failed === undefined ? resolve(answer as Answer) : reject(new Error(failed)),
      });
      worker.postMessage({ number, question, of });
    });
}

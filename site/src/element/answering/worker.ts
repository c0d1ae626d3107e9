/** Computes the answers of a page's example beside the page, so that no answer holds up a finger. It shares the files of the page. */

import type { Example } from '../../lib/example.js';
import { finderOf, type Language, type Pairs, speak } from '../../lib/language/language.js';
import { Session } from './session.js';

const modules = import.meta.glob<{ default: Example }>('../../examples/**/*.ts');

/** The example of the page and the language that it speaks, as far as that can be sent. */
export interface Opening {
  readonly example: string;
  readonly wide: boolean;
  readonly language: (Omit<Language, 'find'> & { readonly pairs: readonly Pairs[] }) | undefined;
}

/** What can be asked of a session, by its name. */
export type Question = keyof Session;

/** A question by its number. */
export interface Asked {
  readonly number: number;
  readonly question: Question;
  readonly of: readonly unknown[];
}

/** Its answer; `failed` where something went wrong that is no fault of the inputs. */
export interface Answered {
  readonly number: number;
  readonly answer?: unknown;
  readonly failed?: string;
}

let session: Promise<Session> | undefined;

async function open({ example, wide, language }: Opening): Promise<Session> {
  const load = modules[`../../examples/${example}.ts`];
  if (!load) throw new Error(`no example ${example}`);
  if (language) speak({ ...language, find: finderOf(...language.pairs) });
  return new Session(example, (await load()).default, wide);
}

/** One after the other, in the order they were asked. */
let queue: Promise<unknown> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<Opening | Asked>) => {
  if ('example' in data) {
    session = open(data);
    return;
  }
  const { number, question, of } = data;
  queue = queue.then(async () => {
    try {
      const opened = await session;
      const ask = opened?.[question] as ((...of: readonly unknown[]) => unknown) | undefined;
      postMessage({ number, answer: await ask?.apply(opened, [...of]) } satisfies Answered);
    } catch (error) {
      postMessage({ number, failed: String(error) } satisfies Answered);
    }
  });
});

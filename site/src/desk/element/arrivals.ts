/** Jobs that come to the page: a demo, a file, a link, the result of a worked example; and what is said of them. */

import { DomainError } from 'slantpath';
import type { Example } from '../../lib/example.js';
import { decodeState, defaultsOf, readValues } from '../../lib/inputs/state.js';
import type { Draft } from '../state/draft.js';
import { LARGEST_FILE_BYTES, type Taken, takenFrom } from '../state/exchange.js';
import { RETURNING } from '../state/fromJob.js';
import { withExample } from '../state/handOver.js';
import { chosenIn } from '../state/ties.js';
import type { Desk } from '../view/desk.js';
import type { DeskWords } from '../words/words.js';

const demos = import.meta.glob<string>('../../../../examples/job/*.json', {
  query: '?raw',
  import: 'default',
});

const examples = import.meta.glob<{ default: Example }>('../../examples/*.ts');

/** The job of a demo. */
export async function demoTaken(demo: string): Promise<Taken | undefined> {
  const text = await demos[`../../../../examples/job/${demo}.json`]?.();
  return text === undefined ? undefined : takenFrom(text);
}

/** The job of a file; `unreadable` where the device does not give it. */
export async function fileTaken(file: File): Promise<Taken | 'unreadable'> {
  // A file of that size is not even read: a phone would stand still over it.
  if (file.size > LARGEST_FILE_BYTES) return { kind: 'too-large', bytes: file.size };
  const text = await file.text().catch(() => undefined);
  return text === undefined ? 'unreadable' : takenFrom(text);
}

/** Why a file or link is not taken. */
export function refusalSays(words: DeskWords, taken: Exclude<Taken, { kind: 'job' }>): string {
  const w = words.taken;
  switch (taken.kind) {
    case 'too-large':
      return w.tooLarge((taken.bytes / 1e6).toFixed(0));
    case 'not-json':
      return w.notJson;
    case 'other':
      return w.other;
    case 'faults':
      return w.faults(
        taken.faults
          .slice(0, 8)
          .map(({ path, allowed }) => `${path}: ${words.fault(allowed, '')}`)
          .join(' '),
      );
  }
}

/** What a worked example hands back in the address: the job with it, if there is a place for it, and a word. */
export async function handedBack(
  desk: Desk,
  name: string,
  search: string,
): Promise<{ readonly draft?: Draft; readonly says: string } | undefined> {
  const { words } = desk;
  const load = RETURNING.includes(name) ? examples[`../../examples/${name}.ts`] : undefined;
  const example = (await load?.())?.default;
  if (!example) return undefined;
  try {
    const defaults = defaultsOf(example.inputs);
    const values = readValues(example.inputs, decodeState(search, defaults));
    const chosen = chosenIn(new URLSearchParams(search).get('of') ?? '');
    const draft = withExample(desk, name, values, { defaults, chosen });
    return draft
      ? { draft, says: words.takenOver(words.examples[name] ?? name) }
      : { says: words.notTaken };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { says: words.notTaken };
  }
}

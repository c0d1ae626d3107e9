/** All jobs of this device: which are sound, which are damaged, which is shown; and what another tab does to them. */

import { type Beside, newBeside } from '../state/beside.js';
import type { Draft } from '../state/draft.js';
import type { Kept, Store } from './database.js';
import { type Damaged, type Entry, readEntry } from './entry.js';

/** A short word from one tab to the others. */
interface Message {
  readonly id: string;
  readonly revision: number;
}

/** The jobs of this device. */
export class Shelf {
  readonly entries = new Map<string, Entry>();
  readonly damaged = new Map<string, Damaged>();
  readonly #store: Store | undefined;
  readonly #channel: BroadcastChannel | undefined;

  private constructor(store: Store | undefined, told: (message: Message) => void) {
    this.#store = store;
    this.#channel =
      'BroadcastChannel' in globalThis ? new BroadcastChannel('slantpath-jobs') : undefined;
    this.#channel?.addEventListener('message', ({ data }) => told(data as Message));
  }

  /** The shelf with all that is kept; without a store it holds jobs in this tab only. */
  static async open(store: Store | undefined, told: (message: Message) => void): Promise<Shelf> {
    const shelf = new Shelf(store, told);
    await shelf.refresh();
    return shelf;
  }

  /** Whether jobs outlive this tab. */
  get keeps(): boolean {
    return this.#store !== undefined;
  }

  /** Reads the store anew; jobs that are only in this tab stay. */
  async refresh(): Promise<void> {
    for (const [id, value] of (await this.#store?.all()) ?? []) {
      const read = readEntry(id, value);
      if ('entry' in read) {
        const own = this.entries.get(id);
        if (!own || own.revision < read.entry.revision) this.entries.set(id, read.entry);
      } else this.damaged.set(id, read.damaged);
    }
  }

  /** A new job on the shelf, not yet kept. */
  add(draft: Draft, beside: Beside = newBeside): Entry {
    const entry = { id: crypto.randomUUID(), revision: 0, changedAt: Date.now(), draft, beside };
    this.entries.set(entry.id, entry);
    return entry;
  }

  /** Keeps a job as it is now. */
  async keep(id: string, draft: Draft, beside: Beside): Promise<Kept> {
    const before = this.entries.get(id);
    if (!this.#store) {
      if (before) this.entries.set(id, { ...before, draft, beside, changedAt: Date.now() });
      return { kind: 'refused' };
    }
    const entry: Entry = {
      id,
      revision: (before?.revision ?? 0) + 1,
      changedAt: Date.now(),
      draft,
      beside,
    };
    const kept = await this.#store.put(entry);
    if (kept.kind === 'kept') {
      this.entries.set(id, entry);
      this.#channel?.postMessage({ id, revision: entry.revision } satisfies Message);
    }
    return kept;
  }

  /** Takes a job, or the rest of a damaged one, off the shelf. */
  async remove(id: string): Promise<void> {
    this.entries.delete(id);
    this.damaged.delete(id);
    await this.#store?.remove(id);
    this.#channel?.postMessage({ id, revision: -1 } satisfies Message);
  }

  /** The job that was changed last. */
  latest(): Entry | undefined {
    return [...this.entries.values()].sort((a, b) => b.changedAt - a.changedAt)[0];
  }
}

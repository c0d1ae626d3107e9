/** The store of the device: one object store, a job under each key. IndexedDB, wrapped in promises as far as this page needs it. */

import type { Entry } from './entry.js';

/** Why something was not kept: no storage at all, no room, or the device could not write. */
type StoreFault = 'refused' | 'full' | 'failed';

/** What came of keeping a job. */
export type Kept =
  | { readonly kind: 'kept' }
  /** Another tab has kept a newer one, or removed it. */
  | { readonly kind: 'clash'; readonly there: unknown }
  | { readonly kind: 'gone' }
  | { readonly kind: StoreFault };

/** A store of jobs. */
export interface Store {
  /** All that is kept, damaged or not, by key. */
  readonly all: () => Promise<readonly (readonly [id: string, value: unknown])[]>;
  /** Keeps a job if what is there has the revision before it; 0 for a job that is new. */
  readonly put: (entry: Entry) => Promise<Kept>;
  readonly remove: (id: string) => Promise<void>;
}

const NAME = 'slantpath-jobs';
const JOBS = 'jobs';

const faultOf = (error: unknown): StoreFault =>
  error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'failed';

/** Opens the store; rejects where the browser refuses it. */
export async function openStore(): Promise<Store> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore(JOBS);
    };
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
    asked.onblocked = () => reject(new Error('blocked'));
  });
  // A newer version of this page must be able to change the store.
  database.onversionchange = () => database.close();

  /** Runs requests in one transaction; its value counts only when all is written. */
  const within = <T>(
    mode: IDBTransactionMode,
    run: (store: IDBObjectStore, give: (value: T) => void) => void,
  ) =>
    new Promise<T>((resolve, reject) => {
      let given: T;
      const transaction = database.transaction(JOBS, mode);
      transaction.oncomplete = () => resolve(given);
      transaction.onabort = () => reject(transaction.error);
      transaction.onerror = () => reject(transaction.error);
      run(transaction.objectStore(JOBS), (value) => {
        given = value;
      });
    });

  return {
    all: () =>
      within('readonly', (store, give) => {
        const keys = store.getAllKeys();
        const values = store.getAll();
        values.onsuccess = () => {
          give(keys.result.map((key, index) => [String(key), values.result[index] as unknown]));
        };
      }),
    put: async (entry) => {
      let refused: unknown;
      try {
        // Reading and writing in one transaction: no other tab can write in between.
        return await within<Kept>('readwrite', (store, give) => {
          const there = store.get(entry.id);
          there.onsuccess = () => {
            const found = there.result as { readonly revision?: unknown } | undefined;
            if (found === undefined && entry.revision > 1) give({ kind: 'gone' });
            else if (found !== undefined && found.revision !== entry.revision - 1)
              give({ kind: 'clash', there: found });
            else
              try {
                store.put(entry, entry.id);
                give({ kind: 'kept' });
              } catch (error) {
                refused = error;
                store.transaction.abort();
              }
          };
        });
      } catch (error) {
        return { kind: faultOf(refused ?? error) };
      }
    },
    remove: (id) =>
      within<undefined>('readwrite', (store) => {
        store.delete(id);
      }),
  };
}

/** A job as it is kept on the device, and how a damaged one is told from a sound one. */

import { type Beside, newBeside } from '../state/beside.js';
import type { Draft } from '../state/draft.js';
import { isDraft } from '../state/isDraft.js';

/** A kept job. */
export interface Entry {
  readonly id: string;
  /** Grows by one with each time it is kept; a tab that holds an older one must not write over a newer one. */
  readonly revision: number;
  /** When it was kept last, in milliseconds of the clock. */
  readonly changedAt: number;
  readonly draft: Draft;
  readonly beside: Beside;
}

/** Something under a key of the store that is no job any more. */
export interface Damaged {
  readonly id: string;
  /** What is left of it. */
  readonly rest: unknown;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The job under a key, or what is left of it. */
export function readEntry(
  id: string,
  value: unknown,
): { readonly entry: Entry } | { readonly damaged: Damaged } {
  if (!isObject(value) || !isDraft(value['draft'])) return { damaged: { id, rest: value } };
  const { revision, changedAt, draft } = value;
  return {
    entry: {
      id,
      revision: typeof revision === 'number' ? revision : 0,
      changedAt: typeof changedAt === 'number' ? changedAt : 0,
      draft,
      beside: readBeside(value['beside']),
    },
  };
}

/** Settings beside the job, the usual ones where they cannot be read. */
function readBeside(value: unknown): Beside {
  if (!isObject(value) || !isObject(value['display'])) return newBeside;
  const { standardDeviationDb, levelStepDb, unit } = value['display'];
  const sound =
    typeof standardDeviationDb === 'number' &&
    typeof levelStepDb === 'number' &&
    (unit === 'dBm' || unit === 'dBuV');
  return {
    visit: typeof value['visit'] === 'number' ? value['visit'] : newBeside.visit,
    display: sound ? { standardDeviationDb, levelStepDb, unit } : newBeside.display,
  };
}

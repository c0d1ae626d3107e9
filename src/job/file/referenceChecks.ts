/** What the checks of references share: telling a fault, names that stand once, errors of a computation as faults. */

import { DomainError } from '../../errors.js';
import type { JobFile } from './jobFile.js';
import { partNames } from './partNames.js';

/** Tells a fault of the file at a path. */
export type Fault = (parameter: string, received: unknown, allowed: string, slip?: string) => void;

/** Test points that every job has. */
export const FIXED_POINTS = ['antenna', 'outlets'] as const;

/** The first names of a list, for an error text. */
export const listed = (names: Iterable<string>): string => {
  // In a file that is half wrong a name may be anything.
  const all = [...names].filter((name) => typeof name === 'string');
  return all.length > 12
    ? `${all.slice(0, 12).join(', ')} and ${all.length - 12} more`
    : all.join(', ');
};

/** Refuses a name that stands twice in a list. */
export function unique(
  path: (index: number) => string,
  names: readonly string[],
  fault: Fault,
): void {
  const seen = new Set<string>();
  names.forEach((name, index) => {
    if (seen.has(name)) fault(path(index), name, 'a name of its own');
    seen.add(name);
  });
}

/** Runs a computation whose errors are faults of the file at a path. */
export function held(
  faults: DomainError[],
  rename: (parameter: string) => string,
  run: () => void,
): void {
  try {
    run();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const { code, received, allowed, slip } = error;
    const row = error.index === undefined ? '' : `[${error.index}]`;
    faults.push(
      new DomainError({
        code,
        parameter: `${rename(error.parameter)}${row}`,
        received,
        allowed,
        slip,
      }),
    );
  }
}

/** Names of outlets and receivers of the job. */
export function outletNames(job: JobFile): readonly string[] {
  return (job.distribution?.trees ?? []).flatMap((tree) =>
    partNames(tree, '').flatMap(({ kind, name }) =>
      (kind === 'outlet' || kind === 'receiver') && name !== undefined ? [name] : [],
    ),
  );
}

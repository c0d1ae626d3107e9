/** What to change where no combination of values brings every outlet into its window. */

import type { WindowCheck } from '../levels/windowChecks.js';

/** One change; read `kind` first. Amounts are the least that would do. */
export type DesignChange =
  /** More level for all: more gain before the branches, or less loss. */
  | { readonly kind: 'raise-all'; readonly amountDb: number }
  /** Less level for all: less gain, or an attenuator before the branches. */
  | { readonly kind: 'lower-all'; readonly amountDb: number }
  /** An outlet needs more than the others can bear: a smaller tap value, shorter or better cable on its branch. */
  | { readonly kind: 'raise-outlet'; readonly outlet: string; readonly amountDb: number }
  /** An outlet needs less than the others: a larger tap value or an attenuator on its branch. */
  | { readonly kind: 'lower-outlet'; readonly outlet: string; readonly amountDb: number }
  /** The levels of an outlet spread over frequency by more than the window or the slope allows: an equaliser, or better cable. */
  | { readonly kind: 'equalise'; readonly outlet: string; readonly amountDb: number };

/** Changes from the outlets of the nearest combination. */
export function designChanges(
  outlets: readonly WindowCheck[],
  largestSlopeDb: number | undefined,
): readonly DesignChange[] {
  const changes: DesignChange[] = [];
  for (const outlet of outlets) {
    // Both margins together are what is left of the window over the spread of the levels.
    const room = outlet.marginLowDb + outlet.marginHighDb;
    const steep = largestSlopeDb === undefined ? 0 : Math.abs(outlet.slopeDb) - largestSlopeDb;
    const amountDb = Math.max(-room, steep);
    if (amountDb > 0) changes.push({ kind: 'equalise', outlet: outlet.name, amountDb });
  }
  if (changes.length > 0) return changes;
  const raise = Math.max(...outlets.map((outlet) => -outlet.marginLowDb));
  const lower = Math.max(...outlets.map((outlet) => -outlet.marginHighDb));
  if (raise > 0 && outlets.every((outlet) => outlet.marginHighDb >= raise))
    return [{ kind: 'raise-all', amountDb: raise }];
  if (lower > 0 && outlets.every((outlet) => outlet.marginLowDb >= lower))
    return [{ kind: 'lower-all', amountDb: lower }];
  for (const outlet of outlets) {
    if (outlet.marginLowDb < 0)
      changes.push({ kind: 'raise-outlet', outlet: outlet.name, amountDb: -outlet.marginLowDb });
    if (outlet.marginHighDb < 0)
      changes.push({ kind: 'lower-outlet', outlet: outlet.name, amountDb: -outlet.marginHighDb });
  }
  return changes;
}

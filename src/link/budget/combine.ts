/** Several causes of noise on one carrier: their ratios add as reciprocals. */

import { DomainError, inRange, list } from '../../errors.js';
import type { Keys } from '../../keys.js';
import { inRow } from '../../numeric/columns.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';

/** A further cause of noise or interference on the carrier. */
export interface Impairment {
  /** What it is, in kebab-case words: `uplink-noise`, `adjacent-satellites`. */
  readonly name: string;
  /** Carrier over this cause alone, in dB, in the bandwidth of the ratio it is combined with. */
  readonly carrierToImpairmentDb: number;
}

export const IMPAIRMENT_KEYS = {
  name: true,
  carrierToImpairmentDb: true,
} satisfies Keys<Impairment>;

/** Ratio of a carrier to the sum of causes, from its ratio to each alone, all above -400 dB; no checks. */
export function combinedDb(ratiosDb: readonly number[]): number {
  // Relative to the worst, so that nothing under- or overflows.
  let worst = Number.POSITIVE_INFINITY;
  for (const ratioDb of ratiosDb) if (ratioDb < worst) worst = ratioDb;
  let sum = 0;
  for (const ratioDb of ratiosDb) sum += dbToRatio(worst - ratioDb);
  return worst - ratioToDb(sum);
}

/**
 * Ratio in dB of a carrier to the sum of several incoherent causes of noise, from its ratio to each alone:
 * 1 / r = 1 / r1 + 1 / r2 + ...
 *
 * @param ratiosDb  Ratios in dB (or all in dBHz), at least one, -400 to 400; one is returned as it is.
 * @throws {@link DomainError} `empty` for none, otherwise with the index of a bad one.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., section 12.10. Accuracy: rounding only.
 * @example
 * ```ts
 * import { combineCarrierRatios } from 'slantpath/link';
 * combineCarrierRatios([23, 20, 24]).toFixed(2); // => '17.21'
 * ```
 */
export function combineCarrierRatios(ratiosDb: readonly number[]): number {
  if (list('ratiosDb', ratiosDb).length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'ratiosDb',
      received: ratiosDb,
      allowed: 'at least one ratio',
    });
  for (let index = 0; index < ratiosDb.length; index++)
    inRange('ratiosDb', inRow(ratiosDb, index), -400, 400, undefined, index);
  return combinedDb(Array.from(ratiosDb));
}

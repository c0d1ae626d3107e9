/** User bands side by side on one cable: where two overlap, and which fall outside the cable's range. */

import { DomainError, inRange, objects, positive } from '../errors.js';
import { type Keys, known } from '../keys.js';

/** One receiver's place on the cable. */
export interface UserBand {
  /** Number or name of the band, as the unit's label gives it. */
  readonly name: string;
  /** Centre in MHz, above 0. */
  readonly centreMHz: number;
  /** Width that the unit lets through in MHz, above 0 to 200. */
  readonly bandwidthMHz: number;
}

const USER_BAND_KEYS = { name: true, centreMHz: true, bandwidthMHz: true } satisfies Keys<UserBand>;

/** What is wrong with a set of user bands. */
export type UserBandConflict =
  /** Two bands share `overlapMHz`: both receivers disturb each other. */
  | {
      readonly kind: 'overlap';
      readonly first: string;
      readonly second: string;
      readonly overlapMHz: number;
    }
  /** The band, or part of it, lies outside the receivers' range. */
  | { readonly kind: 'outside-range'; readonly name: string; readonly beyondMHz: number }
  /** Two receivers were given the same band. */
  | { readonly kind: 'taken-twice'; readonly name: string };

const USER_BAND_CONFLICTS_PLAN_KEYS = {
  bands: true,
  lowestMHz: true,
  highestMHz: true,
  marginMHz: true,
} satisfies Keys<Parameters<typeof userBandConflicts>[0]>;

/**
 * Conflicts of the user bands on one cable, the worst first; an empty list is a plan without conflict.
 *
 * The centre that a unit of the first generation puts out moves by up to 2 MHz with each carrier (EN 50494 tunes in
 * steps of 4 MHz), so give `marginMHz` 2 there.
 *
 * @param plan  Bands in use, one entry for each receiver; receivers' range in MHz, 950 to 2150 by default; margin to
 *   keep on each side in MHz, 0 to 20, default 0.
 * @throws {@link DomainError} naming the field.
 * Source: arithmetic of intervals; the centres of user bands are not fixed by EN 50494, take them from the unit's label.
 * Accuracy: exact.
 * @example
 * ```ts
 * import { userBandConflicts } from 'slantpath/tuning';
 * const conflicts = userBandConflicts({
 *   bands: [
 *     { name: '1', centreMHz: 1210, bandwidthMHz: 46 },
 *     { name: '2', centreMHz: 1250, bandwidthMHz: 46 },
 *   ],
 * });
 * conflicts[0]?.kind; // => 'overlap'
 * ```
 */
export function userBandConflicts(plan: {
  readonly bands: readonly UserBand[];
  readonly lowestMHz?: number;
  readonly highestMHz?: number;
  readonly marginMHz?: number;
}): readonly UserBandConflict[] {
  const given = known('plan', plan, USER_BAND_CONFLICTS_PLAN_KEYS);
  if (!Array.isArray(given.bands) || given.bands.length > 64)
    throw new DomainError({
      code: 'malformed',
      parameter: 'bands',
      received: given.bands,
      allowed: 'an array of at most 64 user bands',
    });
  const lowestMHz = inRange('lowestMHz', given.lowestMHz ?? 950, 0, 10_000);
  const highestMHz = inRange('highestMHz', given.highestMHz ?? 2150, 0, 10_000);
  const marginMHz = inRange('marginMHz', given.marginMHz ?? 0, 0, 20);
  const bands = objects<UserBand>('bands', given.bands).map((band, index) => {
    const { name } = known(`bands[${index}]`, band, USER_BAND_KEYS);
    const centreMHz = positive(`bands[${index}].centreMHz`, band.centreMHz);
    const width = positive(`bands[${index}].bandwidthMHz`, band.bandwidthMHz);
    const halfMHz = inRange(`bands[${index}].bandwidthMHz`, width, 0, 200) / 2 + marginMHz;
    return { name: String(name), fromMHz: centreMHz - halfMHz, toMHz: centreMHz + halfMHz };
  });
  const conflicts: { readonly size: number; readonly conflict: UserBandConflict }[] = [];
  bands.forEach((band, index) => {
    const beyondMHz = Math.max(lowestMHz - band.fromMHz, band.toMHz - highestMHz);
    if (beyondMHz > 0)
      conflicts.push({
        size: beyondMHz,
        conflict: { kind: 'outside-range', name: band.name, beyondMHz },
      });
    for (const other of bands.slice(index + 1)) {
      const overlapMHz = Math.min(band.toMHz, other.toMHz) - Math.max(band.fromMHz, other.fromMHz);
      if (overlapMHz <= 0) continue;
      const conflict: UserBandConflict =
        band.name === other.name
          ? { kind: 'taken-twice', name: band.name }
          : { kind: 'overlap', first: band.name, second: other.name, overlapMHz };
      conflicts.push({ size: overlapMHz, conflict });
    }
  });
  return conflicts.sort((a, b) => b.size - a.size).map(({ conflict }) => conflict);
}

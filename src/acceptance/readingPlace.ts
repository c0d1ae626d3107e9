/** Where and of what a reading is: slot, polarization, band, test point, quantity. */

import { DomainError, oneOf } from '../errors.js';
import { type Keys, known } from '../keys.js';

/** What is read. Levels are in dBuV at 75 ohm, the others are ratios in dB. */
export type ReadingQuantity =
  | 'level'
  | 'carrier-to-noise'
  | 'modulation-error-ratio'
  | 'cross-polar-isolation';

/** Every quantity, for guards. */
const READING_QUANTITIES: readonly ReadingQuantity[] = [
  'level',
  'carrier-to-noise',
  'modulation-error-ratio',
  'cross-polar-isolation',
];

/** Where a reading belongs; names are the caller's own. */
export interface ReadingPlace {
  /** What is read. */
  readonly quantity: ReadingQuantity;
  /** Orbital slot, by the caller's name. */
  readonly slot?: string;
  /** Polarization. */
  readonly polarization?: string;
  /** Band of the outdoor unit. */
  readonly band?: string;
  /** Outlet or other test point. */
  readonly testPoint?: string;
}

/** Fields of a place. */
export const READING_PLACE_KEYS = {
  quantity: true,
  slot: true,
  polarization: true,
  band: true,
  testPoint: true,
} satisfies Keys<ReadingPlace>;

const FIELDS = ['slot', 'polarization', 'band', 'testPoint'] as const;

/** Guards a place and gives it without other fields. */
export function checkedPlace(parameter: string, place: ReadingPlace): ReadingPlace {
  known(parameter, place, READING_PLACE_KEYS);
  oneOf(`${parameter}.quantity`, place.quantity, READING_QUANTITIES);
  for (const field of FIELDS) {
    const value = place[field];
    if (value !== undefined && (typeof value !== 'string' || value === ''))
      throw new DomainError({
        code: 'malformed',
        parameter: `${parameter}.${field}`,
        received: value,
        allowed: 'a name',
      });
  }
  return {
    quantity: place.quantity,
    ...(place.slot === undefined ? {} : { slot: place.slot }),
    ...(place.polarization === undefined ? {} : { polarization: place.polarization }),
    ...(place.band === undefined ? {} : { band: place.band }),
    ...(place.testPoint === undefined ? {} : { testPoint: place.testPoint }),
  };
}

/** The entry whose named fields all agree with the place and that names most of them; the first of equals. */
export function mostSpecific<T extends ReadingPlace>(
  entries: readonly T[],
  place: ReadingPlace,
): T | undefined {
  let best: T | undefined;
  let bestCount = -1;
  for (const entry of entries) {
    if (entry.quantity !== place.quantity) continue;
    const named = FIELDS.filter((field) => entry[field] !== undefined);
    if (named.some((field) => entry[field] !== place[field])) continue;
    if (named.length > bestCount) {
      best = entry;
      bestCount = named.length;
    }
  }
  return best;
}

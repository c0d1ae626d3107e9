/** The Military Grid Reference System, through the library `mgrs`. */

import * as loaded from 'mgrs';
import { DomainError, finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { cosDeg, turnDeg, wrapLongitudeDeg } from '../numeric/angle.js';
import type { GridCell } from './cell.js';

// Node hands over the whole CommonJS module as the default export, bundlers the names themselves.
const library: Pick<typeof loaded, 'forward' | 'inverse'> =
  'forward' in loaded ? loaded : (loaded as { readonly default: typeof loaded }).default;

/** Digits of easting and of northing; 5 is a cell of 1 m, 0 one of 100 km. */
export type MgrsDigits = 0 | 1 | 2 | 3 | 4 | 5;

const COORDINATES_TO_MGRS_PLACE_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  digits: true,
} satisfies Keys<Parameters<typeof coordinatesToMgrs>[0]>;

/**
 * MGRS reference of a place.
 *
 * @param place  `latitudeDeg` -80 to 84 (the polar grid is not covered), `longitudeDeg` any turn, `digits` of easting and of
 *   northing, default 5 (1 m).
 * @returns For instance `32TNS4612338666`; the digits are cut off, not rounded.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: NGA.STND.0037 (universal grids); library `mgrs`. Accuracy: about 1 m.
 * @example
 * ```ts
 * import { coordinatesToMgrs } from 'slantpath/gridref';
 * coordinatesToMgrs({ latitudeDeg: 46.4, longitudeDeg: 9.6, digits: 3 }); // => '32TNS461386'
 * ```
 */
export function coordinatesToMgrs(place: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly digits?: MgrsDigits;
}): string {
  const {
    latitudeDeg,
    longitudeDeg,
    digits = 5,
  } = known('place', place, COORDINATES_TO_MGRS_PLACE_KEYS);
  const latitude = inRange('latitudeDeg', latitudeDeg, -80, 84, 'is the place in a polar region?');
  const longitude = wrapLongitudeDeg(finite('longitudeDeg', longitudeDeg));
  if (![0, 1, 2, 3, 4, 5].includes(digits)) {
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'digits',
      received: digits,
      allowed: '0, 1, 2, 3, 4 or 5',
    });
  }
  return library.forward([longitude, latitude], digits);
}

/**
 * Cell of an MGRS reference.
 *
 * @param reference  Zone 1 to 60, band C to X without I and O, square of two letters, then as many digits of easting as of
 *   northing, 0 to 5 each; spaces and small letters are taken.
 * @returns Centre and size of the cell.
 * @throws {@link DomainError} `malformed` for a text that is no reference.
 *
 * Source: NGA.STND.0037 (universal grids); library `mgrs`. Accuracy: about 1 m for the centre.
 * @example
 * ```ts
 * import { mgrsToCoordinates } from 'slantpath/gridref';
 * mgrsToCoordinates('32T NS 461 386').latitudeDeg.toFixed(3); // => '46.400'
 * ```
 */
export function mgrsToCoordinates(reference: string): GridCell {
  const text = typeof reference === 'string' ? reference.replace(/\s+/g, '').toUpperCase() : '';
  const match = /^(\d{1,2})[C-HJ-NP-X][A-HJ-NP-Z][A-HJ-NP-V](\d{0,10})$/.exec(text);
  const zone = Number(match?.[1]);
  const digits = match?.[2]?.length ?? 1;
  let box: readonly [number, number, number, number] | undefined;
  if (match && zone >= 1 && zone <= 60 && digits % 2 === 0) {
    try {
      box = library.inverse(text);
    } catch {
      // A square that is none: the library throws, and so does what follows.
    }
  }
  if (!box?.every(Number.isFinite) || !inZoneAndBand(text, box)) {
    throw new DomainError({
      code: reference === undefined || reference === null ? 'missing' : 'malformed',
      parameter: 'reference',
      received: reference,
      allowed: 'an MGRS reference such as 32T NS 46123 38666',
      slip:
        digits % 2 === 1 && match
          ? 'are there as many digits of easting as of northing?'
          : undefined,
    });
  }
  const [west, south, east, north] = box;
  return {
    latitudeDeg: (south + north) / 2,
    longitudeDeg: wrapLongitudeDeg((west + east) / 2),
    latitudeSpanDeg: north - south,
    longitudeSpanDeg: east - west,
  };
}

/** Whether a cell lies in (or within a square of) the zone and band that its reference names. */
function inZoneAndBand(
  text: string,
  [west, south, east, north]: readonly [number, number, number, number],
): boolean {
  const [, zone = '', band = ''] = /^(\d+)(.)/.exec(text) ?? [];
  const southOfBandDeg = -80 + 8 * BANDS.indexOf(band);
  const northOfBandDeg = band === 'X' ? 84 : southOfBandDeg + 8;
  const latitudeDeg = (south + north) / 2;
  const offDeg = turnDeg(6 * Number(zone) - 183, (west + east) / 2);
  return (
    latitudeDeg > southOfBandDeg - 1 &&
    latitudeDeg < northOfBandDeg + 1 &&
    Math.abs(offDeg) * cosDeg(latitudeDeg) < 4.5
  );
}

/** Bands of 8 degrees of latitude from 80 S on; X has 12. */
const BANDS = 'CDEFGHJKLMNPQRSTUVWX';

/** Maidenhead locators: the grid of the amateur service, both ways. */

import { DomainError, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import { valueAt } from '../numeric/columns.js';

/** A cell of the Maidenhead grid. */
export interface MaidenheadCell {
  /** Latitude of the cell's centre in degrees. */
  readonly latitudeDeg: number;
  /** Longitude of the cell's centre in degrees, [-180, 180). */
  readonly longitudeDeg: number;
  /** South to north size of the cell in degrees. */
  readonly latitudeSpanDeg: number;
  /** West to east size of the cell in degrees. */
  readonly longitudeSpanDeg: number;
}

/** Divisions of each pair of characters: field, square, subsquare, extended square, and one more of each. */
const DIVISIONS = [18, 10, 24, 10, 24] as const;

/**
 * Centre and size of a Maidenhead locator's cell.
 *
 * @param locator  2 to 10 characters in pairs: letters A to R, digits, letters A to X, digits, letters A to X;
 *   upper or lower case.
 * @throws {@link DomainError} `malformed`.
 *
 * Source: IARU Region 1 VHF Managers Handbook, "The Locator system".
 * Accuracy: exact to rounding; the place is anywhere in the cell.
 * @example
 * ```ts
 * import { maidenheadToCoordinates } from 'slantpath/earth';
 * maidenheadToCoordinates('JN46').latitudeDeg; // => 46.5
 * ```
 */
export function maidenheadToCoordinates(locator: string): MaidenheadCell {
  if (typeof locator !== 'string' || !isMaidenhead(locator)) {
    throw new DomainError({
      code: locator === undefined || locator === null ? 'missing' : 'malformed',
      parameter: 'locator',
      received: locator,
      allowed: 'a Maidenhead locator of 2, 4, 6, 8 or 10 characters such as JN46SJ',
    });
  }
  const characters = locator.trim().toUpperCase();
  let cells = 1;
  let column = 0;
  let row = 0;
  for (let pair = 0; pair < characters.length / 2; pair++) {
    const divisions = valueAt(DIVISIONS, pair);
    const base = pair % 2 === 0 ? 'A'.charCodeAt(0) : '0'.charCodeAt(0);
    cells *= divisions;
    column = column * divisions + characters.charCodeAt(2 * pair) - base;
    row = row * divisions + characters.charCodeAt(2 * pair + 1) - base;
  }
  return {
    latitudeDeg: (180 * (row + 0.5)) / cells - 90,
    longitudeDeg: (360 * (column + 0.5)) / cells - 180,
    latitudeSpanDeg: 180 / cells,
    longitudeSpanDeg: 360 / cells,
  };
}

/** Whether a text has the form of a Maidenhead locator. */
export function isMaidenhead(text: string): boolean {
  return /^[A-R]{2}(?:\d{2}(?:[A-X]{2}(?:\d{2}(?:[A-X]{2})?)?)?)?$/i.test(text.trim());
}

const COORDINATES_TO_MAIDENHEAD_PLACE_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  length: true,
} satisfies Keys<Parameters<typeof coordinatesToMaidenhead>[0]>;

/**
 * Maidenhead locator of a place.
 *
 * @param place  `latitudeDeg` -90 to 90, `longitudeDeg` east positive, any turn; `length` 2, 4, 6, 8 or 10 characters,
 *   default 6 (cells of 2.5 by 5 minutes of arc).
 * @returns The locator in capitals; the north pole belongs to the northernmost cell.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: IARU Region 1 VHF Managers Handbook, "The Locator system". Accuracy: exact to rounding at cell edges.
 * @example
 * ```ts
 * import { coordinatesToMaidenhead } from 'slantpath/earth';
 * coordinatesToMaidenhead({ latitudeDeg: 46.4, longitudeDeg: 9.6 }); // => 'JN46TJ'
 * ```
 */
export function coordinatesToMaidenhead(place: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly length?: 2 | 4 | 6 | 8 | 10;
}): string {
  const {
    latitudeDeg,
    longitudeDeg,
    length = 6,
  } = known('place', place, COORDINATES_TO_MAIDENHEAD_PLACE_KEYS);
  if (![2, 4, 6, 8, 10].includes(length)) {
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'length',
      received: length,
      allowed: '2, 4, 6, 8 or 10',
    });
  }
  const latitude = inRange(
    'latitudeDeg',
    latitudeDeg,
    -90,
    90,
    'were latitude and longitude swapped?',
  );
  const longitude = wrapLongitudeDeg(inRange('longitudeDeg', longitudeDeg, -1e9, 1e9));
  const pairs = length / 2;
  const cells = DIVISIONS.slice(0, pairs).reduce((product, division) => product * division, 1);
  let column = Math.min(cells - 1, Math.floor(((longitude + 180) * cells) / 360));
  let row = Math.min(cells - 1, Math.floor(((latitude + 90) * cells) / 180));
  let locator = '';
  for (let pair = pairs - 1; pair >= 0; pair--) {
    const divisions = valueAt(DIVISIONS, pair);
    const base = pair % 2 === 0 ? 'A'.charCodeAt(0) : '0'.charCodeAt(0);
    locator = String.fromCharCode(base + (column % divisions), base + (row % divisions)) + locator;
    column = Math.floor(column / divisions);
    row = Math.floor(row / divisions);
  }
  return locator;
}

/** Plus codes (Open Location Code), through the library `open-location-code-typescript`. */

import openLocationCode from 'open-location-code-typescript';
import { DomainError, finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import type { GridCell } from './cell.js';

// Node hands over the whole CommonJS module, bundlers its default export.
const library = 'default' in openLocationCode ? openLocationCode.default : openLocationCode;

const LENGTHS = [2, 4, 6, 8, 10, 11, 12, 13, 14, 15] as const;

/** Digits in a plus code; 10 is a cell of 1/8000 degree (14 m). */
export type PlusCodeLength = (typeof LENGTHS)[number];

const COORDINATES_TO_PLUS_CODE_PLACE_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  length: true,
} satisfies Keys<Parameters<typeof coordinatesToPlusCode>[0]>;

/**
 * Plus code of a place.
 *
 * @param place  `latitudeDeg` -90 to 90, `longitudeDeg` any turn, `length` in digits, default 10 (about 14 by 14 m).
 * @returns The full code; the north pole belongs to the northernmost cell.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: Open Location Code specification; library `open-location-code-typescript`.
 * Accuracy: exact to rounding at the edges of cells.
 * @example
 * ```ts
 * import { coordinatesToPlusCode } from 'slantpath/gridref';
 * coordinatesToPlusCode({ latitudeDeg: 46.4, longitudeDeg: 9.6 }); // => '8FRFCJ22+22'
 * ```
 */
export function coordinatesToPlusCode(place: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly length?: PlusCodeLength;
}): string {
  const {
    latitudeDeg,
    longitudeDeg,
    length = 10,
  } = known('place', place, COORDINATES_TO_PLUS_CODE_PLACE_KEYS);
  const latitude = inRange(
    'latitudeDeg',
    latitudeDeg,
    -90,
    90,
    'were latitude and longitude swapped?',
  );
  const longitude = wrapLongitudeDeg(finite('longitudeDeg', longitudeDeg));
  if (!LENGTHS.includes(length)) {
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'length',
      received: length,
      allowed: `one of ${LENGTHS.join(', ')}`,
    });
  }
  return library.encode(latitude, longitude, length);
}

/**
 * Cell of a plus code.
 *
 * @param code  A full code (`8FRFCJ22+22`), or a short one (`CJ22+22`) with a place `near` it, at most about 50 km off.
 * @param near  Needed by a short code only.
 * @returns Centre and size of the cell.
 * @throws {@link DomainError} `malformed` for a text that is no plus code, `missing` for a short code without `near`.
 *
 * Source: Open Location Code specification; library `open-location-code-typescript`. Accuracy: 1e-14 degree.
 * @example
 * ```ts
 * import { plusCodeToCoordinates } from 'slantpath/gridref';
 * plusCodeToCoordinates('8FRFCJ22+22').latitudeDeg.toFixed(5); // => '46.40006'
 * ```
 */
export function plusCodeToCoordinates(
  code: string,
  near?: { readonly latitudeDeg: number; readonly longitudeDeg: number },
): GridCell {
  const text = typeof code === 'string' ? code.trim().toUpperCase() : '';
  const short = text !== '' && library.isShort(text);
  if (!short && !(text !== '' && library.isFull(text))) {
    throw new DomainError({
      code: code === undefined || code === null ? 'missing' : 'malformed',
      parameter: 'code',
      received: code,
      allowed: 'a plus code such as 8FRFCJ22+22',
      slip: text.includes('+') ? undefined : 'is the plus sign missing?',
    });
  }
  const full = short ? recovered(text, near) : text;
  const area = library.decode(full);
  return {
    latitudeDeg: area.latitudeCenter,
    longitudeDeg: wrapLongitudeDeg(area.longitudeCenter),
    latitudeSpanDeg: area.latitudeHi - area.latitudeLo,
    longitudeSpanDeg: area.longitudeHi - area.longitudeLo,
  };
}

const RECOVERED_NEAR_KEYS = { latitudeDeg: true, longitudeDeg: true } satisfies Keys<
  Parameters<typeof recovered>[1]
>;

function recovered(
  text: string,
  near: { readonly latitudeDeg: number; readonly longitudeDeg: number } | undefined,
): string {
  if (near === undefined) {
    throw new DomainError({
      code: 'missing',
      parameter: 'near',
      received: near,
      allowed: 'a place near the short code',
    });
  }
  const { latitudeDeg, longitudeDeg } = known('near', near, RECOVERED_NEAR_KEYS);
  return library.recoverNearest(
    text,
    inRange('near.latitudeDeg', latitudeDeg, -90, 90, 'were latitude and longitude swapped?'),
    wrapLongitudeDeg(finite('near.longitudeDeg', longitudeDeg)),
  );
}

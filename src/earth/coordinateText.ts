/** Coordinates written out. */

import { DomainError, inRange, oneOf } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import type { CoordinateNotation } from './typedCoordinates.js';

const DEFAULT_DECIMALS = {
  decimal: 5,
  'degrees-minutes': 3,
  'degrees-minutes-seconds': 1,
} as const;

const COORDINATES_TO_TEXT_PLACE_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  notation: true,
  decimals: true,
} satisfies Keys<Parameters<typeof coordinatesToText>[0]>;

/**
 * Latitude and longitude as a text that `textToCoordinates` reads back.
 *
 * @param place  `latitudeDeg` -90 to 90; `longitudeDeg` any turn; `notation`, default `decimal`; `decimals` of the
 *   last field, a whole number 0 to 9, default 5 of a degree, 3 of a minute, 1 of a second (1 to 3 m on the ground).
 * @returns For instance `46.40000° N, 9.60000° E` or `46° 24' 00.0" N, 9° 36' 00.0" E`; rounding carries over.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: ISO 6709, annex D (representation at the human interface). Accuracy: half a step of the last digit.
 * @example
 * ```ts
 * import { coordinatesToText } from 'slantpath/earth';
 * const clinic = { latitudeDeg: -0.4, longitudeDeg: 102.1, notation: 'degrees-minutes' } as const;
 * coordinatesToText(clinic); // => `0° 24.000' S, 102° 06.000' E`
 * ```
 */
export function coordinatesToText(place: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly notation?: CoordinateNotation;
  readonly decimals?: number;
}): string {
  const {
    latitudeDeg,
    longitudeDeg,
    notation = 'decimal',
    decimals,
  } = known('place', place, COORDINATES_TO_TEXT_PLACE_KEYS);
  const latitude = inRange(
    'latitudeDeg',
    latitudeDeg,
    -90,
    90,
    'were latitude and longitude swapped?',
  );
  const longitude = wrapLongitudeDeg(inRange('longitudeDeg', longitudeDeg, -1e9, 1e9));
  oneOf('notation', notation, ['decimal', 'degrees-minutes', 'degrees-minutes-seconds']);
  const digits = wholeDecimals(decimals ?? DEFAULT_DECIMALS[notation]);
  const north = angleText(latitude, notation, digits);
  const east = angleText(longitude, notation, digits);
  return `${north} ${latitude < 0 ? 'S' : 'N'}, ${east} ${longitude < 0 ? 'W' : 'E'}`;
}

function wholeDecimals(decimals: number): number {
  if (Number.isInteger(decimals) && decimals >= 0 && decimals <= 9) return decimals;
  inRange('decimals', decimals, 0, 9);
  throw new DomainError({
    code: 'out-of-range',
    parameter: 'decimals',
    received: decimals,
    allowed: 'a whole number from 0 to 9',
  });
}

/** The size of an angle; rounded once, in the smallest unit shown, so that 60 never appears. */
function angleText(angleDeg: number, notation: CoordinateNotation, decimals: number): string {
  const size = Math.abs(angleDeg);
  if (notation === 'decimal') return `${size.toFixed(decimals)}°`;
  const perDegree = notation === 'degrees-minutes' ? 60 : 3600;
  const scale = 10 ** decimals;
  const steps = Math.round(size * perDegree * scale);
  const degrees = Math.floor(steps / (perDegree * scale));
  const rest = steps - degrees * perDegree * scale;
  const width = decimals === 0 ? 2 : decimals + 3;
  if (notation === 'degrees-minutes')
    return `${degrees}° ${(rest / scale).toFixed(decimals).padStart(width, '0')}'`;
  const minutes = Math.floor(rest / (60 * scale));
  const seconds = (rest - minutes * 60 * scale) / scale;
  return `${degrees}° ${String(minutes).padStart(2, '0')}' ${seconds.toFixed(decimals).padStart(width, '0')}"`;
}

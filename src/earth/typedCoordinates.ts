/** Coordinates as people type them. */

import { DomainError, inRange } from '../errors.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import { isMaidenhead, maidenheadToCoordinates } from './maidenhead.js';
import { type AngleReading, readAngle, readingDeg, readingStepDeg } from './typedAngle.js';
import { likelySlip, tidied } from './typedText.js';

/** How a text writes its angles. */
export type CoordinateNotation = 'decimal' | 'degrees-minutes' | 'degrees-minutes-seconds';

/** A place read from a text. */
export interface TypedCoordinates {
  /** Latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, [-180, 180). */
  readonly longitudeDeg: number;
  /** How it was written; of two notations, the finer. */
  readonly notation: CoordinateNotation | 'maidenhead';
  /** Worth of one step of the latitude's last digit in degrees: 0.001 for 46.512; height of a locator's cell. */
  readonly latitudeStepDeg: number;
  /** Worth of one step of the longitude's last digit in degrees; width of a locator's cell. */
  readonly longitudeStepDeg: number;
}

/** Latitude first. */
type Pair = readonly [AngleReading, AngleReading];

const NOTATIONS = ['decimal', 'degrees-minutes', 'degrees-minutes-seconds'] as const;
const SWAPPED = 'were latitude and longitude swapped?';

/**
 * Latitude and longitude from a text as people type it.
 *
 * Taken are decimal degrees, degrees and minutes, and degrees, minutes and seconds, with or without their
 * marks, with signs or with N, S, E, W before or behind (also as words; then in either order), and
 * Maidenhead locators. Without letters the latitude comes first. A comma may be a decimal mark or part the
 * two coordinates: every reading is tried, and a text with more than one is refused, as is `46,9`. The letter O is
 * refused: it is east in some languages and west in others.
 *
 * @param text  At most 200 characters, for instance `46.4, 9.6`, `46° 24' N 9° 36' E`, `N46 24.0 E9 36.0`,
 *   `33,8688 S 151,2093 E`, `JN46TJ`.
 * @returns The place, its notation and the worth of the last digit; for a locator the centre of its cell.
 * @throws {@link DomainError} `malformed` with the likely slip; `out-of-range` for minutes or seconds of 60 or more,
 *   a latitude beyond 90 or a longitude beyond 360.
 *
 * Source: ISO 6709 for order and signs; practice of the trade for the rest. Accuracy: one rounding.
 * @example
 * ```ts
 * import { textToCoordinates } from 'slantpath/earth';
 * const typed = textToCoordinates('46° 24′ N, 9° 36′ E');
 * [typed.latitudeDeg, typed.longitudeDeg]; // => [46.4, 9.6]
 * textToCoordinates('33,8688 S 151,2093 E').latitudeDeg; // => -33.8688
 * ```
 */
export function textToCoordinates(text: string): TypedCoordinates {
  if (typeof text !== 'string' || text.trim() === '' || text.length > 200) {
    throw new DomainError({
      code: text === undefined || text === null ? 'missing' : text === '' ? 'empty' : 'malformed',
      parameter: 'text',
      received: text,
      allowed: 'a text of 1 to 200 characters with a latitude and a longitude',
    });
  }
  if (isMaidenhead(text)) {
    const { latitudeDeg, longitudeDeg, latitudeSpanDeg, longitudeSpanDeg } =
      maidenheadToCoordinates(text);
    return {
      latitudeDeg,
      longitudeDeg,
      notation: 'maidenhead',
      latitudeStepDeg: latitudeSpanDeg,
      longitudeStepDeg: longitudeSpanDeg,
    };
  }
  const [latitude, longitude] = theReading(text);
  for (const { fields } of [latitude, longitude]) {
    const [, minutes = 0, seconds = 0] = fields;
    if (minutes >= 60) throw sixty('minutes', minutes);
    if (seconds >= 60) throw sixty('seconds', seconds);
  }
  const finer = Math.max(latitude.fields.length, longitude.fields.length) - 1;
  return {
    latitudeDeg: inRange('latitudeDeg', readingDeg(latitude), -90, 90, SWAPPED) + 0,
    longitudeDeg: wrapLongitudeDeg(inRange('longitudeDeg', readingDeg(longitude), -360, 360)),
    notation: NOTATIONS[finer] ?? 'decimal',
    latitudeStepDeg: readingStepDeg(latitude),
    longitudeStepDeg: readingStepDeg(longitude),
  };
}

/** The one reading of a text, latitude first. Of several, the one with the same fields in both halves. */
function theReading(text: string): Pair {
  const tidy = tidied(text);
  // A comma between digits is either a decimal mark (not where points or chains of commas are) or parts.
  const tight = /\d,\d/.test(tidy) && !/\d\.\d|\d,\d+,\d/.test(tidy);
  const asMark = tight ? readings(tidy.replace(/(\d),(?=\d)/g, '$1.')) : [];
  const asParting = readings(tidy);
  const found = asMark.length > 0 && asParting.length > 0 ? [] : [...asMark, ...asParting];
  const even = found.filter(([a, b]) => a.fields.length === b.fields.length);
  const [only, ...others] = found.length === 1 ? found : even;
  if (only !== undefined && others.length === 0 && !/^\s*[+-]?\d+,\d+\s*$/.test(tidy)) return only;
  throw new DomainError({
    code: 'malformed',
    parameter: 'text',
    received: text,
    allowed: "coordinates such as 46.4, 9.6 or 46° 24' N 9° 36' E",
    slip: likelySlip(tidy, found.length),
  });
}

/** Every way to part a text in two angles. */
function readings(tidy: string): Pair[] {
  const parts = tidy.split(/[,;/\n]/).filter((part) => part.trim() !== '');
  if (parts.length === 2) return pairs(parts[0] ?? '', parts[1] ?? '');
  if (parts.length > 2) return [];
  const starts = [...tidy.matchAll(/[+-]|[nsewxy]|(?<![\d.])\d/g)].map((match) => match.index);
  return [...new Set(starts)].flatMap((at) => pairs(tidy.slice(0, at), tidy.slice(at)));
}

function pairs(first: string, second: string): Pair[] {
  const a = readAngle(first);
  const b = readAngle(second);
  if (!a || !b) return [];
  const axes = `${a.axis} ${b.axis}`;
  if (axes === 'latitude longitude' || axes === 'unnamed unnamed') return [[a, b]];
  return axes === 'longitude latitude' ? [[b, a]] : [];
}

function sixty(parameter: string, received: number): DomainError {
  return new DomainError({
    code: 'out-of-range',
    parameter,
    received,
    allowed: 'from 0 to below 60',
    slip: 'are these decimals of a degree?',
  });
}

/** Angles of a place and of a slot as people type and paste them. */

import { typed } from '../language/text.js';

/** `N`, `S`, `E`, `W`, and east as German has it. */
const SIDE = '[NSEWOnsewo]';
const DEGREES = '([+-]?\\d+(?:[.,]\\d+)?)';
const PART = '(\\d+(?:[.,]\\d+)?)';
const ANGLE = new RegExp(
  `^(${SIDE})?\\s*${DEGREES}\\s*(?:°|d|deg)?\\s*(?:${PART}\\s*['′’m]?\\s*(?:${PART}\\s*(?:["″”s]|'')?\\s*)?)?(${SIDE})?$`,
);

/**
 * Degrees of one angle: `46.4`, `46°24`, `46 24 30 N`, `30W`, `W 30`. South and west are negative. NaN where the text
 * is no angle, or has minutes or seconds of 60 and more.
 */
export function typedAngle(text: string): number {
  const plain = typed(text.replace(/\s*°\s*$/, ''));
  if (!Number.isNaN(plain)) return plain;
  const line = text.trim().replace(/^[−–]/, '-');
  const [, before, degrees = '', minutes = '0', seconds = '0', after] = ANGLE.exec(line) ?? [];
  const side = before ?? after;
  if (degrees === '' || (before && after)) return Number.NaN;
  const [d, m, s] = [degrees, minutes, seconds].map(typed) as [number, number, number];
  if (m >= 60 || s >= 60 || (side && d < 0)) return Number.NaN;
  const size = Math.abs(d) + m / 60 + s / 3600;
  return d < 0 || /^-/.test(degrees) || /[sw]/i.test(side ?? '') ? -size : size;
}

/** Whether a field holds an angle that people write in degrees and minutes, or with a side of the sky. */
export const isAngleField = (field: string): boolean => /(Lat|lat|Long|long)itudeDeg$/.test(field);

/** Latitude and longitude where one text holds both: `46.4, 9.6`, `46°24'N 9°36'E`, `geo:46.4,9.6,1900`. */
export function typedPair(
  text: string,
): { readonly latitudeDeg: number; readonly longitudeDeg: number } | undefined {
  const line = text
    .trim()
    .replace(/^geo:/i, '')
    .replace(/[?].*$/, '');
  const [latitude, longitude] = halves(line);
  if (latitude === undefined || longitude === undefined) return undefined;
  const [a, b] = [typedAngle(latitude), typedAngle(longitude)];
  if (Number.isNaN(a) || Number.isNaN(b)) return undefined;
  // Longitude first, where the sides of the sky say so.
  return /[EWOewo]/.test(latitude) && /[NSns]/.test(longitude)
    ? { latitudeDeg: b, longitudeDeg: a }
    : { latitudeDeg: a, longitudeDeg: b };
}

/** The two parts of a pair: at a semicolon, at a comma with a space, at the only comma, behind a side of the sky, at a space. */
function halves(line: string): readonly string[] {
  const parts = (of: RegExp) => line.split(of).map((part) => part.trim());
  if (line.includes(';')) return parts(/;/);
  if (/,\s/.test(line)) return parts(/,\s+/);
  const commas = parts(/,/);
  if (commas.length === 2 || commas.length === 3) {
    // Two decimal commas and a space: 46,4 9,6.
    if (commas.length === 3 && /\s/.test(line)) return parts(/\s+/);
    // A decimal comma alone is one number (-33,5; 46°24,5'); a pair has a point or a side in one half, or degrees in both.
    const degreesInBoth = commas.every((half) => half.includes('°'));
    return commas.length === 3 || /[.NSEWOnsewo]/.test(line) || degreesInBoth ? commas : [];
  }
  const side =
    /^(.*?[NSns])\s*(?=[\d+-])(.*)$/.exec(line) ?? /^(.*?[EWOewo])\s*(?=[\d+-])(.*)$/.exec(line);
  if (side?.[1] && side[2] && /\d/.test(side[1])) return [side[1], side[2]];
  const spaced = parts(/\s+/);
  return spaced.length === 2 && /[.]/.test(line) ? spaced : [];
}

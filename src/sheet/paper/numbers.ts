/** Numbers as they stand on a sheet. */

import type { SheetWords } from '../words/en.js';

/** Writes numbers in the manner of a language; what is no finite number becomes a dash. */
export interface Numbers {
  /** With fixed decimals. */
  readonly fixed: (value: number | null | undefined, decimals: number) => string;
  /** The same with its sign always written. */
  readonly signed: (value: number | null | undefined, decimals: number) => string;
  /** With significant digits. */
  readonly digits: (value: number | null | undefined, digits: number) => string;
  /** As short as the number is. */
  readonly plain: (value: number | null | undefined) => string;
  /** A latitude with its hemisphere's letter. */
  readonly latitude: (latitudeDeg: number, decimals: number) => string;
  /** A longitude, any turn, with its hemisphere's letter. */
  readonly longitude: (longitudeDeg: number, decimals: number) => string;
}

/** Numbers in the manner of the words. */
export function numbersOf({ decimalMark, hemispheres }: SheetWords): Numbers {
  const told = (value: number | null | undefined, tell: (value: number) => string): string => {
    if (typeof value !== 'number' || !Number.isFinite(value)) return '-';
    const text = tell(value);
    // Rounds -0.04 to 0.0, not to -0.0.
    const bare = Number(text) === 0 ? text.replace('-', '') : text;
    return bare.replace('.', decimalMark).replace('-', '−');
  };
  const fixed: Numbers['fixed'] = (value, decimals) => told(value, (v) => v.toFixed(decimals));
  const { north, south, east, west } = hemispheres;
  return {
    fixed,
    signed: (value, decimals) => {
      const text = fixed(value, decimals);
      return /^\d/.test(text) ? `+${text}` : text;
    },
    digits: (value, digits) => told(value, (v) => String(Number(v.toPrecision(digits)))),
    plain: (value) => told(value, String),
    latitude: (deg, decimals) => `${fixed(Math.abs(deg), decimals)}° ${deg < 0 ? south : north}`,
    longitude: (deg, decimals) => {
      const turned = ((((deg + 180) % 360) + 360) % 360) - 180;
      return `${fixed(Math.abs(turned), decimals)}° ${turned < 0 ? west : east}`;
    },
  };
}

/** Numbers as they stand on the sheet. */

import type { SheetWords } from './words/en.js';

/** Writes numbers with the decimal mark of the words. */
export interface Numbers {
  /** With fixed decimals; a dash where there is none. */
  readonly fixed: (value: number | null | undefined, decimals: number) => string;
  /** The same with its sign always written. */
  readonly signed: (value: number | null | undefined, decimals: number) => string;
  /** With significant digits. */
  readonly digits: (value: number, digits: number) => string;
  /** As short as the number is. */
  readonly plain: (value: number) => string;
  /** A latitude with its hemisphere's letter. */
  readonly latitude: (latitudeDeg: number, decimals: number) => string;
  /** A longitude with its hemisphere's letter. */
  readonly longitude: (longitudeDeg: number, decimals: number) => string;
}

/** Numbers in the manner of the words. */
export function numbersOf({ decimalMark, hemispheres }: SheetWords): Numbers {
  const marked = (text: string) => text.replace('.', decimalMark);
  const fixed = (value: number | null | undefined, decimals: number): string => {
    if (value === null || value === undefined) return '-';
    // Rounds -0.04 to 0.0, not to -0.0.
    const text = value.toFixed(decimals);
    return marked(Number(text) === 0 ? text.replace('-', '') : text);
  };
  const signed = (value: number | null | undefined, decimals: number): string => {
    const text = fixed(value, decimals);
    return value === null || value === undefined || text.startsWith('-') ? text : `+${text}`;
  };
  const { north, south, east, west } = hemispheres;
  return {
    fixed,
    signed,
    digits: (value, digits) => marked(value.toPrecision(digits)),
    plain: (value) => marked(String(value)),
    latitude: (deg, decimals) => `${fixed(Math.abs(deg), decimals)}° ${deg < 0 ? south : north}`,
    longitude: (deg, decimals) => `${fixed(Math.abs(deg), decimals)}° ${deg < 0 ? west : east}`,
  };
}

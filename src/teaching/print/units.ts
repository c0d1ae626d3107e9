/** Units and numbers as people write them. */

import { DomainError } from '../../errors.js';

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/\/deg²/, '/(°)²'],
  [/^deg$/, '°'],
  [/^percent(?=$|\/)/, '%'],
  [/dBuV/, 'dBµV'],
  [/degrees Celsius/, '°C'],
  [/\^2/, '²'],
  [/\^3/, '³'],
  [/\^4/, '⁴'],
  [/^N m$/, 'N·m'],
  [/^ohm$/, 'Ω'],
];

/**
 * A unit of plans and exercises as it is written on paper and by hand.
 *
 * @param unit  As plans have it: `deg`, `dBuV`, `m^2`. A unit that needs no other sign comes back as it is.
 *
 * @throws {@link DomainError} where the unit is no text.
 *
 * Source: the SI Brochure, 9th edition, for symbols; dBµV and °C as usual in print.
 * @example
 * ```ts
 * import { printedUnit } from 'slantpath/teaching';
 * ['deg', 'dBuV', 'kg/m^3', 'dB'].map(printedUnit); // => ['°', 'dBµV', 'kg/m³', 'dB']
 * ```
 */
export function printedUnit(unit: string): string {
  if (typeof unit !== 'string')
    throw new DomainError({
      code: unit === undefined ? 'missing' : 'malformed',
      parameter: 'unit',
      received: unit,
      allowed: 'a text, empty for a plain number',
    });
  return UNITS.reduce((text, [from, to]) => text.replace(from, to), unit);
}

/** A written number with its unit behind it: `46°`, `3 dB`. */
export function withUnit(number: string, unit: string): string {
  const printed = printedUnit(unit);
  return `${number}${printed === '°' || printed === '' ? '' : ' '}${printed}`;
}

/** A number with all its decimals as it is printed: a true minus. */
export function fixedNumber(value: number, decimals: number): string {
  return value.toFixed(decimals).replace('-', '−');
}

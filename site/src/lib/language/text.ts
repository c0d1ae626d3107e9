/** Numbers and text as the pages show them. */

import { localNumber, said, unmarked } from './language.js';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Text made safe for HTML content and attributes. */
export function escapeHtml(text: string | number): string {
  return unmarked(String(text)).replace(/[&<>"]/g, (character) => ESCAPES[character] ?? character);
}

/**
 * A number with `digits` decimals, with a true minus sign and never a negative zero; text is passed on.
 * This is the one way a result is printed, so that tests can compare it with the library's value.
 */
export function shown(value: number | string, digits = 2): string {
  if (typeof value === 'string') return said(value);
  const text = value.toFixed(digits);
  return localNumber(Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−'));
}

/** A unit with the space that belongs before it: none before the sign of an angle. */
export function withUnit(text: string, unit: string | undefined): string {
  if (!unit) return text;
  const own = said(unit);
  return /^[°′″](?!C)/.test(own) ? `${text}${own}` : `${text} ${own}`;
}

/**
 * The number a person typed, or NaN: a decimal comma and a true minus sign are understood, nothing else is guessed.
 */
export function typed(text: string): number {
  const plain = text.trim().replace(/^[−–]/, '-').replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
}

/** A compass direction in words: `south-south-west`. */
export function compassWords(azimuthDeg: number): string {
  const names = [
    'north',
    'north-north-east',
    'north-east',
    'east-north-east',
    'east',
    'east-south-east',
    'south-east',
    'south-south-east',
    'south',
    'south-south-west',
    'south-west',
    'west-south-west',
    'west',
    'west-north-west',
    'north-west',
    'north-north-west',
  ];
  return names[Math.round(azimuthDeg / 22.5) % 16] ?? 'north';
}

/** East or west longitude as people write it: `16.4° E`. */
export function longitudeText(longitudeDeg: number, digits = 1): string {
  const turned = ((((longitudeDeg + 180) % 360) + 360) % 360) - 180;
  return `${localNumber(Math.abs(turned).toFixed(digits))}° ${said(turned < 0 ? 'W' : 'E')}`;
}

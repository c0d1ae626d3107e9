/**
 * Short codes that people type: groups of digits and letters that are not mistaken for each other, with a check at the
 * end that tells a slip of the hand.
 */

/** Values of a symbol: 0 to 31, without I, L, O and U. */
const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Symbols at the end that hold the check: 24 bits. */
const CHECK_LENGTH = 5;

/**
 * Cyclic redundancy check of 24 bits.
 *
 * Source: RFC 9580, section 6.1 (generator 0x864CFB, start 0xB704CE). It finds every single wrong symbol and every two
 * neighbours in each other's place; of other damage it lets through one in 16 million.
 */
export function crc24(bytes: Iterable<number>): number {
  let crc = 0xb704ce;
  for (const byte of bytes) {
    crc ^= byte << 16;
    for (let bit = 0; bit < 8; bit++) {
      crc <<= 1;
      if (crc & 0x1000000) crc ^= 0x1864cfb;
    }
  }
  return crc & 0xffffff;
}

const valuesOf = (number: number, length: number): number[] =>
  Array.from({ length }, (_, at) => (number >>> (5 * (length - 1 - at))) & 31);

/** Values of 0 to 31 as text in groups of four, with the check behind them. */
export function checkedText(values: readonly number[]): string {
  const all = [...values, ...valuesOf(crc24(values), CHECK_LENGTH)];
  const text = all.map((value) => SYMBOLS[value]).join('');
  return text.match(/.{1,4}/g)?.join('-') ?? '';
}

/**
 * The values of such a text without the check: small letters, spaces and any hyphens will do, O is read as 0, I and L as 1.
 * `undefined` where another sign stands in it or the check does not fit.
 */
export function checkedValues(text: string): readonly number[] | undefined {
  const plain = text
    .toUpperCase()
    .replace(/[\s\u2010-\u2015-]/g, '')
    .replace(/O/g, '0')
    .replace(/[IL]/g, '1');
  const all = [...plain].map((sign) => SYMBOLS.indexOf(sign));
  if (all.length <= CHECK_LENGTH || all.includes(-1)) return undefined;
  const values = all.slice(0, -CHECK_LENGTH);
  const check = all.slice(-CHECK_LENGTH).reduce((sum, value) => sum * 32 + value, 0);
  return check === crc24(values) ? values : undefined;
}

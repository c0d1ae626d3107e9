/**
 * Adaptive binary range decoding: bits of a text back from a fraction, each context with its own odds.
 *
 * The odds start from trained ones and follow the bits slowly. All arithmetic is on whole numbers below 2^31, so every
 * machine decodes the same bits.
 */

import { DomainError } from '../../errors.js';

/** Gives the next bit of a context; an encoder with the same face takes `bit` and returns it. */
export interface BitCoder {
  bit(context: number, bit: number): number;
}

/** Chances are in 32768ths. */
const CERTAIN_BITS = 15;
const CERTAIN = 1 << CERTAIN_BITS;
/** How slowly a chance follows the bits: a 64th of the way with each. */
const FOLLOW_BITS = 6;
/** The chance of a 1 after another bit; it never reaches certainty. */
export function learnt(chance: number, bit: number): number {
  return bit === 1
    ? chance + ((CERTAIN - chance) >> FOLLOW_BITS)
    : chance - (chance >> FOLLOW_BITS);
}

/** The part of a range that means a 1. */
export function shareOf(range: number, chance: number): number {
  return (range >>> CERTAIN_BITS) * chance;
}

/** Below this the range takes in the next byte. */
export const NARROW = 1 << 23;
/** Range at the start: three bytes. */
export const WIDE = 1 << 24;

/** Decoder of a byte sequence; beyond its end there are zeros. */
export class BitDecoder implements BitCoder {
  private range = WIDE;
  private code = 0;
  private at = 0;

  /** @param chances  Chance of a 1 in each context, in 32768ths; changed while decoding. */
  constructor(
    private readonly bytes: Uint8Array,
    private readonly chances: Uint16Array,
  ) {
    for (let count = 0; count < 3; count++) this.code = (this.code << 8) | this.next();
  }

  private next(): number {
    return this.at < this.bytes.length ? (this.bytes[this.at++] as number) : 0;
  }

  /** The next bit; {@link shareOf} and {@link learnt} written out, since most bits come before an engine has warmed up. */
  bit(context: number): number {
    const { chances } = this;
    const chance = chances[context] as number;
    // The range is parted by the odds: a likely bit keeps most of it and so costs little of the text.
    const share = (this.range >>> CERTAIN_BITS) * chance;
    let bit = 0;
    if (this.code < share) {
      bit = 1;
      this.range = share;
      chances[context] = chance + ((CERTAIN - chance) >> FOLLOW_BITS);
    } else {
      this.code -= share;
      this.range -= share;
      chances[context] = chance - (chance >> FOLLOW_BITS);
    }
    // Before the range is too narrow to be parted, the next byte of the text widens it.
    while (this.range < NARROW) {
      this.range <<= 8;
      this.code = (this.code << 8) | this.next();
    }
    return bit;
  }
}

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const DIGIT = /* @__PURE__ */ (() => {
  const digit = new Int8Array(128).fill(-1);
  for (let value = 0; value < 64; value++) digit[ALPHABET.charCodeAt(value)] = value;
  return digit;
})();

/** Value of a base64 digit, 0 to 63. */
function base64Digit(parameter: string, text: string, index: number): number {
  const value = DIGIT[text.charCodeAt(index)] ?? -1;
  if (value >= 0) return value;
  throw new DomainError({
    code: 'malformed',
    parameter,
    received: text.charAt(index),
    allowed: 'base64 text',
    index,
  });
}

/** Bytes of base64 text without padding (RFC 4648). */
export function base64Bytes(parameter: string, text: string): Uint8Array {
  const bytes = new Uint8Array((text.length * 3) >> 2);
  let held = 0;
  let bits = 0;
  let at = 0;
  for (let index = 0; index < text.length; index++) {
    const value = DIGIT[text.charCodeAt(index)] ?? -1;
    // A good digit costs no call: the grid has some hundred thousand of them.
    held = ((held << 6) | (value < 0 ? base64Digit(parameter, text, index) : value)) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = held >> bits;
  }
  return bytes;
}

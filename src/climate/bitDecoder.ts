/**
 * Adaptive binary arithmetic decoding: bits of a text back from a fraction, each with its own learnt odds.
 *
 * All arithmetic is sums, products and quotients of doubles, so every machine decodes the same bits.
 */

import { DomainError } from '../errors.js';

/** Gives the next bit of a context; an encoder with the same face takes `bit` and returns it. */
export interface BitCoder {
  bit(context: number, bit: number): number;
}

/** How many bits a context has seen when it stops slowing down. */
const STEADY = 126;
/** How far the odds move with the next bit, by how many came before. */
const RATE = Float64Array.from({ length: STEADY + 1 }, (_, seen) => 1 / (seen + 1.5));

/** Learnt odds of many contexts: quick at first, steady later. */
export class Odds {
  private readonly chance: Float64Array;
  private readonly seen: Uint8Array;

  constructor(contexts: number) {
    this.chance = new Float64Array(contexts).fill(32768);
    this.seen = new Uint8Array(contexts);
  }

  /** Chance of a 1 in this context, in 65536ths, never certain. */
  of(context: number): number {
    return Math.min(65504, Math.max(32, Math.floor(this.chance[context] as number)));
  }

  /** Learns from a bit. */
  learn(context: number, bit: number): void {
    const seen = this.seen[context] as number;
    const chance = this.chance[context] as number;
    this.chance[context] = chance + (bit * 65535 - chance) * (RATE[seen] as number);
    if (seen < STEADY) this.seen[context] = seen + 1;
  }
}

/** Decoder of a byte sequence. */
export class BitDecoder implements BitCoder {
  private readonly state = new Uint32Array([0, 0xffffffff, 0]);
  private at = 0;

  constructor(
    private readonly bytes: Uint8Array,
    private readonly odds: Odds,
  ) {
    for (let count = 0; count < 4; count++) this.state[2] = this.shifted(2);
  }

  private shifted(register: number): number {
    const byte = this.at < this.bytes.length ? (this.bytes[this.at] as number) : 0;
    this.at++;
    return ((this.state[register] as number) << 8) | byte;
  }

  bit(context: number): number {
    const { state, odds } = this;
    let low = state[0] as number;
    let high = state[1] as number;
    const middle = low + Math.floor(((high - low) / 65536) * odds.of(context));
    const bit = (state[2] as number) <= middle ? 1 : 0;
    if (bit === 1) high = middle;
    else low = middle + 1;
    odds.learn(context, bit);
    while (((low ^ high) & 0xff000000) === 0) {
      low = (low << 8) >>> 0;
      high = ((high << 8) | 255) >>> 0;
      state[2] = this.shifted(2);
    }
    state[0] = low;
    state[1] = high;
    return bit;
  }
}

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Bytes of base64 text without padding (RFC 4648). */
export function base64Bytes(parameter: string, text: string): Uint8Array {
  const digit = new Int16Array(128).fill(-1);
  for (let value = 0; value < 64; value++) digit[ALPHABET.charCodeAt(value)] = value;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (let index = 0; index < text.length; index++) {
    const value = digit[text.charCodeAt(index)] ?? -1;
    if (value < 0)
      throw new DomainError({
        code: 'malformed',
        parameter,
        received: text.charAt(index),
        allowed: 'base64 text',
        index,
      });
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (held >> bits) & 255;
  }
  return bytes;
}

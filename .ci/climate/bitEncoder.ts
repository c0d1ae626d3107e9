/** Adaptive binary range encoding: the other half of `src/climate/grid/bitDecoder.ts`. */

import { type BitCoder, learnt, NARROW, shareOf, WIDE } from '../../src/climate/grid/bitDecoder.js';

/** Collects bits into bytes. */
export class BitEncoder implements BitCoder {
  private low = 0n;
  private range = WIDE;
  private bytes = 3;

  /** @param chances  Chance of a 1 in each context, in 32768ths; changed while encoding. */
  constructor(private readonly chances: Uint16Array) {}

  bit(context: number, bit: number): number {
    const chance = this.chances[context] as number;
    const share = shareOf(this.range, chance);
    if (bit === 1) this.range = share;
    else {
      this.low += BigInt(share);
      this.range -= share;
    }
    this.chances[context] = learnt(chance, bit);
    while (this.range < NARROW) {
      this.range *= 256;
      this.low *= 256n;
      this.bytes++;
    }
    return bit;
  }

  /** Bytes so far, with the part that the range still holds. */
  length(): number {
    return this.bytes - Math.log2(this.range) / 8;
  }

  /** The fewest bytes that the decoder, which reads zeros beyond them, finds within the range. */
  finish(): Uint8Array {
    for (let kept = 0; kept <= this.bytes; kept++) {
      const unit = 1n << BigInt(8 * (this.bytes - kept));
      const up = ((this.low + unit - 1n) / unit) * unit;
      if (up >= this.low + BigInt(this.range)) continue;
      const out = new Uint8Array(kept);
      let rest = up / unit;
      for (let at = kept - 1; at >= 0; at--) {
        out[at] = Number(rest & 255n);
        rest >>= 8n;
      }
      return out;
    }
    throw new Error('no bytes lie within the range');
  }
}

/** Counts the bits of each context. */
export class BitCounter implements BitCoder {
  readonly ones: Float64Array;
  readonly all: Float64Array;

  constructor(contexts: number) {
    this.ones = new Float64Array(contexts);
    this.all = new Float64Array(contexts);
  }

  bit(context: number, bit: number): number {
    this.ones[context] = (this.ones[context] as number) + bit;
    this.all[context] = (this.all[context] as number) + 1;
    return bit;
  }
}

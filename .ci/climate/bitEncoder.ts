/** Adaptive binary arithmetic encoding: the other half of `src/climate/bitDecoder.ts`. */

import type { BitCoder, Odds } from '../../src/climate/bitDecoder.js';

/** Collects bits into bytes. */
export class BitEncoder implements BitCoder {
  private low = 0;
  private high = 0xffffffff;
  private readonly bytes: number[] = [];

  constructor(private readonly odds: Odds) {}

  bit(context: number, bit: number): number {
    const middle = this.low + Math.floor(((this.high - this.low) / 65536) * this.odds.of(context));
    if (bit === 1) this.high = middle;
    else this.low = middle + 1;
    this.odds.learn(context, bit);
    while (((this.low ^ this.high) & 0xff000000) === 0) {
      this.bytes.push(this.high >>> 24);
      this.low = (this.low << 8) >>> 0;
      this.high = ((this.high << 8) | 255) >>> 0;
    }
    return bit;
  }

  /** All bytes, with as many more as the decoder needs to tell the last bit. */
  finish(): Uint8Array {
    const { high } = this;
    return Uint8Array.from([
      ...this.bytes,
      high >>> 24,
      (high >>> 16) & 255,
      (high >>> 8) & 255,
      high & 255,
    ]);
  }
}

/** An amplifier near its limit: compression from measured pairs, back-off, intermodulation. */

import { DomainError, finite, inRange } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';

/** One step of a line-up. */
export interface PowerPair {
  /** Level at the input in dBm. */
  readonly inputDbm: number;
  /** Level at the output in dBm. */
  readonly outputDbm: number;
}

const POWER_PAIR_KEYS = { inputDbm: true, outputDbm: true } satisfies Keys<PowerPair>;

/** Where the amplifier has lost 1 dB of gain; read `kind` first. */
export type CompressionPoint =
  | {
      readonly kind: 'compressed';
      /** Input level at 1 dB of compression in dBm. */
      readonly inputDbm: number;
      /** Output level there in dBm. */
      readonly outputDbm: number;
      /** Gain of the first pairs in dB, taken as linear. */
      readonly linearGainDb: number;
    }
  | {
      /** No pair has lost 1 dB of gain yet. */
      readonly kind: 'not-compressed';
      readonly linearGainDb: number;
      /** Loss of gain at the last pair in dB. */
      readonly compressionDb: number;
    };

/**
 * 1 dB compression point from measured pairs, by a straight line between the two pairs around it.
 *
 * The gain of the first pair counts as linear, so begin at least 10 dB below the amplifier's rating.
 *
 * @param pairs  Two to 1000 pairs, input rising.
 * @throws {@link DomainError} `too-few`; naming the field of the pair; `inconsistent` where the input does not rise.
 * Source: definition of the 1 dB compression point. Accuracy: the reading's, and the straight line between two steps.
 * @example
 * ```ts
 * import { compressionPoint } from 'slantpath/transmit';
 * const inputs = [-30, -28, -26, -24, -22, -20];
 * const outputs = [30, 31.98, 33.9, 35.62, 36.88, 37.6];
 * const point = compressionPoint(
 *   inputs.map((inputDbm, i) => ({ inputDbm, outputDbm: outputs[i] ?? 0 })),
 * );
 * point.kind === 'compressed' ? point.outputDbm.toFixed(2) : ''; // => '36.68'
 * ```
 */
export function compressionPoint(pairs: readonly PowerPair[]): CompressionPoint {
  if (!Array.isArray(pairs) || pairs.length < 2 || pairs.length > 1000)
    throw new DomainError({
      code: Array.isArray(pairs) && pairs.length < 2 ? 'too-few' : 'malformed',
      parameter: 'pairs',
      received: pairs,
      allowed: 'an array of 2 to 1000 pairs',
    });
  const steps = pairs.map((pair, index) => {
    const at = known(`pairs[${index}]`, pair, POWER_PAIR_KEYS);
    return {
      input: finite(`pairs[${index}].inputDbm`, at.inputDbm),
      output: finite(`pairs[${index}].outputDbm`, at.outputDbm),
    };
  });
  const first = steps[0] as { readonly input: number; readonly output: number };
  const linearGainDb = first.output - first.input;
  let before = first;
  for (const [index, step] of steps.slice(1).entries()) {
    if (step.input <= before.input)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `pairs[${index + 1}].inputDbm`,
        received: step.input,
        allowed: `above ${before.input}, the input of the pair before`,
      });
    const lost = linearGainDb - (step.output - step.input);
    if (lost >= 1) {
      const lostBefore = linearGainDb - (before.output - before.input);
      const share = (1 - lostBefore) / (lost - lostBefore);
      return {
        kind: 'compressed',
        inputDbm: before.input + share * (step.input - before.input),
        outputDbm: before.output + share * (step.output - before.output),
        linearGainDb,
      };
    }
    before = step;
  }
  const compressionDb = linearGainDb - (before.output - before.input);
  return { kind: 'not-compressed', linearGainDb, compressionDb: compressionDb + 0 };
}

/**
 * Output third-order intercept above the output 1 dB compression point in dB for a purely cubic amplifier: 10.64.
 *
 * Source: derivation, 20 log10 of the cubic law's two points; handbooks give 10.6. Real amplifiers differ by several decibels.
 */
export const INTERCEPT_ABOVE_COMPRESSION_DB =
  // The cubic term has grown to 1 - 10^(-1/20) of the linear one at 1 dB of compression and to all of it at the intercept.
  1 - ratioToDb(1 - 10 ** (-1 / 20));

const THIRD_ORDER_RATIO_AMPLIFIER_KEYS = {
  outputCompressionDbm: true,
  carrierDbm: true,
} satisfies Keys<Parameters<typeof thirdOrderRatio>[0]>;

/**
 * Carrier over each third-order product in dB for two equal carriers through a purely cubic amplifier: 2 (intercept - power of each).
 *
 * @param amplifier  Output 1 dB compression point and power of each of the two carriers in dBm; each carrier at most at that point.
 * @throws {@link DomainError} naming the field.
 * Source: cubic law, with `INTERCEPT_ABOVE_COMPRESSION_DB`. Accuracy: the law's; measure where it matters.
 * @example
 * ```ts
 * import { thirdOrderRatio } from 'slantpath/transmit';
 * thirdOrderRatio({ outputCompressionDbm: 36, carrierDbm: 27.5 }).toFixed(1); // => '38.3'
 * ```
 */
export function thirdOrderRatio(amplifier: {
  readonly outputCompressionDbm: number;
  readonly carrierDbm: number;
}): number {
  const given = knownOnly('amplifier', amplifier, THIRD_ORDER_RATIO_AMPLIFIER_KEYS);
  const compression = inRange('outputCompressionDbm', given.outputCompressionDbm, -100, 100);
  const carrier = inRange('carrierDbm', given.carrierDbm, -200, compression);
  return 2 * (compression + INTERCEPT_ABOVE_COMPRESSION_DB - carrier);
}

/**
 * Output 1 dB compression point below saturation in dB for an amplifier after Rapp's law, out = in / (1 + in^2p)^(1/2p).
 *
 * @param sharpness  p of the law, 0.5 to 20: soft tubes near the lower end, a hard limit near the upper; solid-state amplifiers usually lie at 2 to 3.
 * @throws {@link DomainError} naming `sharpness`.
 * Source: derivation from the law of C. Rapp (1991). Accuracy: the law's.
 * @example
 * ```ts
 * import { compressionBelowSaturation } from 'slantpath/transmit';
 * compressionBelowSaturation(2).toFixed(2); // => '2.16'
 * ```
 */
export function compressionBelowSaturation(sharpness: number): number {
  const p = inRange('sharpness', sharpness, 0.5, 20);
  // 1 dB is lost where 1 + x^2p = 10^(p/10); the output there is x 10^(-1/20), and saturation is 1.
  const power = 10 ** (p / 10) - 1;
  return 1 - ratioToDb(power) / p + 0;
}

const CARRIER_SHARE_SHARING_KEYS = {
  saturatedDbm: true,
  outputBackOffDb: true,
  carriers: true,
} satisfies Keys<Parameters<typeof carrierShare>[0]>;

/**
 * Power in dBm of each of several equal carriers that share an amplifier.
 *
 * @param sharing  Saturated power in dBm; total output back-off in dB, 0 to 40; number of carriers, 1 to 1000.
 * @throws {@link DomainError} naming the field.
 * Source: power shared evenly. Accuracy: rounding only.
 * @example
 * ```ts
 * import { carrierShare } from 'slantpath/transmit';
 * carrierShare({ saturatedDbm: 43, outputBackOffDb: 6, carriers: 4 }).toFixed(2); // => '30.98'
 * ```
 */
export function carrierShare(sharing: {
  readonly saturatedDbm: number;
  readonly outputBackOffDb: number;
  readonly carriers: number;
}): number {
  const given = knownOnly('sharing', sharing, CARRIER_SHARE_SHARING_KEYS);
  return (
    inRange('saturatedDbm', given.saturatedDbm, -100, 120) -
    inRange('outputBackOffDb', given.outputBackOffDb, 0, 40) -
    ratioToDb(inRange('carriers', given.carriers, 1, 1000))
  );
}

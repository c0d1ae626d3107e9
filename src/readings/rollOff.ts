/** Bandwidths of a digital carrier: symbol rate, occupied bandwidth, and what of its power lies where. */

import { inRange, positive } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';

/**
 * C/N in the occupied bandwidth less Es/N0 in dB, 0 or less: -10 log10(1 + roll-off).
 *
 * @param rollOffRatio  Roll-off of the carrier, 0 to 1.
 * @throws {@link DomainError} naming `rollOffRatio`.
 * Source: noise power in (1 + roll-off) x symbol rate. Accuracy: rounding only.
 * @example
 * ```ts
 * import { occupiedBandwidthDb } from 'slantpath/readings';
 * occupiedBandwidthDb(0.35).toFixed(2); // => '-1.30'
 * ```
 */
export function occupiedBandwidthDb(rollOffRatio: number): number {
  return -ratioToDb(1 + inRange('rollOffRatio', rollOffRatio, 0, 1, 'is it in percent?')) + 0;
}

/**
 * Part of a carrier's power within a bandwidth equal to its symbol rate, in dB, 0 or less: 1 - a (1/2 - 1/pi).
 *
 * @param rollOffRatio  Roll-off a of the carrier, 0 to 1.
 * @throws {@link DomainError} naming `rollOffRatio`.
 * Source: integral of the raised-cosine spectrum (EN 302 307-1, 5.6). Accuracy: rounding only.
 * @example
 * ```ts
 * import { powerWithinSymbolRateDb } from 'slantpath/readings';
 * powerWithinSymbolRateDb(0.35).toFixed(3); // => '-0.285'
 * ```
 */
export function powerWithinSymbolRateDb(rollOffRatio: number): number {
  const a = inRange('rollOffRatio', rollOffRatio, 0, 1, 'is it in percent?');
  return ratioToDb(1 - a * (0.5 - 1 / Math.PI)) + 0;
}

const CARRIER_TO_NOISE_IN_BANDWIDTH_READING_KEYS = {
  carrierToNoiseDb: true,
  bandwidthMHz: true,
  wantedBandwidthMHz: true,
} satisfies Keys<Parameters<typeof carrierToNoiseInBandwidth>[0]>;

/**
 * Carrier to noise in another bandwidth, in dB: the noise power grows with the bandwidth, the carrier does not.
 *
 * @param reading  Carrier to noise in dB and the bandwidth that it holds in; the bandwidth asked for, both in MHz, above 0.
 * @throws {@link DomainError} naming the field.
 * Source: C/N = C/N0 - 10 log10(bandwidth). Accuracy: rounding only.
 * @example
 * ```ts
 * import { carrierToNoiseInBandwidth } from 'slantpath/readings';
 * const reading = { carrierToNoiseDb: 12, bandwidthMHz: 36, wantedBandwidthMHz: 27.5 };
 * carrierToNoiseInBandwidth(reading).toFixed(2); // => '13.17'
 * ```
 */
export function carrierToNoiseInBandwidth(reading: {
  readonly carrierToNoiseDb: number;
  readonly bandwidthMHz: number;
  readonly wantedBandwidthMHz: number;
}): number {
  knownOnly('reading', reading, CARRIER_TO_NOISE_IN_BANDWIDTH_READING_KEYS);
  const from = positive('bandwidthMHz', reading?.bandwidthMHz);
  const to = positive('wantedBandwidthMHz', reading.wantedBandwidthMHz);
  return inRange('carrierToNoiseDb', reading.carrierToNoiseDb, -100, 200) + ratioToDb(from / to);
}

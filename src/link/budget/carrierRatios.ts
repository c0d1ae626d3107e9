/** The four ways of stating a carrier against noise, and their conversion. */

import { inRange } from '../../errors.js';
import { type Keys, known as knownFields } from '../../keys.js';
import { ratioToDb } from '../../numeric/decibel.js';

/** Which ratio is known. */
export type KnownRatio =
  | { /** Carrier over noise density in dBHz. */ readonly carrierToNoiseDensityDbHz: number }
  | { /** Carrier over noise in the noise bandwidth, in dB. */ readonly carrierToNoiseDb: number }
  | { /** Energy per symbol over noise density in dB. */ readonly esN0Db: number }
  | { /** Energy per useful bit over noise density in dB. */ readonly ebN0Db: number };

const KNOWN_RATIO_KEYS = {
  carrierToNoiseDensityDbHz: true,
  carrierToNoiseDb: true,
  esN0Db: true,
  ebN0Db: true,
} satisfies Keys<KnownRatio>;

/** What the conversion needs besides the ratio. */
export interface CarrierShape {
  /** Symbol rate in megabaud, 1e-6 to 1e4. */
  readonly symbolRateMBd: number;
  /** Useful bits per symbol, 0.001 to 20. */
  readonly bitsPerSymbol: number;
  /** Noise bandwidth in MHz, 1e-6 to 1e4; default the symbol rate, in which C/N equals Es/N0. */
  readonly noiseBandwidthMHz?: number;
}

const CARRIER_SHAPE_KEYS = {
  symbolRateMBd: true,
  bitsPerSymbol: true,
  noiseBandwidthMHz: true,
} satisfies Keys<CarrierShape>;

/** One ratio in its four forms. */
export interface CarrierRatios {
  /** Carrier over noise density in dBHz. */
  readonly carrierToNoiseDensityDbHz: number;
  /** Carrier over noise in the noise bandwidth, in dB. */
  readonly carrierToNoiseDb: number;
  /** Energy per symbol over noise density in dB. */
  readonly esN0Db: number;
  /** Energy per useful bit over noise density in dB. */
  readonly ebN0Db: number;
}

/** Returns a rate or bandwidth of 1e-6 to 1e4 (megabaud or MHz), otherwise throws. */
export function checkedRate(parameter: string, value: number): number {
  return inRange(parameter, value, 1e-6, 1e4, 'is it in megabaud or MHz, not in baud or kHz?');
}

/**
 * C/N0, C/N, Es/N0 and Eb/N0 from any one of them.
 *
 * C/N0 = C/N + 10 log10 B = Es/N0 + 10 log10 Rs = Eb/N0 + 10 log10 (Rs m), with m useful bits per symbol.
 *
 * @param known  An object with exactly one of `carrierToNoiseDensityDbHz`, `carrierToNoiseDb`, `esN0Db`, `ebN0Db`.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definitions; noise bandwidth of a root-raised-cosine filter equals the symbol rate.
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { carrierRatios } from 'slantpath/link';
 * carrierRatios({ ebN0Db: 9.6 }, { symbolRateMBd: 0.772, bitsPerSymbol: 2 }).carrierToNoiseDensityDbHz.toFixed(2); // => '71.49'
 * ```
 */
export function carrierRatios(known: KnownRatio, carrier: CarrierShape): CarrierRatios {
  const shape = knownFields('carrier', carrier, CARRIER_SHAPE_KEYS);
  const symbolRateDb = ratioToDb(checkedRate('symbolRateMBd', shape.symbolRateMBd) * 1e6);
  const bitsDb = ratioToDb(inRange('bitsPerSymbol', shape.bitsPerSymbol, 0.001, 20));
  const bandwidthMHz = shape.noiseBandwidthMHz ?? shape.symbolRateMBd;
  const bandwidthDb = ratioToDb(checkedRate('noiseBandwidthMHz', bandwidthMHz) * 1e6);
  const given: Partial<CarrierRatios> = knownFields('known', known, KNOWN_RATIO_KEYS);
  const named = (
    ['carrierToNoiseDensityDbHz', 'carrierToNoiseDb', 'esN0Db', 'ebN0Db'] as const
  ).filter((name) => given[name] !== undefined);
  const name =
    named.length === 1 && named[0] !== undefined ? named[0] : 'carrierToNoiseDensityDbHz';
  const value = inRange(name, (named.length === 1 ? given[name] : undefined) as number, -400, 400);
  const offsetsDb = {
    carrierToNoiseDensityDbHz: 0,
    carrierToNoiseDb: bandwidthDb,
    esN0Db: symbolRateDb,
    ebN0Db: symbolRateDb + bitsDb,
  };
  const carrierToNoiseDensityDbHz = value + offsetsDb[name];
  return {
    carrierToNoiseDensityDbHz,
    carrierToNoiseDb: carrierToNoiseDensityDbHz - offsetsDb.carrierToNoiseDb + 0,
    esN0Db: carrierToNoiseDensityDbHz - offsetsDb.esN0Db + 0,
    ebN0Db: carrierToNoiseDensityDbHz - offsetsDb.ebN0Db + 0,
  };
}

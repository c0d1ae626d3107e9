/** From a reading of signal plus noise to the signal, and when the reading only says "at most". */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';

/** A level read with the signal on, and the level read with the signal away, in the same bandwidth. */
export interface SignalPlusNoise {
  /** Level of signal and noise together in dBm, -200 to 60. */
  readonly signalPlusNoiseDbm: number;
  /** Level of the noise alone in dBm, -200 to 60: dish turned away, or a free place beside the carrier. */
  readonly noiseDbm: number;
  /** Standard uncertainty of the difference of the two readings in dB, 0 to 10; default 0.2. */
  readonly standardUncertaintyDb?: number;
}

const SIGNAL_PLUS_NOISE_KEYS = {
  signalPlusNoiseDbm: true,
  noiseDbm: true,
  standardUncertaintyDb: true,
} satisfies Keys<SignalPlusNoise>;

/** What the two readings say; read `kind` first. */
export type SignalAlone =
  | {
      /** The signal stands out of the noise by more than the readings are unsure. */
      readonly kind: 'signal';
      /** Level of the signal alone in dBm. */
      readonly levelDbm: number;
      /** Signal less reading in dB, below 0. */
      readonly correctionDb: number;
      /** Carrier to noise in the bandwidth of the readings in dB. */
      readonly carrierToNoiseDb: number;
      /** Standard uncertainty of level and ratio in dB: that of the readings grows as the signal sinks into the noise. */
      readonly standardUncertaintyDb: number;
    }
  | {
      /** Signal and noise cannot be told apart: the signal is at most this strong (95 %). */
      readonly kind: 'at-most';
      /** Highest level that the signal may have in dBm. */
      readonly levelDbm: number;
      /** Highest carrier to noise in dB. */
      readonly carrierToNoiseDb: number;
    };

const FACTOR = 1.6448536269514722;

/**
 * The signal without the noise: S = 10 log10(10^(SN/10) - 10^(N/10)).
 *
 * Where the readings differ by less than 1.645 times their standard uncertainty, noise alone explains them and only a
 * highest level can be told, one-sided at 95 %: the difference plus 1.645 standard uncertainties. A noise reading far above
 * the other is an inconsistency of the readings and comes out as a very low highest level.
 *
 * @throws {@link DomainError} naming the field.
 * Source: subtraction of powers; first-order propagation (JCGM 100:2008, 5.1.2). Accuracy: the level by rounding; the
 * uncertainty to first order, good where the readings differ by three times their uncertainty or more.
 * @example
 * ```ts
 * import { signalWithoutNoise } from 'slantpath/readings';
 * const signal = signalWithoutNoise({ signalPlusNoiseDbm: -61.3, noiseDbm: -65 });
 * signal.kind; // => 'signal'
 * signal.levelDbm.toFixed(2); // => '-63.72'
 * ```
 */
export function signalWithoutNoise(readings: SignalPlusNoise): SignalAlone {
  const given = knownOnly('readings', readings, SIGNAL_PLUS_NOISE_KEYS);
  const totalDbm = inRange('signalPlusNoiseDbm', given.signalPlusNoiseDbm, -200, 60);
  const noiseDbm = inRange('noiseDbm', given.noiseDbm, -200, 60);
  const u = inRange('standardUncertaintyDb', given.standardUncertaintyDb ?? 0.2, 0, 10);
  const aboveDb = totalDbm - noiseDbm;
  if (aboveDb <= FACTOR * u || aboveDb <= 1e-9) {
    // At least a thousandth of a decibel above the noise, so that the logarithm stays finite.
    const highestDb = Math.max(aboveDb + FACTOR * u, 1e-3);
    const carrierToNoiseDb = ratioToDb(dbToRatio(highestDb) - 1);
    return { kind: 'at-most', levelDbm: noiseDbm + carrierToNoiseDb, carrierToNoiseDb };
  }
  const share = dbToRatio(-aboveDb);
  const correctionDb = ratioToDb(1 - share);
  return {
    kind: 'signal',
    levelDbm: totalDbm + correctionDb,
    correctionDb,
    carrierToNoiseDb: aboveDb + correctionDb,
    standardUncertaintyDb: u / (1 - share),
  };
}

/** Bit and symbol errors before any correction, for the two plain modulations of satellite carriers. */

import { inRange, oneOf, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';
import { gaussLegendre } from '../numeric/gaussLegendre.js';
import { normalExceedance } from '../numeric/normal.js';
import { bracketedRoot } from '../numeric/root.js';

/** Energies of a carrier over the noise density. */
export interface EnergyRatios {
  /** Es/N0 in dB: carrier to noise in a bandwidth equal to the symbol rate. */
  readonly symbolEnergyToNoiseDb: number;
  /** Eb/N0 in dB: energy of an information bit. */
  readonly bitEnergyToNoiseDb: number;
}

const ENERGY_RATIOS_CARRIER_KEYS = {
  carrierToDensityDbHz: true,
  symbolRateMBd: true,
  informationBitsPerSymbol: true,
} satisfies Keys<Parameters<typeof energyRatios>[0]>;

/**
 * Es/N0 and Eb/N0 from C/N0.
 *
 * @param carrier  C/N0 in dBHz, symbol rate in millions of symbols a second, information bits per symbol (after all coding),
 *   above 0 to 10.
 * @throws {@link DomainError} naming the field.
 * Source: definitions (EN 302 307-1, 6). Accuracy: rounding only.
 * @example
 * ```ts
 * import { energyRatios } from 'slantpath/readings';
 * const energy = energyRatios({
 *   carrierToDensityDbHz: 85.4,
 *   symbolRateMBd: 27.5,
 *   informationBitsPerSymbol: 1.980636,
 * });
 * energy.symbolEnergyToNoiseDb.toFixed(2); // => '11.01'
 * energy.bitEnergyToNoiseDb.toFixed(2); // => '8.04'
 * ```
 */
export function energyRatios(carrier: {
  readonly carrierToDensityDbHz: number;
  readonly symbolRateMBd: number;
  readonly informationBitsPerSymbol: number;
}): EnergyRatios {
  const given = known('carrier', carrier, ENERGY_RATIOS_CARRIER_KEYS);
  const symbolEnergyToNoiseDb =
    inRange('carrierToDensityDbHz', given.carrierToDensityDbHz, -100, 200) -
    ratioToDb(1e6 * positive('symbolRateMBd', given.symbolRateMBd));
  const bits = inRange(
    'informationBitsPerSymbol',
    positive('informationBitsPerSymbol', given.informationBitsPerSymbol),
    0,
    10,
  );
  return {
    symbolEnergyToNoiseDb,
    bitEnergyToNoiseDb: symbolEnergyToNoiseDb - ratioToDb(bits),
  };
}

/** Ratio of wrong symbols of 8PSK for Es/N0 as a ratio: (1/pi) integral of exp(-Es/N0 sin^2(pi/8) / sin^2 t), 0 to 7 pi / 8. */
function wrongSymbolsOf8psk(energy: number): number {
  const exponent = energy * Math.sin(Math.PI / 8) ** 2;
  const f = (t: number): number => Math.exp(-exponent / Math.sin(t) ** 2);
  let sum = 0;
  // Forty pieces: the integrand is flat at 0 and changes most near a right angle.
  for (let piece = 0; piece < 40; piece += 1)
    sum += gaussLegendre(f, (piece * 7 * Math.PI) / 320, ((piece + 1) * 7 * Math.PI) / 320);
  return sum / Math.PI;
}

/**
 * Ratio of wrong symbols of 8PSK in noise alone, 0 to 1.
 *
 * @param symbolEnergyToNoiseDb  Es/N0 in dB, -20 to 25.
 * @throws {@link DomainError} naming `symbolEnergyToNoiseDb`.
 * Source: exact single integral of J. W. Craig (1991). Accuracy: 1e-9 relative.
 * @example
 * ```ts
 * import { symbolErrorRatio8psk } from 'slantpath/readings';
 * symbolErrorRatio8psk(12).toExponential(2); // => '3.12e-2'
 * ```
 */
export function symbolErrorRatio8psk(symbolEnergyToNoiseDb: number): number {
  return wrongSymbolsOf8psk(
    dbToRatio(inRange('symbolEnergyToNoiseDb', symbolEnergyToNoiseDb, -20, 25)),
  );
}

/** Ratio of wrong bits for Eb/N0 as a ratio. */
function wrongBits(modulation: 'qpsk' | '8psk', energy: number): number {
  if (modulation === 'qpsk') return normalExceedance(Math.sqrt(2 * energy));
  // Gray mapping: a wrong symbol is nearly always a neighbour, and one of its three bits is wrong.
  return (2 * normalExceedance(Math.sqrt(6 * energy) * Math.sin(Math.PI / 8))) / 3;
}

const BIT_ERROR_RATIO_CARRIER_KEYS = { modulation: true, bitEnergyToNoiseDb: true } satisfies Keys<
  Parameters<typeof bitErrorRatio>[0]
>;

/**
 * Ratio of wrong bits before any correction of errors, Gray mapping, coherent receiver, noise alone.
 *
 * After the correction the curve falls within some tenths of a decibel, and this formula says nothing.
 *
 * @param carrier  Modulation; Eb/N0 in dB, -20 to 20.
 * @throws {@link DomainError} naming the field.
 * Source: QPSK exact, Q(sqrt(2 Eb/N0)); 8PSK two thirds of Q(sqrt(6 Eb/N0) sin(pi/8)). Accuracy: QPSK 1e-12 relative; 8PSK
 * within 1 % below a ratio of 1e-2, as bits of far wrong symbols are left out.
 * @example
 * ```ts
 * import { bitErrorRatio } from 'slantpath/readings';
 * bitErrorRatio({ modulation: 'qpsk', bitEnergyToNoiseDb: 7 }).toExponential(2); // => '7.73e-4'
 * ```
 */
export function bitErrorRatio(carrier: {
  readonly modulation: 'qpsk' | '8psk';
  readonly bitEnergyToNoiseDb: number;
}): number {
  const given = known('carrier', carrier, BIT_ERROR_RATIO_CARRIER_KEYS);
  const modulation = oneOf('modulation', given.modulation, ['qpsk', '8psk']);
  return wrongBits(
    modulation,
    dbToRatio(inRange('bitEnergyToNoiseDb', given.bitEnergyToNoiseDb, -20, 20)),
  );
}

const BIT_ENERGY_FOR_ERRORS_ERRORS_KEYS = { modulation: true, bitErrorRatio: true } satisfies Keys<
  Parameters<typeof bitEnergyForErrors>[0]
>;

/**
 * Eb/N0 in dB at which a modulation has a ratio of wrong bits before correction.
 *
 * @param errors  Modulation; ratio of wrong bits, 1e-30 to 0.1.
 * @throws {@link DomainError} naming the field.
 * Source: `bitErrorRatio`, solved. Accuracy: 1e-9 dB of that formula.
 * @example
 * ```ts
 * import { bitEnergyForErrors } from 'slantpath/readings';
 * bitEnergyForErrors({ modulation: 'qpsk', bitErrorRatio: 1e-4 }).toFixed(2); // => '8.40'
 * ```
 */
export function bitEnergyForErrors(errors: {
  readonly modulation: 'qpsk' | '8psk';
  readonly bitErrorRatio: number;
}): number {
  const given = knownOnly('errors', errors, BIT_ENERGY_FOR_ERRORS_ERRORS_KEYS);
  const modulation = oneOf('modulation', given.modulation, ['qpsk', '8psk']);
  const wanted = Math.log(inRange('bitErrorRatio', given.bitErrorRatio, 1e-30, 0.1));
  const solved = bracketedRoot((db) => Math.log(wrongBits(modulation, dbToRatio(db))) - wanted, {
    from: -20,
    to: 25,
    tolerance: 1e-11,
  });
  // The curve falls without a step over the whole interval, so the ends always bracket the answer.
  return solved as number;
}

const IMPLEMENTATION_LOSS_NEED_KEYS = {
  idealSymbolEnergyToNoiseDb: true,
  neededSymbolEnergyToNoiseDb: true,
} satisfies Keys<Parameters<typeof implementationLoss>[0]>;

/**
 * Implementation loss of a chain and the error power that makes it.
 *
 * @param need  Es/N0 in dB that the mode needs in theory and that the receiver needs in fact, the second larger, -20 to 40.
 * @returns Loss in dB, and how far below the carrier in dB an error power would lie that accounts for it.
 * @throws {@link DomainError} naming the field.
 * Source: definition; independent error powers add. Accuracy: rounding only.
 * @example
 * ```ts
 * import { implementationLoss } from 'slantpath/readings';
 * const need = { idealSymbolEnergyToNoiseDb: 6.62, neededSymbolEnergyToNoiseDb: 8.1 };
 * implementationLoss(need).errorBelowCarrierDb.toFixed(2); // => '12.01'
 * ```
 */
export function implementationLoss(need: {
  readonly idealSymbolEnergyToNoiseDb: number;
  readonly neededSymbolEnergyToNoiseDb: number;
}): { readonly lossDb: number; readonly errorBelowCarrierDb: number } {
  const given = knownOnly('need', need, IMPLEMENTATION_LOSS_NEED_KEYS);
  const idealDb = inRange('idealSymbolEnergyToNoiseDb', given.idealSymbolEnergyToNoiseDb, -20, 40);
  const neededDb = inRange(
    'neededSymbolEnergyToNoiseDb',
    given.neededSymbolEnergyToNoiseDb,
    idealDb + 1e-6,
    40,
    'a receiver needs more than theory',
  );
  return {
    lossDb: neededDb - idealDb,
    errorBelowCarrierDb: -ratioToDb(dbToRatio(-idealDb) - dbToRatio(-neededDb)),
  };
}

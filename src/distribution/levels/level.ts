/** Levels as powers and as voltages: dBm, dBuV and dBmV at a given impedance. */

import { finite, positive } from '../../errors.js';
import { knownOnly } from '../../keys.js';

/** Impedance of broadcast and satellite distribution. */
const DISTRIBUTION_IMPEDANCE_OHM = 75;

/** Impedance across which a voltage level is measured. */
export interface Impedance {
  /** Impedance in ohms, above 0; 75 by default, 50 for measuring gear of the radio trade. */
  readonly impedanceOhm?: number;
}

const IMPEDANCE_KEYS = { impedanceOhm: true } as const;

/**
 * 0 dBm as a voltage level: one milliwatt in R is sqrt(R/1000) volt, 10 log10(R/1000) + 120 dBuV.
 */
function milliwattDbuv(impedance: Impedance): number {
  const { impedanceOhm = DISTRIBUTION_IMPEDANCE_OHM } = knownOnly(
    'impedance',
    impedance,
    IMPEDANCE_KEYS,
  );
  return 120 + 10 * Math.log10(positive('impedanceOhm', impedanceOhm) / 1000);
}

/**
 * Voltage level in dB over one microvolt of a power level in dBm.
 *
 * @param levelDbm  Power level in dB over one milliwatt.
 * @param impedance  `impedanceOhm` in ohms, above 0; 75 by default, 50 for measuring gear of the radio trade.
 * @throws {@link DomainError} for a value that is not finite or an impedance of 0 or less.
 * Source: definition; 0 dBm = 108.7506 dBuV at 75 ohm, 106.9897 dBuV at 50 ohm.
 * Accuracy: exact to rounding.
 * @example
 * ```ts
 * import { dbmToDbuv } from 'slantpath/distribution';
 * dbmToDbuv(-50).toFixed(2); // => '58.75'
 * dbmToDbuv(-50, { impedanceOhm: 50 }).toFixed(2); // => '56.99'
 * ```
 */
export function dbmToDbuv(levelDbm: number, impedance: Impedance = {}): number {
  return finite('levelDbm', levelDbm) + milliwattDbuv(impedance);
}

/**
 * Power level in dBm of a voltage level in dBuV; the inverse of {@link dbmToDbuv}.
 *
 * @param levelDbuv  Voltage level in dB over one microvolt.
 * @param impedance  `impedanceOhm` in ohms, above 0; 75 by default.
 * @throws {@link DomainError} for a value that is not finite or an impedance of 0 or less.
 * @example
 * ```ts
 * import { dbuvToDbm } from 'slantpath/distribution';
 * dbuvToDbm(47).toFixed(2); // => '-61.75'
 * ```
 */
export function dbuvToDbm(levelDbuv: number, impedance: Impedance = {}): number {
  return finite('levelDbuv', levelDbuv) - milliwattDbuv(impedance);
}

/**
 * Voltage level in dBmV (dB over one millivolt) of a level in dBuV: 60 less, at any impedance.
 *
 * @throws {@link DomainError} for a level that is not finite.
 * @example
 * ```ts
 * import { dbuvToDbmv } from 'slantpath/distribution';
 * dbuvToDbmv(60); // => 0
 * ```
 */
export function dbuvToDbmv(levelDbuv: number): number {
  return finite('levelDbuv', levelDbuv) - 60;
}

/**
 * Voltage level in dBuV of a level in dBmV: 60 more, at any impedance.
 *
 * @throws {@link DomainError} for a level that is not finite.
 * @example
 * ```ts
 * import { dbmvToDbuv } from 'slantpath/distribution';
 * dbmvToDbuv(-5); // => 55
 * ```
 */
export function dbmvToDbuv(levelDbmv: number): number {
  return finite('levelDbmv', levelDbmv) + 60;
}

/**
 * Voltage level in dBmV of a power level in dBm.
 *
 * @param levelDbm  Power level in dB over one milliwatt.
 * @param impedance  `impedanceOhm` in ohms, above 0; 75 by default.
 * @throws {@link DomainError} for a value that is not finite or an impedance of 0 or less.
 * @example
 * ```ts
 * import { dbmToDbmv } from 'slantpath/distribution';
 * dbmToDbmv(0).toFixed(2); // => '48.75'
 * ```
 */
export function dbmToDbmv(levelDbm: number, impedance: Impedance = {}): number {
  return finite('levelDbm', levelDbm) + milliwattDbuv(impedance) - 60;
}

/**
 * Power level in dBm of a voltage level in dBmV; the inverse of {@link dbmToDbmv}.
 *
 * @param levelDbmv  Voltage level in dB over one millivolt.
 * @param impedance  `impedanceOhm` in ohms, above 0; 75 by default.
 * @throws {@link DomainError} for a value that is not finite or an impedance of 0 or less.
 * @example
 * ```ts
 * import { dbmvToDbm } from 'slantpath/distribution';
 * dbmvToDbm(0).toFixed(2); // => '-48.75'
 * ```
 */
export function dbmvToDbm(levelDbmv: number, impedance: Impedance = {}): number {
  return finite('levelDbmv', levelDbmv) + 60 - milliwattDbuv(impedance);
}

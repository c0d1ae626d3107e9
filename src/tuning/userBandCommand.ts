/** Tuning words by which receivers on one cable ask the unit for a carrier in their user band. */

import { DomainError, inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';

/** A whole number within bounds, otherwise throws. */
function whole(parameter: string, value: number, minimum: number, maximum: number): number {
  const checked = inRange(parameter, value, minimum, maximum);
  if (Number.isInteger(checked)) return checked;
  throw new DomainError({
    code: 'out-of-range',
    parameter,
    received: value,
    allowed: `a whole number from ${minimum} to ${maximum}`,
  });
}

/** Bytes as two hexadecimal digits each, separated by blanks. */
const hexadecimal = (bytes: readonly number[]): string =>
  bytes.map((byte) => byte.toString(16).toUpperCase().padStart(2, '0')).join(' ');

/** Halves go up, with the rounding of the sum itself taken off first. */
const roundHalfUp = (value: number): number => Math.floor(Math.round(value * 1e6) / 1e6 + 0.5);

/** What a receiver asks a unit of the first generation for. */
export interface UserBandRequest {
  /** Intermediate frequency of the carrier in MHz, |f - LO|; 200 to 3000. */
  readonly intermediateFrequencyMHz: number;
  /** Centre of the receiver's user band in MHz, 900 to 2200. */
  readonly userBandMHz: number;
  /** Number of the user band, 0 to 7. */
  readonly userBand: number;
  /** Polarization; circular counts right-hand as vertical, left-hand as horizontal. */
  readonly polarization: 'vertical' | 'horizontal';
  /** Band of the unit. */
  readonly band: 'low' | 'high';
  /** Which of two satellite positions, `A` by default. */
  readonly position?: 'A' | 'B';
  /** Address of the unit on the bus, 0x00, 0x10 or 0x11; default 0x10. */
  readonly address?: 0x00 | 0x10 | 0x11;
}

const USER_BAND_REQUEST_KEYS = {
  intermediateFrequencyMHz: true,
  userBandMHz: true,
  userBand: true,
  polarization: true,
  band: true,
  position: true,
  address: true,
} satisfies Keys<UserBandRequest>;

/** The answer for a user band of the first generation. */
export interface UserBandCommand {
  /** Tuning word, 0 to 1023. */
  readonly tuningWord: number;
  /** Bank: 4 for position B, 2 for horizontal, 1 for the high band, added. */
  readonly bank: number;
  /** The five bytes of the message in hexadecimal. */
  readonly message: string;
  /** Where the carrier really lies then in MHz, up to 2 MHz from the centre of the user band: what the receiver tunes. */
  readonly tunedMHz: number;
}

/**
 * Tuning word and message of channel stacking, first generation (EN 50494): up to 8 receivers on one cable.
 *
 * T = round((IF + user band) / 4) - 350, in MHz, a tie going up. The unit then puts the carrier at 4 (T + 350) - IF.
 *
 * @throws {@link DomainError} naming the field; `out-of-range` where the word does not fit in ten bits.
 * Source: rule read in open implementations that cite EN 50494, clause 6.2.1; the standard itself is not open and was
 * not read. Accuracy: exact; the step of 4 MHz leaves the carrier up to 2 MHz off.
 * @example
 * ```ts
 * import { userBandCommand } from 'slantpath/tuning';
 * const asked = userBandCommand({
 *   intermediateFrequencyMHz: 1338,
 *   userBandMHz: 1210,
 *   userBand: 0,
 *   polarization: 'horizontal',
 *   band: 'high',
 * });
 * asked.message; // => 'E0 10 5A 0D 1F'
 * ```
 */
export function userBandCommand(request: UserBandRequest): UserBandCommand {
  const given = knownOnly('request', request, USER_BAND_REQUEST_KEYS);
  const between = inRange(
    'intermediateFrequencyMHz',
    given.intermediateFrequencyMHz,
    200,
    3000,
    'is it the radio frequency?',
  );
  const centreMHz = inRange('userBandMHz', given.userBandMHz, 900, 2200);
  const userBand = whole('userBand', given.userBand, 0, 7);
  const polarization = oneOf('polarization', given.polarization, ['vertical', 'horizontal']);
  const band = oneOf('band', given.band, ['low', 'high']);
  const position = oneOf('position', given.position ?? 'A', ['A', 'B']);
  const address = given.address ?? 0x10;
  if (![0x00, 0x10, 0x11].includes(address))
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'address',
      received: address,
      allowed: 'one of 0x00, 0x10, 0x11',
    });
  const tuningWord = roundHalfUp((between + centreMHz) / 4) - 350;
  if (tuningWord < 1 || tuningWord > 1023)
    throw new DomainError({
      code: 'out-of-range',
      parameter: 'intermediateFrequencyMHz',
      received: between,
      allowed: `such that (intermediateFrequencyMHz + userBandMHz) / 4 - 350 is from 1 to 1023 (it is ${tuningWord})`,
    });
  const bank =
    (position === 'B' ? 4 : 0) +
    (polarization === 'horizontal' ? 2 : 0) +
    (band === 'high' ? 1 : 0);
  const first = (userBand << 5) | (bank << 2) | (tuningWord >> 8);
  return {
    tuningWord,
    bank,
    message: hexadecimal([0xe0, address, 0x5a, first, tuningWord & 0xff]),
    tunedMHz: 4 * (tuningWord + 350) - between,
  };
}

/** What a receiver asks a unit of the second generation for. */
export interface WideUserBandRequest {
  /** Intermediate frequency of the carrier in MHz, 110 to 2147. */
  readonly intermediateFrequencyMHz: number;
  /** Number of the user band, 1 to 32. */
  readonly userBand: number;
  /** Polarization; circular counts right-hand as vertical, left-hand as horizontal. */
  readonly polarization: 'vertical' | 'horizontal';
  /** Band of the unit. */
  readonly band: 'low' | 'high';
  /** Second position of the committed switches; default false. */
  readonly secondPosition?: boolean;
  /** Second option of the committed switches; default false. */
  readonly secondOption?: boolean;
  /** Uncommitted switches as a number, 0 to 15; default 0. */
  readonly uncommitted?: number;
}

const WIDE_USER_BAND_REQUEST_KEYS = {
  intermediateFrequencyMHz: true,
  userBand: true,
  polarization: true,
  band: true,
  secondPosition: true,
  secondOption: true,
  uncommitted: true,
} satisfies Keys<WideUserBandRequest>;

/** The answer for a user band of the second generation. */
export interface WideUserBandCommand {
  /** Tuning word, 10 to 2047: whole megahertz above 100. */
  readonly tuningWord: number;
  /** Bank, 0 to 255: uncommitted switches x 16 + committed switches. */
  readonly bank: number;
  /** The four bytes of the message in hexadecimal. */
  readonly message: string;
}

/**
 * Tuning word and message of channel stacking, second generation (EN 50607): up to 32 user bands, 256 banks.
 *
 * T = IF - 100 in whole MHz, a half going up. Committed switches: 1 high band, 2 horizontal, 4 position, 8 option.
 *
 * @throws {@link DomainError} naming the field.
 * Source: rule read in open implementations that cite EN 50607; the standard itself is not open and was not read.
 * Accuracy: exact; the step of 1 MHz leaves the carrier up to 0.5 MHz off.
 * @example
 * ```ts
 * import { wideUserBandCommand } from 'slantpath/tuning';
 * const asked = wideUserBandCommand({
 *   intermediateFrequencyMHz: 1338.4,
 *   userBand: 5,
 *   polarization: 'horizontal',
 *   band: 'high',
 * });
 * asked.message; // => '70 24 D6 03'
 * ```
 */
export function wideUserBandCommand(request: WideUserBandRequest): WideUserBandCommand {
  const given = knownOnly('request', request, WIDE_USER_BAND_REQUEST_KEYS);
  const between = inRange(
    'intermediateFrequencyMHz',
    given.intermediateFrequencyMHz,
    110,
    2147,
    'is it the radio frequency?',
  );
  const userBand = whole('userBand', given.userBand, 1, 32);
  const polarization = oneOf('polarization', given.polarization, ['vertical', 'horizontal']);
  const band = oneOf('band', given.band, ['low', 'high']);
  const uncommitted = whole('uncommitted', given.uncommitted ?? 0, 0, 15);
  const tuningWord = roundHalfUp(between) - 100;
  const committed =
    (band === 'high' ? 1 : 0) +
    (polarization === 'horizontal' ? 2 : 0) +
    (given.secondPosition === true ? 4 : 0) +
    (given.secondOption === true ? 8 : 0);
  const bank = uncommitted * 16 + committed;
  const first = ((userBand - 1) << 3) | (tuningWord >> 8);
  return {
    tuningWord,
    bank,
    message: hexadecimal([0x70, first, tuningWord & 0xff, bank]),
  };
}

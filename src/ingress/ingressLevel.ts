/** From a transmitter near by to the level that leaks into a cable. */

import { inRange, oneOf, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';

/** 10 log10(30 ohm in its exact form x 10^9): field of 1 mW EIRP at 1 m in dBuV/m. */
const FIELD_CONSTANT_DB = 104.7712125;
/** 20 log10 of what a matched isotropic antenna brings to 75 ohm from 1 uV/m at 1 MHz, in dBuV. */
const ANTENNA_CONSTANT_75_DB = 31.53462238;
const ANTENNA_CONSTANT_50_DB = 29.77370979;

const FIELD_STRENGTH_TRANSMITTER_KEYS = { eirpDbm: true, distanceM: true } satisfies Keys<
  Parameters<typeof fieldStrength>[0]
>;

/**
 * Field strength in dBuV/m of a transmitter in free space.
 *
 * @param transmitter  EIRP in dBm, -50 to 120; distance in metres, 0.1 to 100,000.
 * @throws {@link DomainError} naming the field.
 * Source: E = sqrt(30 P) / d. Accuracy: rounding; walls take some 5 to 20 dB, reflections add up to 6.
 * @example
 * ```ts
 * import { fieldStrength } from 'slantpath/ingress';
 * fieldStrength({ eirpDbm: 23, distanceM: 1 }).toFixed(1); // => '127.8'
 * ```
 */
export function fieldStrength(transmitter: {
  readonly eirpDbm: number;
  readonly distanceM: number;
}): number {
  const given = knownOnly('transmitter', transmitter, FIELD_STRENGTH_TRANSMITTER_KEYS);
  const eirpDbm = inRange('eirpDbm', given.eirpDbm, -50, 120);
  return (
    eirpDbm - 2 * ratioToDb(inRange('distanceM', given.distanceM, 0.1, 1e5)) + FIELD_CONSTANT_DB
  );
}

const LEVEL_IN_FIELD_FIELD_KEYS = {
  fieldDbuvPerM: true,
  frequencyMHz: true,
  gainDbi: true,
  impedanceOhm: true,
} satisfies Keys<Parameters<typeof levelInField>[0]>;

/**
 * Level in dBuV that a matched antenna brings from a field.
 *
 * @param field  Field strength in dBuV/m, -50 to 200; frequency in MHz, above 0; gain in dBi, -50 to 60; impedance 75 (default) or 50 ohm.
 * @throws {@link DomainError} naming the field.
 * Source: effective area of a matched antenna. Accuracy: rounding only.
 * @example
 * ```ts
 * import { levelInField } from 'slantpath/ingress';
 * const field = { fieldDbuvPerM: 120, frequencyMHz: 847, gainDbi: 2.15 };
 * levelInField(field).toFixed(1); // => '95.1'
 * ```
 */
export function levelInField(field: {
  readonly fieldDbuvPerM: number;
  readonly frequencyMHz: number;
  readonly gainDbi: number;
  readonly impedanceOhm?: 75 | 50;
}): number {
  const given = knownOnly('field', field, LEVEL_IN_FIELD_FIELD_KEYS);
  const strength = inRange('fieldDbuvPerM', given.fieldDbuvPerM, -50, 200);
  const frequency = positive('frequencyMHz', given.frequencyMHz);
  const gain = inRange('gainDbi', given.gainDbi, -50, 60);
  const constant = given.impedanceOhm === 50 ? ANTENNA_CONSTANT_50_DB : ANTENNA_CONSTANT_75_DB;
  return strength + gain - 2 * ratioToDb(frequency) + constant;
}

/** Screening class of a cable. */
export type ScreeningClass = 'A++' | 'A+' | 'A' | 'B' | 'C';

type Attenuations = readonly [to1000MHzDb: number, to2000MHzDb: number, to3000MHzDb: number];

/** Least screening in dB from 30, from 1000 and from 2000 MHz. */
const SCREENING: Readonly<Record<ScreeningClass, Attenuations>> = {
  'A++': [105, 95, 85],
  'A+': [95, 85, 75],
  A: [85, 75, 65],
  B: [75, 65, 55],
  C: [75, 65, 55],
};

const SCREENING_ATTENUATION_CABLE_KEYS = {
  screeningClass: true,
  frequencyMHz: true,
} satisfies Keys<Parameters<typeof screeningAttenuation>[0]>;

/**
 * Least screening in dB of a cable class at a frequency.
 *
 * @param cable  Class; frequency in MHz, 30 to 3000.
 * @throws {@link DomainError} naming the field.
 * Source: classes of EN 50117 as reprinted in the trade (the standard is not open and was not read; A++ above 1000 MHz from memory). Accuracy: of
 * new cable in a test tube: connectors and bends usually leak more than the cable.
 * @example
 * ```ts
 * import { screeningAttenuation } from 'slantpath/ingress';
 * screeningAttenuation({ screeningClass: 'A', frequencyMHz: 847 }); // => 85
 * ```
 */
export function screeningAttenuation(cable: {
  readonly screeningClass: ScreeningClass;
  readonly frequencyMHz: number;
}): number {
  const given = known('cable', cable, SCREENING_ATTENUATION_CABLE_KEYS);
  const row =
    SCREENING[oneOf('screeningClass', given.screeningClass, ['A++', 'A+', 'A', 'B', 'C'])];
  const frequency = inRange('frequencyMHz', given.frequencyMHz, 30, 3000);
  return frequency <= 1000 ? row[0] : frequency <= 2000 ? row[1] : row[2];
}

/** What leaks in. */
export interface Ingress {
  /** Field strength at the cable in dBuV/m. */
  readonly fieldDbuvPerM: number;
  /** Level that leaks in, in dBuV. */
  readonly ingressDbuv: number;
  /** Wanted level less what leaks in, in dB; absent where no wanted level is given. */
  readonly wantedAboveIngressDb?: number;
}

const INGRESS_LEVEL_PLACE_KEYS = {
  eirpDbm: true,
  distanceM: true,
  frequencyMHz: true,
  screeningClass: true,
  wantedDbuv: true,
} satisfies Keys<Parameters<typeof ingressLevel>[0]>;

/**
 * Level that leaks into a screened cable near a transmitter: what a half-wave dipole would take from the field, less the screening.
 *
 * @param place  EIRP in dBm and distance in metres of the transmitter; frequency in MHz, 30 to 3000; class of the cable; wanted level in dBuV.
 * @throws {@link DomainError} naming the field.
 * Source: a convention of the trade; the test of the classes measures a ratio of powers in a tube. Accuracy: 10 dB and more either way, with the run
 * and the bonding of the cable.
 * @example
 * ```ts
 * import { ingressLevel } from 'slantpath/ingress';
 * const phone = { eirpDbm: 24, distanceM: 3, frequencyMHz: 1890, screeningClass: 'A' } as const;
 * ingressLevel(phone).ingressDbuv.toFixed(1); // => '12.4'
 * ```
 */
export function ingressLevel(place: {
  readonly eirpDbm: number;
  readonly distanceM: number;
  readonly frequencyMHz: number;
  readonly screeningClass: ScreeningClass;
  readonly wantedDbuv?: number;
}): Ingress {
  const given = known('place', place, INGRESS_LEVEL_PLACE_KEYS);
  const fieldDbuvPerM = fieldStrength({ eirpDbm: given.eirpDbm, distanceM: given.distanceM });
  const screeningDb = screeningAttenuation({
    screeningClass: given.screeningClass,
    frequencyMHz: given.frequencyMHz,
  });
  const dipoleDbuv = levelInField({
    fieldDbuvPerM,
    frequencyMHz: given.frequencyMHz,
    gainDbi: 2.15,
  });
  const ingressDbuv = dipoleDbuv - screeningDb;
  if (given.wantedDbuv === undefined) return { fieldDbuvPerM, ingressDbuv };
  const wanted = inRange('wantedDbuv', given.wantedDbuv, -50, 150);
  return { fieldDbuvPerM, ingressDbuv, wantedAboveIngressDb: wanted - ingressDbuv };
}

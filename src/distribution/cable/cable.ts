/** Loss of coaxial cable: skin effect grows with the root of the frequency, the dielectric in proportion. */

import { finite, inRange, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';

/** A type of coaxial cable. */
export interface CableType {
  /** Name as on the reel or the drawing. */
  readonly name?: string;
  /** Loss by skin effect in dB per 100 m at 1000 MHz and 20 degrees Celsius, 0 or more. */
  readonly skinLossDbPer100m: number;
  /** Loss in the dielectric in dB per 100 m at 1000 MHz and 20 degrees Celsius; 0 by default. */
  readonly dielectricLossDbPer100m?: number;
  /** Direct current resistance there and back (centre and screen) in ohms per 100 m; needed for the supply only. */
  readonly loopResistanceOhmPer100m?: number;
  /** Growth of the loss in percent per kelvin above 20 degrees Celsius; 0.2 by default (practice of the trade). */
  readonly temperaturePercentPerK?: number;
}

const CABLE_TYPE_KEYS = {
  name: true,
  skinLossDbPer100m: true,
  dielectricLossDbPer100m: true,
  loopResistanceOhmPer100m: true,
  temperaturePercentPerK: true,
} satisfies Keys<CableType>;

/** A length of cable at a frequency. */
export interface CableRun {
  /** The cable. */
  readonly cable: CableType;
  /** Length in metres, 0 to 10000. */
  readonly lengthM: number;
  /** Frequency in MHz, above 0. */
  readonly frequencyMHz: number;
  /** Temperature of the cable in degrees Celsius, -60 to 100; 20 by default. */
  readonly temperatureC?: number;
}

const CABLE_RUN_KEYS = {
  cable: true,
  lengthM: true,
  frequencyMHz: true,
  temperatureC: true,
} satisfies Keys<CableRun>;

/** Guards a cable type once, so that a tree can evaluate it at many frequencies. */
export function checkedCable(
  parameter: string,
  cable: CableType,
): Required<Omit<CableType, 'name'>> {
  known(parameter, cable, CABLE_TYPE_KEYS);
  return {
    skinLossDbPer100m: inRange(`${parameter}.skinLossDbPer100m`, cable.skinLossDbPer100m, 0, 1000),
    dielectricLossDbPer100m: inRange(
      `${parameter}.dielectricLossDbPer100m`,
      cable.dielectricLossDbPer100m ?? 0,
      -10,
      1000,
    ),
    loopResistanceOhmPer100m: inRange(
      `${parameter}.loopResistanceOhmPer100m`,
      cable.loopResistanceOhmPer100m ?? 0,
      0,
      10000,
      'is it given per kilometre?',
    ),
    temperaturePercentPerK: inRange(
      `${parameter}.temperaturePercentPerK`,
      cable.temperaturePercentPerK ?? 0.2,
      0,
      2,
    ),
  };
}

/** Loss of a guarded cable. */
export function runLossDb(
  cable: Required<Omit<CableType, 'name'>>,
  lengthM: number,
  frequencyMHz: number,
  temperatureC: number,
): number {
  const frequencyGHz = frequencyMHz / 1000;
  const at20 =
    cable.skinLossDbPer100m * Math.sqrt(frequencyGHz) +
    cable.dielectricLossDbPer100m * frequencyGHz;
  const warmer = 1 + (cable.temperaturePercentPerK / 100) * (temperatureC - 20);
  return (Math.max(0, at20 * warmer) * lengthM) / 100;
}

/**
 * Loss of a run of coaxial cable, positive and to be subtracted.
 *
 * Per 100 m: s sqrt(f) + d f with f in GHz, times 1 + 0.002 (T - 20).
 *
 * @throws {@link DomainError} naming the field; a frequency below 5 MHz is taken for GHz typed in its place.
 * Source: skin effect and dielectric loss of a coaxial line; temperature by practice of the trade
 * (0.2 percent per kelvin).
 * Accuracy: that of the two coefficients, see {@link cableFit}.
 * @example
 * ```ts
 * import { cableLossDb, genericCable } from 'slantpath/distribution';
 * const cable = genericCable('series-6');
 * cableLossDb({ cable, lengthM: 30, frequencyMHz: 2150 }).toFixed(1); // => '9.6'
 * ```
 */
export function cableLossDb(run: CableRun): number {
  knownOnly('run', run, CABLE_RUN_KEYS);
  const cable = checkedCable('cable', run.cable);
  const lengthM = inRange('lengthM', run.lengthM, 0, 10_000);
  const frequencyMHz = checkedFrequencyMHz('frequencyMHz', run.frequencyMHz);
  const temperatureC = checkedTemperatureC(run.temperatureC);
  return runLossDb(cable, lengthM, frequencyMHz, temperatureC);
}

/** A frequency in a cable, 5 to 10000 MHz. */
export function checkedFrequencyMHz(parameter: string, value: number, index?: number): number {
  const number = positive(parameter, value, undefined, index);
  const slip =
    number < 5
      ? 'is it given in GHz?'
      : number > 10000
        ? 'is it the radio frequency instead of the intermediate frequency?'
        : undefined;
  return inRange(parameter, number, 5, 10000, slip, index);
}

/** Temperature of the surroundings, 20 by default. */
export function checkedTemperatureC(value: number | undefined): number {
  return inRange('temperatureC', finite('temperatureC', value ?? 20), -60, 100);
}

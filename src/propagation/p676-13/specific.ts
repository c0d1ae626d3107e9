/** Recommendation ITU-R P.676-13 (08/2022), Annex 1, section 1: specific attenuation of gases, line by line. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { checkedFrequencyGHz, namesOutside } from '../inputs.js';
import { EDITION } from './edition.js';
import { emptyLineState, setOxygen, setVapour } from './lineState.js';
import { dryContinuum, frequencyTerms, oxygenSum, vapourSum } from './lineSum.js';

/** State of moist air at a place. */
export interface AirState {
  /** Pressure of the dry air in hPa: the barometer's total less the vapour pressure. */
  readonly dryPressureHpa: number;
  /** Temperature in kelvin. */
  readonly temperatureK: number;
  /** Water vapour density in g/m3. */
  readonly waterVapourDensityGPerM3: number;
}

/** Input of {@link specificGasAttenuation}. */
export interface SpecificGasAttenuationInput extends AirState {
  /** Frequency in GHz; stated range 1 to 1000. */
  readonly frequencyGHz: number;
}

const SPECIFIC_GAS_ATTENUATION_INPUT_KEYS = {
  frequencyGHz: true,
  dryPressureHpa: true,
  temperatureK: true,
  waterVapourDensityGPerM3: true,
} satisfies Keys<SpecificGasAttenuationInput>;

/** Specific attenuation of gases with its two parts. */
export interface SpecificGasAttenuation {
  /** Edition computed. */
  readonly edition: 'P.676-13';
  /** Pressure of the water vapour in hPa: density times temperature over 216.7. */
  readonly waterVapourPressureHpa: number;
  /** Oxygen and the dry continuum, dB/km. */
  readonly oxygenDbPerKm: number;
  /** Water vapour, dB/km. */
  readonly waterVapourDbPerKm: number;
  /** Sum of both, dB/km. */
  readonly specificAttenuationDbPerKm: number;
  /** Names of inputs outside the stated range (1 to 1000 GHz). */
  readonly outsideStatedRange: readonly string[];
}

/** Vapour pressure in hPa of a density in g/m3. */
export function waterVapourPressureHpa(densityGPerM3: number, temperatureK: number): number {
  return (densityGPerM3 * temperatureK) / 216.7;
}

/** Temperature of air in kelvin. */
export function checkedAirTemperatureK(value: number, parameter = 'temperatureK'): number {
  return inRange(parameter, value, 100, 400, 'was it given in degrees Celsius?');
}

/** Water vapour density in g/m3. */
export function checkedVapourDensity(
  value: number,
  parameter = 'waterVapourDensityGPerM3',
): number {
  return inRange(parameter, value, 0, 100, 'was it given in kg/m3 or per cent?');
}

/** Pressure in hPa. */
export function checkedPressureHpa(parameter: string, value: number): number {
  return inRange(parameter, value, 1e-6, 1200, 'was it given in pascal?');
}

/**
 * Specific attenuation of air: how many decibels each kilometre takes by oxygen and by water vapour.
 *
 * gamma = 0.1820 f N'', with N'' the sum over 44 oxygen lines, 35 water vapour lines and the dry continuum.
 * The pressure is that of the dry air alone.
 *
 * @param input  Frequency in GHz and the state of the air.
 * @returns Specific attenuation in dB/km, positive as a loss, with both parts.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.676-13, Annex 1, equations (1) to (9), Tables 1 and 2.
 * Accuracy: 1e-13 relative against the ITU-R validation examples from 1 to 349 GHz.
 * @example
 * ```ts
 * import { specificGasAttenuation } from 'slantpath/propagation';
 * const air = specificGasAttenuation({
 *   frequencyGHz: 12,
 *   dryPressureHpa: 1013.25,
 *   temperatureK: 288.15,
 *   waterVapourDensityGPerM3: 7.5,
 * });
 * air.specificAttenuationDbPerKm.toFixed(5); // => '0.01823'
 * ```
 */
export function specificGasAttenuation(input: SpecificGasAttenuationInput): SpecificGasAttenuation {
  known('input', input, SPECIFIC_GAS_ATTENUATION_INPUT_KEYS);
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const p = checkedPressureHpa('dryPressureHpa', input.dryPressureHpa);
  const temperatureK = checkedAirTemperatureK(input.temperatureK);
  const density = checkedVapourDensity(input.waterVapourDensityGPerM3);
  const e = waterVapourPressureHpa(density, temperatureK);
  const theta = 300 / temperatureK;
  const lines = emptyLineState(1);
  setOxygen(lines, 0, p, e, theta);
  setVapour(lines, 0, p, e, theta);
  const terms = frequencyTerms(frequencyGHz);
  const oxygen = oxygenSum(lines, 0, terms.oxygen) + dryContinuum(frequencyGHz, p, e, theta);
  const scale = 0.182 * frequencyGHz * frequencyGHz;
  const oxygenDbPerKm = scale * oxygen;
  const waterVapourDbPerKm = scale * vapourSum(lines, 0, terms.vapour);
  return {
    edition: EDITION,
    waterVapourPressureHpa: e,
    oxygenDbPerKm,
    waterVapourDbPerKm,
    specificAttenuationDbPerKm: oxygenDbPerKm + waterVapourDbPerKm,
    outsideStatedRange: namesOutside(['frequencyGHz', frequencyGHz, 1, 1000]),
  };
}

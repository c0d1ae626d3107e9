/** Recommendation ITU-R P.840-9 (08/2023): attenuation by clouds and fog. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { sinDeg } from '../../numeric/angle.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';
import {
  checkedFrequencyGHz,
  checkedPercent,
  checkedRaisedElevationDeg,
  namesOutside,
} from '../inputs.js';
import { EDITION } from './edition.js';
import { waterPermittivity } from './waterPermittivity.js';

/** Temperature of cloud water to which the slant-path coefficient belongs, kelvin. */
const CLOUD_TEMPERATURE_K = 273.75;

/** K_l from checked values: Rayleigh absorption with a double-Debye dielectric; equations (2) to (11). */
function specificCoefficient(f: number, temperatureK: number): number {
  const { real, imaginary } = waterPermittivity(f, temperatureK);
  const eta = (2 + real) / imaginary;
  return (0.819 * f) / (imaginary * (1 + eta * eta));
}

/**
 * K_L of the slant path, dB per kg/m2: K_l at 273.75 K times a factor fitted in frequency; equation (12). The fit is made for
 * up to 200 GHz; from about 725 GHz it would turn negative and is held at 0.
 */
function pathCoefficient(f: number): number {
  const factor =
    0.1522 * Math.exp(-((f + 23.9589) ** 2) / 3.2991e3) +
    11.51 * Math.exp(-((f - 219.2096) ** 2) / 2.7595e6) -
    10.4912;
  return specificCoefficient(f, CLOUD_TEMPERATURE_K) * Math.max(0, factor);
}

const CLOUD_WATER_KEYS = { frequencyGHz: true, temperatureK: true } as const;

/**
 * Specific attenuation coefficient of cloud water or fog in dB/km for each g/m3 of liquid water.
 *
 * @param water  `frequencyGHz`, stated up to 200; `temperatureK`, of the water, 233 to 323.
 * @throws {@link DomainError} naming `frequencyGHz` or `temperatureK`.
 *
 * Source: Recommendation ITU-R P.840-9, Annex 1, section 2, equations (2) to (11).
 * @example
 * ```ts
 * import { cloudSpecificCoefficient } from 'slantpath/propagation';
 * cloudSpecificCoefficient({ frequencyGHz: 20, temperatureK: 273.15 }).toFixed(4); // => '0.3593'
 * ```
 */
export function cloudSpecificCoefficient(water: {
  readonly frequencyGHz: number;
  readonly temperatureK: number;
}): number {
  const { frequencyGHz, temperatureK } = knownOnly('input', water, CLOUD_WATER_KEYS);
  return specificCoefficient(
    checkedFrequencyGHz(frequencyGHz),
    inRange('temperatureK', temperatureK, 233, 323, 'was it given in degrees Celsius?'),
  );
}

/** Attenuation by clouds with its terms. */
export interface CloudAttenuation {
  /** Edition computed. */
  readonly edition: 'P.840-9';
  /** Cloud liquid mass absorption coefficient, dB for each kg/m2. */
  readonly coefficientDbPerKgPerM2: number;
  /** Liquid water above the station, kg/m2. */
  readonly liquidWaterKgPerM2: number;
  /** Attenuation along the slant path, dB, 0 or more. */
  readonly attenuationDb: number;
  /** Names of inputs outside the stated range (1 to 200 GHz). */
  readonly outsideStatedRange: readonly string[];
}

const CLOUD_ATTENUATION_INPUT_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  liquidWaterKgPerM2: true,
} satisfies Keys<Parameters<typeof cloudAttenuation>[0]>;

/**
 * Attenuation by clouds along a slant path with a known amount of liquid water above the station.
 *
 * @param input  Frequency in GHz, elevation in degrees, 0.1 to 90, liquid water in kg/m2 (millimetres of water) for the
 *   percentage of time of interest.
 * @returns Attenuation in dB (positive is a loss) with its terms.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.840-9, Annex 1, sections 3.1 and 3.2.
 * Accuracy: the printed digits of the ITU-R validation examples.
 * @example
 * ```ts
 * import { cloudAttenuation } from 'slantpath/propagation';
 * const cloud = cloudAttenuation({ frequencyGHz: 20, elevationDeg: 36, liquidWaterKgPerM2: 0.6 });
 * cloud.attenuationDb.toFixed(3); // => '0.338'
 * ```
 */
export function cloudAttenuation(input: {
  readonly frequencyGHz: number;
  readonly elevationDeg: number;
  readonly liquidWaterKgPerM2: number;
}): CloudAttenuation {
  knownOnly('input', input, CLOUD_ATTENUATION_INPUT_KEYS);
  const f = checkedFrequencyGHz(input.frequencyGHz);
  const elevationDeg = checkedRaisedElevationDeg(input.elevationDeg);
  const liquid = inRange('liquidWaterKgPerM2', input.liquidWaterKgPerM2, 0, 100);
  const coefficient = pathCoefficient(f);
  return {
    edition: EDITION,
    coefficientDbPerKgPerM2: coefficient,
    liquidWaterKgPerM2: liquid,
    attenuationDb: (coefficient * liquid) / sinDeg(elevationDeg),
    outsideStatedRange: namesOutside(['frequencyGHz', f, 1, 200]),
  };
}

const CLOUD_ATTENUATION_LOGNORMAL_INPUT_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  exceededPercent: true,
  logMean: true,
  logDeviation: true,
  cloudProbabilityPercent: true,
} satisfies Keys<Parameters<typeof cloudAttenuationLognormal>[0]>;

/**
 * Attenuation by clouds exceeded for a percentage of time, from the lognormal spread of liquid water at a place.
 *
 * @param input  Frequency, elevation, percentage of time, and the place's mean and standard deviation of the natural
 *   logarithm of liquid water in kg/m2 with the probability of cloud in percent.
 * @returns Attenuation in dB; 0 where clouds come more rarely than the percentage or hardly at all (0.02 %).
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.840-9, Annex 1, section 3.3.
 * Accuracy: the printed digits of the ITU-R validation examples.
 * @example
 * ```ts
 * import { cloudAttenuationLognormal } from 'slantpath/propagation';
 * const cloud = cloudAttenuationLognormal({
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   exceededPercent: 5,
 *   logMean: -2,
 *   logDeviation: 1,
 *   cloudProbabilityPercent: 40,
 * });
 * cloud.attenuationDb.toFixed(3); // => '0.241'
 * ```
 */
export function cloudAttenuationLognormal(input: {
  readonly frequencyGHz: number;
  readonly elevationDeg: number;
  readonly exceededPercent: number;
  readonly logMean: number;
  readonly logDeviation: number;
  readonly cloudProbabilityPercent: number;
}): CloudAttenuation {
  knownOnly('input', input, CLOUD_ATTENUATION_LOGNORMAL_INPUT_KEYS);
  const percent = checkedPercent(input.exceededPercent);
  const mean = inRange('logMean', input.logMean, -50, 5);
  const deviation = inRange('logDeviation', input.logDeviation, 0, 10);
  const cloud = inRange(
    'cloudProbabilityPercent',
    input.cloudProbabilityPercent,
    0,
    100,
    'is it in percent?',
  );
  const liquidWaterKgPerM2 =
    cloud <= 0.02 || percent >= cloud
      ? 0
      : Math.min(100, Math.exp(mean + deviation * normalExceedanceQuantile(percent / cloud)));
  return cloudAttenuation({
    frequencyGHz: input.frequencyGHz,
    elevationDeg: input.elevationDeg,
    liquidWaterKgPerM2,
  });
}

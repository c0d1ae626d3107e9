/** Recommendation ITU-R P.618-14, section 2.2.1.3: rain attenuation from one frequency or polarization to another. */

import { finite } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { checkedFrequencyGHz, namesOutside } from '../inputs.js';
import { EDITION } from './edition.js';
import { type RainPath, rainAttenuation } from './rain.js';
import { checkedPart } from './total.js';

/** Rain attenuation carried to another frequency. */
export interface ScaledRainAttenuation {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Exponent H of the scaling. */
  readonly exponentRatio: number;
  /** Attenuation at the second frequency for the same percentage of time, dB. */
  readonly attenuationDb: number;
  /** Names of inputs outside the stated range (7 to 55 GHz). */
  readonly outsideStatedRange: readonly string[];
}

const FREQUENCY_SCALED_RAIN_INPUT_KEYS = {
  attenuationDb: true,
  fromGHz: true,
  toGHz: true,
} satisfies Keys<Parameters<typeof frequencyScaledRain>[0]>;

/**
 * Rain attenuation measured at one frequency, carried to another on the same path and for the same
 * percentage of time.
 *
 * A2 = A1 (q2 / q1)^(1 - H), with q = f^2 / (1 + 1e-4 f^2) and H = 1.12e-3 (q2 / q1)^0.5 (q1 A1)^0.55.
 *
 * @param input  Attenuation in dB at the first frequency; both frequencies in GHz.
 * @returns Attenuation in dB at the second frequency.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.1.3.1.
 * @example
 * ```ts
 * import { frequencyScaledRain } from 'slantpath/propagation';
 * frequencyScaledRain({ attenuationDb: 5, fromGHz: 12, toGHz: 20 }).attenuationDb.toFixed(2); // => '12.66'
 * ```
 */
export function frequencyScaledRain(input: {
  readonly attenuationDb: number;
  readonly fromGHz: number;
  readonly toGHz: number;
}): ScaledRainAttenuation {
  knownOnly('input', input, FREQUENCY_SCALED_RAIN_INPUT_KEYS);
  const attenuationDb = checkedPart('attenuationDb', input.attenuationDb);
  const fromGHz = checkedFrequencyGHz(input.fromGHz, undefined, 'fromGHz');
  const toGHz = checkedFrequencyGHz(input.toGHz, undefined, 'toGHz');
  const from = fromGHz ** 2 / (1 + 1e-4 * fromGHz ** 2);
  const to = toGHz ** 2 / (1 + 1e-4 * toGHz ** 2);
  const exponentRatio = 1.12e-3 * Math.sqrt(to / from) * (from * attenuationDb) ** 0.55;
  return {
    edition: EDITION,
    exponentRatio,
    attenuationDb: attenuationDb * (to / from) ** (1 - exponentRatio),
    outsideStatedRange: namesOutside(['fromGHz', fromGHz, 7, 55], ['toGHz', toGHz, 7, 55]),
  };
}

/** Rain attenuation carried to another polarization. */
export interface PolarizationScaledRain {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Predicted attenuation of the second polarization over that of the first. */
  readonly ratio: number;
  /** Attenuation of the second polarization for the same percentage of time, dB. */
  readonly attenuationDb: number;
}

const POLARIZATION_SCALED_RAIN_INPUT_KEYS = {
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  exceededPercent: true,
  attenuationDb: true,
  toTiltDeg: true,
} satisfies Keys<Parameters<typeof polarizationScaledRain>[0]>;

/**
 * Rain attenuation measured on one polarization, carried to another: multiplied by the ratio of the two predictions
 * of section 2.2.1.1, the general tool that the recommendation names for scaling.
 *
 * @param input  The path with the tilt of the measurement, the percentage of time, the attenuation measured, and the
 *   tilt asked for in degrees.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.1.3.
 * @example
 * ```ts
 * import { polarizationScaledRain } from 'slantpath/propagation';
 * const vertical = polarizationScaledRain({
 *   latitudeDeg: 46.4,
 *   heightM: 400,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 12,
 *   elevationDeg: 36,
 *   tiltDeg: 0,
 *   exceededPercent: 0.01,
 *   attenuationDb: 8,
 *   toTiltDeg: 90,
 * });
 * vertical.attenuationDb.toFixed(2); // => '7.40'
 * ```
 */
export function polarizationScaledRain(
  input: RainPath & {
    readonly exceededPercent: number;
    readonly attenuationDb: number;
    readonly toTiltDeg: number;
  },
): PolarizationScaledRain {
  knownOnly('input', input, POLARIZATION_SCALED_RAIN_INPUT_KEYS);
  const measuredDb = checkedPart('attenuationDb', input.attenuationDb);
  const toTiltDeg = finite('toTiltDeg', input.toTiltDeg);
  const from = rainAttenuation(input).attenuationDb;
  const to = rainAttenuation({ ...input, tiltDeg: toTiltDeg }).attenuationDb;
  const ratio = from > 0 ? to / from : 1;
  return { edition: EDITION, ratio, attenuationDb: measuredDb * ratio };
}

/** Recommendation ITU-R P.838-3 (03/2005): specific attenuation of rain. */

import { finite } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { cosDeg } from '../../numeric/angle.js';
import {
  checkedElevationDeg,
  checkedFrequencyGHz,
  checkedRainRate,
  namesOutside,
} from '../inputs.js';
import { type RainCoefficients, rainCoefficients } from './coefficients.js';
import { EDITION } from './edition.js';

/** Input of {@link specificRainAttenuation}. */
export interface SpecificRainAttenuationInput {
  /** Radio frequency in GHz; stated range 1 to 1000. */
  readonly frequencyGHz: number;
  /** Elevation of the path in degrees, 0 to 90. */
  readonly elevationDeg: number;
  /** Polarization tilt against the horizontal in degrees: 0 horizontal, 90 vertical, 45 for circular. */
  readonly tiltDeg: number;
  /** Rain rate in mm/h, 0 or more. */
  readonly rainRateMmPerH: number;
}

const SPECIFIC_RAIN_ATTENUATION_INPUT_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  rainRateMmPerH: true,
} satisfies Keys<SpecificRainAttenuationInput>;

/** Specific attenuation of rain with its terms. */
export interface SpecificRainAttenuation {
  /** Edition computed. */
  readonly edition: 'P.838-3';
  /** Coefficients of the two linear polarizations at this frequency. */
  readonly coefficients: RainCoefficients;
  /** k for this path and polarization, dB/km at 1 mm/h. */
  readonly k: number;
  /** Exponent alpha for this path and polarization. */
  readonly alpha: number;
  /** Specific attenuation k R^alpha in dB/km, 0 or more. */
  readonly specificAttenuationDbPerKm: number;
  /** Names of inputs outside the stated range (1 to 1000 GHz). */
  readonly outsideStatedRange: readonly string[];
}

/** k of a path; `mix` is cos^2(elevation) cos(2 tilt). Equation (4). */
export function mixedK(c: RainCoefficients, mix: number): number {
  return (c.kHorizontal + c.kVertical + (c.kHorizontal - c.kVertical) * mix) / 2;
}

/** alpha of a path of which `k` is known. Equation (5). */
export function mixedAlpha(c: RainCoefficients, mix: number, k: number): number {
  const horizontal = c.kHorizontal * c.alphaHorizontal;
  const vertical = c.kVertical * c.alphaVertical;
  return (horizontal + vertical + (horizontal - vertical) * mix) / (2 * k);
}

/** k R^alpha in dB/km; 0 without rain. Equation (1). */
export function powerLaw(k: number, alpha: number, rainRateMmPerH: number): number {
  return k * Math.exp(alpha * Math.log(rainRateMmPerH));
}

/**
 * Specific attenuation of rain on a path: how many decibels each kilometre of rain takes.
 *
 * gamma = k R^alpha, with k and alpha mixed from the two linear polarizations by elevation and tilt.
 *
 * @param input  Frequency in GHz, elevation and polarization tilt in degrees, rain rate in mm/h.
 * @returns Specific attenuation in dB/km, positive as a loss, with k and alpha.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.838-3, equations (1) to (5), Tables 1 to 4.
 * Accuracy: the printed digits of the ITU-R validation examples (9 significant digits).
 * @example
 * ```ts
 * import { specificRainAttenuation } from 'slantpath/propagation';
 * const rain = specificRainAttenuation({
 *   frequencyGHz: 14.25,
 *   elevationDeg: 31.07699124,
 *   tiltDeg: 0,
 *   rainRateMmPerH: 26.48052,
 * });
 * rain.specificAttenuationDbPerKm.toFixed(4); // => '1.5813'
 * ```
 */
export function specificRainAttenuation(
  input: SpecificRainAttenuationInput,
): SpecificRainAttenuation {
  known('input', input, SPECIFIC_RAIN_ATTENUATION_INPUT_KEYS);
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const elevationDeg = checkedElevationDeg(input.elevationDeg);
  const tiltDeg = finite('tiltDeg', input.tiltDeg);
  const rainRateMmPerH = checkedRainRate('rainRateMmPerH', input.rainRateMmPerH);
  const coefficients = rainCoefficients(frequencyGHz);
  const mix = cosDeg(elevationDeg) ** 2 * cosDeg(2 * tiltDeg);
  const k = mixedK(coefficients, mix);
  const alpha = mixedAlpha(coefficients, mix, k);
  return {
    edition: EDITION,
    coefficients,
    k,
    alpha,
    specificAttenuationDbPerKm: powerLaw(k, alpha, rainRateMmPerH),
    outsideStatedRange: namesOutside(['frequencyGHz', frequencyGHz, 1, 1000]),
  };
}

/** Recommendation ITU-R P.618-14, section 3: noise that the atmosphere radiates into an antenna. */

import { COSMIC_BACKGROUND_K } from '../../constants.js';
import { inRange } from '../../errors.js';
import { dbToRatio } from '../../numeric/decibel.js';
import { EDITION } from './edition.js';
import { checkedPart } from './total.js';

/** Sky noise with its terms. */
export interface SkyNoise {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Mean radiating temperature of the medium, kelvin. */
  readonly meanRadiatingTemperatureK: number;
  /** What the medium radiates, kelvin. */
  readonly mediumNoiseK: number;
  /** What is left of the cosmic background, kelvin. */
  readonly backgroundNoiseK: number;
  /** Sky noise temperature at the antenna, kelvin. */
  readonly skyNoiseK: number;
}

/** Mean radiating temperature where no local data are at hand, kelvin. */
const DEFAULT_RADIATING_K = 275;

/**
 * Mean radiating temperature of clear and cloudy air in kelvin: 37.34 + 0.81 times the surface temperature.
 *
 * @param surfaceTemperatureK  Surface temperature in kelvin, 150 to 350.
 * @throws {@link DomainError} naming `surfaceTemperatureK`.
 *
 * Source: Recommendation ITU-R P.618-14, section 3, equation (68).
 * @example
 * ```ts
 * import { meanRadiatingTemperature } from 'slantpath/propagation';
 * meanRadiatingTemperature(288.15).toFixed(2); // => '270.74'
 * ```
 */
export function meanRadiatingTemperature(surfaceTemperatureK: number): number {
  return (
    37.34 +
    0.81 *
      inRange(
        'surfaceTemperatureK',
        surfaceTemperatureK,
        150,
        350,
        'was it given in degrees Celsius?',
      )
  );
}

/**
 * Sky noise temperature behind an attenuation: the medium radiates what it absorbs and dims the background.
 *
 * @param attenuationDb  Total attenuation without scintillation in dB, 0 or more.
 * @param meanRadiatingTemperatureK  Mean radiating temperature in kelvin; 275 where not given.
 * @returns Noise temperature in kelvin with its terms.
 * @throws {@link DomainError} naming `attenuationDb` or `meanRadiatingTemperatureK`.
 *
 * Source: Recommendation ITU-R P.618-14, section 3, equations (69) and (70).
 * @example
 * ```ts
 * import { skyNoise } from 'slantpath/propagation';
 * skyNoise(3).skyNoiseK.toFixed(2); // => '138.53'
 * ```
 */
export function skyNoise(
  attenuationDb: number,
  meanRadiatingTemperatureK: number = DEFAULT_RADIATING_K,
): SkyNoise {
  const through = dbToRatio(-checkedPart('attenuationDb', attenuationDb));
  const medium = inRange('meanRadiatingTemperatureK', meanRadiatingTemperatureK, 100, 350);
  const mediumNoiseK = medium * (1 - through);
  const backgroundNoiseK = COSMIC_BACKGROUND_K * through;
  return {
    edition: EDITION,
    meanRadiatingTemperatureK: medium,
    mediumNoiseK,
    backgroundNoiseK,
    skyNoiseK: mediumNoiseK + backgroundNoiseK,
  };
}

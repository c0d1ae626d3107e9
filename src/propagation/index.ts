/**
 * The Earth-space path by the recommendations of the ITU-R, one file each, the edition in every result.
 *
 * @module propagation
 */

export {
  type RainAttenuation,
  type RainAttenuationInput,
  type RainPath,
  rainAttenuation,
} from './p618-14-rain.js';
export {
  type MonthlyNormals,
  type RainMonth,
  type RainProbability,
  type RainRate,
  rainProbability,
  rainRate,
} from './p837.js';
export {
  type SpecificRainAttenuation,
  type SpecificRainAttenuationInput,
  specificRainAttenuation,
} from './p838-3.js';
export type { RainCoefficients } from './p838-3-coefficients.js';
export { type RainHeight, rainHeight } from './p839.js';

/**
 * The Earth-space path by the recommendations of the ITU-R, one file each, the edition in every result.
 *
 * @module propagation
 */

export {
  medianWetRefractivity,
  type WetRefractivity,
  wetRefractivity,
} from './p453.js';
export {
  type RainAttenuation,
  type RainAttenuationInput,
  type RainPath,
  rainAttenuation,
} from './p618-14-rain.js';
export { type YearToYear, yearToYear } from './p678.js';
export {
  type WaterVapour,
  type WaterVapourInput,
  type WaterVapourMaps,
  waterVapour,
} from './p836.js';
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
export {
  type CloudLiquid,
  type CloudLiquidInput,
  type CloudLognormal,
  cloudLiquid,
  cloudLiquidLognormal,
} from './p840-liquid.js';
export { type GlobalMap, type MapPlace, mapValue, mapValueBicubic } from './p1144.js';
export { meanTemperature } from './p1510.js';
export { groundAltitude } from './p1511.js';

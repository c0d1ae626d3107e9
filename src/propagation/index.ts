/**
 * The Earth-space path by the recommendations of the ITU-R, one file each, the edition in every result.
 *
 * @module propagation
 */

export {
  type MonthlyNormals,
  type RainMonth,
  type RainProbability,
  type RainRate,
  rainProbability,
  rainRate,
} from './p837.js';
export { type RainHeight, rainHeight } from './p839.js';

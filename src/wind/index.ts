/**
 * Wind: pressure, load on a reflector, ballast, and what a bending mast costs in pointing. Loads, never a verdict of safety.
 *
 * @module wind
 */

export {
  type MastUnderWind,
  mastUnderWind,
  type TubularMast,
  type WindPointingLoss,
  windPointingLoss,
} from './mastUnderWind.js';
export {
  type Ballast,
  ballast,
  type LeftToEngineer,
  type ReflectorLoad,
  reflectorLoad,
} from './reflectorLoad.js';
export {
  type PeakVelocityPressure,
  peakVelocityPressure,
  type TerrainCategory,
  velocityPressure,
} from './velocityPressure.js';
export { windExceededPercent } from './windShare.js';

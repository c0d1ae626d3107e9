/**
 * The Sun as a north reference and as a source of noise.
 *
 * @module sun
 */

export type { Instant } from '../numeric/instant.js';
export { type SolarActivity, type SolarBrightness, solarBrightness } from './brightness.js';
export { type SunNoise, type SunNoiseInput, sunNoise } from './discNoise.js';
export { type SunOutageMoment, sunOutageCourse } from './outageCourse.js';
export type { SunOutageInput } from './outageInput.js';
export { type SolarTime, solarTime } from './solarTime.js';
export { type Air, type SunDirection, sunDirection } from './sunDirection.js';
export { type ShadowInput, type ShadowInstant, shadowInstants } from './sunInPlane.js';
export { type SunOutage, type SunOutages, sunOutages } from './sunOutages.js';
export {
  outageOutcomes,
  type SunOutagesBatchInput,
  type SunOutagesColumns,
  sunOutagesBatch,
} from './sunOutagesBatch.js';

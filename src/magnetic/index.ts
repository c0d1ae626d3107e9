/**
 * Magnetic declination after the World Magnetic Model, true and magnetic bearings.
 *
 * @module magnetic
 */

export type { Instant } from '../numeric/instant.js';
export { magneticToTrueBearing, trueToMagneticBearing } from './bearing.js';
export { instantToDecimalYear } from './decimalYear.js';
export { type CompassZone, type MagneticField, magneticField } from './field.js';
export {
  type DeclinationBatchInput,
  type DeclinationColumns,
  declinationBatch,
} from './fieldBatch.js';

/**
 * Ingress: mobile and cordless radio near the cable, what leaks in, and which carriers it falls on.
 *
 * @module ingress
 */

export {
  type ExposedCarrierInput,
  type Exposure,
  exposedCarriers,
  frequenciesUnderBand,
} from './exposedCarriers.js';
export {
  fieldStrength,
  type Ingress,
  ingressLevel,
  levelInField,
  type ScreeningClass,
  screeningAttenuation,
} from './ingressLevel.js';
export { type TerrestrialBand, terrestrialBands } from './terrestrialBands.js';

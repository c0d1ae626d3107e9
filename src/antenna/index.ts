/**
 * Reflectors: gain, beamwidth, patterns, losses, and the safe distance in front of a transmitting one.
 *
 * @module antenna
 */

export {
  axialRatioFromDiscrimination,
  axialRatioRead,
  discriminationFromAxialRatio,
  type EllipticalPair,
  ellipticalMismatchLoss,
  linearOnEllipticalLoss,
} from './axialRatio.js';
export { type BeamwidthInput, halfPowerBeamwidth } from './beamwidth.js';
export {
  type Depointing,
  type DepointingLoss,
  depointingExceedance,
  depointingLoss,
} from './depointing.js';
export {
  type FieldRegions,
  type PowerDensity,
  powerDensity,
  type SafeDistance,
  safeDistance,
  type Transmitter,
} from './exposure.js';
export {
  type ExposureGroup,
  type ExposureLimit,
  type ExposureLimitInput,
  type ExposureStandard,
  exposureLimit,
} from './exposureLimit.js';
export { type FaradayRotation, faradayRotation } from './faraday.js';
export { farFieldDistance } from './farField.js';
export { type AntennaGain, type AntennaGainInput, antennaGain } from './gain.js';
export {
  type IlluminatedAperture,
  type Illumination,
  illuminatedAperture,
} from './illumination.js';
export { crossPolarGain, patternGain, patternSegments } from './patterns/pattern.js';
export { type PatternPointingLoss, patternPointingLoss } from './patterns/patternLoss.js';
export type { Region } from './patterns/patternShape.js';
export type {
  AntennaPattern,
  Bo1213Pattern,
  PatternGain,
  PatternSegment,
} from './patterns/patternTypes.js';
export { pointingLoss, pointingOffset } from './pointing.js';
export {
  type CrossPolarIsolation,
  crossPolarIsolation,
  type Leakage,
  type PolarizationPurity,
  polarizationMismatchLoss,
} from './polarization.js';
export { surfaceLoss } from './surface.js';

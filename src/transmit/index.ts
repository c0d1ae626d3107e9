/**
 * Transmit: the line-up of a two-way station, what it sends past its satellite, and its polarization test.
 *
 * @module transmit
 */

export { type CommissioningStep, commissioningSteps } from './commissioningSteps.js';
export {
  type CompressionPoint,
  carrierShare,
  compressionBelowSaturation,
  compressionPoint,
  INTERCEPT_ABOVE_COMPRESSION_DB,
  type PowerPair,
  thirdOrderRatio,
} from './compression.js';
export {
  type CrossPolarIsolationRead,
  type CrossPolarReadings,
  crossPolarIsolationRead,
  type LeaksInLine,
  leaksInLine,
} from './crossPolarTest.js';
export {
  type LineUp,
  type LineUpInput,
  lineUp,
  type PowerControlMargin,
  uplinkPowerControl,
} from './lineUp.js';
export {
  type CarrierAtFlange,
  flangeDensity,
  type OffAxisMargin,
  type OffAxisStation,
  offAxisMargin,
  sideLobeRise,
} from './offAxisDensity.js';
export {
  type MaskSegment,
  type OffAxisLimit,
  type OffAxisMask,
  type OffAxisMaskName,
  offAxisLimit,
  offAxisMasks,
} from './offAxisMask.js';

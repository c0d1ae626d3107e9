/**
 * Link budgets: noise, carrier ratios, thresholds, margin, availability, interference, footprints, and the smallest
 * reflector that keeps its promise.
 *
 * @module link
 */

export { type AdaptiveModes, adaptiveModes, type ModeShare } from './adaptive.js';
export {
  type AdjacentChannel,
  adjacentChannel,
  type ChannelShape,
  occupiedBandwidth,
} from './adjacentChannel.js';
export { type AntennaNoise, type AntennaNoiseInput, antennaNoise } from './antennaNoise.js';
export {
  type Availability,
  availabilityForMargin,
  availabilityToExceeded,
  exceededToAvailability,
  type FadeMargin,
  marginForAvailability,
} from './availability.js';
export {
  type AvailabilityBatch,
  type AvailabilityBuffers,
  type AvailabilityColumns,
  availabilityBatch,
} from './availabilityBatch.js';
export {
  type CarrierRatios,
  type CarrierShape,
  carrierRatios,
  type KnownRatio,
} from './carrierRatios.js';
export { combineCarrierRatios, type Impairment } from './combine.js';
export { type CombinedFades, combinedAvailability } from './combinedFades.js';
export { type BudgetComparison, compareBudgets, type TermDifference } from './compare.js';
export { type DrivenUplink, drivenUplink } from './drivenUplink.js';
export { dvbMode, dvbModes, modeWithPilots } from './dvbModes.js';
export {
  type FadeDistribution,
  type FadingLink,
  fadedBudget,
  type PathFade,
  type PercentRange,
} from './fade.js';
export { figureOfMerit } from './figureOfMerit.js';
export {
  type FootprintLevel,
  type FootprintOptions,
  type FootprintPlace,
  footprintLevel,
  footprintLevelsAt,
} from './footprint.js';
export { type FreeSpaceLoss, freeSpaceLoss } from './freeSpaceLoss.js';
export type { ContourFeature, ContourGeometry, Footprint, Position } from './geoJson.js';
export { type GroundShareInput, groundShare } from './groundShare.js';
export {
  type AdjacentSatellites,
  type AdjacentSatellitesInput,
  adjacentSatellites,
  crossPolarInterference,
  type Neighbour,
  type NeighbourInterference,
} from './interference.js';
export {
  type Carrier,
  type Downlink,
  type LinkBudget,
  type LinkBudgetInput,
  linkBudget,
} from './linkBudget.js';
export type { DvbMode, DvbStandard, ModeThreshold, ThresholdStatus } from './mode.js';
export { type OutageInput, type Outages, outages } from './outages.js';
export { rainFade, type TotalPath, totalFade } from './rainFades.js';
export type { ReceivingTerminal } from './receiver.js';
export { type MarginSensitivity, marginSensitivity } from './sensitivity.js';
export {
  type ReflectorTarget,
  type SmallestReflector,
  STANDARD_DIAMETERS_M,
  smallestReflector,
  type TriedReflector,
} from './smallestReflector.js';
export {
  eirpForFlux,
  type SendingStation,
  type StationEirp,
  stationEirp,
} from './stationEirp.js';
export {
  cascadeNoise,
  type NoiseStage,
  noiseFigureToTemperature,
  type SystemNoise,
  type SystemNoiseInput,
  systemNoise,
  temperatureToNoiseFigure,
} from './systemNoise.js';
export type { BudgetTerm, BudgetUnit } from './term.js';
export {
  type TransparentLink,
  type TransparentLinkInput,
  transparentLink,
} from './transparentLink.js';
export {
  type OutputBackOff,
  type Transponder,
  type TransponderState,
  transponderState,
} from './transponder.js';
export { type Uplink, type UplinkBudget, uplinkBudget } from './uplink.js';
export {
  type BudgetInWeather,
  type BudgetWithAvailability,
  linkBudgetWithAvailability,
  type WeatherPath,
} from './withAvailability.js';

/**
 * Link budgets: noise, carrier ratios, thresholds, margin, availability, interference, footprints, and the smallest
 * reflector that keeps its promise.
 *
 * @module link
 */

export { type AdaptiveModes, adaptiveModes, type ModeShare } from './availability/adaptive.js';
export {
  type Availability,
  availabilityForMargin,
  availabilityToExceeded,
  exceededToAvailability,
  type FadeMargin,
  marginForAvailability,
} from './availability/availability.js';
export {
  type AvailabilityBatch,
  type AvailabilityBuffers,
  type AvailabilityColumns,
  availabilityBatch,
  availabilityOutcomes,
} from './availability/availabilityBatch.js';
export { type CombinedFades, combinedAvailability } from './availability/combinedFades.js';
export {
  type FadeDistribution,
  type FadingLink,
  fadedBudget,
  type PathFade,
  type PercentRange,
} from './availability/fade.js';
export { type OutageInput, type Outages, outages } from './availability/outages.js';
export { rainFade, type TotalPath, totalFade } from './availability/rainFades.js';
export {
  type ReflectorTarget,
  type SmallestReflector,
  STANDARD_DIAMETERS_M,
  smallestReflector,
  type TriedReflector,
} from './availability/smallestReflector.js';
export {
  type ReflectorColumns,
  type ReflectorStations,
  reflectorOutcomes,
  smallestReflectorBatch,
} from './availability/smallestReflectorBatch.js';
export {
  type BudgetInWeather,
  type BudgetWithAvailability,
  linkBudgetWithAvailability,
  type WeatherPath,
} from './availability/withAvailability.js';
export {
  type AdjacentChannel,
  adjacentChannel,
  type ChannelShape,
  occupiedBandwidth,
} from './budget/adjacentChannel.js';
export type { LinkBudget } from './budget/budgetOf.js';
export {
  type CarrierRatios,
  type CarrierShape,
  carrierRatios,
  type KnownRatio,
} from './budget/carrierRatios.js';
export { combineCarrierRatios, type Impairment } from './budget/combine.js';
export { type BudgetComparison, compareBudgets, type TermDifference } from './budget/compare.js';
export { type FreeSpaceLoss, freeSpaceLoss } from './budget/freeSpaceLoss.js';
export {
  type AdjacentSatellites,
  type AdjacentSatellitesInput,
  adjacentSatellites,
  crossPolarInterference,
  type Neighbour,
  type NeighbourInterference,
} from './budget/interference.js';
export { linkBudget } from './budget/linkBudget.js';
export type { Carrier, Downlink, LinkBudgetInput } from './budget/linkBudgetInput.js';
export { type MarginSensitivity, marginSensitivity } from './budget/sensitivity.js';
export type { BudgetTerm, BudgetUnit } from './budget/term.js';
export {
  type FootprintLevel,
  type FootprintOptions,
  type FootprintPlace,
  footprintLevel,
  footprintLevelsAt,
} from './footprint/footprint.js';
export {
  type FootprintLevelColumns,
  type FootprintPlaces,
  footprintLevelBatch,
  footprintOutcomes,
} from './footprint/footprintLevelBatch.js';
export type { ContourFeature, ContourGeometry, Footprint, Position } from './footprint/geoJson.js';
export { dvbMode, dvbModes, modeWithPilots } from './modes/dvbModes.js';
export type { DvbMode, DvbStandard, ModeThreshold, ThresholdStatus } from './modes/mode.js';
export { type AntennaNoise, type AntennaNoiseInput, antennaNoise } from './noise/antennaNoise.js';
export { figureOfMerit } from './noise/figureOfMerit.js';
export { type GroundShareInput, groundShare } from './noise/groundShare.js';
export type { ReceivingTerminal } from './noise/receiver.js';
export {
  cascadeNoise,
  type NoiseStage,
  noiseFigureToTemperature,
  type SystemNoise,
  type SystemNoiseInput,
  systemNoise,
  temperatureToNoiseFigure,
} from './noise/systemNoise.js';
export { type DrivenUplink, drivenUplink } from './uplink/drivenUplink.js';
export {
  eirpForFlux,
  type SendingStation,
  type StationEirp,
  stationEirp,
} from './uplink/stationEirp.js';
export {
  type TransparentLink,
  type TransparentLinkInput,
  transparentLink,
} from './uplink/transparentLink.js';
export {
  type OutputBackOff,
  type Transponder,
  type TransponderState,
  transponderState,
} from './uplink/transponder.js';
export { type Uplink, type UplinkBudget, uplinkBudget } from './uplink/uplink.js';

/**
 * Readings: what an instrument's number says of the signal, and what two instruments say of each other.
 *
 * @module readings
 */

export type { SiteReading } from './crossedTable.js';
export {
  bitEnergyForErrors,
  bitErrorRatio,
  type EnergyRatios,
  energyRatios,
  implementationLoss,
  symbolErrorRatio8psk,
} from './errorRatio.js';
export { type GroupSpread, spreadOfGroups } from './groups.js';
export {
  type ConstellationPoint,
  type MerReading,
  type ModulationError,
  modulationError,
  outerRingAboveMeanDb,
  type SymbolEnergyFromMer,
  shownMer,
  symbolEnergyFromMer,
} from './modulationError.js';
export {
  carrierPower,
  type DisplayAverage,
  displayedNoiseTooLowDb,
  logarithmAboveCarrierDb,
  type MarkerReading,
  narrowMeterDb,
  noiseBandwidthRatio,
  type ResolutionFilter,
  spectralDensity,
} from './noiseDensity.js';
export {
  type DifferingReadings,
  meanOfDifferingReadings,
  type PooledReading,
  pooledReading,
  type UncertainReading,
} from './pooledReadings.js';
export {
  carrierToNoiseInBandwidth,
  occupiedBandwidthDb,
  powerWithinSymbolRateDb,
} from './rollOff.js';
export { type SignalAlone, type SignalPlusNoise, signalWithoutNoise } from './signalFromNoise.js';
export {
  differenceOfInstruments,
  type InstrumentDifference,
  pairedDifference,
} from './twoInstruments.js';
export { type TypicalOffsets, typicalOffsets } from './typicalOffsets.js';
export { type UnitOffset, type UnitOffsets, unitOffsets } from './unitOffsets.js';

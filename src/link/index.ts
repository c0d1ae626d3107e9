/**
 * Link budgets: noise, carrier ratios, thresholds, margin, and the smallest reflector that keeps it.
 *
 * @module link
 */

export { type AntennaNoise, type AntennaNoiseInput, antennaNoise } from './antennaNoise.js';
export {
  type CarrierRatios,
  type CarrierShape,
  carrierRatios,
  type KnownRatio,
} from './carrierRatios.js';
export { combineCarrierRatios, type Impairment } from './combine.js';
export { dvbMode, dvbModes } from './dvbModes.js';
export { figureOfMerit } from './figureOfMerit.js';
export { type FreeSpaceLoss, freeSpaceLoss } from './freeSpaceLoss.js';
export {
  type Carrier,
  type Downlink,
  type LinkBudget,
  type LinkBudgetInput,
  linkBudget,
} from './linkBudget.js';
export type { DvbMode, DvbStandard, ModeThreshold, ThresholdStatus } from './mode.js';
export type { ReceivingTerminal } from './receiver.js';
export {
  type SmallestReflector,
  STANDARD_DIAMETERS_M,
  smallestReflector,
  type TriedReflector,
} from './smallestReflector.js';
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

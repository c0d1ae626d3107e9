/**
 * Behind the antenna: levels, slope and noise at every outlet of cables, splitters, taps, switches and
 * amplifiers, and the supply that runs along the cable.
 *
 * @module distribution
 */

export { type AmplifierLoad, type AmplifierLoadOptions, amplifierLoads } from './amplifierLoads.js';
export { type CableRun, type CableType, cableLossDb } from './cable.js';
export { type CableFit, type CablePoint, cableFit } from './cableFit.js';
export type { DesignChange } from './designChanges.js';
export type { DesignChoice, PartValues } from './designChoices.js';
export {
  type ChosenPart,
  type DesignQuestion,
  type DistributionDesign,
  designDistribution,
} from './designDistribution.js';
export { type CableSeries, genericCable } from './genericCable.js';
export {
  dbmToDbmv,
  dbmToDbuv,
  dbmvToDbm,
  dbmvToDbuv,
  dbuvToDbm,
  dbuvToDbmv,
} from './level.js';
export { type LevelDepartures, levelDepartures, type MeasuredLevel } from './levelDepartures.js';
export { type LongestRun, type LongestRunQuestion, longestRun } from './longestRun.js';
export { type OutletIsolation, outletIsolation } from './outletIsolation.js';
export {
  type LevelPoint,
  type LevelTerm,
  type OutletLevels,
  outletLevels,
} from './outletLevels.js';
export { type OutletLimits, type OutletSignal, outletLimits } from './outletLimits.js';
export {
  type SupplyAlong,
  type SupplyFeed,
  type SupplyPoint,
  supplyAlong,
} from './supplyAlong.js';
export {
  type SupplyCommand,
  supplyCommand,
  type UnderstoodCommand,
  understoodCommand,
} from './supplyCommand.js';
export type {
  AmplifierPart,
  CablePart,
  DecibelsByFrequency,
  DistributionPart,
  DistributionSource,
  DistributionSystem,
  FrequencyPoint,
  LossPart,
  OutletPart,
  PartBase,
  ReceiverPart,
  SplitterPart,
  SupplyNeed,
  SwitchPart,
  TapPart,
} from './tree.js';
export { type LevelWindow, type WindowCheck, windowChecks } from './windowChecks.js';

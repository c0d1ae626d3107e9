/**
 * Behind the antenna: levels, slope and noise at every outlet of cables, splitters, taps, switches and
 * amplifiers, and the supply that runs along the cable.
 *
 * @module distribution
 */

export { type CableRun, type CableType, cableLossDb } from './cable/cable.js';
export { type CableFit, type CablePoint, cableFit } from './cable/cableFit.js';
export { type CableSeries, genericCable } from './cable/genericCable.js';
export { type LongestRun, type LongestRunQuestion, longestRun } from './cable/longestRun.js';
export type { DesignChange } from './design/designChanges.js';
export type { DesignChoice, PartValues } from './design/designChoices.js';
export {
  type ChosenPart,
  type DesignQuestion,
  type DistributionDesign,
  designDistribution,
} from './design/designDistribution.js';
export {
  type AmplifierLoad,
  type AmplifierLoadOptions,
  amplifierLoads,
} from './levels/amplifierLoads.js';
export {
  dbmToDbmv,
  dbmToDbuv,
  dbmvToDbm,
  dbmvToDbuv,
  dbuvToDbm,
  dbuvToDbmv,
  type Impedance,
} from './levels/level.js';
export {
  type LevelDepartures,
  levelDepartures,
  type MeasuredLevel,
} from './levels/levelDepartures.js';
export { type OutletIsolation, outletIsolation } from './levels/outletIsolation.js';
export {
  type LevelPoint,
  type LevelTerm,
  type OutletLevels,
  outletLevels,
} from './levels/outletLevels.js';
export { type OutletLimits, type OutletSignal, outletLimits } from './levels/outletLimits.js';
export { type LevelWindow, type WindowCheck, windowChecks } from './levels/windowChecks.js';
export { type InputIsolation, inputIsolation } from './network/inputIsolation.js';
export { type InputSupply, inputSupply } from './network/inputSupply.js';
export {
  type DistributionNetwork,
  type LinePart,
  type NetworkSource,
  networkLevels,
  networkSystem,
  type SourceLevels,
} from './network/network.js';
export {
  type SupplyAlong,
  type SupplyFeed,
  type SupplyPoint,
  supplyAlong,
} from './supply/supplyAlong.js';
export {
  type SupplyCommand,
  supplyCommand,
  type UnderstoodCommand,
  understoodCommand,
} from './supply/supplyCommand.js';
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
  SwitchInput,
  SwitchPart,
  TapPart,
} from './tree/tree.js';

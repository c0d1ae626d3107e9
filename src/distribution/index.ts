/**
 * Behind the antenna: levels, slope and noise at every outlet of cables, splitters, taps, switches and
 * amplifiers, and the supply that runs along the cable.
 *
 * @module distribution
 */

export { type CableRun, type CableType, cableLossDb } from './cable.js';
export { type CableSeries, genericCable } from './genericCable.js';
export {
  dbmToDbmv,
  dbmToDbuv,
  dbmvToDbm,
  dbmvToDbuv,
  dbuvToDbm,
  dbuvToDbmv,
} from './level.js';
export {
  type LevelPoint,
  type LevelTerm,
  type OutletLevels,
  outletLevels,
} from './outletLevels.js';
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

/**
 * Tuning: from the radio frequency to what is dialled in at the receiver, and many receivers on one cable.
 *
 * @module tuning
 */

export {
  type ConverterBand,
  type ConverterPlan,
  type ConverterPlanName,
  converterPlans,
  type PlanStatus,
} from './converterPlan.js';
export {
  carrierTakenInstead,
  type IntermediateFrequency,
  type IntermediateFrequencyInput,
  intermediateFrequency,
  oscillatorErrorKHz,
  radioFrequency,
} from './intermediateFrequency.js';
export {
  type CarrierPolarization,
  type CarrierToTune,
  type ReceiverRange,
  type TuningRow,
  tuningTable,
} from './tuningTable.js';
export {
  type UserBandCommand,
  type UserBandRequest,
  userBandCommand,
  type WideUserBandCommand,
  type WideUserBandRequest,
  wideUserBandCommand,
} from './userBandCommand.js';
export { type UserBand, type UserBandConflict, userBandConflicts } from './userBandPlan.js';

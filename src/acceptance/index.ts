/**
 * Whether readings meet their limits with the uncertainty counted in, and which part of the chain is at fault where
 * they do not.
 *
 * @module acceptance
 */

export { causeTestPoints } from './causes/causeTestPoints.js';
export type {
  CauseCarrier,
  CauseInstallation,
  CauseSlot,
  CauseTestPoint,
  FaultCause,
} from './causes/installation.js';
export type { CauseMeasurement, CauseObservation } from './causes/observation.js';
export {
  type CauseQuestion,
  type CauseRanker,
  causeRanker,
  rankCauses,
} from './causes/rankCauses.js';
export type {
  CauseEvidence,
  CauseRanking,
  NextMeasurement,
  RankedCause,
  UnseenCause,
} from './causes/result.js';
export {
  type ClearSkyEquivalent,
  clearSkyEquivalent,
  type FadeEvidence,
  type RainyReading,
} from './clearSkyEquivalent.js';
export { type CombinedReading, combinedReading, type RepeatedReadings } from './combinedReading.js';
export {
  type ConformityDecision,
  type ConformityQuestion,
  type DecisionRule,
  decideConformity,
} from './decideConformity.js';
export {
  type ConformityBatchInput,
  type ConformityColumns,
  conformityVerdicts,
  decideConformityBatch,
} from './decideConformityBatch.js';
export { decideRepeated, type RepeatedDecision, type RepeatedQuestion } from './decideRepeated.js';
export {
  expectedReadings,
  type PlannedCarrier,
  type PlannedReading,
  type ReadingPlan,
} from './expectedReadings.js';
export { type GlobalRiskQuestion, type GlobalRisks, globalRisks } from './globalRisks.js';
export {
  type ExpectedReading,
  type JudgedReading,
  type JudgeReadingsInput,
  judgeReadings,
  type Reading,
  type ReadingLimit,
} from './judgeReadings.js';
export type { ReadingPlace, ReadingQuantity } from './readingPlace.js';
export {
  acceptanceProbability,
  badRatioAccepted,
  judgeByVariables,
  type VariablesVerdict,
  variablesAcceptanceProbability,
} from './sampling/operatingCharacteristic.js';
export { type ShareInterval, shareInterval } from './sampling/proportion.js';
export {
  type AcceptableQualityPercent,
  type SamplingPlan,
  samplingPlan,
} from './sampling/samplingPlan.js';

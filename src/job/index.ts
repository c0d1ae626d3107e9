/**
 * The whole job as one plan and one record: presets, expected readings, limits, verdicts, findings and the outcome.
 *
 * @module job
 */

export type {
  JobCarrier,
  JobDistribution,
  JobFile,
  JobFile1,
  JobFile2,
  JobHorizon,
  JobLimit,
  JobLine,
  JobMount,
  JobPeaking,
  JobRain,
  JobReading,
  JobReflector,
  JobSlot,
  JobStation,
  JobTarget,
  JobTransmit,
  JobUnit,
  JobVisit,
} from './file/jobFile.js';
export type { JobInput } from './file/jobOf.js';
export { parseJob } from './file/parseJob.js';
export type {
  Finding,
  FindingAction,
  FindingAmount,
  FindingCode,
  FindingPlace,
  Outcome,
  Severity,
} from './findings/finding.js';
export type { Caution, CautionTopic } from './plan/cautions.js';
export type { DirectionPlan, NorthPlan } from './plan/directions.js';
export type { InputLeakPlan, InputsPlan, TerrestrialPlan } from './plan/inputs.js';
export type { Assumption, JobSection, NotSaid } from './plan/ledger.js';
export type { LevelLimits } from './plan/limits.js';
export type { FeedPlan, OneSlotPlan, ReflectorPlan, SharingLoss } from './plan/mountParts.js';
export type { MountPlan } from './plan/mounts.js';
export type { AmplifierPlan, OutletPlan } from './plan/outlets.js';
export { type JobPlan, type PlanSources, planJobWith } from './plan/planJob.js';
export type { PolarPlan } from './plan/polarMount.js';
export type { ClimateSource, RainPlan, WetFeedPlan } from './plan/rain.js';
export type { ReceiverPlan } from './plan/receivers.js';
export type { SharedPlan } from './plan/sharedReflector.js';
export type { FadePlan, PromisePlan, SignalPlan } from './plan/signals.js';
export type { StackingPlan, UserBandPlan, UserBandRequestPlan } from './plan/stacking.js';
export type { SupplyPlan } from './plan/supplies.js';
export type { TrackingPlan } from './plan/tracking.js';
export type { TransmitPlan } from './plan/transmits.js';
export type { TuningPlan } from './plan/tuning.js';
export type { ViewPlan } from './plan/views.js';
export { planJob } from './plan/withShippedClimate.js';
export { compareRecordsWith, type RecordComparison } from './record/compareRecords.js';
export { checkedRecord, compareRecords } from './record/compareWithShippedClimate.js';
export type { Difference } from './record/differences.js';
export { type Recheck, recheckRecordWith } from './record/recheckRecord.js';
export { type JobRecord, recordJobWith, type VisitChanges } from './record/recordJob.js';
export { recheckRecord, recordJob } from './record/withShippedClimate.js';
export type { FirstLook } from './results/causes.js';
export type { ChangeMeaning, Changes, PooledChange, ReadingChange } from './results/changes.js';
export type { PeakingResult } from './results/peaking.js';
export type { ReadingQuantity, ReadingVerdict } from './results/verdicts.js';
export type { CommissioningPlan, CommissioningWork } from './sent/commissioningPlan.js';
export type { WindPlan, WindPointingPlan } from './wind/windPlan.js';

/**
 * The whole job as one plan and one record: presets, expected readings, limits, verdicts, cautions.
 *
 * @module job
 */

export type { Caution, CautionTopic } from './cautions.js';
export { compareRecords, type ReadingChange, type RecordComparison } from './compareRecords.js';
export type { Difference } from './differences.js';
export type {
  JobAntenna,
  JobCarrier,
  JobFile,
  JobHorizon,
  JobLimit,
  JobPeaking,
  JobRain,
  JobReading,
  JobReceiver,
  JobSlot,
  JobStation,
  JobTarget,
} from './jobFile.js';
export { parseJob } from './parseJob.js';
export { type JobPlan, planJob } from './planJob.js';
export { type Recheck, recheckRecord } from './recheckRecord.js';
export { type JobRecord, recordJob } from './recordJob.js';
export type { FirstLook } from './sections/causes.js';
export type { DirectionPlan, NorthPlan } from './sections/directions.js';
export type { FeedPlan, MountPlan, SharingLoss } from './sections/mount.js';
export type { OutletPlan } from './sections/outlets.js';
export type { PeakingResult } from './sections/peaking.js';
export type { RainPlan } from './sections/rain.js';
export type { FadePlan, SignalPlan } from './sections/signals.js';
export type { ReadingVerdict } from './sections/verdicts.js';
export type { ViewPlan } from './sections/view.js';

/**
 * Where a satellite stands in the sky and how the mount is preset for it.
 *
 * @module pointing
 */

export {
  type ArcOverHorizon,
  type ArcOverHorizonInput,
  arcOverHorizon,
  type ClearArc,
  type Horizon,
  type HorizonSample,
} from './arcOverHorizon.js';
export {
  type BeamDeviationInput,
  beamDeviationFactor,
  type FeedStepInput,
  feedStepAside,
} from './beamDeviation.js';
export {
  type DailyFigureInput,
  type DailyFigurePoint,
  dailyFigure,
  type TrackPoint,
} from './dailyFigure.js';
export { type FixedAntennaInput, type FixedAntennaLoss, fixedAntennaLoss } from './fixedAntenna.js';
export { type LookAngles, lookAngles } from './lookAngles.js';
export {
  type LookAnglesBatchInput,
  type LookAnglesColumns,
  lookAnglesBatch,
} from './lookAnglesBatch.js';
export { lookAnglesToPoint } from './lookAnglesToPoint.js';
export {
  type MastLean,
  type MastLeanCircle,
  type MastLeanCircleInput,
  type MastLeanError,
  type MastLeanInput,
  mastLeanCircle,
  mastLeanError,
  type SkyDirection,
} from './mastLean.js';
export {
  type AllowedMastLean,
  type AllowedMastLeanInput,
  allowedMastLean,
  type MastLeanAfterPeaking,
  type MastLeanAfterPeakingInput,
  mastLeanAfterPeaking,
} from './mastLeanAllowed.js';
export {
  type OffsetAngle,
  type OffsetReflectorInput,
  type OffsetReflectorPreset,
  offsetAngleFromRim,
  offsetReflectorPreset,
  type ReflectorRim,
} from './offsetReflector.js';
export {
  type PolarizationSkew,
  type PolarizationSkewInput,
  polarizationSkew,
  type SatellitePolarization,
} from './polarizationSkew.js';
export {
  type PolarizationSkewBatchInput,
  type PolarizationSkewColumns,
  polarizationSkewBatch,
} from './polarizationSkewBatch.js';
export {
  type PolarMount,
  type PolarMountFit,
  type PolarMountInput,
  type PolarMountSlot,
  polarMount,
} from './polarMount.js';
export {
  type ReflectorFromRim,
  type ReflectorMeasured,
  reflectorFromRim,
} from './reflectorFromRim.js';
export { apparentElevation, geometricElevation, type Refraction } from './refraction.js';
export {
  type FeedCollision,
  type FeedPlaceM,
  type SeveralSlots,
  type SlotBandLoss,
  type SlotReceived,
  severalSlots,
} from './severalSlots.js';
export type {
  FeedsInput,
  ReflectorInput,
  SeveralSlotsInput,
  SlotToReceive,
} from './severalSlotsInput.js';
export { type SlotAtAzimuth, type SlotAtAzimuthInput, slotAtAzimuth } from './slotAtAzimuth.js';
export {
  type SlotFromBearing,
  type SlotFromBearingInput,
  type SlotNearby,
  slotFromBearing,
} from './slotFromBearing.js';
export {
  longitudeDifferenceFromRanges,
  type SlotSeparation,
  type SlotSeparationInput,
  separationFromRanges,
  slotSeparation,
  type TwoRanges,
} from './slotSeparation.js';
export {
  type SphericalLookAngles,
  type SphericalLookAnglesInput,
  type SphericalSlantRangeInput,
  sphericalLookAngles,
  sphericalSlantRange,
} from './sphericalLookAngles.js';
export {
  type StationKeepingBox,
  type StationKeepingBoxInput,
  stationKeepingBox,
} from './stationKeepingBox.js';
export { type VisibleArc, type VisibleArcInput, visibleArc } from './visibleArc.js';

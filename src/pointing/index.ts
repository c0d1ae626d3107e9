/**
 * Where a satellite stands in the sky and how the mount is preset for it.
 *
 * @module pointing
 */

export { type LookAngles, lookAngles } from './look/lookAngles.js';
export {
  type LookAnglesAndSkewColumns,
  lookAnglesAndSkewBatch,
  lookOutcomes,
} from './look/lookAnglesAndSkewBatch.js';
export {
  type LookAnglesBatchInput,
  type LookAnglesColumns,
  lookAnglesBatch,
} from './look/lookAnglesBatch.js';
export { lookAnglesToPoint } from './look/lookAnglesToPoint.js';
export {
  type PolarizationSkew,
  type PolarizationSkewInput,
  polarizationSkew,
  type SatellitePolarization,
} from './look/polarizationSkew.js';
export {
  type PolarizationSkewBatchInput,
  type PolarizationSkewColumns,
  polarizationSkewBatch,
} from './look/polarizationSkewBatch.js';
export { apparentElevation, geometricElevation, type Refraction } from './look/refraction.js';
export {
  type SphericalLookAngles,
  type SphericalLookAnglesInput,
  type SphericalSlantRangeInput,
  sphericalLookAngles,
  sphericalSlantRange,
} from './look/sphericalLookAngles.js';
export {
  type MastLean,
  type MastLeanCircle,
  type MastLeanCircleInput,
  type MastLeanError,
  type MastLeanInput,
  mastLeanCircle,
  mastLeanError,
  type SkyDirection,
} from './mount/mastLean.js';
export {
  type AllowedMastLean,
  type AllowedMastLeanInput,
  allowedMastLean,
  type MastLeanAfterPeaking,
  type MastLeanAfterPeakingInput,
  mastLeanAfterPeaking,
} from './mount/mastLeanAllowed.js';
export {
  type PolarMount,
  type PolarMountFit,
  type PolarMountInput,
  type PolarMountSlot,
  polarMount,
} from './mount/polarMount.js';
export {
  type DailyFigureInput,
  type DailyFigurePoint,
  dailyFigure,
  type TrackPoint,
} from './moving/dailyFigure.js';
export {
  type FixedAntennaInput,
  type FixedAntennaLoss,
  fixedAntennaLoss,
} from './moving/fixedAntenna.js';
export {
  type StationKeepingBox,
  type StationKeepingBoxInput,
  stationKeepingBox,
} from './moving/stationKeepingBox.js';
export {
  type BeamDeviationInput,
  beamDeviationFactor,
  type FeedStepInput,
  feedStepAside,
} from './reflector/beamDeviation.js';
export { type FeedTurn, type FeedTurnInput, feedTurn } from './reflector/feedTurn.js';
export {
  type OffsetAngle,
  type OffsetReflectorInput,
  type OffsetReflectorPreset,
  offsetAngleFromRim,
  offsetReflectorPreset,
  type ReflectorRim,
} from './reflector/offsetReflector.js';
export {
  type ReflectorFromRim,
  type ReflectorMeasured,
  reflectorFromRim,
} from './reflector/reflectorFromRim.js';
export {
  type FeedCollision,
  type FeedPlaceM,
  type SeveralSlots,
  type SlotBandLoss,
  type SlotReceived,
  severalSlots,
} from './reflector/severalSlots.js';
export type {
  FeedsInput,
  ReflectorInput,
  SeveralSlotsInput,
  SlotToReceive,
} from './reflector/severalSlotsInput.js';
export {
  type ArcOverHorizon,
  type ArcOverHorizonInput,
  arcOverHorizon,
  type ClearArc,
  type Horizon,
  type HorizonSample,
} from './slots/arcOverHorizon.js';
export {
  type SlotAtAzimuth,
  type SlotAtAzimuthInput,
  slotAtAzimuth,
} from './slots/slotAtAzimuth.js';
export {
  type SlotFromBearing,
  type SlotFromBearingInput,
  type SlotNearby,
  slotFromBearing,
} from './slots/slotFromBearing.js';
export {
  longitudeDifferenceFromRanges,
  type SlotSeparation,
  type SlotSeparationInput,
  separationFromRanges,
  slotSeparation,
  type TwoRanges,
} from './slots/slotSeparation.js';
export { type VisibleArc, type VisibleArcInput, visibleArc } from './slots/visibleArc.js';

/**
 * Where a satellite stands in the sky and how the mount is preset for it.
 *
 * @module pointing
 */

export { type LookAngles, lookAngles } from './lookAngles.js';
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
export {
  type SlotFromBearing,
  type SlotFromBearingInput,
  type SlotNearby,
  slotFromBearing,
} from './slotFromBearing.js';
export { type VisibleArc, type VisibleArcInput, visibleArc } from './visibleArc.js';

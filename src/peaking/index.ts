/**
 * The true peak, how sure it is, and the next move.
 *
 * @module peaking
 */

export {
  type Adjuster,
  type AdjusterAngle,
  adjusterAngle,
  adjusterTurns,
  azimuthOnSkyDeg,
} from './adjuster.js';
export {
  type AlternatingInput,
  type AlternatingSearch,
  type AlternatingStep,
  alternatingSearch,
} from './alternatingSearch.js';
export {
  type ApertureInput,
  type ApertureLobe,
  apertureLevelDb,
  apertureLobes,
} from './apertureLobes.js';
export { type Averaging, averagedScatter } from './averagedScatter.js';
export { type BandLossInput, bandLoss, type OtherBandLoss } from './bandLoss.js';
export { bracketNull, type NullBracket, type NullBracketing } from './bracketNull.js';
export { type Bracket, type Bracketing, type BracketStop, bracketPeak } from './bracketPeak.js';
export {
  type CoarseRaster,
  type CoarseRasterInput,
  coarseRaster,
  type RasterSweep,
} from './coarseRaster.js';
export {
  comparePlans,
  type PeakPlan,
  type PlanComparisonInput,
  type PlanResult,
} from './comparePlans.js';
export type { CoupledPeak, CoupledSamples } from './coupledOutcome.js';
export { fitCoupledPeak } from './coupledPeak.js';
export { crossPolarLevelDbm } from './crossPolarLevel.js';
export { fitNull, type NullFit, type NullSamples } from './fitNull.js';
export { fitPeak } from './fitPeak.js';
export { type NextMove, nextMove } from './nextMove.js';
export { type PeakBound, type PeakBoundInput, peakBound, planEfficiency } from './peakBound.js';
export type {
  BandLoss,
  Contradictory,
  Interval95Deg,
  IntervalCoverage,
  NotMainLobe,
  PeakAtEdge,
  PeakFit,
  PeakFlat,
  PeakFound,
  TooFewReadings,
} from './peakOutcome.js';
export type { PeakBand, PeakSamples } from './peakSamples.js';
export {
  afterMove,
  afterReading,
  beginPeakSearch,
  type PeakSearch,
  type PeakSearchSettings,
  type SearchReading,
} from './peakSearch.js';
export {
  type RotationFromIsolation,
  rotationFromIsolation,
  rotationIsolationDb,
} from './polarizationRotation.js';
export {
  type LobeHypothesis,
  type SideLobeTest,
  type SideLobeTestInput,
  sideLobeTest,
} from './sideLobeTest.js';
export { type SimulatedLevelInput, simulatedReadings } from './simulatedReadings.js';
export { type UsefulDropInput, usefulDrop } from './usefulDrop.js';

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
} from './axes/adjuster.js';
export {
  type AlternatingInput,
  type AlternatingSearch,
  type AlternatingStep,
  alternatingSearch,
} from './axes/alternatingSearch.js';
export type { CoupledPeak, CoupledSamples } from './axes/coupledOutcome.js';
export { fitCoupledPeak } from './axes/coupledPeak.js';
export { type BandLossInput, bandLoss, type OtherBandLoss } from './bracket/bandLoss.js';
export {
  type Bracket,
  type Bracketing,
  type BracketStop,
  bracketPeak,
} from './bracket/bracketPeak.js';
export { type UsefulDropInput, usefulDrop } from './bracket/usefulDrop.js';
export { type Averaging, averagedScatter } from './fit/averagedScatter.js';
export { fitPeak } from './fit/fitPeak.js';
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
} from './fit/peakOutcome.js';
export type { PeakBand, PeakSamples } from './fit/peakSamples.js';
export { bracketNull, type NullBracket, type NullBracketing } from './polarization/bracketNull.js';
export { crossPolarLevelDbm } from './polarization/crossPolarLevel.js';
export { fitNull, type NullFit, type NullSamples } from './polarization/fitNull.js';
export {
  type RotationFromIsolation,
  rotationFromIsolation,
  rotationIsolationDb,
} from './polarization/polarizationRotation.js';
export {
  type CoarseRaster,
  type CoarseRasterInput,
  coarseRaster,
  type RasterSweep,
} from './search/coarseRaster.js';
export {
  comparePlans,
  type PeakPlan,
  type PlanComparisonInput,
  type PlanResult,
} from './search/comparePlans.js';
export { type NextMove, nextMove } from './search/nextMove.js';
export {
  type PeakBound,
  type PeakBoundInput,
  peakBound,
  planEfficiency,
} from './search/peakBound.js';
export {
  afterMove,
  afterReading,
  beginPeakSearch,
  type PeakSearch,
  type PeakSearchSettings,
  type SearchReading,
} from './search/peakSearch.js';
export {
  type ApertureInput,
  type ApertureLobe,
  apertureLevelDb,
  apertureLobes,
} from './sidelobe/apertureLobes.js';
export {
  type LobeHypothesis,
  type SideLobeTest,
  type SideLobeTestInput,
  sideLobeTest,
} from './sidelobe/sideLobeTest.js';
export { type SimulatedLevelInput, simulatedReadings } from './sidelobe/simulatedReadings.js';

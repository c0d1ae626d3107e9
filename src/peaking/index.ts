/**
 * The true peak, how sure it is, and the next move.
 *
 * @module peaking
 */

export { type Averaging, averagedScatter } from './averagedScatter.js';
export { type Bracket, type Bracketing, bracketPeak } from './bracketPeak.js';
export { fitPeak } from './fitPeak.js';
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

/**
 * The true peak, how sure it is, and the next move.
 *
 * @module peaking
 */

export { type Bracket, type Bracketing, bracketPeak } from './bracketPeak.js';
export { fitPeak, type PeakSamples } from './fitPeak.js';
export type {
  Contradictory,
  Interval95Deg,
  NotMainLobe,
  PeakAtEdge,
  PeakFit,
  PeakFlat,
  PeakFound,
  TooFewReadings,
} from './peakOutcome.js';

/** What a set of readings says about the peak: one of six outcomes. */

/** A 95 % interval in degrees: lower end, upper end. */
export type Interval95Deg = readonly [number, number];

/**
 * How far the 95 % of an interval can be relied on.
 *
 * - `nominal`: 94 to 97 % in simulation; only where the lobe is a parabola by statement.
 * - `at-least`: 95 % or more in every cell of the coverage table, mostly wider than needed: what is not known of width, shape
 *   and drift is allowed for, and few readings in coarse steps hide their own scatter.
 * - `not-assured`: fewer than six readings or too short a span, one flank hardly read, or doubt about which reading is foreign.
 */
export type IntervalCoverage = 'nominal' | 'at-least' | 'not-assured';

/** Pointing loss in one band. */
export interface BandLoss {
  /** Name of the band, as given. */
  readonly name: string;
  /** Pointing loss where the antenna stands now, in dB, 0 or more. */
  readonly lossNowDb: number;
  /** Upper bound of that loss with at least 95 % confidence, in dB. */
  readonly lossNowUpper95Db: number;
  /** Upper bound, with at least 95 % confidence, of the loss after a move to the position found, in dB. */
  readonly lossAtPeakUpper95Db: number;
}

/** The peak was found. */
export interface PeakFound {
  readonly kind: 'peak';
  /** Most likely position of the peak in degrees, on the axis of the samples. */
  readonly positionDeg: number;
  /** Interval that holds the true peak with 95 % confidence, in degrees. */
  readonly interval95Deg: Interval95Deg;
  /** How far that 95 % can be relied on. */
  readonly coverage: IntervalCoverage;
  /** Standard uncertainty of the position in degrees; at most 6 beamwidths, which stand for "not known". */
  readonly standardUncertaintyDeg: number;
  /** Level at the peak in dBm, without the noise floor where one was taken into account. */
  readonly peakLevelDbm: number;
  /** Half-power beamwidth in degrees: what the readings and the given width make of it together. */
  readonly beamwidthDeg: number;
  /** Standard uncertainty of that width in degrees, what was known of it counted in. */
  readonly beamwidthStandardUncertaintyDeg: number;
  /** Standard deviation of one reading about the lobe in dB: found, or as given, rounding included. */
  readonly standardDeviationDb: number;
  /** Readings used less fitted quantities; `null` where the scatter was given. */
  readonly degreesOfFreedom: number | null;
  /** Fitted drift in dB per minute; 0 without times. */
  readonly driftDbPerMin: number;
  /** Noise floor in dBm as given or fitted; `null` where none was taken into account. */
  readonly noiseFloorDbm: number | null;
  /** Pointing loss where the antenna stands now, in dB, 0 or more. */
  readonly lossNowDb: number;
  /** Upper bound of that loss with at least 95 % confidence, in dB. */
  readonly lossNowUpper95Db: number;
  /** Upper bound, with at least 95 % confidence, of the loss left after a move to `positionDeg`, in dB. */
  readonly lossAtPeakUpper95Db: number;
  /** The same three losses in the other bands asked for, in their order. */
  readonly bands: readonly BandLoss[];
  /** Readings most likely foreign to the lobe, by index, in rising order: they do not count in `positionDeg`. */
  readonly outliers: readonly number[];
  /** Probability of that answer, 0 to 1; the interval weighs the other likely answers too. */
  readonly outliersProbabilityRatio: number;
  /** Readings so far out or so low that the main lobe has ended there, by index; they are not used. */
  readonly beyondLobe: readonly number[];
  /**
   * Probability that readings of a true parabola depart from it as much as these (third and fourth
   * order); small means that the shape is not one. `null` with too few readings to tell, or where a
   * noise floor or a drift was taken into account.
   */
  readonly shapeProbabilityRatio: number | null;
}

/** The level still rises at the end of the samples. */
export interface PeakAtEdge {
  readonly kind: 'edge';
  /** Go on towards `lower` or `higher` positions. */
  readonly side: 'lower' | 'higher';
  /** Position of the last sample on that side in degrees. */
  readonly edgeDeg: number;
  /** Where the lobe would have its peak, in degrees, extrapolated; `null` where the bend is not established. */
  readonly likelyPositionDeg: number | null;
}

/** Neither a rise nor a bend stands out from the scatter. */
export interface PeakFlat {
  readonly kind: 'flat';
  /** First position read, in degrees. */
  readonly fromDeg: number;
  /** Last position read, in degrees. */
  readonly toDeg: number;
  /** Standard deviation of one reading in dB. */
  readonly standardDeviationDb: number;
}

/** The readings do not have the shape of a main lobe. */
export interface NotMainLobe {
  readonly kind: 'not-main-lobe';
  /** `dip`: a minimum. `too-narrow`, `too-wide`: not the width that was given. */
  readonly reason: 'dip' | 'too-narrow' | 'too-wide';
  /** Position of the extremum in degrees. */
  readonly positionDeg: number;
  /** Half-power beamwidth that the readings have, in degrees; `null` for a dip. */
  readonly beamwidthDeg: number | null;
}

/** Too few readings, or too few places, to say anything. */
export interface TooFewReadings {
  readonly kind: 'too-few';
  /** `drift`: position and time went hand in hand, so drift and lobe cannot be told apart; read again going back. */
  readonly reason: 'readings' | 'places' | 'drift';
  /** Readings given. */
  readonly readings: number;
  /** Different positions among them. */
  readonly places: number;
  /** Readings needed at least. */
  readonly readingsNeeded: number;
  /** Different positions needed at least. */
  readonly placesNeeded: number;
}

/** The readings contradict each other or the stated scatter. */
export interface Contradictory {
  readonly kind: 'contradictory';
  /** `scatter`: far more than stated. `two-peaks`: a valley between two peaks. */
  readonly reason: 'scatter' | 'two-peaks';
  /** Standard deviation found about the lobe in dB. */
  readonly standardDeviationDb: number;
  /** Probability that good readings look as bad as these. */
  readonly probabilityRatio: number;
}

/** Outcome of {@link fitPeak}; read `kind` first. */
export type PeakFit =
  | PeakFound
  | PeakAtEdge
  | PeakFlat
  | NotMainLobe
  | TooFewReadings
  | Contradictory;

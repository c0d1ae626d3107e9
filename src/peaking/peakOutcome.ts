/** What a set of readings says about the peak: one of six outcomes. */

/** A 95 % interval in degrees: lower end, upper end. */
export type Interval95Deg = readonly [number, number];

/** The peak was found. */
export interface PeakFound {
  readonly kind: 'peak';
  /** Most likely position of the peak in degrees, on the axis of the samples. */
  readonly positionDeg: number;
  /** Interval that holds the true peak with 95 % confidence, in degrees. */
  readonly interval95Deg: Interval95Deg;
  /** Standard uncertainty of the position in degrees. */
  readonly standardUncertaintyDeg: number;
  /** Level at the peak in dBm. */
  readonly peakLevelDbm: number;
  /** Half-power beamwidth: as given, or as the fit has it, in degrees. */
  readonly halfPowerBeamwidthDeg: number;
  /** Standard deviation of one reading about the lobe in dB, as found or as given. */
  readonly scatterDb: number;
  /** Readings less fitted quantities; `null` where the scatter was given. */
  readonly degreesOfFreedom: number | null;
  /** Pointing loss where the antenna stands now, in dB, 0 or more. */
  readonly lossNowDb: number;
  /** Upper bound of that loss with 95 % confidence, in dB. */
  readonly lossNowUpper95Db: number;
  /** Upper bound, with 95 % confidence, of the loss left after a move to `positionDeg`, in dB. */
  readonly lossAtPeakUpper95Db: number;
  /** Readings set aside as outliers, by index. */
  readonly outliers: readonly number[];
}

/** The level still rises at the end of the samples. */
export interface PeakAtEdge {
  readonly kind: 'edge';
  /** Go on towards `lower` or `higher` positions. */
  readonly side: 'lower' | 'higher';
  /** Position of the last sample on that side in degrees. */
  readonly edgeDeg: number;
}

/** Neither a rise nor a bend shows above the scatter. */
export interface PeakFlat {
  readonly kind: 'flat';
  /** First and last position read, in degrees. */
  readonly fromDeg: number;
  readonly toDeg: number;
  /** Standard deviation of one reading in dB. */
  readonly scatterDb: number;
}

/** The readings do not have the shape of a main lobe. */
export interface NotMainLobe {
  readonly kind: 'not-main-lobe';
  /** `dip`: a minimum. `too-narrow`, `too-wide`: not the width of the main lobe. */
  readonly reason: 'dip' | 'too-narrow' | 'too-wide';
  /** Position of the extremum in degrees. */
  readonly positionDeg: number;
}

/** Too few readings, or too few places, to say anything. */
export interface TooFewReadings {
  readonly kind: 'too-few';
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
  /** Standard deviation found about the lobe in dB. */
  readonly scatterDb: number;
  /** What was expected at most, in dB. */
  readonly expectedDb: number;
}

/** Outcome of {@link fitPeak}; read `kind` first. */
export type PeakFit =
  | PeakFound
  | PeakAtEdge
  | PeakFlat
  | NotMainLobe
  | TooFewReadings
  | Contradictory;

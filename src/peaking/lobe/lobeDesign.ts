/** What a lobe is fitted to, and what comes of it. */

/** Samples brought to a place near [-1, 1] and to levels relative to the highest. */
export interface LobeDesign {
  /** Positions, scaled. */
  readonly places: Float64Array;
  /** Levels in dB relative to the highest reading. */
  readonly levels: Float64Array;
  /** Times scaled to [-1, 1], where a drift is fitted. */
  readonly times: Float64Array | undefined;
  /** Coefficient of the squared place in dB, where the width is known. */
  readonly bend: number | undefined;
  /** Noise floor relative to the highest reading in dB, where it is known or to be started from. */
  readonly floorDb: number | undefined;
  /** Whether the floor is fitted. */
  readonly fitFloor: boolean;
}

/** A fitted lobe a + b u + c u^2 (+ drift) in dB over scaled places u. */
export interface LobeEstimate {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** Drift in dB for half the span of time; 0 where it is not fitted. */
  readonly drift: number;
  readonly floorDb: number | undefined;
  /** Covariance of (a, b, c) for unit variance of a reading; zeros where c is known. */
  readonly covariance: readonly (readonly number[])[];
  readonly residuals: Float64Array;
  readonly sumOfSquares: number;
  readonly degreesOfFreedom: number;
}

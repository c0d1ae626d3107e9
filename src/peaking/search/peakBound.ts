/** The Cramer-Rao bound: how well any method can know the peak from readings at given places. */

import { DomainError, inRange, object, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { dbToRatio } from '../../numeric/decibel.js';
import { linearLeastSquares } from '../../numeric/leastSquares.js';

/** Places of readings and what is known beforehand. */
export interface PeakBoundInput {
  /** Places of the readings in degrees; repeats count again. */
  readonly positionDeg: ArrayLike<number>;
  /** Place of the peak in degrees. */
  readonly peakDeg: number;
  /** Half-power beamwidth in degrees. */
  readonly beamwidthDeg: number;
  /** Standard deviation of one reading in dB, above 0. */
  readonly standardDeviationDb: number;
  /** Step of the display in dB, counted as a twelfth of its square in variance; default 0. */
  readonly levelStepDb?: number;
  /** Whether the width is known beforehand; default `unknown`. */
  readonly width?: 'known' | 'unknown';
  /** Peak level above the noise floor in dB; default no noise floor. */
  readonly peakAboveNoiseDb?: number;
  /** Times of the readings in seconds, where a steady drift must be found too. */
  readonly timeS?: ArrayLike<number>;
}

const PEAK_BOUND_INPUT_KEYS = {
  positionDeg: true,
  peakDeg: true,
  beamwidthDeg: true,
  standardDeviationDb: true,
  levelStepDb: true,
  width: true,
  peakAboveNoiseDb: true,
  timeS: true,
} satisfies Keys<PeakBoundInput>;

/** The bound, or that the places do not determine the peak. */
export type PeakBound =
  | {
      readonly kind: 'bound';
      /** Least standard deviation of an unbiased estimate of the peak in degrees. */
      readonly standardUncertaintyDeg: number;
      /** Mean pointing loss in dB that such an estimate leaves: 12 (deviation / beamwidth)^2. */
      readonly meanLossDb: number;
      /** Pointing loss in dB not exceeded with 95 % confidence after moving there. */
      readonly lossUpper95Db: number;
    }
  | { readonly kind: 'undetermined' };

/**
 * Cramer-Rao bound of the peak position for independent normal readings of equal scatter in dB.
 *
 * Each reading counts by the slope of the lobe at its place, 24 (offset) / beamwidth^2 dB per degree; what
 * must be found besides (level, width, drift) takes its share. With a noise floor each slope
 * shrinks by the share of signal in the reading's power.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: S. M. Kay, Fundamentals of Statistical Signal Processing: Estimation Theory (1993), ch. 3.
 * @example
 * ```ts
 * import { peakBound } from 'slantpath/peaking';
 * const bound = peakBound({
 *   positionDeg: [-1, -0.5, 0, 0.5, 1],
 *   peakDeg: 0,
 *   beamwidthDeg: 2,
 *   standardDeviationDb: 0.3,
 * });
 * bound.kind === 'bound' && bound.standardUncertaintyDeg.toFixed(4); // => '0.0316'
 * ```
 */
export function peakBound(input: PeakBoundInput): PeakBound {
  knownOnly('input', input, PEAK_BOUND_INPUT_KEYS);
  const places = object('positionDeg', input.positionDeg);
  const peakDeg = inRange('peakDeg', input.peakDeg, -720, 720);
  const widthDeg = inRange('beamwidthDeg', input.beamwidthDeg, 1e-4, 180);
  const standardDeviationDb = positive('standardDeviationDb', input.standardDeviationDb);
  const stepDb = inRange('levelStepDb', input.levelStepDb ?? 0, 0, 20);
  const aboveDb =
    input.peakAboveNoiseDb === undefined
      ? undefined
      : inRange('peakAboveNoiseDb', input.peakAboveNoiseDb, -30, 200);
  if (places.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'positionDeg',
      received: places,
      allowed: 'at least one place',
    });
  if (input.timeS !== undefined && input.timeS.length !== places.length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'timeS',
      received: input.timeS,
      allowed: `of the same length as positionDeg (${places.length})`,
    });
  const offset = Array.from(
    places,
    (x, i) => (inRange('positionDeg', x, -720, 720, undefined, i) - peakDeg) / widthDeg,
  );
  const signal = offset.map((d) =>
    aboveDb === undefined ? 1 : 1 / (1 + dbToRatio(12 * d * d - aboveDb)),
  );
  // Sensitivities in units of the width, so that every column is near 1.
  const columns = [signal, offset.map((d, i) => 24 * d * valueAt(signal, i))];
  if (input.width !== 'known') columns.push(offset.map((d, i) => d * d * valueAt(signal, i)));
  if (input.timeS !== undefined) {
    const times = Array.from(input.timeS, (t, i) => inRange('timeS', t, -1e12, 1e12, undefined, i));
    const first = Math.min(...times);
    const span = Math.max(...times) - first;
    if (span > 0)
      columns.push(times.map((t, i) => ((t - first) / span - 0.5) * valueAt(signal, i)));
  }
  const fit = linearLeastSquares(columns, offset);
  const variance = fit?.covariance[1]?.[1];
  if (variance === undefined || !Number.isFinite(variance)) return { kind: 'undetermined' };
  const deviation = Math.sqrt(variance) * Math.hypot(standardDeviationDb, stepDb / Math.sqrt(12));
  const meanLossDb = 12 * deviation * deviation;
  return {
    kind: 'bound',
    standardUncertaintyDeg: deviation * widthDeg,
    meanLossDb,
    lossUpper95Db: 1.959963984540054 ** 2 * meanLossDb,
  };
}

/**
 * Efficiency of a way of finding the peak: variance of the bound over its own mean squared error, 1 at best.
 *
 * @param plan  The places read with what is known (as for {@link peakBound}), and the root mean square error reached in degrees.
 * @returns Ratio from 0 to about 1; 0 where the places do not determine the peak.
 * @throws {@link DomainError} naming the field that is wrong.
 * @example
 * ```ts
 * import { planEfficiency } from 'slantpath/peaking';
 * const plan = { positionDeg: [-1, 0, 1], peakDeg: 0, beamwidthDeg: 2, standardDeviationDb: 0.3 };
 * planEfficiency(plan, 0.05).toFixed(2); // => '0.50'
 * ```
 */
export function planEfficiency(plan: PeakBoundInput, rmsErrorDeg: number): number {
  const bound = peakBound(plan);
  const reached = positive('rmsErrorDeg', rmsErrorDeg);
  return bound.kind === 'bound' ? (bound.standardUncertaintyDeg / reached) ** 2 : 0;
}

/** How readings of a pattern scatter together: tolerances of slots, units, carriers and test points. */

import { denseAt } from '../../numeric/columns.js';
import type { Scatter } from './hypothesis.js';

/** A numeric reading in the pattern. */
export interface PatternReading {
  readonly kind: 'level' | 'carrier-to-noise' | 'isolation';
  readonly carrier: number;
  readonly slot: number;
  readonly point: number;
  readonly frequencyMHz: number;
  readonly value: number;
  readonly uncertainty: number;
}

/** Standard deviations in dB of what the plan does not know, by what shares them (practice of the trade). */
const LEVEL = { eirp: 0.7, unitGain: 1.3, carrier: 0.6, point: 0.8, slope: 1, model: 0.4 };
const RATIO = { eirp: 0.5, unitNoise: 0.4, carrier: 0.6, model: 0.4 };
const ISOLATION = { carrier: 2, model: 1 };

/** Extra scatter of the carriers that a cause bears on, where its effect cannot be known channel by channel. */
const EXTRA: Readonly<
  Record<Scatter, { readonly level: number; readonly ratio: number; readonly own: number }>
> = {
  plan: { level: 0, ratio: 0, own: 0 },
  uneven: { level: 1, ratio: 1, own: 0 },
  // By what the other polarization holds, or by the width of the carrier.
  'by-carrier': { level: 0.7, ratio: 2, own: 0 },
  ripple: { level: 0, ratio: 0, own: 1.2 },
  'unknown-carriers': { level: 4, ratio: 4, own: 0 },
};

/** Covariance of two readings by what the plan does not know. */
function pairCovariance(a: PatternReading, b: PatternReading): number {
  const sameCarrier = a.carrier === b.carrier;
  if (a.kind === 'isolation' || b.kind === 'isolation')
    return a.kind === b.kind && sameCarrier ? ISOLATION.carrier ** 2 : 0;
  const ofA = a.kind === 'level' ? LEVEL : RATIO;
  const ofB = b.kind === 'level' ? LEVEL : RATIO;
  let sum = 0;
  if (a.slot === b.slot) {
    sum += ofA.eirp * ofB.eirp;
    if (a.kind === 'level' && b.kind === 'level') sum += LEVEL.unitGain ** 2;
    if (a.kind !== 'level' && b.kind !== 'level') sum += RATIO.unitNoise ** 2;
  }
  if (sameCarrier) sum += ofA.carrier * ofB.carrier;
  if (a.point === b.point && a.kind === 'level' && b.kind === 'level') {
    const slope = (frequencyMHz: number): number =>
      LEVEL.slope * (Math.sqrt(frequencyMHz / 1000) - 1.2);
    sum += LEVEL.point ** 2 + slope(a.frequencyMHz) * slope(b.frequencyMHz);
  }
  return sum;
}

/** Covariance of a pattern as planned, lower triangle, row by row. */
export function planCovariance(readings: readonly PatternReading[]): Float64Array {
  const n = readings.length;
  const covariance = new Float64Array(n * n);
  readings.forEach((a, i) => {
    for (let j = 0; j <= i; j++)
      covariance[i * n + j] = pairCovariance(a, readings[j] as PatternReading);
    const { model } = a.kind === 'level' ? LEVEL : a.kind === 'isolation' ? ISOLATION : RATIO;
    covariance[i * n + i] = denseAt(covariance, i * n + i) + a.uncertainty ** 2 + model ** 2;
  });
  return covariance;
}

/** Lower triangle L of a covariance (K = L L'), worked out row by row as far as it is asked for. */
export interface Whitening {
  /** L, row by row; only the rows made so far count. */
  readonly triangle: Float64Array;
  /** Makes the rows up to and including `row`. */
  readonly reach: (row: number) => void;
  /** Sum of the logarithms of the diagonal of L; makes every row. */
  readonly logDiagonal: () => number;
  /** Standard deviation of a reading. */
  readonly deviation: (row: number) => number;
}

/**
 * Whitening of a pattern under a scatter that concerns the readings marked; the covariance is positive definite by
 * its diagonal.
 */
export function whitening(
  readings: readonly PatternReading[],
  plan: Float64Array,
  scatter: Scatter,
  concerned: readonly boolean[],
): Whitening {
  const extra = EXTRA[scatter];
  const n = readings.length;
  const share = (reading: PatternReading): number =>
    reading.kind === 'level' ? extra.level : reading.kind === 'isolation' ? 0 : extra.ratio;
  const covariance = (i: number, j: number): number => {
    const planned = denseAt(plan, i * n + j);
    const [a, b] = [readings[i] as PatternReading, readings[j] as PatternReading];
    if (!concerned[i] || !concerned[j] || a.carrier !== b.carrier) return planned;
    const own = i === j && a.kind === 'level' ? extra.own ** 2 : 0;
    return planned + share(a) * share(b) + own;
  };
  const triangle = new Float64Array(n * n);
  let made = 0;
  const reach = (row: number): void => {
    for (; made <= row; made++)
      for (let j = 0; j <= made; j++) {
        let sum = covariance(made, j);
        for (let k = 0; k < j; k++)
          sum -= denseAt(triangle, made * n + k) * denseAt(triangle, j * n + k);
        triangle[made * n + j] = made === j ? Math.sqrt(sum) : sum / denseAt(triangle, j * n + j);
      }
  };
  let logDiagonal: number | undefined;
  return {
    triangle,
    reach,
    logDiagonal: () => {
      if (logDiagonal !== undefined) return logDiagonal;
      reach(n - 1);
      let sum = 0;
      for (let i = 0; i < n; i++) sum += Math.log(denseAt(triangle, i * n + i));
      logDiagonal = sum;
      return sum;
    },
    deviation: (row) => Math.sqrt(covariance(row, row)),
  };
}

/**
 * Squared length of the whitened difference between values and means of hypothesis `h`, given up beyond `enough`.
 * `z` is room for the whitened difference.
 */
export function whitenedSquare(
  { triangle, reach }: Whitening,
  values: Float64Array,
  means: readonly Float64Array[],
  h: number,
  z: Float64Array,
  enough: number,
): number {
  const n = values.length;
  let square = 0;
  for (let i = 0; i < n; i++) {
    reach(i);
    let sum = denseAt(values, i) - denseAt(means[i] as Float64Array, h);
    const row = i * n;
    for (let k = 0; k < i; k++) sum -= denseAt(triangle, row + k) * denseAt(z, k);
    const whitened = sum / denseAt(triangle, row + i);
    z[i] = whitened;
    square += whitened * whitened;
    if (square > enough) return square;
  }
  return square;
}

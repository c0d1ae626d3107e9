/** How readings of a pattern scatter together: tolerances of slots, units, carriers and test points. */

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
  // The other polarization holds stronger carriers, weaker ones or none.
  crossed: { level: 0.7, ratio: 2, own: 0 },
  ripple: { level: 0, ratio: 0, own: 1.2 },
  'unknown-carriers': { level: 4, ratio: 4, own: 0 },
};

function pairCovariance(
  a: PatternReading,
  b: PatternReading,
  extra: { readonly level: number; readonly ratio: number } | undefined,
): number {
  const sameCarrier = a.carrier === b.carrier;
  const samePoint = a.point === b.point;
  let sum = 0;
  if (a.kind === 'isolation' || b.kind === 'isolation')
    return a.kind === b.kind && sameCarrier ? ISOLATION.carrier ** 2 : 0;
  const ofA = a.kind === 'level' ? LEVEL : RATIO;
  const ofB = b.kind === 'level' ? LEVEL : RATIO;
  if (a.slot === b.slot) {
    sum += ofA.eirp * ofB.eirp;
    if (a.kind === 'level' && b.kind === 'level') sum += LEVEL.unitGain ** 2;
    if (a.kind !== 'level' && b.kind !== 'level') sum += RATIO.unitNoise ** 2;
  }
  if (sameCarrier) {
    sum += ofA.carrier * ofB.carrier;
    if (extra)
      sum +=
        (a.kind === 'level' ? extra.level : extra.ratio) *
        (b.kind === 'level' ? extra.level : extra.ratio);
  }
  if (samePoint && a.kind === 'level' && b.kind === 'level') {
    const slope = (frequencyMHz: number): number =>
      LEVEL.slope * (Math.sqrt(frequencyMHz / 1000) - 1.2);
    sum += LEVEL.point ** 2 + slope(a.frequencyMHz) * slope(b.frequencyMHz);
  }
  return sum;
}

/** Lower triangle L of the covariance (K = L L'), row by row, and the sum of the logarithms of its diagonal. */
export interface Whitening {
  readonly triangle: Float64Array;
  readonly logDiagonal: number;
  readonly deviations: Float64Array;
}

/**
 * Whitening of a pattern under a scatter that concerns the readings marked; the covariance is positive definite by
 * its diagonal.
 */
export function whitening(
  readings: readonly PatternReading[],
  scatter: Scatter,
  concerned: readonly boolean[],
): Whitening {
  const extra = EXTRA[scatter];
  const n = readings.length;
  const triangle = new Float64Array(n * n);
  const deviations = new Float64Array(n);
  let logDiagonal = 0;
  for (let i = 0; i < n; i++) {
    const a = readings[i] as PatternReading;
    for (let j = 0; j <= i; j++) {
      let sum = pairCovariance(
        a,
        readings[j] as PatternReading,
        concerned[i] && concerned[j] ? extra : undefined,
      );
      if (i === j) {
        const model = a.kind === 'level' ? LEVEL : a.kind === 'isolation' ? ISOLATION : RATIO;
        const own = a.kind === 'level' && concerned[i] ? extra.own : 0;
        sum += a.uncertainty ** 2 + model.model ** 2 + own ** 2;
        deviations[i] = Math.sqrt(sum);
      }
      for (let k = 0; k < j; k++)
        sum -= (triangle[i * n + k] as number) * (triangle[j * n + k] as number);
      if (i === j) {
        const diagonal = Math.sqrt(sum);
        triangle[i * n + i] = diagonal;
        logDiagonal += Math.log(diagonal);
      } else triangle[i * n + j] = sum / (triangle[j * n + j] as number);
    }
  }
  return { triangle, logDiagonal, deviations };
}

/** Squared length of the whitened difference; `difference` is overwritten. */
export function whitenedSquare(
  { triangle }: Whitening,
  difference: Float64Array,
  enough: number,
): number {
  const n = difference.length;
  let square = 0;
  for (let i = 0; i < n; i++) {
    let sum = difference[i] as number;
    const row = i * n;
    for (let k = 0; k < i; k++) sum -= (triangle[row + k] as number) * (difference[k] as number);
    const z = sum / (triangle[row + i] as number);
    difference[i] = z;
    square += z * z;
    if (square > enough) return square;
  }
  return square;
}

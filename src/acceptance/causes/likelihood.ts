/** How likely each hypothesis makes what was observed. */

import type { Result } from './checkedObservation.js';
import { measurementOf } from './checkedObservation.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';
import { type PatternReading, type Whitening, whitenedSquare, whitening } from './covariance.js';
import type { Hypothesis } from './hypothesis.js';
import type { CauseObservation } from './observation.js';
import type { PredictedColumn, Predictions } from './predictions.js';

/**
 * Degrees of freedom of the multivariate t that stands for the readings: their uncertainties are themselves
 * only known to some 20 percent, so a single wild reading must not decide alone.
 */
const FREEDOM = 10;
/** Hypotheses less likely than the best by this many nats do not matter. */
const NEGLIGIBLE = 25;

/** Everything observed, laid out. */
export interface ObservedPattern {
  readonly readings: readonly PatternReading[];
  /** Index of each pattern reading in the list of observations. */
  readonly readingIndex: readonly number[];
  /** Whitening under a hypothesis, worked out once for all that scatter alike. */
  readonly whiteningFor: (hypothesis: Hypothesis) => Whitening;
}

/** Sorts numeric readings of carriers out of the observations. */
export function observedPattern(
  context: CauseContext,
  observations: readonly CauseObservation[],
  results: readonly Result[],
): ObservedPattern {
  const readings: PatternReading[] = [];
  const readingIndex: number[] = [];
  observations.forEach((observation, index) => {
    const result = results[index];
    if (
      result?.kind !== 'number' ||
      (observation.kind !== 'level' &&
        observation.kind !== 'carrier-to-noise' &&
        observation.kind !== 'isolation')
    )
      return;
    const carrier = context.carriers.find((c) => c.name === observation.carrier);
    const point = context.testPoints.findIndex((p) => p.name === observation.testPoint);
    if (!carrier) return;
    readings.push({
      kind: observation.kind,
      carrier: carrier.index,
      slot: carrier.slotIndex,
      point,
      frequencyMHz: carrier.frequencyMHz,
      value: result.value,
      uncertainty: result.uncertainty,
    });
    readingIndex.push(index);
  });
  return { readings, readingIndex, whiteningFor: whitenings(context, readings) };
}

/** Whitenings by kind of scatter and by the readings that it concerns. */
function whitenings(
  context: CauseContext,
  readings: readonly PatternReading[],
): (hypothesis: Hypothesis) => Whitening {
  const made = new Map<string, Whitening>();
  return ({ scatter, change, cause, location, group }) => {
    const key = scatter === 'plan' ? scatter : `${scatter} ${cause} ${location} ${group ?? ''}`;
    const known = made.get(key);
    if (known) return known;
    const concerned = readings.map(
      ({ carrier, point }) =>
        scatter !== 'plan' &&
        change(
          context.carriers[carrier] as CarrierContext,
          context.testPoints[point] as TestPointContext,
        ) !== undefined,
    );
    const fresh = whitening(readings, scatter, concerned);
    made.set(key, fresh);
    return fresh;
  };
}

/** Logarithm of the likelihood of a result by a column, for hypothesis `h`. */
export function checkLogLikelihood(result: Result, column: PredictedColumn, h: number): number {
  const mean = column.mean[h] as number;
  const second = column.second[h] as number;
  if (result.kind === 'yes-no') return Math.log(result.seen ? mean : 1 - mean);
  if (result.kind === 'reception') {
    if (result.received === 'wanted') return Math.log(mean);
    return Math.log(Math.max(1e-4, result.received === 'other' ? second : 1 - mean - second));
  }
  const deviation = Math.hypot(second, result.uncertainty);
  const z = (result.value - mean) / deviation;
  // A slip of the pen in one check must not rule a cause out: one in two hundred is wild.
  return Math.log(0.995 * Math.exp(-0.5 * z * z) + 1e-3) - Math.log(deviation);
}

/** Logarithm of the likelihood of all observations for each hypothesis, up to one constant. */
export function logLikelihoods(
  hypotheses: readonly Hypothesis[],
  observations: readonly CauseObservation[],
  results: readonly Result[],
  pattern: ObservedPattern,
  predictions: Predictions,
): Float64Array {
  const logs = new Float64Array(hypotheses.length);
  observations.forEach((observation, index) => {
    if (pattern.readingIndex.includes(index)) return;
    const column = predictions(measurementOf(observation));
    const result = results[index] as Result;
    for (let h = 0; h < logs.length; h++)
      logs[h] = (logs[h] as number) + checkLogLikelihood(result, column, h);
  });
  const n = pattern.readings.length;
  if (n === 0) return logs;
  const columns = pattern.readingIndex.map(
    (index) => predictions(measurementOf(observations[index] as CauseObservation)).mean,
  );
  const difference = new Float64Array(n);
  let best = Number.NEGATIVE_INFINITY;
  // The likeliest by the checks come first, so that the others can be left early.
  const order = Array.from(logs.keys()).sort((a, b) => (logs[b] as number) - (logs[a] as number));
  const plainDiagonal = pattern.whiteningFor(hypotheses[0] as Hypothesis).logDiagonal;
  for (const h of order) {
    // Extra scatter only makes the diagonal larger, so this cannot come back.
    if ((logs[h] as number) - plainDiagonal < best - NEGLIGIBLE) {
      logs[h] = Number.NEGATIVE_INFINITY;
      continue;
    }
    const whiten = pattern.whiteningFor(hypotheses[h] as Hypothesis);
    const start = (logs[h] as number) - whiten.logDiagonal;
    for (let i = 0; i < n; i++)
      difference[i] =
        (pattern.readings[i] as PatternReading).value - ((columns[i] as Float64Array)[h] as number);
    // Beyond this square the hypothesis is negligible, so the rest need not be added up.
    const enough =
      FREEDOM * (Math.exp((2 * Math.max(0, start - best + NEGLIGIBLE)) / (FREEDOM + n)) - 1);
    const square = whitenedSquare(whiten, difference, enough);
    const total = start - 0.5 * (FREEDOM + n) * Math.log1p(square / FREEDOM);
    if (total > best) best = total;
    logs[h] = total;
  }
  return logs;
}

/** How likely each hypothesis makes what was observed. */

import type { Result } from './checkedObservation.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';
import {
  type PatternReading,
  planCovariance,
  type Whitening,
  whitenedSquare,
  whitening,
} from './covariance.js';
import type { Hypothesis } from './hypothesis.js';
import type { CauseObservation } from './observation.js';
import type { PredictedColumn } from './predictions.js';

/**
 * Degrees of freedom of the multivariate t that stands for the readings: their uncertainties are themselves
 * only known to some 20 percent, so a single wild reading must not decide alone.
 */
const FREEDOM = 10;
/** Hypotheses less likely than the best by this many nats do not matter. */
const NEGLIGIBLE = 16;
/** Hypotheses this close to the best by the checks are weighed first. */
const LIKELY = 6;

/** Everything observed, laid out. */
export interface ObservedPattern {
  readonly readings: readonly PatternReading[];
  /** Index of each pattern reading in the list of observations. */
  readonly readingIndex: readonly number[];
  /** Whitening under a hypothesis, by its index, worked out once for all that scatter alike. */
  readonly whiteningFor: (h: number) => Whitening;
}

/** Sorts numeric readings of carriers out of the observations. */
export function observedPattern(
  context: CauseContext,
  observations: readonly CauseObservation[],
  results: readonly Result[],
  hypotheses: readonly Hypothesis[],
  classes: Int32Array,
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
  return {
    readings,
    readingIndex,
    whiteningFor: whitenings(context, readings, hypotheses, classes),
  };
}

/** Number of the way in which a hypothesis scatters; equal ones share a whitening. */
export function scatterClasses(hypotheses: readonly Hypothesis[]): Int32Array {
  const classes = new Map<string, number>();
  return Int32Array.from(hypotheses, ({ scatter, cause, location, group }) => {
    const key = scatter === 'plan' ? scatter : `${scatter} ${cause} ${location} ${group ?? ''}`;
    const number = classes.get(key) ?? classes.size;
    classes.set(key, number);
    return number;
  });
}

/** Whitenings by class of scatter, made when first asked for. */
function whitenings(
  context: CauseContext,
  readings: readonly PatternReading[],
  hypotheses: readonly Hypothesis[],
  classes: Int32Array,
): (h: number) => Whitening {
  const made: (Whitening | undefined)[] = [];
  const plan = planCovariance(readings);
  return (h) => {
    const number = classes[h] as number;
    const known = made[number];
    if (known) return known;
    const { scatter, change } = hypotheses[h] as Hypothesis;
    const concerned = readings.map(
      ({ carrier, point }) =>
        scatter !== 'plan' &&
        change(
          context.carriers[carrier] as CarrierContext,
          context.testPoints[point] as TestPointContext,
        ) !== undefined,
    );
    const fresh = whitening(readings, plan, scatter, concerned);
    made[number] = fresh;
    return fresh;
  };
}

/** Column of logarithms that belongs to what was seen. */
function seenLogs(result: Result, { logs }: PredictedColumn): Float64Array | undefined {
  if (result.kind === 'yes-no') return logs[result.seen ? 0 : 1];
  if (result.kind === 'reception')
    return logs[['wanted', 'other', 'nothing'].indexOf(result.received)];
  return undefined;
}

/** Logarithm of the likelihood of a result by a column, for hypothesis `h`. */
export function checkLogLikelihood(result: Result, column: PredictedColumn, h: number): number {
  const logs = seenLogs(result, column);
  if (logs) return logs[h] as number;
  if (result.kind !== 'number') return 0;
  const deviation = Math.hypot(column.second[h] as number, result.uncertainty);
  const z = (result.value - (column.mean[h] as number)) / deviation;
  // A slip of the pen in one check must not rule a cause out: one in a thousand is wild.
  return Math.log(0.995 * Math.exp(-0.5 * z * z) + 1e-3) - Math.log(deviation);
}

/** Logarithm of the likelihood of all observations for each of `count` hypotheses, up to one constant. */
export function logLikelihoods(
  count: number,
  columns: readonly PredictedColumn[],
  results: readonly Result[],
  pattern: ObservedPattern,
): Float64Array {
  const logs = new Float64Array(count);
  const inPattern = new Set(pattern.readingIndex);
  results.forEach((result, index) => {
    if (inPattern.has(index)) return;
    const column = columns[index] as PredictedColumn;
    const seen = seenLogs(result, column);
    if (seen)
      for (let h = 0; h < logs.length; h++) logs[h] = (logs[h] as number) + (seen[h] as number);
    else
      for (let h = 0; h < logs.length; h++)
        logs[h] = (logs[h] as number) + checkLogLikelihood(result, column, h);
  });
  const n = pattern.readings.length;
  if (n === 0) return logs;
  const means = pattern.readingIndex.map((index) => (columns[index] as PredictedColumn).mean);
  const values = Float64Array.from(pattern.readings, (reading) => reading.value);
  const difference = new Float64Array(n);
  const plainDiagonal = pattern.whiteningFor(0).logDiagonal;
  let highest = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > highest) highest = log;
  let best = Number.NEGATIVE_INFINITY;
  const weigh = (h: number): void => {
    const whiten = pattern.whiteningFor(h);
    const start = (logs[h] as number) - whiten.logDiagonal;
    for (let i = 0; i < n; i++)
      difference[i] = (values[i] as number) - ((means[i] as Float64Array)[h] as number);
    // Beyond this square the hypothesis is negligible, so the rest need not be added up.
    const enough =
      FREEDOM * (Math.exp((2 * Math.max(0, start - best + NEGLIGIBLE)) / (FREEDOM + n)) - 1);
    const square = whitenedSquare(whiten, difference, enough);
    const total = start - 0.5 * (FREEDOM + n) * Math.log1p(square / FREEDOM);
    if (total > best) best = total;
    logs[h] = total;
  };
  // The likeliest by the checks come first, so that the others can be left early.
  const later: number[] = [];
  for (let h = 0; h < logs.length; h++)
    if ((logs[h] as number) > highest - LIKELY) weigh(h);
    else later.push(h);
  for (const h of later) {
    // Extra scatter only makes the diagonal larger, so this one cannot come back.
    if ((logs[h] as number) - plainDiagonal < best - NEGLIGIBLE) logs[h] = Number.NEGATIVE_INFINITY;
    else weigh(h);
  }
  return logs;
}

/** The numeric readings of a visit, laid out with how they scatter together. */

import { valueAt } from '../../numeric/columns.js';
import type { Result } from './checkedObservation.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';
import { type PatternReading, planCovariance, type Whitening, whitening } from './covariance.js';
import type { Hypothesis } from './hypothesis.js';
import type { CauseObservation } from './observation.js';
import type { PredictedColumn } from './predictions.js';

/** Everything observed, laid out. */
export interface ObservedPattern {
  readonly readings: readonly PatternReading[];
  /** Their values. */
  readonly values: Float64Array;
  /** Index of each pattern reading in the list of observations. */
  readonly readingIndex: readonly number[];
  /** Whitening under a hypothesis, by its index, worked out once for all that scatter alike. */
  readonly whiteningFor: (h: number) => Whitening;
}

/**
 * Sorts numeric readings of carriers out of the observations, those first that depart most from the plan: hypotheses
 * that do not explain these are left soonest.
 */
export function observedPattern(
  context: CauseContext,
  observations: readonly CauseObservation[],
  results: readonly Result[],
  columns: readonly PredictedColumn[],
  scatter: { readonly hypotheses: readonly Hypothesis[]; readonly classes: Int32Array },
): ObservedPattern {
  const found: { reading: PatternReading; index: number; departure: number }[] = [];
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
    const { value, uncertainty } = result;
    const planned = columns[index]?.mean[0] ?? value;
    found.push({
      reading: {
        kind: observation.kind,
        carrier: carrier.index,
        slot: carrier.slotIndex,
        point,
        frequencyMHz: carrier.frequencyMHz,
        value,
        uncertainty,
      },
      index,
      departure: Math.abs(value - planned) / uncertainty,
    });
  });
  found.sort((a, b) => b.departure - a.departure);
  const readings = found.map(({ reading }) => reading);
  return {
    readings,
    values: Float64Array.from(readings, ({ value }) => value),
    readingIndex: found.map(({ index }) => index),
    whiteningFor: whitenings(context, readings, scatter.hypotheses, scatter.classes),
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
    const number = valueAt(classes, h);
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

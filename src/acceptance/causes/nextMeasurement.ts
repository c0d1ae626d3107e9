/** The one measurement, not yet made, that best separates two causes. */

import { denseAt } from '../../numeric/columns.js';
import { measurementKey, segmentNames } from './checkedObservation.js';
import type { CauseContext } from './context.js';
import { type CauseMeasurement, DEFAULT_UNCERTAINTY } from './observation.js';
import type { CauseShare } from './posterior.js';
import type { Predictions } from './predictions.js';
import type { NextMeasurement } from './result.js';

/** A measurement that takes away less than this share of the mistakes is not worth the climb. */
const WORTHWHILE = 0.2;

/** What a measurement costs in time or climbing, as the separation that it must bring on top. */
const TROUBLE: Readonly<Partial<Record<CauseMeasurement['kind'], number>>> = {
  'mast-lean': 0.02,
  level: 0.03,
  'carrier-to-noise': 0.03,
  reception: 0.03,
  isolation: 0.05,
  'supply-voltage': 0.05,
  spectrum: 0.05,
  'cable-check': 0.05,
  'connector-check': 0.08,
  'polarization-null': 0.1,
  search: 0.1,
  'repeat-later': 0.25,
};

/** All that can be measured, the least trouble first. */
function possible(context: CauseContext): readonly CauseMeasurement[] {
  const list: CauseMeasurement[] = [
    { kind: 'rain-seen' },
    ...context.slots.map((slot) => ({ kind: 'sun-near' as const, slot: slot.name })),
    ...context.slots.map((slot) => ({ kind: 'obstacle-seen' as const, slot: slot.name })),
    { kind: 'mast-lean' },
  ];
  const kinds = ['level', 'carrier-to-noise', 'isolation', 'reception'] as const;
  for (const point of context.testPoints)
    for (const carrier of context.carriers)
      if (point.slot === undefined || point.slot === carrier.slot)
        for (const kind of kinds) list.push({ kind, carrier: carrier.name, testPoint: point.name });
  for (const point of context.testPoints)
    if (point.slot === undefined) list.push({ kind: 'supply-voltage', testPoint: point.name });
  for (const segment of segmentNames(context))
    list.push({ kind: 'connector-check', segment }, { kind: 'cable-check', segment });
  for (const slot of context.slots)
    list.push({ kind: 'polarization-null', slot: slot.name }, { kind: 'search', slot: slot.name });
  list.push({ kind: 'spectrum' }, { kind: 'repeat-later' });
  return list;
}

interface Moments {
  readonly mean: number;
  readonly variance: number;
}

/** Mean and variance of a column over the hypotheses of a cause, by their posterior weights. */
function moments(values: Float64Array, members: readonly number[], weights: Float64Array): Moments {
  let total = 0;
  let mean = 0;
  for (const h of members) {
    total += denseAt(weights, h);
    mean += denseAt(weights, h) * denseAt(values, h);
  }
  mean /= total;
  let variance = 0;
  for (const h of members)
    variance += (denseAt(weights, h) / total) * (denseAt(values, h) - mean) ** 2;
  return { mean, variance };
}

/** Overlap of two chances of yes (Bhattacharyya coefficient): 1 where they are equal. */
function overlapOfChances(a: number, b: number): number {
  return Math.sqrt(a * b) + Math.sqrt((1 - a) * (1 - b));
}

/** Overlap of two normal distributions (Bhattacharyya coefficient). */
function overlapOfNormals(a: Moments, b: Moments): number {
  const sum = a.variance + b.variance;
  const widths = Math.sqrt((2 * Math.sqrt(a.variance * b.variance)) / sum);
  return widths * Math.exp(-((a.mean - b.mean) ** 2) / (4 * sum));
}

/** Members of a cause that still count. */
function members({ start, end, best }: CauseShare, weights: Float64Array): readonly number[] {
  const least = 1e-3 * denseAt(weights, best);
  const list: number[] = [];
  for (let h = start; h < end; h++) if (denseAt(weights, h) > least) list.push(h);
  return list;
}

/** Finds the measurement with the least overlap between two causes. */
export function nextMeasurement(
  context: CauseContext,
  weights: Float64Array,
  pair: readonly [CauseShare, CauseShare],
  known: { readonly made: ReadonlySet<string>; readonly predictions: Predictions },
): NextMeasurement | null {
  const { made, predictions } = known;
  const first = members(pair[0], weights);
  const second = members(pair[1], weights);
  if (first.length === 0 || second.length === 0) return null;
  const wanted = [...first, ...second];
  const between = [pair[0].cause, pair[1].cause] as const;
  let best: NextMeasurement | null = null;
  let bestWorth = Number.NEGATIVE_INFINITY;
  for (const measurement of possible(context)) {
    if (made.has(measurementKey(measurement))) continue;
    const column = predictions(measurement, wanted);
    const a = moments(column.mean, first, weights);
    const b = moments(column.mean, second, weights);
    let overlap: number;
    if (column.kind === 'number') {
      const usual = DEFAULT_UNCERTAINTY[measurement.kind as keyof typeof DEFAULT_UNCERTAINTY];
      // Half a decibel stands for what the plan itself does not know.
      const own = usual ** 2 + 0.25;
      const doubt = (members: readonly number[]): number => {
        const deviation = moments(column.second, members, weights);
        return deviation.mean ** 2 + own;
      };
      overlap = overlapOfNormals(
        { mean: a.mean, variance: a.variance + doubt(first) },
        { mean: b.mean, variance: b.variance + doubt(second) },
      );
    } else overlap = overlapOfChances(a.mean, b.mean);
    const separationRatio = Math.max(0, 1 - overlap);
    const worth = separationRatio - (TROUBLE[measurement.kind] ?? 0);
    if (separationRatio > WORTHWHILE && worth > bestWorth) {
      best = { measurement, between, predicted: [a.mean, b.mean], separationRatio };
      bestWorth = worth;
    }
  }
  return best;
}

/** From likelihoods to probabilities of causes. */

import { denseAt } from '../../numeric/columns.js';
import type { Hypothesis } from './hypothesis.js';
import type { FaultCause } from './installation.js';

/** Hypotheses of one cause: they stand together, from `start` to before `end`. */
export interface CauseRange {
  readonly cause: FaultCause;
  readonly start: number;
  readonly end: number;
}

/** A cause with its share of the probability. */
export interface CauseShare extends CauseRange {
  /** Probability, 0 to 1. */
  readonly share: number;
  /** Its likeliest hypothesis. */
  readonly best: number;
  /** Share of the location of that one in the cause, 0 to 1. */
  readonly locationRatio: number;
}

/** Ranges of the causes. */
export function causeRanges(hypotheses: readonly Hypothesis[]): readonly CauseRange[] {
  const ranges: { cause: FaultCause; start: number; end: number }[] = [];
  hypotheses.forEach(({ cause }, h) => {
    const last = ranges[ranges.length - 1];
    if (last?.cause === cause) last.end = h + 1;
    else ranges.push({ cause, start: h, end: h + 1 });
  });
  return ranges;
}

/** Logarithm of the prior of each hypothesis: of its cause, shared evenly by locations, then by its weight. */
export function logPriors(
  hypotheses: readonly Hypothesis[],
  ranges: readonly CauseRange[],
  prior: Readonly<Record<FaultCause, number>>,
): Float64Array {
  const logs = new Float64Array(hypotheses.length);
  for (const { cause, start, end } of ranges) {
    const own = hypotheses.slice(start, end);
    const locations = new Set(own.map(({ location }) => location)).size;
    own.forEach(({ weight }, i) => {
      logs[start + i] = Math.log((weight * prior[cause]) / locations);
    });
  }
  return logs;
}

/** Weights of hypotheses, the highest about 1, and shares of causes, likeliest first. */
export function causeShares(
  hypotheses: readonly Hypothesis[],
  ranges: readonly CauseRange[],
  logPrior: Float64Array,
  logs: Float64Array,
): { readonly weights: Float64Array; readonly shares: readonly CauseShare[] } {
  const count = logs.length;
  const weights = new Float64Array(count);
  let highest = Number.NEGATIVE_INFINITY;
  for (let h = 0; h < count; h++) {
    const sum = denseAt(logs, h) + denseAt(logPrior, h);
    weights[h] = sum;
    if (sum > highest) highest = sum;
  }
  let total = 0;
  for (let h = 0; h < count; h++) {
    const below = denseAt(weights, h) - highest;
    const weight = below < -40 ? 0 : Math.exp(below);
    weights[h] = weight;
    total += weight;
  }
  const shares = ranges.map((range): CauseShare => {
    let sum = 0;
    let best = range.start;
    for (let h = range.start; h < range.end; h++) {
      sum += denseAt(weights, h);
      if (denseAt(weights, h) > denseAt(weights, best)) best = h;
    }
    let here = 0;
    const location = hypotheses[best]?.location;
    if (sum > 0)
      for (let h = range.start; h < range.end; h++)
        if (denseAt(weights, h) > 0 && hypotheses[h]?.location === location)
          here += denseAt(weights, h);
    return {
      ...range,
      share: sum / total,
      best,
      locationRatio: sum > 0 ? Math.min(1, here / sum) : 0,
    };
  });
  return { weights, shares: shares.sort((a, b) => b.share - a.share) };
}

/** How likely each hypothesis makes what was observed. */

import { denseAt } from '../../numeric/columns.js';
import type { Result } from './checkedObservation.js';
import { whitenedSquare } from './covariance.js';
import type { ObservedPattern } from './pattern.js';
import type { PredictedColumn } from './predictions.js';

/**
 * Degrees of freedom of the multivariate t that stands for the readings: their uncertainties are themselves
 * only known to some 20 percent, so a single wild reading must not decide alone.
 */
const FREEDOM = 10;
/** Hypotheses less likely than the best by this many nats do not matter. */
const NEGLIGIBLE = 12;
/** Hypotheses this close to the best by the checks are weighed first. */
const LIKELY = 6;

/** Column of logarithms that belongs to what was seen. */
function seenLogs(result: Result, { logs }: PredictedColumn): Float64Array | undefined {
  if (result.kind === 'yes-no') return logs()[result.seen ? 0 : 1];
  if (result.kind === 'reception')
    return logs()[['wanted', 'other', 'nothing'].indexOf(result.received)];
  return undefined;
}

/** Logarithm of the likelihood of a result by a column, for hypothesis `h`. */
export function checkLogLikelihood(result: Result, column: PredictedColumn, h: number): number {
  const logs = seenLogs(result, column);
  // A yes, a no or a service has few outcomes, so their chances are worked out beforehand.
  if (logs) return denseAt(logs, h);
  if (result.kind !== 'number') return 0;
  // Reading and prediction err independently, so their squares add.
  const deviation = Math.hypot(denseAt(column.second, h), result.uncertainty);
  const z = (result.value - denseAt(column.mean, h)) / deviation;
  // A slip of the pen in one check must not rule a cause out: one in a thousand is wild.
  return Math.log(0.995 * Math.exp(-0.5 * z * z) + 1e-3) - Math.log(deviation);
}

/** Adds the logarithm of a number's likelihood; neighbours mostly predict the same, so it is worked out anew only where not. */
function addNumber(logs: Float64Array, result: Result, column: PredictedColumn): void {
  let last = 0;
  for (let h = 0; h < logs.length; h++) {
    const same =
      h > 0 && column.mean[h] === column.mean[h - 1] && column.second[h] === column.second[h - 1];
    if (!same) last = checkLogLikelihood(result, column, h);
    logs[h] = denseAt(logs, h) + last;
  }
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
    // Levels and ratios hang together (one plan, one cable), so they are weighed at once below and not one by one.
    if (inPattern.has(index)) return;
    const column = columns[index] as PredictedColumn;
    const seen = seenLogs(result, column);
    if (seen) for (let h = 0; h < logs.length; h++) logs[h] = denseAt(logs, h) + denseAt(seen, h);
    else addNumber(logs, result, column);
  });
  const n = pattern.readings.length;
  // Only looks and checks so far: they are independent, and nothing is left to weigh.
  if (n === 0) return logs;
  const { values } = pattern;
  const means = pattern.readingIndex.map((index) => (columns[index] as PredictedColumn).mean);
  const room = new Float64Array(n);
  const plainDiagonal = pattern.whiteningFor(0).logDiagonal();
  let highest = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > highest) highest = log;
  // Best total so far; it rises while hypotheses are weighed and lets the hopeless be left early.
  let best = Number.NEGATIVE_INFINITY;
  const weigh = (h: number): void => {
    const whiten = pattern.whiteningFor(h);
    // Extra scatter only makes the diagonal larger, so the plan's stands for it until the square is known.
    const atMost = denseAt(logs, h) - plainDiagonal;
    // The t solved for its square: from this square on the total lies too far below the best to matter.
    const enough =
      FREEDOM * (Math.exp((2 * Math.max(0, atMost - best + NEGLIGIBLE)) / (FREEDOM + n)) - 1);
    // It stops adding as soon as the sum is beyond `enough`.
    const square = whitenedSquare(whiten, values, means, h, room, enough);
    if (square > enough) {
      logs[h] = Number.NEGATIVE_INFINITY;
      return;
    }
    const total =
      denseAt(logs, h) - whiten.logDiagonal() - 0.5 * (FREEDOM + n) * Math.log1p(square / FREEDOM);
    if (total > best) best = total;
    logs[h] = total;
  };
  // The likeliest by the checks come first, so that the others can be left early.
  const later: number[] = [];
  for (let h = 0; h < logs.length; h++)
    if (denseAt(logs, h) > highest - LIKELY) weigh(h);
    else later.push(h);
  for (const h of later) {
    // Extra scatter only makes the diagonal larger, so this one cannot come back.
    if (denseAt(logs, h) - plainDiagonal < best - NEGLIGIBLE) logs[h] = Number.NEGATIVE_INFINITY;
    else weigh(h);
  }
  return logs;
}

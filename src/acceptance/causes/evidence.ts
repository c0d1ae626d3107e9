/** What speaks for and against a cause, observation by observation. */

import { denseAt } from '../../numeric/columns.js';
import type { Result } from './checkedObservation.js';
import { checkLogLikelihood } from './likelihood.js';
import type { CauseObservation } from './observation.js';
import type { ObservedPattern } from './pattern.js';
import type { PredictedColumn } from './predictions.js';
import type { CauseEvidence } from './result.js';

/** Difference of log-likelihood beyond which an observation takes sides: odds of two to one. */
const TAKES_SIDES = Math.log(2);

/** Chance of what was seen. */
function chance(result: Result, column: PredictedColumn, h: number): number {
  const mean = denseAt(column.mean, h);
  if (result.kind === 'yes-no') return result.seen ? mean : 1 - mean;
  if (result.kind !== 'reception' || result.received === 'wanted') return mean;
  const other = denseAt(column.second, h);
  return result.received === 'other' ? other : Math.max(0, 1 - mean - other);
}

/** Evidence for hypothesis `h` as compared with hypothesis 0, nothing wrong; strongest first. */
export function evidenceFor(
  h: number,
  observations: readonly CauseObservation[],
  results: readonly Result[],
  pattern: ObservedPattern,
  columns: readonly PredictedColumn[],
): readonly CauseEvidence[] {
  const weighed = observations.map((observation, index) => {
    const result = results[index] as Result;
    const column = columns[index] as PredictedColumn;
    const slot = pattern.readingIndex.indexOf(index);
    let logRatio: number;
    let deviationRatio = 0;
    if (slot >= 0 && result.kind === 'number') {
      const z = (at: number): number => {
        const whiten = pattern.whiteningFor(at);
        const deviation = whiten.deviation(slot);
        return (result.value - denseAt(column.mean, at)) / deviation;
      };
      deviationRatio = z(h);
      logRatio = 0.5 * (z(0) ** 2 - z(h) ** 2);
    } else {
      logRatio = checkLogLikelihood(result, column, h) - checkLogLikelihood(result, column, 0);
      if (result.kind === 'number')
        deviationRatio =
          (result.value - denseAt(column.mean, h)) /
          Math.hypot(denseAt(column.second, h), result.uncertainty);
    }
    const against = logRatio < -TAKES_SIDES || Math.abs(deviationRatio) > 3;
    const speaks = against ? 'against' : logRatio > TAKES_SIDES ? 'for' : 'neutral';
    const predicted = (at: number): number =>
      result.kind === 'number' ? denseAt(column.mean, at) : chance(result, column, at);
    return {
      strength: Math.abs(logRatio),
      entry: {
        observation,
        predicted: predicted(h),
        withoutFault: predicted(0),
        deviationRatio,
        speaks,
      } satisfies CauseEvidence,
    };
  });
  return weighed.sort((a, b) => b.strength - a.strength).map(({ entry }) => entry);
}

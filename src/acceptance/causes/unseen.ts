/** Causes that the readings so far cannot show. */

import { denseAt } from '../../numeric/columns.js';
import type { Hypothesis } from './hypothesis.js';
import type { PredictedColumn } from './predictions.js';
import type { UnseenCause } from './result.js';

/** A change of a prediction below this, in decibels or chance, shows in no reading. */
const INVISIBLE = 0.05;

/**
 * Causes, by place, all of whose hypotheses predict for every observation what is predicted where nothing is wrong (the first hypothesis),
 * and how probable they are together.
 */
export function unseenCauses(
  hypotheses: readonly Hypothesis[],
  columns: readonly PredictedColumn[],
  weights: Float64Array,
): { readonly causes: readonly UnseenCause[]; readonly probabilityRatio: number } {
  const seen = new Map<string, { readonly at: UnseenCause; visible: boolean; weight: number }>();
  let total = 0;
  hypotheses.forEach(({ cause, location }, h) => {
    total += denseAt(weights, h);
    if (h === 0) return;
    const key = `${cause}\n${location}`;
    const entry = seen.get(key) ?? { at: { cause, location }, visible: false, weight: 0 };
    seen.set(key, entry);
    entry.weight += denseAt(weights, h);
    if (entry.visible) return;
    entry.visible = columns.some(
      ({ mean, second }) =>
        Math.abs(denseAt(mean, h) - denseAt(mean, 0)) > INVISIBLE ||
        Math.abs(denseAt(second, h) - denseAt(second, 0)) > INVISIBLE,
    );
  });
  const hidden = [...seen.values()].filter(({ visible }) => !visible);
  return {
    causes: hidden.map(({ at }) => at),
    probabilityRatio: hidden.reduce((sum, { weight }) => sum + weight, 0) / total,
  };
}

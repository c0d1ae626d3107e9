/** How sure a counted share is. */

import { oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { incompleteBeta } from '../../numeric/beta.js';
import { bracketedRoot } from '../../numeric/root.js';
import { wholeNumber } from './samplingPlan.js';

/** Quantile of the beta distribution. */
export function betaQuantile(probability: number, a: number, b: number): number {
  const solved = bracketedRoot((x) => incompleteBeta(x, a, b) - probability, {
    from: 0,
    to: 1,
    tolerance: 1e-14,
  });
  // The distribution rises from 0 to 1 over the interval, so the ends always bracket the quantile.
  return solved as number;
}

/** A share with its 95 % interval. */
export interface ShareInterval {
  /** Share counted, 0 to 1. */
  readonly ratio: number;
  /** Lower end of the 95 % interval, 0 to 1. */
  readonly fromRatio: number;
  /** Upper end. */
  readonly toRatio: number;
}

const Z = 1.959963984540054;

const SHARE_INTERVAL_COUNTED_KEYS = { count: true, of: true, method: true } satisfies Keys<
  Parameters<typeof shareInterval>[0]
>;

/**
 * 95 % interval of a share from a count.
 *
 * `at-least-95` (Clopper and Pearson) covers at least 95 % always and is wide; `about-95` (Wilson) covers 95 % on average.
 *
 * @param counted  How many of how many, 1 to 10 million; method, `at-least-95` by default.
 * @throws {@link DomainError} naming the field.
 * Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934); E. B. Wilson, JASA 22 (1927). Accuracy: 1e-6, the printed digits of the worked examples.
 * @example
 * ```ts
 * import { shareInterval } from 'slantpath/acceptance';
 * shareInterval({ count: 0, of: 20, method: 'about-95' }).toRatio.toFixed(3); // => '0.161'
 * ```
 */
export function shareInterval(counted: {
  readonly count: number;
  readonly of: number;
  readonly method?: 'at-least-95' | 'about-95';
}): ShareInterval {
  const given = knownOnly('counted', counted, SHARE_INTERVAL_COUNTED_KEYS);
  const n = wholeNumber('of', given.of, 1, 1e7);
  const x = wholeNumber('count', given.count, 0, n);
  const method = oneOf('method', given.method ?? 'at-least-95', ['at-least-95', 'about-95']);
  const ratio = x / n;
  if (method === 'at-least-95')
    return {
      ratio,
      fromRatio: x === 0 ? 0 : betaQuantile(0.025, x, n - x + 1),
      toRatio: x === n ? 1 : betaQuantile(0.975, x + 1, n - x),
    };
  const square = (Z * Z) / n;
  const middle = ratio + square / 2;
  const half = Z * Math.sqrt((ratio * (1 - ratio)) / n + square / (4 * n));
  return {
    ratio,
    fromRatio: x === 0 ? 0 : Math.max(0, (middle - half) / (1 + square)),
    toRatio: x === n ? 1 : Math.min(1, (middle + half) / (1 + square)),
  };
}

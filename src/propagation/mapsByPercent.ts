/** Maps given for a few percentages: the two that enclose a percentage, and the way between them. */

import { DomainError, inRange } from '../errors.js';
import { valueAt } from '../numeric/columns.js';

/** Where a percentage lies among those of a list. */
export interface BetweenPercents {
  /** Index of the next smaller percentage (or the only usable one). */
  readonly below: number;
  /** Index of the next larger percentage. */
  readonly above: number;
  /** Part of the way from `below` to `above`, along the logarithm of the percentage. */
  readonly ratio: number;
  /** The percentage lies beyond the list, so the list's end is used. */
  readonly outside: boolean;
}

/**
 * Neighbours of a percentage in a rising list, as P.836 and P.840 interpolate: linear in the value,
 * logarithmic in the percentage.
 *
 * @throws DomainError naming `parameter` where the list is empty or does not rise, or `exceededPercent`.
 */
export function betweenPercents(
  parameter: string,
  percents: readonly number[],
  exceededPercent: number,
): BetweenPercents {
  const wanted = inRange('exceededPercent', exceededPercent, 1e-9, 100);
  percents.forEach((percent, index) => {
    inRange(`${parameter}[${index}].exceededPercent`, percent, 1e-9, 100);
    if (index > 0 && percent <= valueAt(percents, index - 1))
      throw new DomainError({
        code: 'inconsistent',
        parameter: `${parameter}[${index}].exceededPercent`,
        received: percent,
        allowed: 'above that of the entry before it',
      });
  });
  if (percents.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter,
      received: percents,
      allowed: 'a list with at least one percentage',
    });
  const last = percents.length - 1;
  const first = valueAt(percents, 0);
  const end = valueAt(percents, last);
  if (wanted <= first) return { below: 0, above: 0, ratio: 0, outside: wanted < first };
  if (wanted >= end) return { below: last, above: last, ratio: 0, outside: wanted > end };
  const above = percents.findIndex((percent) => percent >= wanted);
  const lower = valueAt(percents, above - 1);
  const ratio = Math.log(wanted / lower) / Math.log(valueAt(percents, above) / lower);
  return { below: above - 1, above, ratio, outside: false };
}

/** The value part of the way between two, exact at both ends. */
export function blend(below: number, above: number, ratio: number): number {
  return ratio === 0 ? below : below + (above - below) * ratio;
}

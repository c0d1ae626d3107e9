/** Repeated readings in groups (one site, one visit, one person): how far groups differ beyond chance. */

import { DomainError, inRange, list } from '../errors.js';
import { minimumBetween } from '../numeric/minimum.js';

/** Spread within and between groups. */
export interface GroupSpread {
  /** Mean over the population of groups in dB. */
  readonly meanDb: number;
  /** Standard uncertainty of that mean in dB. */
  readonly standardUncertaintyDb: number;
  /** Standard deviation between groups in dB; near 0 where chance within the groups explains all. */
  readonly betweenDb: number;
  /** Standard deviation of one reading within its group in dB. */
  readonly withinDb: number;
}

/**
 * Spread between and within groups of readings, by restricted maximum likelihood.
 *
 * @param groupsDb  At least two groups with at least one reading each in dB, three readings in all.
 * @throws {@link DomainError} `too-few`, or naming the reading that is not finite.
 * Source: H. D. Patterson and R. Thompson, Biometrika 58 (1971), 545-554. Accuracy: 1e-5 of each deviation.
 * @example
 * ```ts
 * import { spreadOfGroups } from 'slantpath/readings';
 * const spread = spreadOfGroups([
 *   [61.2, 61.4],
 *   [62.3, 62.1],
 *   [60.9, 61.1],
 * ]);
 * spread.withinDb.toFixed(2); // => '0.14'
 * ```
 */
export function spreadOfGroups(groupsDb: readonly ArrayLike<number>[]): GroupSpread {
  const total = Array.isArray(groupsDb)
    ? Array.from(groupsDb as readonly ArrayLike<number>[]).reduce(
        (sum, group, index) => sum + list(`groupsDb[${index}]`, group).length,
        0,
      )
    : 0;
  if (!Array.isArray(groupsDb) || groupsDb.length < 2 || !(total >= 3))
    throw new DomainError({
      code: 'too-few',
      parameter: 'groupsDb',
      received: groupsDb,
      allowed: 'at least 2 groups and 3 readings',
    });
  const groups = groupsDb.map((group, index) => {
    const values = Array.from(group as ArrayLike<number>, (value, row) =>
      inRange(`groupsDb[${index}]`, value, -1e9, 1e9, undefined, row),
    );
    if (values.length === 0)
      throw new DomainError({
        code: 'empty',
        parameter: `groupsDb[${index}]`,
        received: group,
        allowed: 'a group with a reading',
      });
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    return {
      count: values.length,
      mean,
      squares: values.reduce((sum, value) => sum + (value - mean) ** 2, 0),
    };
  });
  const within = groups.reduce((sum, group) => sum + group.squares, 0);
  // For a ratio r of the variance between to that within, a group's mean has the variance r + 1/n in units of that within.
  const at = (ratio: number) => {
    let weights = 0;
    let sum = 0;
    let logarithms = 0;
    for (const { count, mean } of groups) {
      const weight = count / (1 + count * ratio);
      weights += weight;
      sum += weight * mean;
      logarithms += Math.log(1 + count * ratio);
    }
    const mean = sum / weights;
    const squares = groups.reduce(
      (left, { count, mean: own }) => left + (count / (1 + count * ratio)) * (own - mean) ** 2,
      within,
    );
    const variance = Math.max(squares, 1e-300) / (total - 1);
    const criterion = (total - 1) * Math.log(variance) + logarithms + Math.log(weights);
    return { mean, weights, variance, criterion };
  };
  const logRatio = minimumBetween((x) => at(Math.exp(x)).criterion, {
    from: -30,
    to: 30,
    tolerance: 1e-10,
  }).at;
  const { mean, weights, variance } = at(Math.exp(logRatio));
  return {
    meanDb: mean,
    standardUncertaintyDb: Math.sqrt(variance / weights),
    betweenDb: Math.sqrt(variance * Math.exp(logRatio)),
    withinDb: Math.sqrt(variance),
  };
}

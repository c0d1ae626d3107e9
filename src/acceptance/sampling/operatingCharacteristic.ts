/** What a sampling plan lets through: probability of acceptance against the share of bad installations. */

import { inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { logGamma } from '../../numeric/beta.js';
import { noncentralTProbability } from '../../numeric/noncentralT.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';
import { betaQuantile } from './proportion.js';
import { wholeNumber } from './samplingPlan.js';

const logChoose = (n: number, k: number): number =>
  logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);

const ACCEPTANCE_PROBABILITY_PLAN_KEYS = {
  sampleSize: true,
  acceptanceNumber: true,
  badRatio: true,
  lotSize: true,
  badCount: true,
} satisfies Keys<Parameters<typeof acceptanceProbability>[0]>;

/**
 * Probability that a lot is accepted by a single sampling plan, 0 to 1.
 *
 * Give `badRatio` for a long series of installations (binomial), or `lotSize` and `badCount` for one small lot (hypergeometric).
 *
 * @param plan  Sample size, acceptance number; share of bad ones 0 to 1, or lot size and number of bad ones in it.
 * @throws {@link DomainError} naming the field.
 * Source: binomial and hypergeometric distribution. Accuracy: 1e-6, the printed digits of the worked plans.
 * @example
 * ```ts
 * import { acceptanceProbability } from 'slantpath/acceptance';
 * acceptanceProbability({ sampleSize: 13, acceptanceNumber: 0, badRatio: 0.1 }).toFixed(3); // => '0.254'
 * ```
 */
export function acceptanceProbability(
  plan: {
    readonly sampleSize: number;
    readonly acceptanceNumber: number;
  } & ({ readonly badRatio: number } | { readonly lotSize: number; readonly badCount: number }),
): number {
  const given = known('plan', plan, ACCEPTANCE_PROBABILITY_PLAN_KEYS);
  const n = wholeNumber('sampleSize', given.sampleSize, 1, 100_000);
  const accepted = wholeNumber('acceptanceNumber', given.acceptanceNumber, 0, n);
  let sum = 0;
  if ('lotSize' in given) {
    const lot = wholeNumber('lotSize', given.lotSize, n, 1e7);
    const bad = wholeNumber('badCount', given.badCount, 0, lot);
    const all = logChoose(lot, n);
    for (let k = Math.max(0, n - (lot - bad)); k <= Math.min(accepted, bad); k += 1)
      sum += Math.exp(logChoose(bad, k) + logChoose(lot - bad, n - k) - all);
    return Math.min(1, sum);
  }
  const share = inRange('badRatio', given.badRatio, 0, 1, 'is it in percent?');
  if (share === 0 || accepted === n) return 1;
  if (share === 1) return 0;
  for (let k = 0; k <= accepted; k += 1)
    sum += Math.exp(logChoose(n, k) + k * Math.log(share) + (n - k) * Math.log1p(-share));
  return Math.min(1, sum);
}

const BAD_RATIO_ACCEPTED_PLAN_KEYS = {
  sampleSize: true,
  acceptanceNumber: true,
  probabilityRatio: true,
} satisfies Keys<Parameters<typeof badRatioAccepted>[0]>;

/**
 * Share of bad installations that a plan accepts with a given probability, 0 to 1: with 0.95 what the installer is safe with, with 0.1 what
 * the customer may still get.
 *
 * @param plan  Sample size, acceptance number below it, probability of acceptance above 0 and below 1.
 * @throws {@link DomainError} naming the field.
 * Source: beta quantile of the binomial distribution. Accuracy: 1e-6, the printed digits of the worked plans.
 * @example
 * ```ts
 * import { badRatioAccepted } from 'slantpath/acceptance';
 * const plan = { sampleSize: 50, acceptanceNumber: 1, probabilityRatio: 0.1 };
 * badRatioAccepted(plan).toFixed(4); // => '0.0756'
 * ```
 */
export function badRatioAccepted(plan: {
  readonly sampleSize: number;
  readonly acceptanceNumber: number;
  readonly probabilityRatio: number;
}): number {
  const given = known('plan', plan, BAD_RATIO_ACCEPTED_PLAN_KEYS);
  const n = wholeNumber('sampleSize', given.sampleSize, 1, 100_000);
  const accepted = wholeNumber('acceptanceNumber', given.acceptanceNumber, 0, n - 1);
  const probability = inRange('probabilityRatio', given.probabilityRatio, 1e-9, 1 - 1e-9);
  return betaQuantile(1 - probability, accepted + 1, n - accepted);
}

/** What a plan by measured values says of a lot. */
export interface VariablesVerdict {
  /** Mean of the values. */
  readonly meanDb: number;
  /** Standard deviation of the values. */
  readonly standardDeviationDb: number;
  /** Distance of the mean from the limit in standard deviations: the larger, the better. */
  readonly qualityIndex: number;
  /** Whether the lot is accepted: the index is k or more. */
  readonly accepted: boolean;
}

const JUDGE_BY_VARIABLES_LOT_KEYS = {
  valuesDb: true,
  leastDb: true,
  largestDb: true,
  k: true,
} satisfies Keys<Parameters<typeof judgeByVariables>[0]>;

/**
 * Verdict on a lot by measured values against one limit, standard deviation unknown: accepted where (limit - mean) / s is k or more.
 *
 * Holds for values that scatter like a normal distribution; k comes with the plan agreed on (ISO 3951-1 and MIL-STD-414 have different ones).
 *
 * @param lot  Values in dB, 3 to 10,000; exactly one of a least and a largest value; k of the plan, 0 to 10.
 * @throws {@link DomainError} naming the field.
 * Source: MIL-STD-414 (1957), section B (k method). Accuracy: rounding only.
 * @example
 * ```ts
 * import { judgeByVariables } from 'slantpath/acceptance';
 * const lot = { valuesDb: [197, 188, 184, 205, 201], largestDb: 209, k: 1.53 };
 * judgeByVariables(lot).accepted; // => true
 * ```
 */
export function judgeByVariables(lot: {
  readonly valuesDb: ArrayLike<number>;
  readonly leastDb?: number;
  readonly largestDb?: number;
  readonly k: number;
}): VariablesVerdict {
  const given = knownOnly('lot', lot, JUDGE_BY_VARIABLES_LOT_KEYS);
  const count = wholeNumber('valuesDb', given.valuesDb?.length, 3, 10_000);
  const values = Array.from(given.valuesDb, (value, index) =>
    inRange('valuesDb', value, -1e6, 1e6, undefined, index),
  );
  const k = inRange('k', given.k, 0, 10);
  const upper = given.largestDb !== undefined;
  const limit = inRange(
    upper ? 'largestDb' : 'leastDb',
    (upper ? given.largestDb : given.leastDb) as number,
    -1e6,
    1e6,
  );
  const meanDb = values.reduce((sum, value) => sum + value, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - meanDb) ** 2, 0);
  const standardDeviationDb = Math.sqrt(squares / (count - 1));
  const distance = upper ? limit - meanDb : meanDb - limit;
  // Values without any scatter: as far from the limit as can be said, on its good or bad side.
  const qualityIndex =
    standardDeviationDb > 1e-9 ? distance / standardDeviationDb : distance >= 0 ? 1e9 : -1e9;
  return { meanDb, standardDeviationDb, qualityIndex, accepted: qualityIndex >= k };
}

const VARIABLES_ACCEPTANCE_PROBABILITY_PLAN_KEYS = {
  sampleSize: true,
  k: true,
  badRatio: true,
} satisfies Keys<Parameters<typeof variablesAcceptanceProbability>[0]>;

/**
 * Probability that a lot is accepted by `judgeByVariables`, 0 to 1.
 *
 * @param plan  Sample size 2 to 1000, k of the plan, share of bad ones above 0 and below 1.
 * @throws {@link DomainError} naming the field.
 * Source: noncentral t distribution, 1 - F(k sqrt n; n - 1, sqrt n z). Accuracy: 1e-6, the printed digits of the worked plans.
 * @example
 * ```ts
 * import { variablesAcceptanceProbability } from 'slantpath/acceptance';
 * variablesAcceptanceProbability({ sampleSize: 10, k: 1.23, badRatio: 0.04 }).toFixed(4); // => '0.9018'
 * ```
 */
export function variablesAcceptanceProbability(plan: {
  readonly sampleSize: number;
  readonly k: number;
  readonly badRatio: number;
}): number {
  const given = known('plan', plan, VARIABLES_ACCEPTANCE_PROBABILITY_PLAN_KEYS);
  const n = wholeNumber('sampleSize', given.sampleSize, 2, 1000);
  const k = inRange('k', given.k, 0, 10);
  const share = inRange('badRatio', given.badRatio, 1e-9, 1 - 1e-9, 'is it in percent?');
  const root = Math.sqrt(n);
  return 1 - noncentralTProbability(k * root, n - 1, root * normalExceedanceQuantile(share));
}

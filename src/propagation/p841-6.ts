/** Recommendation ITU-R P.841-6 (08/2019): percentages of an average year and of its worst month. */

import { inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { checkedPercent, namesOutside } from './inputs.js';

/** How the worst month departs from the year at a place; the values for planning anywhere where not given. */
export interface WorstMonthClimate {
  /** Parameter Q1, 1 to 12; 2.85 for planning anywhere. */
  readonly q1: number;
  /** Parameter beta, 0 to 0.5; 0.13 for planning anywhere. */
  readonly beta: number;
}

const WORST_MONTH_CLIMATE_KEYS = { q1: true, beta: true } satisfies Keys<WorstMonthClimate>;

/** A percentage of the year beside that of its worst month. */
export interface WorstMonth {
  /** Edition computed. */
  readonly edition: 'P.841-6';
  /** Percent of an average year. */
  readonly annualPercent: number;
  /** Percent of the average worst month. */
  readonly worstMonthPercent: number;
  /** Worst month over year, 1 to 12. */
  readonly ratio: number;
  /** Names of values outside the stated range (0.001 to 3 % of the year). */
  readonly outsideStatedRange: readonly string[];
}

const GLOBAL: WorstMonthClimate = { q1: 2.85, beta: 0.13 };

function checkedClimate(climate: WorstMonthClimate): WorstMonthClimate {
  known('climate', climate, WORST_MONTH_CLIMATE_KEYS);
  return {
    q1: inRange('climate.q1', climate.q1, 1, 12),
    beta: inRange('climate.beta', climate.beta, 0, 0.5),
  };
}

/** Q of an annual percentage: at most 12 months, a power law to 3 %, flat to 30 %, then down to 1; equation (3). */
function ratioAt(percent: number, { q1, beta }: WorstMonthClimate): number {
  if (percent <= 3) return Math.max(1, Math.min(12, q1 * percent ** -beta));
  const flat = Math.max(1, Math.min(12, q1 * 3 ** -beta));
  return percent <= 30 ? flat : flat * (percent / 30) ** (Math.log(flat) / Math.log(0.3));
}

function pair(annualPercent: number, worstMonthPercent: number): WorstMonth {
  return {
    edition: 'P.841-6',
    annualPercent,
    worstMonthPercent,
    ratio: worstMonthPercent / annualPercent,
    outsideStatedRange: namesOutside(['annualPercent', annualPercent, 0.001, 3]),
  };
}

/**
 * Percent of the average worst month that goes with a percent of an average year.
 *
 * pw = Q p, with Q = Q1 p^-beta from the percentage at which it is 12 up to 3 %.
 *
 * @param annualPercent  Percent of an average year, 0.000001 to 100.
 * @param climate  Parameters of the place; Q1 2.85 and beta 0.13, for planning anywhere, where not given.
 * @returns Both percentages and their ratio.
 * @throws {@link DomainError} naming `annualPercent` or the parameter.
 *
 * Source: Recommendation ITU-R P.841-6, Annex 1, equations (1) to (3).
 * @example
 * ```ts
 * import { worstMonthPercent } from 'slantpath/propagation';
 * worstMonthPercent(0.01).worstMonthPercent.toFixed(4); // => '0.0519'
 * ```
 */
export function worstMonthPercent(
  annualPercent: number,
  climate: WorstMonthClimate = GLOBAL,
): WorstMonth {
  const percent = checkedPercent(annualPercent, undefined, 'annualPercent');
  return pair(percent, Math.min(100, percent * ratioAt(percent, checkedClimate(climate))));
}

/**
 * Percent of an average year that goes with a percent of its average worst month: the inverse of
 * {@link worstMonthPercent}.
 *
 * @param worstMonthPercent  Percent of the average worst month, 0.000001 to 100.
 * @param climate  Parameters of the place; Q1 2.85 and beta 0.13, for planning anywhere, where not given.
 * @returns Both percentages and their ratio.
 * @throws {@link DomainError} naming `worstMonthPercent` or the parameter.
 *
 * Source: Recommendation ITU-R P.841-6, Annex 1, equations (2), (4) and (5).
 * @example
 * ```ts
 * import { annualPercent } from 'slantpath/propagation';
 * annualPercent(0.0519).annualPercent.toFixed(4); // => '0.0100'
 * ```
 */
export function annualPercent(
  worstMonthPercent: number,
  climate: WorstMonthClimate = GLOBAL,
): WorstMonth {
  const worst = checkedPercent(worstMonthPercent, undefined, 'worstMonthPercent');
  const checked = checkedClimate(climate);
  const { q1, beta } = checked;
  const flat = ratioAt(3, checked);
  // Each branch of Q is a power of p, so that p Q(p) can be turned round branch by branch.
  const byPower = (worst / q1) ** (1 / (1 - beta));
  let percent: number;
  if (worst > 30 * flat) {
    const exponent = Math.log(flat) / Math.log(0.3);
    percent = (worst / (flat * 30 ** -exponent)) ** (1 / (1 + exponent));
  } else if (worst > 3 * flat) percent = worst / flat;
  else percent = Math.max(worst / 12, Math.min(worst, byPower));
  return pair(Math.min(100, percent), worst);
}

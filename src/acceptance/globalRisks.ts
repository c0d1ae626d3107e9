/** Global risks of a decision rule over a whole production or round of visits (JCGM 106:2012, section 9). */

import { DomainError, inRange, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { valueAt } from '../numeric/columns.js';
import { normalProbability } from '../numeric/normal.js';

/** What is known of the quantity before a reading, the instrument, and the intervals; all in one unit. */
export interface GlobalRiskQuestion {
  /** Mean of the quantity over all items. */
  readonly processMean: number;
  /** Standard deviation of the quantity over all items, above 0. */
  readonly processStandardDeviation: number;
  /** Standard uncertainty of the instrument, above 0. */
  readonly instrumentStandardUncertainty: number;
  /** Interval of values that conform. */
  readonly tolerance: { readonly from: number; readonly to: number };
  /** Interval of readings that are accepted; the tolerance by default (simple acceptance). */
  readonly acceptance?: { readonly from: number; readonly to: number };
}

const GLOBAL_RISK_QUESTION_KEYS = {
  processMean: true,
  processStandardDeviation: true,
  instrumentStandardUncertainty: true,
  tolerance: true,
  acceptance: true,
} satisfies Keys<GlobalRiskQuestion>;

/** Shares of all items, 0 to 1. */
export interface GlobalRisks {
  /** Share of items that conform. */
  readonly conformityRatio: number;
  /** Share of items that are accepted and do not conform. */
  readonly consumerRiskRatio: number;
  /** Share of items that are refused and conform. */
  readonly producerRiskRatio: number;
}

/**
 * Share of wrongly accepted and wrongly refused items under a decision rule.
 *
 * Integrates the normal prior times the chance of acceptance over the values outside, and times the
 * chance of refusal over the values inside the tolerance, by Gauss and Legendre in panels of a quarter of the smaller width.
 *
 * @throws {@link DomainError} naming the field; `inconsistent` where an interval is swapped.
 *
 * Source: JCGM 106:2012, equations (17) and (19).
 * Accuracy: 1e-10.
 * @example
 * ```ts
 * import { globalRisks } from 'slantpath/acceptance';
 * const risks = globalRisks({
 *   processMean: 1500, processStandardDeviation: 0.12, instrumentStandardUncertainty: 0.04,
 *   tolerance: { from: 1499.8, to: 1500.2 }, acceptance: { from: 1499.82, to: 1500.18 },
 * });
 * risks.consumerRiskRatio.toFixed(4); // => '0.0099'
 * ```
 */
export function globalRisks(question: GlobalRiskQuestion): GlobalRisks {
  knownOnly('question', question, GLOBAL_RISK_QUESTION_KEYS);
  const mean = inRange('processMean', question.processMean, -1e100, 1e100);
  const spread = inRange(
    'processStandardDeviation',
    positive('processStandardDeviation', question.processStandardDeviation),
    1e-100,
    1e100,
  );
  const uncertainty = inRange(
    'instrumentStandardUncertainty',
    positive('instrumentStandardUncertainty', question.instrumentStandardUncertainty),
    1e-100,
    1e100,
  );
  const tolerance = checkedInterval('tolerance', question.tolerance);
  const acceptance = checkedInterval('acceptance', question.acceptance ?? tolerance);
  const accepted = (value: number): number =>
    normalProbability((acceptance.to - value) / uncertainty) -
    normalProbability((acceptance.from - value) / uncertainty);
  const density = (value: number): number =>
    Math.exp(-0.5 * ((value - mean) / spread) ** 2) / (spread * Math.sqrt(2 * Math.PI));
  const integral = (f: (value: number) => number, from: number, to: number): number => {
    const low = Math.max(from, mean - 12 * spread);
    const high = Math.min(to, mean + 12 * spread);
    if (low >= high) return 0;
    // The chance of acceptance turns within the uncertainty at the two ends of the acceptance interval.
    const edges = [low, high];
    for (const end of [acceptance.from, acceptance.to])
      for (let step = -12; step <= 12; step++) {
        const edge = end + 0.75 * step * uncertainty;
        if (edge > low && edge < high) edges.push(edge);
      }
    for (let step = -11; step <= 11; step++) {
      const edge = mean + step * spread;
      if (edge > low && edge < high) edges.push(edge);
    }
    edges.sort((a, b) => a - b);
    let sum = 0;
    for (let i = 1; i < edges.length; i++)
      sum += panel(f, valueAt(edges, i - 1), valueAt(edges, i));
    return sum;
  };
  const wrong = (value: number): number => density(value) * accepted(value);
  const refused = (value: number): number => density(value) * (1 - accepted(value));
  const { from, to } = tolerance;
  return {
    conformityRatio:
      normalProbability((to - mean) / spread) - normalProbability((from - mean) / spread),
    consumerRiskRatio:
      integral(wrong, Number.NEGATIVE_INFINITY, from) +
      integral(wrong, to, Number.POSITIVE_INFINITY),
    producerRiskRatio: integral(refused, from, to),
  };
}

const NODES = [
  0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845,
  0.9739065285171717,
] as const;
const WEIGHTS = [
  0.2955242247147529, 0.2692667193099963, 0.219086362515982, 0.1494513491505806, 0.0666713443086881,
] as const;

/** Ten-point Gauss and Legendre over one panel. */
function panel(f: (value: number) => number, from: number, to: number): number {
  const middle = 0.5 * (from + to);
  const half = 0.5 * (to - from);
  let sum = 0;
  for (let i = 0; i < 5; i++) {
    const offset = half * valueAt(NODES, i);
    sum += valueAt(WEIGHTS, i) * (f(middle - offset) + f(middle + offset));
  }
  return half * sum;
}

const CHECKED_INTERVAL_PARAMETER_KEYS = { from: true, to: true } satisfies Keys<
  Parameters<typeof checkedInterval>[1]
>;

function checkedInterval(
  parameter: string,
  interval: { readonly from: number; readonly to: number },
): { readonly from: number; readonly to: number } {
  known(parameter, interval, CHECKED_INTERVAL_PARAMETER_KEYS);
  const from = inRange(`${parameter}.from`, interval.from, -1e100, 1e100);
  const to = inRange(`${parameter}.to`, interval.to, -1e100, 1e100);
  if (from >= to)
    throw new DomainError({
      code: 'inconsistent',
      parameter: `${parameter}.from`,
      received: from,
      allowed: `below ${parameter}.to (${to})`,
      slip: 'were the ends swapped?',
    });
  return { from, to };
}

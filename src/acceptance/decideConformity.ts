/** Conforms or not: a reading, its uncertainty, the limits and the rule of decision (JCGM 106:2012). */

import { DomainError, inRange, oneOf, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { normalExceedanceQuantile, normalProbability } from '../numeric/normal.js';
import { studentProbability, studentQuantile } from '../numeric/student.js';

/** How a reading is turned into a verdict. */
export type DecisionRule =
  /** The reading alone decides; no guard band. Never undecided. */
  | { readonly kind: 'simple' }
  /** Guard band of `guardBandRatio` times the expanded uncertainty U = 2 u on each side of a limit; 1 by default. */
  | { readonly kind: 'guard-band'; readonly guardBandRatio?: number }
  /** Guard band so wide that the risk of a wrong verdict at a limit is at most `riskPercent`, 1e-9 to 50. */
  | { readonly kind: 'risk'; readonly riskPercent: number };

const DECISION_RULE_KEYS = {
  kind: true,
  guardBandRatio: true,
  riskPercent: true,
} satisfies Keys<DecisionRule>;

/** A reading and what it is held against, all in one unit, that of the reading. */
export interface ConformityQuestion {
  /** The reading, in any unit, -1e100 to 1e100. */
  readonly reading: number;
  /** Its standard uncertainty, in the unit of the reading, 1e-60 to 1e60. */
  readonly standardUncertainty: number;
  /** Lowest value that conforms, in the unit of the reading, -1e100 to 1e100. At least one limit is needed. */
  readonly lowerLimit?: number;
  /** Highest value that conforms, in the unit of the reading, -1e100 to 1e100. */
  readonly upperLimit?: number;
  /** Degrees of freedom of the uncertainty, 1 or more, as of a mean of few readings; left out, it counts as well known (normal). */
  readonly degreesOfFreedom?: number;
  /** The rule; `{ kind: 'risk', riskPercent: 5 }` by default. */
  readonly rule?: DecisionRule;
}

const CONFORMITY_QUESTION_KEYS = {
  reading: true,
  standardUncertainty: true,
  lowerLimit: true,
  upperLimit: true,
  degreesOfFreedom: true,
  rule: true,
} satisfies Keys<ConformityQuestion>;

/** The verdict with the numbers behind it. */
export interface ConformityDecision {
  /** `conforms`, `does-not-conform`, or `undecided` where the reading lies within a guard band of a limit. */
  readonly verdict: 'conforms' | 'does-not-conform' | 'undecided';
  /** Probability that the true value lies within the limits, 0 to 1, for a normal error. */
  readonly conformityProbabilityRatio: number;
  /** Width of the guard band in the unit of the reading, 0 or more. */
  readonly guardBand: number;
  /** Range of readings that are accepted; a missing end is `null`. Empty where the guard bands overlap. */
  readonly acceptance: { readonly from: number | null; readonly to: number | null };
  /** Readings below `below` or above `above` are rejected; a missing end is `null`. */
  readonly rejection: { readonly below: number | null; readonly above: number | null };
  /** How far the reading stands inside the nearer limit, in the unit of the reading; negative outside. */
  readonly margin: number;
}

/** Guards a rule and gives its guard band in standard uncertainties. */
function guardBandInUncertainties(rule: DecisionRule, degreesOfFreedom?: number): number {
  known('rule', rule, DECISION_RULE_KEYS);
  oneOf('rule.kind', rule.kind, ['simple', 'guard-band', 'risk']);
  if (rule.kind === 'simple') return 0;
  if (rule.kind === 'guard-band')
    return 2 * inRange('rule.guardBandRatio', rule.guardBandRatio ?? 1, 0, 10);
  const risk = inRange('rule.riskPercent', rule.riskPercent, 1e-9, 50) / 100;
  if (risk === 0.5) return 0;
  return degreesOfFreedom === undefined
    ? normalExceedanceQuantile(risk)
    : -studentQuantile(risk, degreesOfFreedom);
}

/**
 * Verdict on a reading, with its uncertainty counted in.
 *
 * With a guard band w a reading inside the limits by w or more conforms, one outside by more than w does
 * not, and between them the verdict is undecided: repeat the reading or use a better instrument. The
 * probability of conformity is Phi((TU - y)/u) - Phi((TL - y)/u).
 *
 * @throws {@link DomainError} naming the field; `inconsistent` where no limit is given or they are swapped.
 *
 * Source: JCGM 106:2012, section 7 (probability of conformity) and 8 (decision rules, guard bands).
 * Accuracy: 1e-15 for the probability, for a normal distribution of the error (Student's t with `degreesOfFreedom`).
 * @example
 * ```ts
 * import { decideConformity } from 'slantpath/acceptance';
 * const decision = decideConformity({ reading: 48.1, standardUncertainty: 1, lowerLimit: 47 });
 * decision.verdict; // => 'undecided'
 * decision.conformityProbabilityRatio.toFixed(2); // => '0.86'
 * ```
 */
export function decideConformity(question: ConformityQuestion): ConformityDecision {
  knownOnly('question', question, CONFORMITY_QUESTION_KEYS);
  const reading = inRange('reading', question.reading, -1e100, 1e100);
  const uncertainty = positive('standardUncertainty', question.standardUncertainty);
  const freedom =
    question.degreesOfFreedom === undefined
      ? undefined
      : inRange('degreesOfFreedom', question.degreesOfFreedom, 1, Number.MAX_VALUE);
  const lower =
    question.lowerLimit === undefined
      ? null
      : inRange('lowerLimit', question.lowerLimit, -1e100, 1e100);
  const upper =
    question.upperLimit === undefined
      ? null
      : inRange('upperLimit', question.upperLimit, -1e100, 1e100);
  if (lower === null && upper === null)
    throw new DomainError({
      code: 'missing',
      parameter: 'lowerLimit',
      received: undefined,
      allowed: 'given if there is no upperLimit',
    });
  if (lower !== null && upper !== null && lower >= upper)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'lowerLimit',
      received: lower,
      allowed: `below upperLimit (${upper})`,
      slip: 'were the limits swapped?',
    });
  const guardBand =
    uncertainty *
    guardBandInUncertainties(question.rule ?? { kind: 'risk', riskPercent: 5 }, freedom);
  const acceptance = {
    from: lower === null ? null : lower + guardBand,
    to: upper === null ? null : upper - guardBand,
  };
  const rejection = {
    below: lower === null ? null : lower - guardBand,
    above: upper === null ? null : upper + guardBand,
  };
  const inside =
    (acceptance.from === null || reading >= acceptance.from) &&
    (acceptance.to === null || reading <= acceptance.to);
  const outside =
    (rejection.below !== null && reading < rejection.below) ||
    (rejection.above !== null && reading > rejection.above);
  return {
    verdict: inside ? 'conforms' : outside ? 'does-not-conform' : 'undecided',
    conformityProbabilityRatio: conformityProbability(reading, lower, upper, (difference) => {
      // Beyond 1e9 uncertainties the probability is 0 or 1 to the last digit.
      const z = Math.max(-1e9, Math.min(1e9, difference / uncertainty));
      return freedom === undefined ? normalProbability(z) : studentProbability(z, freedom);
    }),
    guardBand,
    acceptance,
    rejection,
    margin: Math.min(
      lower === null ? Number.POSITIVE_INFINITY : reading - lower,
      upper === null ? Number.POSITIVE_INFINITY : upper - reading,
    ),
  };
}

/**
 * Probability that the true value lies within the limits. `below(d)` is the probability that the error is below d;
 * both tails are taken from the side on which they are small.
 */
function conformityProbability(
  reading: number,
  lower: number | null,
  upper: number | null,
  below: (difference: number) => number,
): number {
  if (upper === null) return lower === null ? 1 : below(reading - lower);
  if (lower === null) return below(upper - reading);
  const probability =
    reading > upper
      ? below(upper - reading) - below(lower - reading)
      : reading < lower
        ? below(reading - lower) - below(reading - upper)
        : 1 - below(lower - reading) - below(reading - upper);
  return Math.max(0, Math.min(1, probability));
}

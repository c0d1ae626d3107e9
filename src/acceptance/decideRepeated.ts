/** A failed test is repeated before it is believed: verdict on repeated readings and what to do next. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { type CombinedReading, combinedReading, type RepeatedReadings } from './combinedReading.js';
import {
  type ConformityDecision,
  type ConformityQuestion,
  decideConformity,
} from './decideConformity.js';

/** Repeated readings and what they are held against. */
export interface RepeatedQuestion
  extends RepeatedReadings,
    Pick<ConformityQuestion, 'lowerLimit' | 'upperLimit' | 'rule'> {
  /** How many readings a refusal needs, 1 to 50; 3 by default. */
  readonly refusalReadings?: number;
}

/** Verdict on repeated readings. */
export interface RepeatedDecision {
  /** Mean and uncertainty of the readings so far. */
  readonly combined: CombinedReading;
  /** Verdict on the mean. */
  readonly decision: ConformityDecision;
  /** `accept`; `repeat` while a failure stands on too few readings or the verdict is undecided; `refuse`. */
  readonly next: 'accept' | 'repeat' | 'refuse';
}

const DECIDE_REPEATED_QUESTION_KEYS = {
  refusalReadings: true,
  readings: true,
  instrumentStandardUncertainty: true,
  coverageRatio: true,
  lowerLimit: true,
  upperLimit: true,
  rule: true,
} satisfies Keys<RepeatedQuestion>;

/**
 * Verdict on the mean of repeated readings, and whether another reading is due.
 *
 * The guard band is taken from Student's t with the degrees of freedom of the mean, so two readings that
 * happen to agree do not make a certain verdict.
 *
 * @throws {@link DomainError} as {@link combinedReading} and {@link decideConformity}.
 *
 * Source: JCGM 106:2012 section 8 on the result of JCGM 100:2008 section 4.2; repetition by practice of the trade.
 * Accuracy: as its two parts.
 * @example
 * ```ts
 * import { decideRepeated } from 'slantpath/acceptance';
 * const once = { readings: [46.2], instrumentStandardUncertainty: 0.4, lowerLimit: 47 };
 * decideRepeated(once).next; // => 'repeat'
 * decideRepeated({ ...once, readings: [46.2, 46.0, 46.1] }).next; // => 'refuse'
 * ```
 */
export function decideRepeated(question: RepeatedQuestion): RepeatedDecision {
  knownOnly('question', question, DECIDE_REPEATED_QUESTION_KEYS);
  const combined = combinedReading(question);
  const refusalReadings = inRange('refusalReadings', question.refusalReadings ?? 3, 1, 50);
  const decision = decideConformity({
    reading: combined.mean,
    // Readings that agree to the last digit still leave the rounding of the display.
    standardUncertainty:
      combined.standardUncertainty || 1e-9 * Math.max(1, Math.abs(combined.mean)),
    ...(combined.degreesOfFreedom === null ? {} : { degreesOfFreedom: combined.degreesOfFreedom }),
    ...(question.lowerLimit === undefined ? {} : { lowerLimit: question.lowerLimit }),
    ...(question.upperLimit === undefined ? {} : { upperLimit: question.upperLimit }),
    ...(question.rule === undefined ? {} : { rule: question.rule }),
  });
  const next =
    decision.verdict === 'conforms'
      ? 'accept'
      : decision.verdict === 'does-not-conform' && combined.count >= refusalReadings
        ? 'refuse'
        : 'repeat';
  return { combined, decision, next };
}

/** Every reading against its limit and against what the plan expects. */

import { DomainError, finite, inRange, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import {
  type ConformityDecision,
  type DecisionRule,
  decideConformity,
} from './decideConformity.js';
import {
  checkedPlace,
  mostSpecific,
  READING_PLACE_KEYS,
  type ReadingPlace,
} from './readingPlace.js';

/** A limit for the places whose fields it names; a field left out stands for all. */
export interface ReadingLimit extends ReadingPlace {
  /** Lowest value that conforms, dBuV for a level, dB otherwise. */
  readonly lowerLimit?: number;
  /** Highest value that conforms, dBuV for a level, dB otherwise. */
  readonly upperLimit?: number;
}

const READING_LIMIT_KEYS = {
  ...READING_PLACE_KEYS,
  lowerLimit: true,
  upperLimit: true,
} satisfies Keys<ReadingLimit>;

/** A reading with its standard uncertainty, dBuV for a level, dB otherwise. */
export interface Reading extends ReadingPlace {
  /** The reading, dBuV for a level, dB otherwise. */
  readonly reading: number;
  /** Its standard uncertainty in dB, above 0. */
  readonly standardUncertainty: number;
}

const READING_KEYS = {
  ...READING_PLACE_KEYS,
  reading: true,
  standardUncertainty: true,
} satisfies Keys<Reading>;

/** What the plan expects at the places whose fields it names. */
export interface ExpectedReading extends ReadingPlace {
  /** The expected value, dBuV for a level, dB otherwise. */
  readonly expected: number;
  /** Its standard uncertainty in dB, 0 or more: tolerance of EIRP, unit and parts. */
  readonly standardUncertainty: number;
}

const EXPECTED_READING_KEYS = {
  ...READING_PLACE_KEYS,
  expected: true,
  standardUncertainty: true,
} satisfies Keys<ExpectedReading>;

/** Readings and what they are judged by. */
export interface JudgeReadingsInput {
  /** The readings, at least one. */
  readonly readings: readonly Reading[];
  /** Limits; the most specific one counts for a reading. */
  readonly limits: readonly ReadingLimit[];
  /** Expectations from the plan; the most specific one counts. */
  readonly expected?: readonly ExpectedReading[];
  /** The rule of decision; a risk of 5 percent by default. */
  readonly rule?: DecisionRule;
  /** A reading this many standard uncertainties off its expectation is flagged, 1 to 10; 2 by default. */
  readonly expectationFactor?: number;
}

const JUDGE_READINGS_INPUT_KEYS = {
  readings: true,
  limits: true,
  expected: true,
  rule: true,
  expectationFactor: true,
} satisfies Keys<JudgeReadingsInput>;

/** A reading judged. */
export interface JudgedReading {
  /** Where and what. */
  readonly place: ReadingPlace;
  /** The reading. */
  readonly reading: number;
  /** Verdict against the limit; `null` where no limit is set for the place. */
  readonly decision: ConformityDecision | null;
  /** Comparison with the plan; `null` where nothing is expected for the place. */
  readonly expectation: {
    /** Expected value. */
    readonly expected: number;
    /** Reading less expectation in dB. */
    readonly differenceDb: number;
    /** Standard uncertainty of the difference in dB. */
    readonly standardUncertaintyDb: number;
    /** `below` or `above` where the difference exceeds the factor times its uncertainty. */
    readonly finding: 'as-expected' | 'below' | 'above';
  } | null;
  /** The reading conforms, yet stands below what the plan expects: something is wrong and the margin hides it. */
  readonly hiddenFault: boolean;
}

/**
 * Verdict on every reading by slot, band and test point, and a flag on a pass that hides a fault.
 *
 * A reading is compared with its limit by {@link decideConformity} and with the plan's expectation by
 * |difference| > k sqrt(u_reading^2 + u_expected^2).
 *
 * @throws {@link DomainError} naming the entry and field, `readings[2].standardUncertainty`.
 *
 * Source: JCGM 106:2012 section 8; comparison with an expectation by JCGM 100:2008 section 5 (root sum of squares).
 * Accuracy: as {@link decideConformity}.
 * @example
 * ```ts
 * import { judgeReadings } from 'slantpath/acceptance';
 * const [judged] = judgeReadings({
 *   readings: [{ quantity: 'level', slot: '16.4 E', reading: 56, standardUncertainty: 0.8 }],
 *   limits: [{ quantity: 'level', lowerLimit: 47, upperLimit: 77 }],
 *   expected: [{ quantity: 'level', slot: '16.4 E', expected: 60, standardUncertainty: 1 }],
 * });
 * judged?.decision?.verdict; // => 'conforms'
 * judged?.hiddenFault; // => true
 * ```
 */
export function judgeReadings(input: JudgeReadingsInput): readonly JudgedReading[] {
  knownOnly('input', input, JUDGE_READINGS_INPUT_KEYS);
  const readings = list('readings', input.readings);
  if (readings.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'readings',
      received: readings,
      allowed: 'at least one reading',
    });
  const limits = list('limits', input.limits);
  limits.forEach((limit, index) => {
    checkedPlace(`limits[${index}]`, known(`limits[${index}]`, limit, READING_LIMIT_KEYS));
    if (limit.lowerLimit === undefined && limit.upperLimit === undefined)
      throw new DomainError({
        code: 'missing',
        parameter: `limits[${index}].lowerLimit`,
        received: undefined,
        allowed: 'given if there is no upperLimit',
      });
  });
  const expected = list('expected', input.expected ?? []);
  expected.forEach((entry, index) => {
    checkedPlace(`expected[${index}]`, known(`expected[${index}]`, entry, EXPECTED_READING_KEYS));
    finite(`expected[${index}].expected`, entry.expected);
    inRange(`expected[${index}].standardUncertainty`, entry.standardUncertainty, 0, 100);
  });
  const factor = inRange('expectationFactor', input.expectationFactor ?? 2, 1, 10);
  return readings.map((entry, index) => {
    const place = checkedPlace(
      `readings[${index}]`,
      known(`readings[${index}]`, entry, READING_KEYS),
    );
    const reading = inRange(`readings[${index}].reading`, entry.reading, -200, 200);
    const standardUncertainty = positive(
      `readings[${index}].standardUncertainty`,
      entry.standardUncertainty,
    );
    const limit = mostSpecific(limits, place);
    const decision = limit
      ? decideConformity({
          reading,
          standardUncertainty,
          ...(limit.lowerLimit === undefined ? {} : { lowerLimit: limit.lowerLimit }),
          ...(limit.upperLimit === undefined ? {} : { upperLimit: limit.upperLimit }),
          ...(input.rule === undefined ? {} : { rule: input.rule }),
        })
      : null;
    const plan = mostSpecific(expected, place);
    const expectation = plan ? compared(reading, standardUncertainty, plan, factor) : null;
    return {
      place,
      reading,
      decision,
      expectation,
      hiddenFault: decision?.verdict === 'conforms' && expectation?.finding === 'below',
    };
  });
}

function compared(
  reading: number,
  standardUncertainty: number,
  plan: ExpectedReading,
  factor: number,
): NonNullable<JudgedReading['expectation']> {
  const differenceDb = reading - plan.expected;
  const standardUncertaintyDb = Math.hypot(standardUncertainty, plan.standardUncertainty);
  const beyond = Math.abs(differenceDb) > factor * standardUncertaintyDb;
  return {
    expected: plan.expected,
    differenceDb,
    standardUncertaintyDb,
    finding: beyond ? (differenceDb < 0 ? 'below' : 'above') : 'as-expected',
  };
}

function list<T>(parameter: string, value: readonly T[]): readonly T[] {
  if (Array.isArray(value)) return value;
  throw new DomainError({
    code: value === undefined || value === null ? 'missing' : 'malformed',
    parameter,
    received: value,
    allowed: 'a list',
  });
}

/** Verdicts on columns of readings. */

import { withinRow } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../numeric/columns.js';
import {
  type ConformityDecision,
  type DecisionRule,
  decideConformity,
} from './decideConformity.js';

/** What a number in a column `outcome` of {@link decideConformityBatch} says: the `verdict` of `decideConformity`. */
export const conformityVerdicts = [
  'conforms',
  'does-not-conform',
  'undecided',
] as const satisfies readonly ConformityDecision['verdict'][];

/** What {@link decideConformityBatch} is asked: each a column or one number for all rows, in the unit of the reading. */
export interface ConformityBatchInput {
  /** The reading, in any unit. */
  readonly reading: Column;
  /** Standard uncertainty of the reading, that of its instrument among it, in the unit of the reading, above 0. */
  readonly standardUncertainty: Column;
  /** Lowest value that conforms, in the unit of the reading. At least one limit is needed. */
  readonly lowerLimit?: Column;
  /** Highest value that conforms, in the unit of the reading. */
  readonly upperLimit?: Column;
  /** Degrees of freedom of the uncertainty, 1 or more; left out, it counts as well known. */
  readonly degreesOfFreedom?: Column;
  /** The rule, one for all rows; `{ kind: 'risk', riskPercent: 5 }` by default. */
  readonly rule?: DecisionRule;
}

const CONFORMITY_BATCH_INPUT_KEYS = {
  reading: true,
  standardUncertainty: true,
  lowerLimit: true,
  upperLimit: true,
  degreesOfFreedom: true,
  rule: true,
} satisfies Keys<ConformityBatchInput>;

/** Columns of {@link decideConformityBatch}. */
export interface ConformityColumns {
  /** The verdict: the place of its word in {@link conformityVerdicts}. */
  readonly outcome: Uint8Array;
  /** Probability that the true value lies within the limits, 0 to 1. */
  readonly conformityProbabilityRatio: Float64Array;
  /** Width of the guard band in the unit of the reading, 0 or more. */
  readonly guardBand: Float64Array;
  /** How far the reading stands inside the nearer limit, in the unit of the reading; negative outside. */
  readonly margin: Float64Array;
}

const CONFORMITY_BATCH_OUT_KEYS = {
  outcome: true,
  conformityProbabilityRatio: true,
  guardBand: true,
  margin: true,
} satisfies Keys<NonNullable<Parameters<typeof decideConformityBatch>[1]>>;

/**
 * Verdicts on many readings, row by row.
 *
 * Each row equals `decideConformity` bit for bit.
 *
 * @param input  Columns of one length, or single numbers for all rows; one rule for all.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as `decideConformity`. Accuracy: as `decideConformity`.
 * @example
 * ```ts
 * import { conformityVerdicts, decideConformityBatch } from 'slantpath/acceptance';
 * const { outcome } = decideConformityBatch({
 *   reading: [48.1, 52, 44.9],
 *   standardUncertainty: [1, 1, 0.5],
 *   lowerLimit: 47,
 * });
 * [...outcome].map((place) => conformityVerdicts[place]); // => ['undecided', 'conforms', 'does-not-conform']
 * ```
 */
export function decideConformityBatch(
  input: ConformityBatchInput,
  out: Partial<ConformityColumns> = {},
): ConformityColumns {
  const { reading, standardUncertainty, rule, ...rest } = knownOnly(
    'input',
    input,
    CONFORMITY_BATCH_INPUT_KEYS,
  );
  const { lowerLimit, upperLimit, degreesOfFreedom } = rest;
  // What no row alone is to blame for is refused without one: a rule, and that there is no limit at all.
  const unlimited = lowerLimit === undefined && upperLimit === undefined;
  const ruled = rule === undefined ? {} : { rule };
  decideConformity({
    reading: 0,
    standardUncertainty: 1,
    ...(unlimited ? {} : { lowerLimit: 0 }),
    ...ruled,
  });
  const rows = rowCount({
    reading,
    standardUncertainty,
    ...(lowerLimit === undefined ? {} : { lowerLimit }),
    ...(upperLimit === undefined ? {} : { upperLimit }),
    ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
  });
  const given = known('out', out, CONFORMITY_BATCH_OUT_KEYS);
  const outcome = outBytes('out.outcome', given.outcome, rows);
  const probabilities = outColumn(
    'out.conformityProbabilityRatio',
    given.conformityProbabilityRatio,
    rows,
  );
  const guardBands = outColumn('out.guardBand', given.guardBand, rows);
  const margins = outColumn('out.margin', given.margin, rows);
  for (let row = 0; row < rows; row++) {
    const question = {
      reading: inRow(reading, row),
      standardUncertainty: inRow(standardUncertainty, row),
      ...(lowerLimit === undefined ? {} : { lowerLimit: inRow(lowerLimit, row) }),
      ...(upperLimit === undefined ? {} : { upperLimit: inRow(upperLimit, row) }),
      ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom: inRow(degreesOfFreedom, row) }),
      ...ruled,
    };
    const decision = withinRow(row, () => decideConformity(question));
    outcome[row] = conformityVerdicts.indexOf(decision.verdict);
    probabilities[row] = decision.conformityProbabilityRatio;
    guardBands[row] = decision.guardBand;
    margins[row] = decision.margin;
  }
  return {
    outcome,
    conformityProbabilityRatio: probabilities,
    guardBand: guardBands,
    margin: margins,
  };
}

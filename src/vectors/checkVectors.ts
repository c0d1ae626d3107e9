/** A formula of anybody against a table of test vectors. */

import { DomainError } from '../errors.js';
import { checkedTable } from './checkedTable.js';
import { allowedError, vectorError } from './vectorError.js';
import { slipsOf, type VectorFormula, type VectorSlip, type WrongRow } from './vectorSlips.js';
import type { VectorField, VectorQuestion, VectorTable, VectorValue } from './vectorTable.js';

/** What was found for one expected field. */
export interface VectorFieldReport {
  /** Name of the field. */
  readonly field: string;
  /** Rows compared. */
  readonly count: number;
  /** Rows beyond the tolerance. */
  readonly badCount: number;
  /** Largest error in the field's measure; `null` where an answer is missing or is no number. */
  readonly largestError: number | null;
  /** Row of the largest error, from 0; `null` without rows. */
  readonly worstIndex: number | null;
  /** The slip that explains the wrong rows; `null` where none is wrong or none of the known ones does. */
  readonly slip: VectorSlip | null;
}

/** What was found for a table; read `kind` first. */
export interface VectorReport {
  /** `conforms`: every value within its tolerance; `does-not-conform`; `not-answered`: the formula has no answer to any row. */
  readonly kind: 'conforms' | 'does-not-conform' | 'not-answered';
  /** Name of the table. */
  readonly table: string;
  /** Field by field. */
  readonly fields: readonly VectorFieldReport[];
}

/** The inputs of a row by name. */
function questionOf(table: VectorTable, row: readonly VectorValue[]): VectorQuestion {
  return Object.fromEntries(table.inputs.map((name, column) => [name, row[column] ?? null]));
}

function fieldReport(
  table: VectorTable,
  field: VectorField,
  questions: readonly VectorQuestion[],
  answers: ReturnType<VectorFormula>,
  ask: VectorFormula,
): VectorFieldReport {
  const column = table.inputs.length + table.expected.indexOf(field);
  const wrong: WrongRow[] = [];
  let [count, badCount, largestError] = [0, 0, -1];
  let worstIndex: number | null = null;
  for (const [index, row] of table.rows.entries()) {
    const expected = row[column] ?? null;
    if (expected === null) continue;
    count++;
    const got = answers[index]?.[field.name];
    const error = vectorError(field, expected, got);
    if (error > largestError) [largestError, worstIndex] = [error, index];
    if (error <= allowedError(field, expected)) continue;
    badCount++;
    const question = questions[index];
    if (typeof got === 'number' && question) wrong.push({ question, expected, got });
  }
  return {
    field: field.name,
    count,
    badCount,
    largestError: Number.isFinite(largestError) && largestError >= 0 ? largestError : null,
    worstIndex,
    slip: slipsOf(table, field, wrong, ask)[0] ?? null,
  };
}

/**
 * Checks a formula of yours, in any language that you can call, against a table of reference values, and names the slip where it
 * is wrong in one of the usual ways: sign, half a turn, radians for degrees, another unit, two inputs swapped, a constant.
 *
 * @param given  A table of `slantpath/vectors/...json`.
 * @param ask  Answers a list of questions in order, each with the fields that the table expects; asked again, with inputs changed,
 *   where answers are wrong.
 * @throws {@link DomainError} naming the place in `table` that is wrong, `length-mismatch` for a list of answers of another length.
 *
 * Source: each table names its own.
 * Accuracy: as each table's tolerance, from the digits of its source.
 * @example
 * ```ts
 * import { checkVectors } from 'slantpath/vectors';
 * const table = {
 *   name: 'free-space-loss', calls: 'loss', source: 'by hand', status: 'practice', licence: 'MIT',
 *   inputs: ['rangeKm', 'frequencyGHz'],
 *   expected: [{ name: 'lossDb', tolerance: 0.01, compare: 'absolute' }],
 *   rows: [[38000, 12, 205.63], [36000, 4, 195.62]],
 * } as const;
 * // 92.45 belongs to kilometres and GHz; 32.45 to kilometres and MHz.
 * const report = checkVectors(table, (questions) =>
 *   questions.map(({ rangeKm, frequencyGHz }) => ({
 *     lossDb: 32.45 + 20 * Math.log10(Number(rangeKm) * Number(frequencyGHz)),
 *   })),
 * );
 * report.kind; // => 'does-not-conform'
 * report.fields[0]?.slip?.slip; // => 'constant'
 * ```
 */
export function checkVectors(given: VectorTable, ask: VectorFormula): VectorReport {
  const table = checkedTable(given);
  if (typeof ask !== 'function')
    throw new DomainError({
      code: ask === undefined ? 'missing' : 'malformed',
      parameter: 'ask',
      received: ask,
      allowed: 'a function that answers a list of questions',
    });
  const counted: VectorFormula = (questions) => {
    const answers = ask(questions);
    if (!Array.isArray(answers) || answers.length !== questions.length)
      throw new DomainError({
        code: 'length-mismatch',
        parameter: 'ask',
        received: Array.isArray(answers) ? answers.length : answers,
        allowed: `a list of ${questions.length} answers`,
      });
    return answers;
  };
  const questions = table.rows.map((row) => questionOf(table, row));
  const answers = counted(questions);
  const answered = answers.some((answer) =>
    table.expected.some(({ name }) => answer?.[name] !== undefined && answer[name] !== null),
  );
  if (!answered) return { kind: 'not-answered', table: table.name, fields: [] };
  const fields = table.expected.map((field) =>
    fieldReport(table, field, questions, answers, counted),
  );
  return {
    kind: fields.every(({ badCount }) => badCount === 0) ? 'conforms' : 'does-not-conform',
    table: table.name,
    fields,
  };
}

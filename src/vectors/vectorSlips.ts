/** Which slip explains wrong answers: what the formula gives is put right in the usual ways, and so is what it is given. */

import { allowedError, vectorError } from './vectorError.js';
import type {
  VectorAnswer,
  VectorField,
  VectorQuestion,
  VectorTable,
  VectorValue,
} from './vectorTable.js';

/** A slip that explains the wrong answers of a field. */
export interface VectorSlip {
  /** Expected field that is wrong. */
  readonly field: string;
  /**
   * What went wrong, as a fixed word: `sign`, `half-turn`, `other-sense` (counted the other way round), `constant` (something is added), `factor`,
   * `radians-out`, `radians-in`, `input-sign`, `input-unit`, `swapped`.
   */
  readonly slip:
    | 'sign'
    | 'half-turn'
    | 'other-sense'
    | 'constant'
    | 'factor'
    | 'radians-out'
    | 'radians-in'
    | 'input-sign'
    | 'input-unit'
    | 'swapped';
  /** The slip in a sentence. */
  readonly says: string;
  /** Share of the wrong rows that it puts right, 0.9 to 1. */
  readonly explainedRatio: number;
}

/** Share of the wrong rows that a slip must put right to be named. */
const LEAST_RATIO = 0.9;
const DEGREE = Math.PI / 180;

/** A row that was answered wrongly. */
export interface WrongRow {
  readonly question: VectorQuestion;
  readonly expected: VectorValue;
  readonly got: number;
}

/** A formula under test that takes many questions at once. */
export type VectorFormula = (questions: readonly VectorQuestion[]) => readonly VectorAnswer[];

const share = (field: VectorField, rows: readonly WrongRow[], mend: (row: WrongRow) => unknown) =>
  rows.filter((row) => right(field, row.expected, mend(row))).length / rows.length;

/** Right to the tolerance, or to six digits: a slip is a slip though the formula has another constant besides. */
function right(field: VectorField, expected: VectorValue, got: unknown): boolean {
  const size = typeof expected === 'number' ? Math.abs(expected) : 0;
  const loose = field.compare === 'relative' ? 1e-6 : 1e-6 * (1 + size);
  return vectorError(field, expected, got) <= Math.max(allowedError(field, expected), loose);
}

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
const digits = (value: number) => String(Number(value.toPrecision(7)));

/** A slip, its words, and the answer put right. */
type Mend = readonly [VectorSlip['slip'], string, (row: WrongRow) => number];

/** Slips of what comes out. */
function outSlips(field: VectorField, rows: readonly WrongRow[]): readonly VectorSlip[] {
  const number = ({ expected }: WrongRow) => (typeof expected === 'number' ? expected : 0);
  const added = median(rows.map((row) => row.got - number(row)));
  const factor = median(
    rows.filter((row) => number(row) !== 0).map((row) => row.got / number(row)),
  );
  const turned: readonly Mend[] = field.name.toLowerCase().includes('azimuth')
    ? [['other-sense', 'is counted the other way round', ({ got }) => 360 - got]]
    : [['sign', 'has the other sign', ({ got }) => -got]];
  const half: readonly Mend[] =
    field.compare === 'direction'
      ? [['half-turn', 'points the opposite way, by half a turn', ({ got }) => got + 180]]
      : [];
  const scaled: readonly Mend[] =
    factor === 0
      ? []
      : [['factor', `is ${digits(factor)} times what it should be`, ({ got }) => got / factor]];
  const candidates: readonly Mend[] = [
    ...turned,
    ...half,
    ['radians-out', 'comes out in radians', ({ got }) => got / DEGREE],
    ['constant', `has ${digits(added)} added`, ({ got }) => got - added],
    ...scaled,
  ];
  return candidates.flatMap(([slip, says, mend]) => {
    const explainedRatio = share(field, rows, mend);
    return explainedRatio >= LEAST_RATIO
      ? [{ field: field.name, slip, says: `${field.name} ${says}`, explainedRatio }]
      : [];
  });
}

/** Ways to give an input that would mend a slip of taking it in; each with its word and sentence. */
function inSlips(table: VectorTable) {
  const numbers = table.inputs.filter((_, column) =>
    table.rows.some((row) => typeof row[column] === 'number' && row[column] !== 0),
  );
  const angles = numbers.filter((name) => name.endsWith('Deg'));
  const changed =
    (names: readonly string[], change: (value: number) => number) =>
    (question: VectorQuestion): VectorQuestion => ({
      ...question,
      ...Object.fromEntries(names.map((name) => [name, change(Number(question[name]))])),
    });
  const each = (names: readonly string[]) => names.map((name) => [name] as const);
  return [
    ...[angles, ...each(angles)]
      .filter((names) => names.length > 0)
      .map((names) => ({
        slip: 'radians-in' as const,
        says: `${names.join(', ')} ${names.length > 1 ? 'go' : 'goes'} into a function that takes radians, in degrees`,
        give: changed(names, (value) => value * DEGREE),
      })),
    ...each(numbers).map((names) => ({
      slip: 'input-sign' as const,
      says: `${names[0]} is taken with the other sign`,
      give: changed(names, (value) => -value),
    })),
    ...each(numbers).flatMap((names) =>
      [1000, 0.001, 100, 0.01].map((factor) => ({
        slip: 'input-unit' as const,
        says: `${names[0]} is taken in a unit ${factor > 1 ? `${factor} times smaller` : `${1 / factor} times larger`}`,
        give: changed(names, (value) => value * factor),
      })),
    ),
    ...numbers.flatMap((a, index) =>
      numbers.slice(index + 1).map((b) => ({
        slip: 'swapped' as const,
        says: `${a} and ${b} are swapped`,
        give: (question: VectorQuestion) => ({
          ...question,
          [a]: question[b] as VectorValue,
          [b]: question[a] as VectorValue,
        }),
      })),
    ),
  ];
}

/** Most rows that are asked again for each way. */
const MOST_ROWS = 12;

/** Answers to several lists of questions, asked at once; a list that the formula refuses has none. */
function answersTo(
  ask: VectorFormula,
  lists: readonly (readonly VectorQuestion[])[],
): readonly (readonly VectorAnswer[])[] {
  const attempt = (questions: readonly VectorQuestion[]) => {
    try {
      return ask(questions);
    } catch {
      return undefined;
    }
  };
  const all = attempt(lists.flat());
  if (all === undefined) return lists.map((list) => attempt(list) ?? []);
  const starts = lists.map((_, at) =>
    lists.slice(0, at).reduce((sum, { length }) => sum + length, 0),
  );
  return lists.map(({ length }, at) => all.slice(starts[at], (starts[at] ?? 0) + length));
}

/** The slips that explain the wrong answers of a field, the likeliest first; empty where none does. */
export function slipsOf(
  table: VectorTable,
  field: VectorField,
  wrong: readonly WrongRow[],
  ask: VectorFormula,
): readonly VectorSlip[] {
  const out = wrong.length > 1 ? outSlips(field, wrong) : [];
  if (out.length > 0 || wrong.length < 2) return out.slice(0, 1);
  const step = Math.ceil(wrong.length / MOST_ROWS);
  const rows = wrong.filter((_, index) => index % step === 0);
  const ways = inSlips(table);
  const answers = answersTo(
    ask,
    ways.map(({ give }) => rows.map(({ question }) => give(question))),
  );
  return ways
    .map(({ slip, says }, way) => {
      const good = rows.filter((row, index) =>
        right(field, row.expected, answers[way]?.[index]?.[field.name]),
      );
      return { field: field.name, slip, says, explainedRatio: good.length / rows.length };
    })
    .filter(({ explainedRatio }) => explainedRatio >= LEAST_RATIO)
    .slice(0, 1);
}

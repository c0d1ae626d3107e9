/** From the words of the command and the columns of a file to a plan that each worker follows. */

import { refuse } from './refuse.js';
import type { StepGiven } from './step.js';
import { STEPS } from './steps.js';

/** Where a field comes from: a number for all rows, a column of the file, or what an earlier step gave. */
export type FieldSource =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'column'; readonly column: string }
  | { readonly kind: 'result'; readonly name: string };

export interface PlannedStep {
  readonly name: string;
  readonly fields: Readonly<Record<string, FieldSource>>;
}

/** A column that the command adds; with words where the number in it is the place of a word. */
interface AddedColumn {
  readonly name: string;
  readonly words: readonly string[] | null;
}

/** What is computed for each row: plain data, so that it can be sent to a worker and compared with that of an earlier run. */
export interface ColumnsPlan {
  readonly steps: readonly PlannedStep[];
  /** Columns of the file that are read as numbers. */
  readonly reads: readonly string[];
  readonly adds: readonly AddedColumn[];
  readonly given: StepGiven;
}

/** Column that says what became of a row. */
const ROW_OUTCOME = 'rowOutcome';
/** Its words. */
export const ROW_OUTCOMES = ['computed', 'refused', 'below-horizon'] as const;

const NUMBER = /^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/;

/** What a word such as `heightM=0` or `latitudeDeg=lat` gives a field. */
function sourceOf(word: string, columns: readonly string[], parameter: string): FieldSource {
  if (NUMBER.test(word)) return { kind: 'number', value: Number(word) };
  if (!columns.includes(word))
    refuse(parameter, word, `a number or a column of the file (${columns.join(', ')})`);
  return { kind: 'column', column: word };
}

/** Fields that several steps give, and fields of steps whose names say little alone. */
const SHARED = ['outsideStatedRange', 'outcome', 'exceededPercent'];
const TOLD_WITH_STEP = ['smallestReflector', 'sunOutages'];

/** The name in the file of what a step gives: words of its own would meet those of other steps. */
export const addedName = (step: string, field: string) =>
  SHARED.includes(field) || TOLD_WITH_STEP.includes(step)
    ? `${step}${field.charAt(0).toUpperCase()}${field.slice(1)}`
    : field;

/** What an option of the command is, for who left it out. */
const OPTIONS: Readonly<Record<keyof StepGiven, string>> = {
  link: 'a file with the link',
  footprint: 'a GeoJSON file with the contours',
  from: 'the first day',
  to: 'the last day',
};

/**
 * The plan of a run.
 *
 * @param names  Functions by name, in their order; a later one takes what an earlier one gave.
 * @param words  `FIELD=COLUMN` or `FIELD=NUMBER`, or with the function before: `polarizationSkew.tiltDeg=3`.
 * @param columns  Columns of the file; one that is named like a field needs no word.
 * @param given  What the options of the command give.
 */
export function columnsPlan(
  names: readonly string[],
  words: Readonly<Record<string, string>>,
  columns: readonly string[],
  given: StepGiven = {},
): ColumnsPlan {
  if (names.length === 0) refuse('--add', undefined, `one of ${Object.keys(STEPS).join(', ')}`);
  const unused = new Set(Object.keys(words));
  const results = new Set<string>();
  const adds: AddedColumn[] = [];
  const steps = names.map((name): PlannedStep => {
    const step = Object.hasOwn(STEPS, name) ? STEPS[name] : undefined;
    if (!step) return refuse('--add', name, `one of ${Object.keys(STEPS).join(', ')}`);
    for (const option of step.asks ?? [])
      if (given[option] === undefined)
        refuse(`--${option}`, undefined, `${OPTIONS[option]} for ${name}`);
    const worded = (key: string): FieldSource | undefined => {
      const word = Object.hasOwn(words, key) ? words[key] : undefined;
      if (word === undefined) return undefined;
      unused.delete(key);
      // A word may name what an earlier function gave: `availability.eirpDbw=levelDb`.
      if (results.has(word)) return { kind: 'result', name: word };
      return sourceOf(word, columns, key);
    };
    const fields: Record<string, FieldSource> = {};
    for (const field of step.needs)
      fields[field] =
        worded(`${name}.${field}`) ??
        worded(field) ??
        (results.has(field) ? { kind: 'result', name: field } : undefined) ??
        (columns.includes(field) ? { kind: 'column', column: field } : undefined) ??
        refuse(field, undefined, `given for ${name}: ${field}=COLUMN or ${field}=NUMBER`);
    for (const field of step.may ?? []) {
      const given = worded(`${name}.${field}`);
      if (given) fields[field] = given;
    }
    for (const field of step.follows ?? [])
      if (results.has(field)) fields[field] = { kind: 'result', name: field };
    for (const [field, codes] of Object.entries(step.gives)) {
      const added = addedName(name, field);
      results.add(added);
      adds.push({ name: added, words: codes });
    }
    return { name, fields };
  });
  for (const word of unused)
    refuse('arguments', word, `a field that one of ${names.join(', ')} takes`);
  adds.push({ name: ROW_OUTCOME, words: ROW_OUTCOMES });
  const seen = new Set(columns.map((column) => column.toLowerCase()));
  for (const { name } of adds) {
    if (seen.has(name.toLowerCase()))
      refuse('--add', name, 'columns that the file or an earlier function does not have already');
    seen.add(name.toLowerCase());
  }
  const reads = new Set<string>();
  for (const { fields } of steps)
    for (const source of Object.values(fields))
      if (source.kind === 'column') reads.add(source.column);
  return { steps, reads: [...reads], adds, given };
}

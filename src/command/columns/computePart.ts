/** The rows of a part: every function of the plan in turn, each on the rows that none before refused. */

import type { DomainErrorJson } from '../../errors.js';
import { markBadRows } from '../../numeric/rows/markBadRows.js';
import { addedName, type ColumnsPlan, type FieldSource, type PlannedStep } from './plan.js';
import type { StepInput } from './step.js';
import { STEPS } from './steps.js';

/** A column of the file as numbers; NaN where its text is none, and 1 in `missing` where the field is empty. */
export interface ReadColumn {
  readonly values: Float64Array;
  readonly missing: Uint8Array | null;
}

/** A row that was refused. */
interface BadRow {
  /** Row in the part, from 0. */
  readonly row: number;
  readonly field: string;
  /** What was refused; what the file holds is told by the file. */
  readonly received: string;
  readonly code: string;
  readonly reason: string;
}

export interface ComputedPart {
  /** Column by column as the plan adds them; NaN in a row that has no answer. */
  readonly columns: readonly Float64Array[];
  readonly badRows: readonly BadRow[];
}

/** Rows that go through a batch at once: fewer than the refusals that `markBadRows` keeps. */
const SLICE = 8192;
const COMPUTED = 0;
const REFUSED = 1;
const BELOW_HORIZON = 2;

/** A column with null in its empty fields, as `markBadRows` takes it; the values as they are where none is empty. */
function listOf({ values, missing }: ReadColumn): ArrayLike<number> {
  if (!missing?.includes(1)) return values;
  return Array.from(values, (value, row) => (missing[row] ? null : value)) as number[];
}

/** The refusal without the row of the slice, which says nothing to who reads the file. */
function badRow(row: number, error: DomainErrorJson): BadRow {
  // What is no number in the file is NaN in a column.
  const code =
    error.code === 'not-finite' && error.received === 'NaN' ? 'not-a-number' : error.code;
  const field = error.parameter.replace(/^stations\./, '');
  const slip = error.slip ? `; ${error.slip}` : '';
  return {
    row,
    field,
    received: String(error.received ?? ''),
    code,
    reason: `${field} must be ${error.allowed}${slip}`,
  };
}

/** Computes a part. */
export function computePart(
  plan: ColumnsPlan,
  rows: number,
  read: readonly ReadColumn[],
): ComputedPart {
  const file = new Map(
    plan.reads.map((name, place) => [name, listOf(read[place] as ReadColumn)] as const),
  );
  const results = new Map(
    plan.adds.map(({ name }) => [name, new Float64Array(rows).fill(Number.NaN)] as const),
  );
  const outcome = new Uint8Array(rows);
  const badRows: BadRow[] = [];

  const columnOf = (source: FieldSource) =>
    source.kind === 'number'
      ? source.value
      : source.kind === 'column'
        ? file.get(source.column)
        : results.get(source.name);

  const runSlice = ({ name, fields }: PlannedStep, lively: Uint32Array) => {
    const step = STEPS[name];
    if (!step || lively.length === 0) return;
    const input: Record<string, number | ArrayLike<number>> = {};
    for (const [field, source] of Object.entries(fields)) {
      const column = columnOf(source) as number | ArrayLike<number>;
      if (typeof column === 'number') input[field] = column;
      else if (column instanceof Float64Array)
        input[field] = Float64Array.from(lively, (row) => column[row] as number);
      else input[field] = Array.from(lively, (row) => column[row] as number);
    }
    // Numbers alone are one row to a batch, and here the answer for all.
    if (Object.values(input).every((column) => typeof column === 'number')) {
      const first = Object.keys(input)[0] as string;
      input[first] = new Float64Array(lively.length).fill(input[first] as number);
    }
    const marked = markBadRows((given: StepInput) => step.batch(given, plan.given), input);
    for (const [field, column] of Object.entries(marked.columns ?? {})) {
      const target = results.get(addedName(name, field));
      if (!target) continue;
      for (let i = 0; i < lively.length; i++)
        if (marked.outcome[i] === COMPUTED) target[lively[i] as number] = column[i] as number;
    }
    for (const error of marked.badRows) {
      const row = lively[error.index ?? 0] as number;
      outcome[row] = REFUSED;
      badRows.push(badRow(row, error));
    }
  };

  for (const planned of plan.steps) {
    const { aboveHorizon, gives } = STEPS[planned.name] ?? {};
    for (let from = 0; from < rows; from += SLICE) {
      const lively = new Uint32Array(Math.min(SLICE, rows - from));
      let count = 0;
      for (let row = from; row < Math.min(from + SLICE, rows); row++)
        if (outcome[row] === COMPUTED || (outcome[row] === BELOW_HORIZON && !aboveHorizon))
          lively[count++] = row;
      runSlice(planned, lively.subarray(0, count));
    }
    const elevations = gives && 'elevationDeg' in gives ? results.get('elevationDeg') : undefined;
    if (elevations)
      for (let row = 0; row < rows; row++)
        if (outcome[row] === COMPUTED && !((elevations[row] as number) > 0))
          outcome[row] = BELOW_HORIZON;
  }
  badRows.sort((a, b) => a.row - b.row);
  const columns = [...results.values()];
  columns[columns.length - 1] = Float64Array.from(outcome);
  return { columns, badRows };
}

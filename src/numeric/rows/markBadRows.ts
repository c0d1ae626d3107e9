/** Batches that go on past a bad row: the row is marked, the others are computed. */

import { DomainError, type DomainErrorJson, isDomainError, list, object } from '../../errors.js';

/** What became of a row, by the number that stands in `outcome`. */
export const rowOutcomes = ['computed', 'refused'] as const;

/** Columns of a batch in which bad rows are marked. */
export interface MarkedRows<Columns> {
  /** The columns of the batch; in a row that was refused NaN, in a column of codes 255. */
  readonly columns: Columns;
  /** For each row the index of its word in `rowOutcomes`: 0 computed, 1 refused. */
  readonly outcome: Uint8Array;
  /** How many rows were refused. */
  readonly badCount: number;
  /** The first 10,000 refusals with their row in `index`, as plain data. */
  readonly badRows: readonly DomainErrorJson[];
}

/** Rows that are given to the batch at once: a few columns of them stay in the fast memory. */
const CHUNK = 2048;
/** Most refusals that are kept. */
const MOST_KEPT = 10_000;

type ResultColumn = Float64Array | Uint8Array;
type Result = ResultColumn | Readonly<Record<string, unknown>>;

const isColumn = (value: unknown): value is ResultColumn =>
  value instanceof Float64Array || value instanceof Uint8Array;

/** A column of `rows` refused rows, of the same kind. */
const refusedColumn = (kind: ResultColumn, rows: number): ResultColumn =>
  kind instanceof Uint8Array
    ? new Uint8Array(rows).fill(255)
    : new Float64Array(rows).fill(Number.NaN);

/** A column of the input: one value for all rows, or a list, with what is wrong with an entry that is no number. */
interface InputColumn {
  readonly name: string;
  readonly list: ArrayLike<unknown> | undefined;
  readonly value: unknown;
}

function inputColumns(input: object): readonly InputColumn[] {
  return Object.entries(input).map(([name, value]: [string, ArrayLike<unknown> | null]) => ({
    name,
    list:
      typeof value === 'object' && value !== null && Number.isInteger(value.length)
        ? list(name, value)
        : undefined,
    value,
  }));
}

/** How many rows there are; columns that differ are left to the batch, whose error says which. */
const rowsOf = (columns: readonly InputColumn[]) =>
  columns.reduce((most, { list }) => Math.max(most, list?.length ?? 0), 0);

/** The refusal of an entry that is no number, such as an empty field of a table. */
function missingIn(columns: readonly InputColumn[], row: number): DomainError | undefined {
  for (const { name, list } of columns) {
    const entry = list?.[row];
    if (list === undefined || typeof entry === 'number') continue;
    return new DomainError({
      code: entry === null || entry === undefined ? 'missing' : 'not-a-number',
      parameter: name,
      received: entry,
      allowed: 'a number',
      index: row,
    });
  }
  return undefined;
}

/** The input of some rows, lists as dense columns. */
function part(columns: readonly InputColumn[], from: number, to: number): object {
  return Object.fromEntries(
    columns.map(({ name, list, value }) => [
      name,
      list === undefined
        ? value
        : list instanceof Float64Array
          ? list.subarray(from, to)
          : Float64Array.from({ length: to - from }, (_, row) => list[from + row] as number),
    ]),
  );
}

/** Result columns by name; a batch that gives one column alone has it under an empty name. */
const resultColumns = (result: Result): readonly (readonly [string, ResultColumn])[] =>
  isColumn(result)
    ? [['', result]]
    : Object.entries(result).flatMap(([name, column]) =>
        isColumn(column) ? [[name, column] as const] : [],
      );

/**
 * Runs a batch function so that a bad row is marked instead of ending it: an address without a height, a latitude of 116.
 *
 * Each good row is what the batch gives for it, bit for bit. Lists may hold `null` where a table has an empty field. What is wrong for
 * all rows (a field that is misspelt, columns of different lengths, a single number out of range) is thrown as ever.
 *
 * @param batch  A function that ends in `Batch`.
 * @param input  Its input.
 * @throws {@link DomainError} as the batch does, for what no row alone is to blame for.
 *
 * Source: none; it counts rows.
 * Accuracy: that of the batch.
 * @example
 * ```ts
 * import { markBadRows } from 'slantpath';
 * import { lookAnglesBatch } from 'slantpath/pointing';
 * const { columns, outcome, badRows } = markBadRows(lookAnglesBatch, {
 *   latitudeDeg: [46.4, 116.2, 45.9], longitudeDeg: 9.6, heightM: 1900, orbitalLongitudeDeg: 16.4,
 * });
 * [...columns.elevationDeg].map((value) => value.toFixed(1)); // => ['36.2', 'NaN', '36.8']
 * [...outcome]; // => [0, 1, 0]
 * badRows[0]?.message; // => 'latitudeDeg[1] must be from -90 to 90, got 116.2; were latitude and longitude swapped?'
 * ```
 */
export function markBadRows<Input extends object, Columns extends Float64Array | object>(
  batch: (input: Input) => Columns,
  input: Input,
): MarkedRows<Columns> {
  if (typeof batch !== 'function')
    throw new DomainError({
      code: batch === undefined || batch === null ? 'missing' : 'malformed',
      parameter: 'batch',
      received: batch,
      allowed: 'a function that ends in Batch',
    });
  const given = inputColumns(object('input', input));
  const rows = rowsOf(given);
  const uneven = given.some(({ list }) => list !== undefined && list.length !== rows);
  // Without lists, with none of any length or with uneven ones there is no row to blame.
  if (rows === 0 || uneven) {
    const columns = batch(input);
    return { columns, outcome: new Uint8Array(1), badCount: 0, badRows: [] };
  }
  const outcome = new Uint8Array(rows);
  const badRows: DomainErrorJson[] = [];
  let badCount = 0;
  const refuse = (row: number, error: DomainError) => {
    outcome[row] = 1;
    badCount++;
    if (badRows.length < MOST_KEPT) badRows.push(error.toJSON());
  };
  const whole = new Map<string, ResultColumn>();
  /** Computes rows that hold numbers; returns the row that is refused, if one is. */
  const attempt = (from: number, to: number): DomainError | undefined => {
    try {
      for (const [name, column] of resultColumns(batch(part(given, from, to) as Input) as Result)) {
        const target = whole.get(name) ?? refusedColumn(column, rows);
        whole.set(name, target);
        target.set(column, from);
      }
      return undefined;
    } catch (error) {
      if (!isDomainError(error) || error.index === undefined) throw error;
      const { parameter } = error;
      // One number for all rows is nobody's row.
      if (given.some(({ name, list }) => name === parameter && list === undefined)) throw error;
      return error;
    }
  };
  for (let from = 0; from < rows; ) {
    const missing = missingIn(given, from);
    if (missing) {
      refuse(from++, missing);
      continue;
    }
    let to = from + 1;
    while (to < Math.min(from + CHUNK, rows) && !missingIn(given, to)) to++;
    const error = attempt(from, to);
    if (error === undefined) from = to;
    else {
      const bad = from + (error.index ?? 0);
      if (bad > from) attempt(from, bad);
      refuse(bad, new DomainError({ ...error.toJSON(), received: error.received, index: bad }));
      from = bad + 1;
    }
  }
  // A batch of which every row was refused has told nothing of its columns.
  const columns = whole.has('') ? whole.get('') : Object.fromEntries(whole);
  return { columns: columns as Columns, outcome, badCount, badRows };
}

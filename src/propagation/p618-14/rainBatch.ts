/** Rain attenuation by P.618-14 for columns of stations, for network planners. */

import { finite } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import {
  type Column,
  denseAt,
  inRow,
  outBytes,
  outColumn,
  rowCount,
} from '../../numeric/columns.js';
import { markOutside } from '../../numeric/rows/outsideFields.js';
import {
  checkedElevationDeg,
  checkedFrequencyGHz,
  checkedHeightM,
  checkedLatitudeDeg,
  checkedPercent,
  checkedRainHeightKm,
  checkedRainRate,
} from '../inputs.js';
import type { RainAttenuationInput } from './rain.js';
import { attenuationOfRows, keptCoefficients, type RainRows, rainRows } from './rainPasses.js';

/** The same fields as for one station, each a column or one number for all rows. */
export type RainAttenuationColumns = {
  readonly [Field in keyof RainAttenuationInput]: Column;
};

const RAIN_ATTENUATION_COLUMNS_KEYS = {
  exceededPercent: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
} satisfies Keys<RainAttenuationColumns>;

/** Columns of {@link rainAttenuationBatch}. */
export interface RainAttenuationResult {
  /** Attenuation exceeded for the percentage asked for, dB, positive as a loss. */
  readonly attenuationDb: Float64Array;
  /** Fields outside their stated range, row by row: read with `fieldsOutside` of the root entry; 0 for none. */
  readonly outsideStatedRange: Uint8Array;
}

const RAIN_ATTENUATION_BATCH_OUT_KEYS = {
  attenuationDb: true,
  outsideStatedRange: true,
} satisfies Keys<RainAttenuationResult>;

/** The columns by name, in the order in which they are checked. */
export function rainColumns(input: RainAttenuationColumns): RainAttenuationColumns {
  return {
    latitudeDeg: input.latitudeDeg,
    heightM: input.heightM,
    rainHeightKm: input.rainHeightKm,
    rainRate001MmPerH: input.rainRate001MmPerH,
    frequencyGHz: input.frequencyGHz,
    elevationDeg: input.elevationDeg,
    tiltDeg: input.tiltDeg,
    exceededPercent: input.exceededPercent,
  };
}

/**
 * Rain attenuation exceeded for a percentage of an average year, for columns of stations.
 *
 * Each row equals `rainAttenuation` bit for bit. A row outside the stated range (1 to 55 GHz, 0.001 to 5 % of the time) is computed and marked.
 *
 * @param input  The fields of `rainAttenuation`, each a list with one number per station or one number for all.
 * @param out  Columns to write into, of the right length; new ones where not given.
 * @throws {@link DomainError} naming the field, and the row for a bad value in a column.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.1.1.
 * @example
 * ```ts
 * import { rainAttenuationBatch } from 'slantpath/propagation';
 * const { attenuationDb } = rainAttenuationBatch({
 *   latitudeDeg: [46.4, 46.7],
 *   heightM: [1900, 600],
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 12,
 *   elevationDeg: 36,
 *   tiltDeg: 0,
 *   exceededPercent: 0.01,
 * });
 * [...attenuationDb].map((value) => value.toFixed(2)); // => ['2.85', '5.20']
 * ```
 */
export function rainAttenuationBatch(
  input: RainAttenuationColumns,
  out: Partial<RainAttenuationResult> = {},
): RainAttenuationResult {
  const columns = rainColumns(known('input', input, RAIN_ATTENUATION_COLUMNS_KEYS));
  const rows = rowCount(columns);
  const given = known('out', out, RAIN_ATTENUATION_BATCH_OUT_KEYS);
  const attenuationDb = outColumn('out.attenuationDb', given.attenuationDb, rows);
  const outsideStatedRange = outBytes('out.outsideStatedRange', given.outsideStatedRange, rows);
  fillRainAttenuation(columns, attenuationDb);
  markOutside(outsideStatedRange, 'frequencyGHz', columns.frequencyGHz, 1, 55);
  markOutside(outsideStatedRange, 'exceededPercent', columns.exceededPercent, 0.001, 5);
  return { attenuationDb, outsideStatedRange };
}

/** Rows that go through the steps at once: their columns stay in the fastest memory. */
const ROWS_AT_ONCE = 256;

/** The interval in which a value needs no guard, and the guard, in the order in which fields are checked. */
const GUARDS: readonly (readonly [
  field: keyof RainAttenuationColumns,
  minimum: number,
  maximum: number,
  guard: (value: number, row: number) => number,
])[] = [
  ['latitudeDeg', -90, 90, checkedLatitudeDeg],
  ['heightM', -500, 10000, checkedHeightM],
  ['rainHeightKm', -5, 20, checkedRainHeightKm],
  ['rainRate001MmPerH', 0, 1000, (value, row) => checkedRainRate('rainRate001MmPerH', value, row)],
  ['frequencyGHz', 0.1, 1000, checkedFrequencyGHz],
  ['elevationDeg', 0, 90, checkedElevationDeg],
  ['tiltDeg', -360, 360, (value, row) => finite('tiltDeg', value, undefined, row)],
  ['exceededPercent', 1e-6, 100, checkedPercent],
];

/** Takes up some rows of a dense column; says whether all need no guard. */
function takenDense(
  from: Float64Array,
  first: number,
  to: Float64Array,
  rows: number,
  minimum: number,
  maximum: number,
): boolean {
  let good = true;
  for (let row = 0; row < rows; row++) {
    const value = denseAt(from, first + row);
    to[row] = value;
    if (!(value >= minimum && value <= maximum)) good = false;
  }
  return good;
}

/** The same of a column of any kind; what is no number is left to the guard. */
function taken(
  column: Column,
  first: number,
  to: Float64Array,
  rows: number,
  minimum: number,
  maximum: number,
): boolean {
  if (column instanceof Float64Array) return takenDense(column, first, to, rows, minimum, maximum);
  // One number for all rows stands there from the first ones on.
  if (typeof column === 'number' && first > 0) return true;
  let good = true;
  for (let row = 0; row < rows; row++) {
    const value = inRow(column, first + row);
    if (typeof value === 'number' && value >= minimum && value <= maximum) to[row] = value;
    else good = false;
  }
  return good;
}

/** Checks the rows one by one; gives how many are good, with the refusal of the next if there is one. */
function guarded(
  columns: RainAttenuationColumns,
  first: number,
  to: RainRows,
  rows: number,
): { readonly good: number; readonly refusal?: unknown } {
  for (let row = 0; row < rows; row++)
    try {
      for (const [field, minimum, maximum, guard] of GUARDS) {
        const value = inRow(columns[field], first + row);
        const plain = typeof value === 'number' && value >= minimum && value <= maximum;
        to[field][row] = plain ? value : guard(value, first + row);
      }
    } catch (refusal) {
      return { good: row, refusal };
    }
  return { good: rows };
}

/** Writes the attenuation of each row; where one is refused, the rows before it are written. */
export function fillRainAttenuation(columns: RainAttenuationColumns, out: Float64Array): void {
  const coefficientsAt = keptCoefficients();
  const some = rainRows(Math.min(ROWS_AT_ONCE, out.length));
  for (let from = 0; from < out.length; from += ROWS_AT_ONCE) {
    const rows = Math.min(ROWS_AT_ONCE, out.length - from);
    let good = true;
    for (const [field, minimum, maximum] of GUARDS)
      good = taken(columns[field], from, some[field], rows, minimum, maximum) && good;
    const checked = good ? { good: rows } : guarded(columns, from, some, rows);
    if (checked.good > 0) attenuationOfRows(some, checked.good, coefficientsAt, out, from);
    if ('refusal' in checked) throw checked.refusal;
  }
}

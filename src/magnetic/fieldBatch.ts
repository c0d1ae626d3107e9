/** Declination for columns of stations and dates. */

import { finite, inRange } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { DEGREES_PER_RADIAN, wrapLongitudeDeg } from '../numeric/angle.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../numeric/columns.js';
import { markOutside } from '../numeric/rows/outsideFields.js';
import { declinationStandardUncertaintyDeg, YEAR_SLIP } from './field.js';
import { FIRST_YEAR, fieldVector, LAST_YEAR } from './model.js';

/** What {@link declinationBatch} is asked: each a column or one number for all rows. */
export interface DeclinationBatchInput {
  /** Geodetic latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
  /** Height above the ellipsoid in metres, -1000 to 100000. */
  readonly heightM: Column;
  /** Date as a decimal year, 1990 to 2100; the model is valid from 2025.0 to 2030.0. */
  readonly decimalYear: Column;
}

const DECLINATION_BATCH_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  decimalYear: true,
} satisfies Keys<DeclinationBatchInput>;

/** Columns of {@link declinationBatch}. */
export interface DeclinationColumns {
  /** Declination in degrees, east positive, (-180, 180]. */
  readonly declinationDeg: Float64Array;
  /** One standard deviation of the declination in degrees. */
  readonly declinationStandardUncertaintyDeg: Float64Array;
  /** Intensity of the horizontal part in nanotesla; below 2000 no compass works, below 6000 hardly any. */
  readonly horizontalIntensityNt: Float64Array;
  /** Fields outside their stated range, row by row: read with `fieldsOutside` of the root entry; 0 for none. */
  readonly outsideStatedRange: Uint8Array;
}

const DECLINATION_BATCH_OUT_KEYS = {
  declinationDeg: true,
  declinationStandardUncertaintyDeg: true,
  horizontalIntensityNt: true,
  outsideStatedRange: true,
} satisfies Keys<NonNullable<Parameters<typeof declinationBatch>[1]>>;

/**
 * Declination, its uncertainty and the horizontal intensity for many places and dates.
 *
 * Each row equals `magneticField` bit for bit.
 *
 * @param input  Columns of one length, or single numbers for all rows.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as `magneticField`. Accuracy: as `magneticField`.
 * @example
 * ```ts
 * import { declinationBatch } from 'slantpath/magnetic';
 * const { declinationDeg } = declinationBatch({
 *   latitudeDeg: [46.4, -0.4, -30],
 *   longitudeDeg: [9.6, 102, 140],
 *   heightM: 0,
 *   decimalYear: 2026.5,
 * });
 * [...declinationDeg].map((value) => value.toFixed(1)); // => ['3.8', '0.2', '7.5']
 * ```
 */
export function declinationBatch(
  input: DeclinationBatchInput,
  out: Partial<DeclinationColumns> = {},
): DeclinationColumns {
  const { latitudeDeg, longitudeDeg, heightM, decimalYear } = knownOnly(
    'input',
    input,
    DECLINATION_BATCH_INPUT_KEYS,
  );
  const rows = rowCount({ latitudeDeg, longitudeDeg, heightM, decimalYear });
  const given = known('out', out, DECLINATION_BATCH_OUT_KEYS);
  const declinations = outColumn('out.declinationDeg', given.declinationDeg, rows);
  const uncertainties = outColumn(
    'out.declinationStandardUncertaintyDeg',
    given.declinationStandardUncertaintyDeg,
    rows,
  );
  const intensities = outColumn('out.horizontalIntensityNt', given.horizontalIntensityNt, rows);
  const marks = outBytes('out.outsideStatedRange', given.outsideStatedRange, rows);
  for (let row = 0; row < rows; row++) {
    const latitude = inRange(
      'latitudeDeg',
      inRow(latitudeDeg, row),
      -90,
      90,
      'were latitude and longitude swapped?',
      row,
    );
    const longitude = finite('longitudeDeg', inRow(longitudeDeg, row), undefined, row);
    const height = inRange(
      'heightM',
      inRow(heightM, row),
      -1000,
      100000,
      'is the height in metres?',
      row,
    );
    const year = inRange(
      'decimalYear',
      inRow(decimalYear, row),
      FIRST_YEAR,
      LAST_YEAR,
      YEAR_SLIP,
      row,
    );
    const field = fieldVector(latitude, wrapLongitudeDeg(longitude), height / 1000, year);
    const horizontal = Math.sqrt(field.north * field.north + field.east * field.east);
    declinations[row] = Math.atan2(field.east, field.north) * DEGREES_PER_RADIAN;
    uncertainties[row] = declinationStandardUncertaintyDeg(horizontal);
    intensities[row] = horizontal;
  }
  markOutside(marks, 'decimalYear', decimalYear, 2025, 2030);
  return {
    declinationDeg: declinations,
    declinationStandardUncertaintyDeg: uncertainties,
    horizontalIntensityNt: intensities,
    outsideStatedRange: marks,
  };
}

/** Clearance over obstructions for columns of sites. */

import { type Keys, known, knownOnly } from '../keys.js';
import { type Column, inRow, outColumn, rowCount } from '../numeric/columns.js';
import { checkedObstruction, clearanceOf, type ObstructionInput } from './obstructionClearance.js';

/** What {@link obstructionClearanceBatch} is asked: each a column or one number for all rows. */
export type ObstructionBatchInput = { readonly [K in keyof ObstructionInput]: Column };

const OBSTRUCTION_BATCH_INPUT_KEYS = {
  distanceM: true,
  topHeightM: true,
  centreHeightM: true,
  elevationDeg: true,
  diameterM: true,
  requiredClearanceM: true,
  growthMPerYear: true,
  years: true,
} satisfies Keys<ObstructionBatchInput>;

/** Columns of {@link obstructionClearanceBatch}. */
export interface ObstructionColumns {
  /** Elevation of the satellite less that of the obstruction's top, in degrees. */
  readonly clearanceDeg: Float64Array;
  /** Distance of the top from the beam's lower edge in metres; negative inside the beam. */
  readonly edgeClearanceM: Float64Array;
  /** Lowest height of the reflector's centre that gives the clearance wanted, in metres. */
  readonly neededCentreHeightM: Float64Array;
}

const OBSTRUCTION_CLEARANCE_BATCH_OUT_KEYS = {
  clearanceDeg: true,
  edgeClearanceM: true,
  neededCentreHeightM: true,
} satisfies Keys<NonNullable<Parameters<typeof obstructionClearanceBatch>[1]>>;

/**
 * Clearance of many reflectors over their obstructions, row by row.
 *
 * Each row equals `obstructionClearance` bit for bit.
 *
 * @param input  Columns of one length, or single numbers for all rows; the optional fields may be left out.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as `obstructionClearance`. Accuracy: as `obstructionClearance`.
 * @example
 * ```ts
 * import { obstructionClearanceBatch } from 'slantpath/survey';
 * const { edgeClearanceM } = obstructionClearanceBatch({
 *   distanceM: [12, 20],
 *   topHeightM: 9,
 *   centreHeightM: 2,
 *   elevationDeg: 36.2,
 *   diameterM: 0.9,
 * });
 * [...edgeClearanceM].map((value) => value.toFixed(2)); // => ['0.99', '5.71']
 * ```
 */
export function obstructionClearanceBatch(
  input: ObstructionBatchInput,
  out: Partial<ObstructionColumns> = {},
): ObstructionColumns {
  const { distanceM, topHeightM, centreHeightM, elevationDeg, diameterM, ...rest } = knownOnly(
    'input',
    input,
    OBSTRUCTION_BATCH_INPUT_KEYS,
  );
  const { requiredClearanceM = 0, growthMPerYear = 0, years = 0 } = rest;
  const columns = {
    distanceM,
    topHeightM,
    centreHeightM,
    elevationDeg,
    diameterM,
    requiredClearanceM,
    growthMPerYear,
    years,
  };
  const rows = rowCount(columns);
  const given = known('out', out, OBSTRUCTION_CLEARANCE_BATCH_OUT_KEYS);
  const angles = outColumn('out.clearanceDeg', given.clearanceDeg, rows);
  const edges = outColumn('out.edgeClearanceM', given.edgeClearanceM, rows);
  const heights = outColumn('out.neededCentreHeightM', given.neededCentreHeightM, rows);
  for (let row = 0; row < rows; row++) {
    const checked = checkedObstruction(
      {
        distanceM: inRow(distanceM, row),
        topHeightM: inRow(topHeightM, row),
        centreHeightM: inRow(centreHeightM, row),
        elevationDeg: inRow(elevationDeg, row),
        diameterM: inRow(diameterM, row),
        requiredClearanceM: inRow(requiredClearanceM, row),
        growthMPerYear: inRow(growthMPerYear, row),
        years: inRow(years, row),
      },
      row,
    );
    const clearance = clearanceOf(checked);
    angles[row] = clearance.clearanceDeg;
    edges[row] = clearance.edgeClearanceM;
    heights[row] = clearance.neededCentreHeightM;
  }
  return { clearanceDeg: angles, edgeClearanceM: edges, neededCentreHeightM: heights };
}

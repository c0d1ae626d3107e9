/** Total attenuation by P.618-14 for columns of stations, for network planners. */

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
import { checkedPercent } from '../inputs.js';
import { fillRainAttenuation, type RainAttenuationColumns, rainColumns } from './rainBatch.js';
import {
  checkedScintillation,
  scintillationDeviation,
  scintillationPercentFactor,
} from './scintillation.js';
import { checkedPart, combinedDb, HELD_PERCENT } from './total.js';

/** The fields of `totalAttenuation`, each a column or one number for all rows. */
export interface TotalAttenuationColumns extends RainAttenuationColumns {
  /** Diameter of the antenna in metres. */
  readonly diameterM: Column;
  /** Efficiency of the antenna, 0.01 to 1; 0.5 where not given. */
  readonly efficiencyRatio?: Column | undefined;
  /** Median wet term of the surface refractivity in N-units. */
  readonly wetRefractivityNUnits: Column;
  /** Attenuation by gases exceeded for `heldPercent` of the time, dB. */
  readonly gasDb: Column;
  /** Attenuation by clouds exceeded for `heldPercent` of the time, dB. */
  readonly cloudDb: Column;
}

const TOTAL_ATTENUATION_COLUMNS_KEYS = {
  diameterM: true,
  efficiencyRatio: true,
  wetRefractivityNUnits: true,
  gasDb: true,
  cloudDb: true,
  exceededPercent: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
} satisfies Keys<TotalAttenuationColumns>;

/** Columns of {@link totalAttenuationBatch}. */
export interface TotalAttenuationResult {
  /** Rain, dB. */
  readonly rainDb: Float64Array;
  /** Scintillation, dB. */
  readonly scintillationDb: Float64Array;
  /** All causes together, dB. */
  readonly attenuationDb: Float64Array;
  /** Fields outside their stated range, row by row: read with `fieldsOutside` of the root entry; 0 for none. */
  readonly outsideStatedRange: Uint8Array;
}

const TOTAL_ATTENUATION_BATCH_OUT_KEYS = {
  rainDb: true,
  scintillationDb: true,
  attenuationDb: true,
  outsideStatedRange: true,
} satisfies Keys<TotalAttenuationResult>;

/**
 * Total attenuation exceeded for a percentage of an average year, for columns of stations.
 *
 * Each row equals `totalAttenuation` bit for bit. A row outside the stated range (see there) is computed and marked.
 *
 * @param input  The fields of `totalAttenuation`, each a list with one number per station or one number for all.
 * @param out  Columns to write into, of the right length; new ones where not given.
 * @returns Columns of rain, scintillation and total attenuation in dB, positive as a loss.
 * @throws {@link DomainError} naming the field, and the row for a bad value in a column.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.5.
 * @example
 * ```ts
 * import { totalAttenuationBatch } from 'slantpath/propagation';
 * const { attenuationDb } = totalAttenuationBatch({
 *   latitudeDeg: [46.4, 46.7],
 *   heightM: [1900, 600],
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   tiltDeg: 45,
 *   exceededPercent: 0.1,
 *   diameterM: 0.9,
 *   efficiencyRatio: 0.65,
 *   wetRefractivityNUnits: 45,
 *   gasDb: 0.4,
 *   cloudDb: 0.6,
 * });
 * [...attenuationDb].map((value) => value.toFixed(2)); // => ['3.39', '5.64']
 * ```
 */
export function totalAttenuationBatch(
  input: TotalAttenuationColumns,
  out: Partial<TotalAttenuationResult> = {},
): TotalAttenuationResult {
  const columns = rainColumns(known('input', input, TOTAL_ATTENUATION_COLUMNS_KEYS));
  const { diameterM, wetRefractivityNUnits, gasDb, cloudDb } = input;
  const efficiencyRatio = input.efficiencyRatio ?? 0.5;
  const rows = rowCount({
    ...columns,
    diameterM,
    efficiencyRatio,
    wetRefractivityNUnits,
    gasDb,
    cloudDb,
  });
  const given = known('out', out, TOTAL_ATTENUATION_BATCH_OUT_KEYS);
  const result: TotalAttenuationResult = {
    rainDb: outColumn('out.rainDb', given.rainDb, rows),
    scintillationDb: outColumn('out.scintillationDb', given.scintillationDb, rows),
    attenuationDb: outColumn('out.attenuationDb', given.attenuationDb, rows),
    outsideStatedRange: outBytes('out.outsideStatedRange', given.outsideStatedRange, rows),
  };
  fillRainAttenuation(columns, result.rainDb);
  for (let row = 0; row < rows; row++) {
    const exceededPercent = checkedPercent(inRow(columns.exceededPercent, row), row);
    const path = checkedScintillation(
      {
        frequencyGHz: inRow(columns.frequencyGHz, row),
        elevationDeg: inRow(columns.elevationDeg, row),
        diameterM: inRow(diameterM, row),
        efficiencyRatio: inRow(efficiencyRatio, row),
        wetRefractivityNUnits: inRow(wetRefractivityNUnits, row),
      },
      row,
    );
    const { standardDeviationDb } = scintillationDeviation(
      path.frequencyGHz,
      path.elevationDeg,
      path.effectiveDiameterM,
      path.wetRefractivity,
      path.turbulenceHeightM,
    );
    const gas = checkedPart('gasDb', inRow(gasDb, row), row);
    const cloud = checkedPart('cloudDb', inRow(cloudDb, row), row);
    const scintillationDb =
      Math.max(0, scintillationPercentFactor(exceededPercent)) * standardDeviationDb;
    if (exceededPercent > HELD_PERCENT) result.rainDb[row] = 0;
    result.scintillationDb[row] = scintillationDb;
    result.attenuationDb[row] = combinedDb(
      gas,
      denseAt(result.rainDb, row),
      cloud,
      scintillationDb,
    );
  }
  const marks = result.outsideStatedRange;
  markOutside(marks, 'frequencyGHz', columns.frequencyGHz, 4, 55);
  markOutside(marks, 'elevationDeg', columns.elevationDeg, 5, 90);
  markOutside(marks, 'exceededPercent', columns.exceededPercent, 0.001, 50);
  return result;
}

/** Total attenuation by P.618-14 for columns of stations, for network planners. */

import { object } from '../../errors.js';
import { type Column, inRow, outColumn, rowCount } from '../../numeric/columns.js';
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
  readonly antennaDiameterM: Column;
  /** Efficiency of the antenna, above 0 to 1; 0.5 where not given. */
  readonly antennaEfficiencyRatio?: Column | undefined;
  /** Median wet term of the surface refractivity in N-units. */
  readonly wetRefractivityNUnits: Column;
  /** Attenuation by gases exceeded for `heldPercent` of the time, dB. */
  readonly gasAttenuationDb: Column;
  /** Attenuation by clouds exceeded for `heldPercent` of the time, dB. */
  readonly cloudAttenuationDb: Column;
}

/** Columns of {@link totalAttenuationBatch}. */
export interface TotalAttenuationResult {
  /** Rain, dB. */
  readonly rainDb: Float64Array;
  /** Scintillation, dB. */
  readonly scintillationDb: Float64Array;
  /** All causes together, dB. */
  readonly attenuationDb: Float64Array;
}

/**
 * Total attenuation exceeded for a percentage of an average year, for columns of stations.
 *
 * Each row equals `totalAttenuation` bit for bit.
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
 *   stationHeightKm: [1.9, 0.6],
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   tiltDeg: 45,
 *   exceededPercent: 0.1,
 *   antennaDiameterM: 0.9,
 *   antennaEfficiencyRatio: 0.65,
 *   wetRefractivityNUnits: 45,
 *   gasAttenuationDb: 0.4,
 *   cloudAttenuationDb: 0.6,
 * });
 * [...attenuationDb].map((value) => value.toFixed(2)); // => ['3.39', '5.64']
 * ```
 */
export function totalAttenuationBatch(
  input: TotalAttenuationColumns,
  out: Partial<TotalAttenuationResult> = {},
): TotalAttenuationResult {
  const columns = rainColumns(object('input', input));
  const { antennaDiameterM, wetRefractivityNUnits, gasAttenuationDb, cloudAttenuationDb } = input;
  const antennaEfficiencyRatio = input.antennaEfficiencyRatio ?? 0.5;
  const rows = rowCount({
    ...columns,
    antennaDiameterM,
    antennaEfficiencyRatio,
    wetRefractivityNUnits,
    gasAttenuationDb,
    cloudAttenuationDb,
  });
  const result: TotalAttenuationResult = {
    rainDb: outColumn('out.rainDb', out.rainDb, rows),
    scintillationDb: outColumn('out.scintillationDb', out.scintillationDb, rows),
    attenuationDb: outColumn('out.attenuationDb', out.attenuationDb, rows),
  };
  fillRainAttenuation(columns, result.rainDb);
  for (let row = 0; row < rows; row++) {
    const exceededPercent = checkedPercent(inRow(columns.exceededPercent, row), row);
    const path = checkedScintillation(
      {
        frequencyGHz: inRow(columns.frequencyGHz, row),
        elevationDeg: inRow(columns.elevationDeg, row),
        antennaDiameterM: inRow(antennaDiameterM, row),
        antennaEfficiencyRatio: inRow(antennaEfficiencyRatio, row),
        wetRefractivityNUnits: inRow(wetRefractivityNUnits, row),
      },
      row,
    );
    const { deviationDb } = scintillationDeviation(
      path.frequencyGHz,
      path.elevationDeg,
      path.effectiveDiameterM,
      path.wetRefractivity,
      path.turbulenceHeightM,
    );
    const gasDb = checkedPart('gasAttenuationDb', inRow(gasAttenuationDb, row), row);
    const cloudDb = checkedPart('cloudAttenuationDb', inRow(cloudAttenuationDb, row), row);
    const scintillationDb = Math.max(0, scintillationPercentFactor(exceededPercent)) * deviationDb;
    if (exceededPercent > HELD_PERCENT) result.rainDb[row] = 0;
    result.scintillationDb[row] = scintillationDb;
    result.attenuationDb[row] = combinedDb(
      gasDb,
      result.rainDb[row] as number,
      cloudDb,
      scintillationDb,
    );
  }
  return result;
}

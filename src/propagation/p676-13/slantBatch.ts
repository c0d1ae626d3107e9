/** Gases along many slant paths from one station: the air is prepared once for all frequencies and elevations. */

import { type Keys, known } from '../../keys.js';
import { cosDeg } from '../../numeric/angle.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../../numeric/columns.js';
import { markOutside } from '../../numeric/rows/outsideFields.js';
import { checkedElevationDeg, checkedFrequencyGHz } from '../inputs.js';
import { type AirAboveStation, gasColumn } from './column.js';
import { rayThroughGas } from './path.js';

/** Input of {@link gasSlantAttenuationBatch}: columns or single numbers, in one atmosphere. */
export interface GasSlantAttenuationBatchInput extends AirAboveStation {
  /** Frequency in GHz. */
  readonly frequencyGHz: Column;
  /** Apparent elevation in degrees, 0 to 90. */
  readonly elevationDeg: Column;
}

const GAS_SLANT_ATTENUATION_BATCH_INPUT_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  heightM: true,
  atmosphere: true,
  seaLevelDensityGPerM3: true,
} satisfies Keys<GasSlantAttenuationBatchInput>;

/** Columns of {@link gasSlantAttenuationBatch}. */
export interface GasSlantAttenuationColumns {
  /** Oxygen and the dry continuum, dB. */
  readonly oxygenDb: Float64Array;
  /** Water vapour, dB. */
  readonly waterVapourDb: Float64Array;
  /** Both together, dB. */
  readonly attenuationDb: Float64Array;
  /** Fields outside their stated range, row by row: read with `fieldsOutside` of the root entry; 0 for none. */
  readonly outsideStatedRange: Uint8Array;
}

const GAS_SLANT_ATTENUATION_BATCH_OUT_KEYS = {
  oxygenDb: true,
  waterVapourDb: true,
  attenuationDb: true,
  outsideStatedRange: true,
} satisfies Keys<GasSlantAttenuationColumns>;

/**
 * Attenuation by gases for columns of frequencies and elevations from one station, line by line.
 *
 * Each row equals {@link gasSlantAttenuation} bit for bit. A row outside the stated range (1 to 1000 GHz) is computed and marked.
 * The lines in each layer are found once, which makes
 * a row some ten times cheaper than a single call.
 *
 * @param input  Columns of frequency and elevation, and the air above the station.
 * @param out  Columns to write into, of the right length; new ones where not given.
 * @returns Columns of attenuation in dB, positive as a loss.
 * @throws {@link DomainError} naming the field, and the row for a bad value in a column.
 *
 * Source: Recommendation ITU-R P.676-13, Annex 1, section 2.2.1.
 * @example
 * ```ts
 * import { gasSlantAttenuationBatch } from 'slantpath/propagation';
 * const { attenuationDb } = gasSlantAttenuationBatch({ frequencyGHz: [12, 20], elevationDeg: 35 });
 * [...attenuationDb].map((value) => value.toFixed(2)); // => ['0.10', '0.44']
 * ```
 */
export function gasSlantAttenuationBatch(
  input: GasSlantAttenuationBatchInput,
  out: Partial<GasSlantAttenuationColumns> = {},
): GasSlantAttenuationColumns {
  const { frequencyGHz, elevationDeg } = known(
    'input',
    input,
    GAS_SLANT_ATTENUATION_BATCH_INPUT_KEYS,
  );
  const rows = rowCount({ frequencyGHz, elevationDeg });
  const given = known('out', out, GAS_SLANT_ATTENUATION_BATCH_OUT_KEYS);
  const columns: GasSlantAttenuationColumns = {
    oxygenDb: outColumn('out.oxygenDb', given.oxygenDb, rows),
    waterVapourDb: outColumn('out.waterVapourDb', given.waterVapourDb, rows),
    attenuationDb: outColumn('out.attenuationDb', given.attenuationDb, rows),
    outsideStatedRange: outBytes('out.outsideStatedRange', given.outsideStatedRange, rows),
  };
  const column = gasColumn(input);
  for (let row = 0; row < rows; row++) {
    const f = checkedFrequencyGHz(inRow(frequencyGHz, row), row);
    const elevation = checkedElevationDeg(inRow(elevationDeg, row), row);
    const ray = rayThroughGas(column, f, cosDeg(elevation));
    columns.oxygenDb[row] = ray.oxygenDb;
    columns.waterVapourDb[row] = ray.waterVapourDb;
    columns.attenuationDb[row] = ray.oxygenDb + ray.waterVapourDb;
  }
  markOutside(columns.outsideStatedRange, 'frequencyGHz', frequencyGHz, 1, 1000);
  return columns;
}

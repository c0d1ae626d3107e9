/** Climate of columns of places, for what comes after it in columns: attenuation, availability. */

import { withinRow } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { type Column, inRow, outColumn, rowCount } from '../numeric/columns.js';
import type { Climate } from './climateAt.js';
import { climateAt } from './shipped.js';

/** What {@link climateAtBatch} is asked: each a column or one number for all rows. */
export interface ClimateAtBatchInput {
  /** Latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
  /** Height above mean sea level in metres, -1000 to 100000. */
  readonly heightM: Column;
  /** Another climate than the shipped grid's: a grid of one's own, or with local rain. */
  readonly climateOf?:
    | ((station: {
        readonly latitudeDeg: number;
        readonly longitudeDeg: number;
        readonly heightM: number;
      }) => Climate)
    | undefined;
}

const CLIMATE_AT_BATCH_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  climateOf: true,
} satisfies Keys<ClimateAtBatchInput>;

/** Columns of {@link climateAtBatch}. */
export interface ClimateColumns {
  /** Rain rate exceeded for 0.01 % of an average year, mm/h. */
  readonly rainRate001MmPerH: Float64Array;
  /** Part of an average year in which it rains, percent. */
  readonly rainProbabilityPercent: Float64Array;
  /** Mean annual height of the 0 degree Celsius isotherm above mean sea level, km. */
  readonly isothermHeightKm: Float64Array;
  /** Mean annual rain height above mean sea level, km. */
  readonly rainHeightKm: Float64Array;
  /** Mean annual surface temperature, kelvin. */
  readonly meanTemperatureK: Float64Array;
  /** Wet term of the surface refractivity exceeded for 50 % of an average year, N-units. */
  readonly wetRefractivityNUnits: Float64Array;
  /** Height of the ground in the map, metres. */
  readonly groundHeightM: Float64Array;
}

const CLIMATE_AT_BATCH_OUT_KEYS = {
  rainRate001MmPerH: true,
  rainProbabilityPercent: true,
  isothermHeightKm: true,
  rainHeightKm: true,
  meanTemperatureK: true,
  wetRefractivityNUnits: true,
  groundHeightM: true,
} satisfies Keys<ClimateColumns>;

/**
 * Climate of many places: the figures of `climateAt` that are one number.
 *
 * Each row equals `climateAt` bit for bit. The columns are named as the functions that come after ask for them, so that they fit into
 * `rainAttenuationBatch` and `availabilityBatch` as they are.
 *
 * @param input  Columns of one length, or single numbers for all rows.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as `climateAt`.
 * Accuracy: that of `climateAt`.
 * @example
 * ```ts
 * import { climateAtBatch } from 'slantpath/climate';
 * const { rainRate001MmPerH } = climateAtBatch({
 *   latitudeDeg: [46.4, -0.4], longitudeDeg: [9.6, 102], heightM: [1900, 35],
 * });
 * [...rainRate001MmPerH].map((value) => value.toFixed(0)); // => ['29', '95']
 * ```
 */
export function climateAtBatch(
  input: ClimateAtBatchInput,
  out: Partial<ClimateColumns> = {},
): ClimateColumns {
  const {
    latitudeDeg,
    longitudeDeg,
    heightM,
    climateOf = climateAt,
  } = knownOnly('input', input, CLIMATE_AT_BATCH_INPUT_KEYS);
  const rows = rowCount({ latitudeDeg, longitudeDeg, heightM });
  const given = known('out', out, CLIMATE_AT_BATCH_OUT_KEYS);
  const column = (name: keyof ClimateColumns) => outColumn(`out.${name}`, given[name], rows);
  const columns: ClimateColumns = {
    rainRate001MmPerH: column('rainRate001MmPerH'),
    rainProbabilityPercent: column('rainProbabilityPercent'),
    isothermHeightKm: column('isothermHeightKm'),
    rainHeightKm: column('rainHeightKm'),
    meanTemperatureK: column('meanTemperatureK'),
    wetRefractivityNUnits: column('wetRefractivityNUnits'),
    groundHeightM: column('groundHeightM'),
  };
  const entries = Object.entries(columns) as [keyof ClimateColumns, Float64Array][];
  for (let row = 0; row < rows; row++) {
    const climate = withinRow(row, () =>
      climateOf({
        latitudeDeg: inRow(latitudeDeg, row),
        longitudeDeg: inRow(longitudeDeg, row),
        heightM: inRow(heightM, row),
      }),
    );
    for (const [name, values] of entries) values[row] = climate[name];
  }
  return columns;
}

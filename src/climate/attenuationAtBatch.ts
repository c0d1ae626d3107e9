/** Rain and total attenuation for columns of stations, through a climate grid. */

import { withinRow } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../numeric/columns.js';
import { rainAttenuationBatch, totalAttenuationBatch } from '../propagation/index.js';
import { checkedExceededPercent, gasAndCloud } from './attenuationAt.js';
import type { Climate } from './climateAt.js';
import { climateAt } from './shipped.js';

/** Stations and their paths; each field is a list with one number per station, or one number for all. */
export interface PlannedStations {
  /** Latitude in degrees, north positive. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
  /** Height above sea level in metres. */
  readonly heightM: Column;
  /** Frequency in GHz. */
  readonly frequencyGHz: Column;
  /** Elevation of the satellite in degrees, 0.1 to 90. */
  readonly elevationDeg: Column;
  /** Tilt of the polarization from horizontal in degrees; 45 for circular. */
  readonly tiltDeg: Column;
  /** Diameter of the antenna in metres. */
  readonly diameterM: Column;
  /** Efficiency of the antenna, 0.01 to 1; 0.5 where not given. */
  readonly efficiencyRatio?: Column | undefined;
  /** Percentage of an average year, 0.000001 to 50. */
  readonly exceededPercent: Column;
}

/** The climate at a place. */
type ClimateOf = (station: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly heightM: number;
}) => Climate;

/** Columns of {@link attenuationAtBatch}. */
export interface PlannedAttenuation {
  /** Rain rate exceeded for 0.01 % of an average year, mm/h. */
  readonly rainRate001MmPerH: Float64Array;
  /** Rain height above mean sea level, km: with the rain rate, what `availabilityBatch` asks of the climate. */
  readonly rainHeightKm: Float64Array;
  /** Rain alone, dB, at the percentage asked for. */
  readonly rainDb: Float64Array;
  /** Gases, dB. */
  readonly gasDb: Float64Array;
  /** Clouds, dB. */
  readonly cloudDb: Float64Array;
  /** All causes together, dB. */
  readonly attenuationDb: Float64Array;
  /** Fields outside their stated range, row by row: read with `fieldsOutside` of the root entry; 0 for none. */
  readonly outsideStatedRange: Uint8Array;
}

const ATTENUATION_AT_BATCH_OUT_KEYS = {
  rainRate001MmPerH: true,
  rainHeightKm: true,
  rainDb: true,
  gasDb: true,
  cloudDb: true,
  attenuationDb: true,
  outsideStatedRange: true,
} satisfies Keys<NonNullable<Parameters<typeof attenuationAtBatch>[1]>>;

const ATTENUATION_AT_BATCH_STATIONS_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  diameterM: true,
  efficiencyRatio: true,
  exceededPercent: true,
  climateOf: true,
} satisfies Keys<Parameters<typeof attenuationAtBatch>[0]>;

/**
 * Rain and total attenuation for columns of stations, for network planners.
 *
 * Each row equals `attenuationAt(climateAt(station), path)` bit for bit; `rainDb` above 5 % of the time is what P.618-14
 * gives for rain alone, which the total leaves out.
 *
 * @param stations  Columns; see the fields. `climateOf`: another climate than the shipped grid's (a grid of one's own,
 *   or with local rain).
 * @param out  Columns to write into, of the right length.
 * @returns Columns of rain rate, causes and total, one row per station.
 * @throws {@link DomainError} naming the field, and the row for a bad value.
 *
 * Source: ITU-R P.618-14, section 2.5.
 * Accuracy: that of `attenuationAt`.
 * @example
 * ```ts
 * import { attenuationAtBatch } from 'slantpath/climate';
 * const { attenuationDb } = attenuationAtBatch({
 *   latitudeDeg: [46.4, -0.4], longitudeDeg: [9.6, 102], heightM: [1900, 35],
 *   frequencyGHz: 12, elevationDeg: [36, 80], tiltDeg: 0, diameterM: 0.9, exceededPercent: 0.1,
 * });
 * [...attenuationDb].map((value) => value.toFixed(1)); // => ['1.2', '7.4']
 * ```
 */
export function attenuationAtBatch(
  stations: PlannedStations & { readonly climateOf?: ClimateOf | undefined },
  out: Partial<PlannedAttenuation> = {},
): PlannedAttenuation {
  const { latitudeDeg, longitudeDeg, heightM, frequencyGHz, elevationDeg, tiltDeg } = known(
    'stations',
    stations,
    ATTENUATION_AT_BATCH_STATIONS_KEYS,
  );
  const { diameterM, exceededPercent } = stations;
  const efficiencyRatio = stations.efficiencyRatio ?? 0.5;
  const { climateOf = climateAt } = stations;
  const given = known('out', out, ATTENUATION_AT_BATCH_OUT_KEYS);
  const columns = { latitudeDeg, longitudeDeg, heightM, frequencyGHz, elevationDeg };
  const rows = rowCount({
    ...columns,
    tiltDeg,
    diameterM,
    efficiencyRatio,
    exceededPercent,
  });
  const column = (name: Exclude<keyof PlannedAttenuation, 'outsideStatedRange'>) =>
    outColumn(`out.${name}`, given[name], rows);
  const water = {
    rainRate001MmPerH: column('rainRate001MmPerH'),
    rainHeightKm: column('rainHeightKm'),
    gasDb: column('gasDb'),
    cloudDb: column('cloudDb'),
  };
  const climates = climateColumns({ ...columns, exceededPercent }, climateOf, rows, water);
  const { rainRate001MmPerH, rainHeightKm, gasDb, cloudDb } = water;
  const path = {
    latitudeDeg: climates.latitudeDeg,
    heightM: climates.heightM,
    rainHeightKm,
    rainRate001MmPerH,
    frequencyGHz,
    elevationDeg,
    tiltDeg,
    exceededPercent,
  };
  const rainDb = rainAttenuationBatch(path, { attenuationDb: column('rainDb') }).attenuationDb;
  const { attenuationDb, outsideStatedRange } = totalAttenuationBatch(
    {
      ...path,
      diameterM,
      efficiencyRatio,
      wetRefractivityNUnits: climates.wetRefractivityNUnits,
      gasDb,
      cloudDb,
    },
    {
      attenuationDb: column('attenuationDb'),
      outsideStatedRange: outBytes('out.outsideStatedRange', given.outsideStatedRange, rows),
    },
  );
  return {
    rainRate001MmPerH,
    rainHeightKm,
    rainDb,
    gasDb,
    cloudDb,
    attenuationDb,
    outsideStatedRange,
  };
}

/** What the climate says of each station, and into `water` what it makes of the path without rain. */
function climateColumns(
  stations: Omit<PlannedStations, 'tiltDeg' | 'diameterM' | 'efficiencyRatio'>,
  climateOf: ClimateOf,
  rows: number,
  water: Pick<PlannedAttenuation, 'rainRate001MmPerH' | 'rainHeightKm' | 'gasDb' | 'cloudDb'>,
) {
  const column = () => new Float64Array(rows);
  const climates = {
    latitudeDeg: column(),
    heightM: column(),
    wetRefractivityNUnits: column(),
  };
  for (let row = 0; row < rows; row++) {
    const climate = withinRow(row, () =>
      climateOf({
        latitudeDeg: inRow(stations.latitudeDeg, row),
        longitudeDeg: inRow(stations.longitudeDeg, row),
        heightM: inRow(stations.heightM, row),
      }),
    );
    const { gasDb, cloudDb } = withinRow(row, () =>
      gasAndCloud(climate, {
        frequencyGHz: inRow(stations.frequencyGHz, row),
        elevationDeg: inRow(stations.elevationDeg, row),
        exceededPercent: checkedExceededPercent(inRow(stations.exceededPercent, row), row),
      }),
    );
    water.rainRate001MmPerH[row] = climate.rainRate001MmPerH;
    water.gasDb[row] = gasDb;
    water.cloudDb[row] = cloudDb;
    // The climate's own latitude and height, not the columns': it has them as checked numbers, one for each row.
    climates.latitudeDeg[row] = climate.latitudeDeg;
    climates.heightM[row] = climate.heightM;
    water.rainHeightKm[row] = climate.rainHeightKm;
    climates.wetRefractivityNUnits[row] = climate.wetRefractivityNUnits;
  }
  return climates;
}

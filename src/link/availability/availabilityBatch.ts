/** Clear-sky margin and availability for columns of stations, for network planners. */

import { withinRow } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import {
  type Column,
  denseAt,
  inRow,
  outBytes,
  outColumn,
  rowCount,
} from '../../numeric/columns.js';
import { rainAttenuationBatch } from '../../propagation/p618-14/rainBatch.js';
import type { LinkBudgetInput } from '../budget/linkBudgetInput.js';
import { preparedLink, requiredDb, totalEsN0Db } from '../budget/preparedLink.js';
import { type Availability, percentOfMargin } from './availability.js';
import { checkedPercents, type PercentRange } from './fade.js';
import { rainCurve, risesDownTo } from './rainFades.js';
import { weatherLoss } from './weatherLoss.js';

/** Columns of {@link availabilityBatch}: a list with one number per station, or one number for all. */
export interface AvailabilityColumns {
  /** Latitude in degrees, north positive. */
  readonly latitudeDeg: Column;
  /** Height above mean sea level in metres. */
  readonly heightM: Column;
  /** Rain height in kilometres. */
  readonly rainHeightKm: Column;
  /** Rain rate exceeded for 0.01 % of the year in mm/h. */
  readonly rainRate001MmPerH: Column;
  /** Elevation in degrees. */
  readonly elevationDeg: Column;
  /** Polarization tilt in degrees. */
  readonly tiltDeg: Column;
  /** Distance in kilometres; default that of the link. */
  readonly slantRangeKm?: Column;
  /** EIRP towards the station in dBW; default that of the link. */
  readonly eirpDbw?: Column;
  /** Clear attenuation in dB; default that of the link. */
  readonly clearAttenuationDb?: Column;
  /** Diameter of the reflector in metres; default that of the link. */
  readonly diameterM?: Column;
}

const AVAILABILITY_COLUMNS_KEYS = {
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  elevationDeg: true,
  tiltDeg: true,
  slantRangeKm: true,
  eirpDbw: true,
  clearAttenuationDb: true,
  diameterM: true,
} satisfies Keys<AvailabilityColumns>;

/** Outcome of {@link availabilityBatch}, one row per station. */
export interface AvailabilityBatch {
  /** Margin in clear weather in dB. */
  readonly marginDb: Float64Array;
  /** Percent of an average year for which the margin does not suffice; an end of the range where the answer lies beyond it. */
  readonly exceededPercent: Float64Array;
  /** What became of the row: the place of its word in {@link availabilityOutcomes}. */
  readonly outcome: Uint8Array;
}

/** Buffers that {@link availabilityBatch} can write into again. */
export interface AvailabilityBuffers {
  readonly marginDb: Float64Array;
  readonly exceededPercent: Float64Array;
  readonly outcome: Uint8Array;
}

/** What a number in a column `outcome` of {@link availabilityBatch} says: the `kind` of `availabilityForMargin`. */
export const availabilityOutcomes = [
  'available',
  'better-than',
  'worse-than',
] as const satisfies readonly Availability['kind'][];

const AVAILABILITY_BATCH_OUT_KEYS = {
  marginDb: true,
  exceededPercent: true,
  outcome: true,
} satisfies Keys<NonNullable<Parameters<typeof availabilityBatch>[1]>>;

const AVAILABILITY_BATCH_BATCH_KEYS = {
  fromPercent: true,
  toPercent: true,
  link: true,
  stations: true,
} satisfies Keys<Parameters<typeof availabilityBatch>[0]>;

/**
 * Clear-sky margin and availability in rain (P.618-14) for columns of stations.
 *
 * Each row equals `availabilityForMargin({ link, fade: rainFade(path) })` with the row's values in `link` and `path`, bit for bit.
 *
 * @param batch  `link` the link of all stations; `stations` the columns; range of percentages.
 * @param out  Buffers to write into again.
 * @throws {@link DomainError} naming the column, with the row's index for a bad value.
 *
 * Source: as `linkBudget` and ITU-R P.618-14, section 2.2.1.1.
 * @example
 * ```ts
 * import { availabilityBatch, dvbMode } from 'slantpath/link';
 * const { exceededPercent } = availabilityBatch({
 *   link: {
 *     carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *     downlink: { eirpDbw: 52, frequencyGHz: 12, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *     receiver: { diameterM: 0.6, noiseFigureDb: 0.8 },
 *   },
 *   stations: {
 *     latitudeDeg: [46.4, 1.2],
 *     heightM: [1900, 20],
 *     rainHeightKm: [2.9, 4.9],
 *     rainRate001MmPerH: [35, 95],
 *     elevationDeg: [36, 60],
 *     tiltDeg: 0,
 *   },
 * });
 * [...exceededPercent].map((percent) => percent.toFixed(4)); // => ['0.0026', '0.1939']
 * ```
 */
export function availabilityBatch(
  batch: PercentRange & {
    readonly link: LinkBudgetInput;
    readonly stations: AvailabilityColumns;
  },
  out: Partial<AvailabilityBuffers> = {},
): AvailabilityBatch {
  const { link, stations, ...percents } = knownOnly('batch', batch, AVAILABILITY_BATCH_BATCH_KEYS);
  const range = checkedPercents(percents);
  const given = known('out', out, AVAILABILITY_BATCH_OUT_KEYS);
  // One check of all that is the same in every row, so that its errors bear no row.
  const whole = preparedLink(link);
  const columns = withDefaults(stations, link, whole.weather.clearDb);
  const rows = rowCount(columns);
  const { frequencyGHz } = link.downlink;
  const { attenuationDb: attenuation001Db } = rainAttenuationBatch({
    latitudeDeg: columns.latitudeDeg,
    heightM: columns.heightM,
    rainHeightKm: columns.rainHeightKm,
    rainRate001MmPerH: columns.rainRate001MmPerH,
    elevationDeg: columns.elevationDeg,
    tiltDeg: columns.tiltDeg,
    frequencyGHz,
    exceededPercent: 0.01,
  });
  const marginDb = outColumn('out.marginDb', given.marginDb, rows);
  const exceededPercent = outColumn('out.exceededPercent', given.exceededPercent, rows);
  const outcome = outBytes('out.outcome', given.outcome, rows);

  for (let row = 0; row < rows; row++) {
    const prepared = withinRow(row, () => preparedLink(linkInRow(link, columns, row)));
    const elevationDeg = inRow(columns.elevationDeg, row);
    const latitudeDeg = inRow(columns.latitudeDeg, row);
    const curve = rainCurve(
      denseAt(attenuation001Db, row % attenuation001Db.length),
      latitudeDeg,
      elevationDeg,
    );
    const least = risesDownTo(curve, {
      latitudeDeg,
      elevationDeg,
      frequencyGHz,
      heightM: inRow(columns.heightM, row),
      rainHeightKm: inRow(columns.rainHeightKm, row),
      rainRate001MmPerH: inRow(columns.rainRate001MmPerH, row),
      tiltDeg: inRow(columns.tiltDeg, row),
    });
    const { clearDb } = prepared.weather;
    const margin = totalEsN0Db(prepared, prepared.weather) - requiredDb(prepared);
    const loss = weatherLoss(prepared);
    const found = percentOfMargin(
      (percent) => loss({ clearDb, rainDb: curve(Math.max(least, percent)), scintillationDb: 0 }),
      margin,
      range,
    );
    marginDb[row] = margin;
    exceededPercent[row] = found.exceededPercent;
    outcome[row] = availabilityOutcomes.indexOf(found.kind);
  }
  return { marginDb, exceededPercent, outcome };
}

type FullColumns = { readonly [name in keyof AvailabilityColumns]-?: Column };

/** Columns for all that can differ from station to station; where none is given, the link's own number. */
function withDefaults(
  stations: AvailabilityColumns,
  { downlink, receiver }: LinkBudgetInput,
  clearDb: number,
): FullColumns {
  const given = known('stations', stations, AVAILABILITY_COLUMNS_KEYS);
  return {
    latitudeDeg: given.latitudeDeg,
    heightM: given.heightM,
    rainHeightKm: given.rainHeightKm,
    rainRate001MmPerH: given.rainRate001MmPerH,
    elevationDeg: given.elevationDeg,
    tiltDeg: given.tiltDeg,
    slantRangeKm: given.slantRangeKm ?? downlink.slantRangeKm,
    eirpDbw: given.eirpDbw ?? downlink.eirpDbw,
    clearAttenuationDb: given.clearAttenuationDb ?? clearDb,
    diameterM: given.diameterM ?? receiver.diameterM,
  };
}

/** The link as it is at one station. */
function linkInRow(link: LinkBudgetInput, columns: FullColumns, row: number): LinkBudgetInput {
  return {
    ...link,
    downlink: {
      ...link.downlink,
      slantRangeKm: inRow(columns.slantRangeKm, row),
      eirpDbw: inRow(columns.eirpDbw, row),
      clearAttenuationDb: inRow(columns.clearAttenuationDb, row),
    },
    receiver: { ...link.receiver, diameterM: inRow(columns.diameterM, row) },
  };
}

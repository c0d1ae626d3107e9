/** Sun outages of a span, summed up for columns of stations. */

import { withinRow } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../numeric/columns.js';
import type { Instant } from '../numeric/instant.js';
import { type SolarActivity, solarBrightness } from './brightness.js';
import { checkedThresholdDb, outageEvents, outageSpan } from './outageEvents.js';
import { outageReception } from './outageReception.js';
import type { SunOutages } from './sunOutages.js';

/** What a number in a column `outcome` of {@link sunOutagesBatch} says: the `kind` of `sunOutages`. */
export const outageOutcomes = [
  'outages',
  'none',
  'below-horizon',
] as const satisfies readonly SunOutages['kind'][];

/** What {@link sunOutagesBatch} is asked: each a column or one number for all rows, but one span and one activity for all. */
export interface SunOutagesBatchInput {
  /** Geodetic latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
  /** Height above the ellipsoid in metres, -1000 to 100000. */
  readonly heightM: Column;
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: Column;
  /** Diameter of the reflector in metres, 0.05 to 100. */
  readonly diameterM: Column;
  /** Frequency received in GHz, 0.5 to 100. */
  readonly frequencyGHz: Column;
  /** System noise temperature under a clear sky in kelvins, above 0. */
  readonly systemNoiseK: Column;
  /** Loss of C/N in decibels from which the event counts, 0.1 to 40; default 1. The margin of the link, for an outage. */
  readonly thresholdLossDb?: Column;
  /** Half-power beamwidth in degrees, 0.03 to 90; default 70 degrees times wavelength over diameter. */
  readonly beamwidthDeg?: Column;
  /** Attenuation of the Sun's noise by a clear sky in decibels, 0 or more; default 0. */
  readonly attenuationDb?: Column;
  /** Activity of the Sun; default `quiet`. */
  readonly activity?: SolarActivity;
  /** First instant of the search: ISO-8601 text or epoch milliseconds. One season is February to April, the other August to November. */
  readonly from: Instant;
  /** Last instant of the search, after `from`, at most 1100 days later. */
  readonly to: Instant;
}

const SUN_OUTAGES_BATCH_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  orbitalLongitudeDeg: true,
  diameterM: true,
  frequencyGHz: true,
  systemNoiseK: true,
  thresholdLossDb: true,
  beamwidthDeg: true,
  attenuationDb: true,
  activity: true,
  from: true,
  to: true,
} satisfies Keys<SunOutagesBatchInput>;

/** Columns of {@link sunOutagesBatch}. */
export interface SunOutagesColumns {
  /** Days of the span with an event. */
  readonly count: Float64Array;
  /** All events together in minutes. */
  readonly totalMin: Float64Array;
  /** The longest event in minutes; 0 without one. */
  readonly longestMin: Float64Array;
  /** Loss of C/N at the worst peak in decibels; 0 without an event. */
  readonly lossDb: Float64Array;
  /** Peak of the first event in epoch milliseconds (UTC); NaN without one. */
  readonly firstPeakMs: Float64Array;
  /** Peak of the last event in epoch milliseconds (UTC); NaN without one. */
  readonly lastPeakMs: Float64Array;
  /** What became of the row: the place of its word in {@link outageOutcomes}. */
  readonly outcome: Uint8Array;
}

const SUN_OUTAGES_BATCH_OUT_KEYS = {
  count: true,
  totalMin: true,
  longestMin: true,
  lossDb: true,
  firstPeakMs: true,
  lastPeakMs: true,
  outcome: true,
} satisfies Keys<NonNullable<Parameters<typeof sunOutagesBatch>[1]>>;

/**
 * Sun outages of many stations in one span of time, summed up row by row; a season is asked for by its span.
 *
 * Each row sums up `sunOutages` bit for bit: its events counted, their minutes added in order, the longest, the worst, the first and the
 * last. It is the most expensive of the batch functions: every event of every row is searched for.
 *
 * @param input  Columns of one length, or single numbers for all rows; one span and one activity for all.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value; without a row for the span and the activity.
 *
 * Source: as `sunOutages`. Accuracy: as `sunOutages`.
 * @example
 * ```ts
 * import { outageOutcomes, sunOutagesBatch } from 'slantpath/sun';
 * const season = sunOutagesBatch({
 *   latitudeDeg: [46.4, -0.4],
 *   longitudeDeg: [9.6, 102],
 *   heightM: [1900, 35],
 *   orbitalLongitudeDeg: 16.4,
 *   diameterM: 0.9,
 *   frequencyGHz: 11.7,
 *   systemNoiseK: 120,
 *   from: '2026-01-01',
 *   to: '2026-07-01',
 * });
 * [...season.count]; // => [10, 0]
 * [...season.outcome].map((place) => outageOutcomes[place]); // => ['outages', 'below-horizon']
 * new Date(season.firstPeakMs[0] ?? 0).toISOString().slice(0, 10); // => '2026-02-26'
 * ```
 */
export function sunOutagesBatch(
  input: SunOutagesBatchInput,
  out: Partial<SunOutagesColumns> = {},
): SunOutagesColumns {
  const { from, to, activity, ...given } = knownOnly('input', input, SUN_OUTAGES_BATCH_INPUT_KEYS);
  const span = outageSpan(from, to);
  if (activity !== undefined) solarBrightness({ frequencyGHz: 12, activity });
  const { thresholdLossDb, beamwidthDeg, attenuationDb, ...place } = given;
  const optional = Object.entries({ beamwidthDeg, attenuationDb }).filter(
    (entry): entry is [string, Column] => entry[1] !== undefined,
  );
  const threshold = thresholdLossDb ?? 1;
  const rows = rowCount({
    latitudeDeg: place.latitudeDeg,
    longitudeDeg: place.longitudeDeg,
    heightM: place.heightM,
    orbitalLongitudeDeg: place.orbitalLongitudeDeg,
    diameterM: place.diameterM,
    frequencyGHz: place.frequencyGHz,
    systemNoiseK: place.systemNoiseK,
    thresholdLossDb: threshold,
    ...Object.fromEntries(optional),
  });
  const buffers = known('out', out, SUN_OUTAGES_BATCH_OUT_KEYS);
  const column = (name: Exclude<keyof SunOutagesColumns, 'outcome'>) =>
    outColumn(`out.${name}`, buffers[name], rows);
  const columns: SunOutagesColumns = {
    count: column('count'),
    totalMin: column('totalMin'),
    longestMin: column('longestMin'),
    lossDb: column('lossDb'),
    firstPeakMs: column('firstPeakMs'),
    lastPeakMs: column('lastPeakMs'),
    outcome: outBytes('out.outcome', buffers.outcome, rows),
  };
  for (let row = 0; row < rows; row++) {
    const at = (values: Column) => inRow(values, row);
    const reception = withinRow(row, () =>
      outageReception({
        station: {
          latitudeDeg: at(place.latitudeDeg),
          longitudeDeg: at(place.longitudeDeg),
          heightM: at(place.heightM),
        },
        orbitalLongitudeDeg: at(place.orbitalLongitudeDeg),
        diameterM: at(place.diameterM),
        frequencyGHz: at(place.frequencyGHz),
        systemNoiseK: at(place.systemNoiseK),
        ...(activity === undefined ? {} : { activity }),
        ...Object.fromEntries(optional.map(([field, values]) => [field, at(values)])),
      }),
    );
    const thresholdDb = checkedThresholdDb(at(threshold), row);
    const above = reception.direction.elevationDeg > 0;
    const events = above ? withinRow(row, () => outageEvents(reception, thresholdDb, span)) : [];
    const minutes = events.map(({ startMs, endMs }) => (endMs - startMs) / 60000);
    columns.count[row] = events.length;
    columns.totalMin[row] = minutes.reduce((sum, value) => sum + value, 0);
    columns.longestMin[row] = Math.max(0, ...minutes);
    columns.lossDb[row] = Math.max(0, ...events.map(({ peak }) => peak.lossDb));
    columns.firstPeakMs[row] = events[0]?.peakMs ?? Number.NaN;
    columns.lastPeakMs[row] = events[events.length - 1]?.peakMs ?? Number.NaN;
    columns.outcome[row] = !above ? 2 : events.length > 0 ? 0 : 1;
  }
  return columns;
}

/** Levels of a footprint for columns of places. */

import { type Keys, known, knownOnly } from '../../keys.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../../numeric/columns.js';
import {
  checkedPlace,
  type FootprintLevel,
  type FootprintOptions,
  keptArcs,
  levelAt,
} from './footprint.js';
import { type Footprint, footprintLevels } from './geoJson.js';

/** What a number in a column `outcome` of {@link footprintLevelBatch} says: the `kind` of `footprintLevel`. */
export const footprintOutcomes = [
  'between',
  'highest',
  'outside',
] as const satisfies readonly FootprintLevel['kind'][];

/** Places of {@link footprintLevelBatch}: a list with one number per place, or one number for all. */
export interface FootprintPlaces {
  /** Latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
}

const FOOTPRINT_PLACES_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
} satisfies Keys<FootprintPlaces>;

const FOOTPRINT_LEVEL_BATCH_KEYS = {
  footprint: true,
  places: true,
  property: true,
} satisfies Keys<Parameters<typeof footprintLevelBatch>[0]>;

/** Columns of {@link footprintLevelBatch}; levels in the decibel unit of the footprint's property. */
export interface FootprintLevelColumns {
  /** Level at the place; outside every contour that of the lowest, which is not reached. */
  readonly levelDb: Float64Array;
  /** Distance to the nearest contour as an angle at the Earth's centre in degrees, for places outside; 0 for the others. */
  readonly toNearestDeg: Float64Array;
  /** What became of the row: the place of its word in {@link footprintOutcomes}. */
  readonly outcome: Uint8Array;
}

const FOOTPRINT_LEVEL_BATCH_OUT_KEYS = {
  levelDb: true,
  toNearestDeg: true,
  outcome: true,
} satisfies Keys<NonNullable<Parameters<typeof footprintLevelBatch>[1]>>;

/**
 * Levels of a footprint at many places, as columns; the footprint is read once.
 *
 * Each row equals `footprintLevel` bit for bit.
 *
 * @param batch  `footprint` the contours; `places` the columns; `property` as for `footprintLevel`.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the bad part of the footprint, or the column with the row's index for a bad value.
 *
 * Source: as `footprintLevel`. Accuracy: as `footprintLevel`.
 * @example
 * ```ts
 * import { footprintLevelBatch, footprintOutcomes } from 'slantpath/link';
 * const ring = [[0, 0], [20, 0], [20, 20], [0, 20], [0, 0]];
 * const feature = {
 *   type: 'Feature' as const,
 *   properties: { eirpDbw: 47 },
 *   geometry: { type: 'Polygon' as const, coordinates: [ring] },
 * };
 * const footprint = { type: 'FeatureCollection' as const, features: [feature] };
 * const places = { latitudeDeg: [10, 40], longitudeDeg: 10 };
 * const { outcome, toNearestDeg } = footprintLevelBatch({ footprint, places });
 * [...outcome].map((place) => footprintOutcomes[place]); // => ['highest', 'outside']
 * [...toNearestDeg].map((value) => value.toFixed(1)); // => ['0.0', '20.0']
 * ```
 */
export function footprintLevelBatch(
  batch: FootprintOptions & {
    readonly footprint: Footprint;
    readonly places: FootprintPlaces;
  },
  out: Partial<FootprintLevelColumns> = {},
): FootprintLevelColumns {
  const { footprint, places, property } = knownOnly('batch', batch, FOOTPRINT_LEVEL_BATCH_KEYS);
  const levels = footprintLevels(footprint, property ?? 'eirpDbw');
  const { latitudeDeg, longitudeDeg } = known('places', places, FOOTPRINT_PLACES_KEYS);
  const rows = rowCount({ latitudeDeg, longitudeDeg });
  const given = known('out', out, FOOTPRINT_LEVEL_BATCH_OUT_KEYS);
  const levelDb = outColumn('out.levelDb', given.levelDb, rows);
  const toNearestDeg = outColumn('out.toNearestDeg', given.toNearestDeg, rows);
  const outcome = outBytes('out.outcome', given.outcome, rows);
  const arcsOf = keptArcs();
  for (let row = 0; row < rows; row++) {
    const place = checkedPlace(
      { latitudeDeg: inRow(latitudeDeg, row), longitudeDeg: inRow(longitudeDeg, row) },
      row,
    );
    const level = levelAt(levels, place, arcsOf);
    levelDb[row] = level.kind === 'outside' ? level.lowestLevelDb : level.levelDb;
    toNearestDeg[row] = level.kind === 'outside' ? level.toNearestDeg : 0;
    outcome[row] = footprintOutcomes.indexOf(level.kind);
  }
  return { levelDb, toNearestDeg, outcome };
}

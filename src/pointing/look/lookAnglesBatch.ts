/** Look angles for columns of stations and slots. */

import { finite, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { type Column, denseAt, outColumn, rowCount } from '../../numeric/columns.js';
import { denseColumn } from '../../numeric/denseColumn.js';
import { direction, lineOfSight, plainlyGood } from './lookAngles.js';

const SWAPPED = 'were latitude and longitude swapped?';

/** What {@link lookAnglesBatch} is asked: each a column or one number for all rows. */
export interface LookAnglesBatchInput {
  /** Geodetic latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
  /** Height above the ellipsoid in metres, -1000 to 100000. */
  readonly heightM: Column;
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: Column;
}

const LOOK_ANGLES_BATCH_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  orbitalLongitudeDeg: true,
} satisfies Keys<LookAnglesBatchInput>;

/** Columns of {@link lookAnglesBatch}. */
export interface LookAnglesColumns {
  /** Azimuth in degrees, clockwise from true north, [0, 360); without meaning where the elevation is 90. */
  readonly azimuthDeg: Float64Array;
  /** Geometric elevation in degrees, -90 to 90; not above 0 where the Earth hides the satellite. */
  readonly elevationDeg: Float64Array;
  /** Straight distance in kilometres. */
  readonly slantRangeKm: Float64Array;
}

const LOOK_ANGLES_BATCH_OUT_KEYS = {
  azimuthDeg: true,
  elevationDeg: true,
  slantRangeKm: true,
} satisfies Keys<NonNullable<Parameters<typeof lookAnglesBatch>[1]>>;

/**
 * Look angles for many stations, many slots or both, row by row.
 *
 * Each row equals {@link lookAngles} bit for bit.
 *
 * @param input  Columns of one length, or single numbers for all rows.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as {@link lookAngles}.
 * Accuracy: as {@link lookAngles}.
 * @example
 * ```ts
 * import { lookAnglesBatch } from 'slantpath/pointing';
 * const sky = lookAnglesBatch({
 *   latitudeDeg: 46.4,
 *   longitudeDeg: 9.6,
 *   heightM: 1900,
 *   orbitalLongitudeDeg: [7.2, 16.4, 21.8],
 * });
 * [...sky.elevationDeg].map((value) => value.toFixed(2)); // => ['36.60', '36.24', '35.32']
 * ```
 */
export function lookAnglesBatch(
  input: LookAnglesBatchInput,
  out: Partial<LookAnglesColumns> = {},
): LookAnglesColumns {
  const { latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg } = knownOnly(
    'input',
    input,
    LOOK_ANGLES_BATCH_INPUT_KEYS,
  );
  const rows = rowCount({ latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg });
  const given = known('out', out, LOOK_ANGLES_BATCH_OUT_KEYS);
  const azimuths = outColumn('out.azimuthDeg', given.azimuthDeg, rows);
  const elevations = outColumn('out.elevationDeg', given.elevationDeg, rows);
  const ranges = outColumn('out.slantRangeKm', given.slantRangeKm, rows);
  const latitudes = denseColumn('latitudeDeg', latitudeDeg, rows);
  const longitudes = denseColumn('longitudeDeg', longitudeDeg, rows);
  const heights = denseColumn('heightM', heightM, rows);
  const slots = denseColumn('orbitalLongitudeDeg', orbitalLongitudeDeg, rows);
  for (let row = 0; row < rows; row++) {
    let latitude = denseAt(latitudes, row);
    let height = denseAt(heights, row);
    const longitude = denseAt(longitudes, row);
    const slot = denseAt(slots, row);
    if (!plainlyGood(latitude, longitude, height, slot)) {
      latitude = inRange('latitudeDeg', latitude, -90, 90, SWAPPED, row);
      finite('longitudeDeg', longitude, undefined, row);
      height = inRange('heightM', height, -1000, 100000, 'is the height in metres?', row);
      finite('orbitalLongitudeDeg', slot, undefined, row);
    }
    const line = lineOfSight(latitude, longitude, height, slot);
    const look = direction(line.eastKm, line.northKm, line.upKm);
    azimuths[row] = look.azimuthDeg;
    elevations[row] = look.elevationDeg;
    ranges[row] = look.slantRangeKm;
  }
  return { azimuthDeg: azimuths, elevationDeg: elevations, slantRangeKm: ranges };
}

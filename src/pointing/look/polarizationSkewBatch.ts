/** Polarization skew for columns of stations and slots. */

import { finite, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { lineDeg } from '../../numeric/angle.js';
import { type Column, denseAt, outColumn, rowCount } from '../../numeric/columns.js';
import { denseColumn } from '../../numeric/denseColumn.js';
import { lineOfSight, plainlyGood } from './lookAngles.js';
import { skewGeometry } from './polarizationSkew.js';

const SWAPPED = 'were latitude and longitude swapped?';

/** What {@link polarizationSkewBatch} is asked: each a column or one number for all rows. */
export interface PolarizationSkewBatchInput {
  /** Geodetic latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: Column;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: Column;
  /** Height above the ellipsoid in metres, -1000 to 100000. */
  readonly heightM: Column;
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: Column;
  /** The satellite's own tilt in degrees, -180 to 180, clockwise positive as seen from behind; 0 when left out. */
  readonly tiltDeg?: Column;
}

const POLARIZATION_SKEW_BATCH_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  orbitalLongitudeDeg: true,
  tiltDeg: true,
} satisfies Keys<PolarizationSkewBatchInput>;

/** Columns of {@link polarizationSkewBatch}. */
export interface PolarizationSkewColumns {
  /**
   * Rotation of the feed in degrees, [-90, 90), clockwise positive as seen from behind; 0 for a satellite in the
   * zenith, where it has no meaning.
   */
  readonly skewDeg: Float64Array;
}

const POLARIZATION_SKEW_BATCH_OUT_KEYS = { skewDeg: true } satisfies Keys<
  NonNullable<Parameters<typeof polarizationSkewBatch>[1]>
>;

/**
 * Polarization skew for many stations, many slots or both, row by row, for linear polarization.
 *
 * Each row equals `polarizationSkew` bit for bit.
 *
 * @param input  Columns of one length, or single numbers for all rows.
 * @param out  Column to write into, exactly as long; a new one where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as `polarizationSkew`.
 * Accuracy: as `polarizationSkew`.
 * @example
 * ```ts
 * import { polarizationSkewBatch } from 'slantpath/pointing';
 * const { skewDeg } = polarizationSkewBatch({
 *   latitudeDeg: 46.4,
 *   longitudeDeg: 9.6,
 *   heightM: 1900,
 *   orbitalLongitudeDeg: [7.2, 16.4, 21.8],
 * });
 * [...skewDeg].map((value) => value.toFixed(1)); // => ['2.3', '-6.5', '-11.5']
 * ```
 */
export function polarizationSkewBatch(
  input: PolarizationSkewBatchInput,
  out: Partial<PolarizationSkewColumns> = {},
): PolarizationSkewColumns {
  const given = knownOnly('input', input, POLARIZATION_SKEW_BATCH_INPUT_KEYS);
  const { latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg } = given;
  const columns = {
    latitudeDeg,
    longitudeDeg,
    heightM,
    orbitalLongitudeDeg,
    tiltDeg: given.tiltDeg ?? 0,
  };
  const rows = rowCount(columns);
  const skews = outColumn(
    'out.skewDeg',
    known('out', out, POLARIZATION_SKEW_BATCH_OUT_KEYS).skewDeg,
    rows,
  );
  const latitudes = denseColumn('latitudeDeg', latitudeDeg, rows);
  const longitudes = denseColumn('longitudeDeg', longitudeDeg, rows);
  const heights = denseColumn('heightM', heightM, rows);
  const slots = denseColumn('orbitalLongitudeDeg', orbitalLongitudeDeg, rows);
  const tilts = denseColumn('tiltDeg', columns.tiltDeg, rows);
  for (let row = 0; row < rows; row++) {
    let latitude = denseAt(latitudes, row);
    const longitude = denseAt(longitudes, row);
    let height = denseAt(heights, row);
    const slot = denseAt(slots, row);
    let tilt = denseAt(tilts, row);
    if (!plainlyGood(latitude, longitude, height, slot)) {
      latitude = inRange('latitudeDeg', latitude, -90, 90, SWAPPED, row);
      finite('longitudeDeg', longitude, undefined, row);
      height = inRange('heightM', height, -1000, 100000, 'is the height in metres?', row);
      finite('orbitalLongitudeDeg', slot, undefined, row);
    }
    if (!(tilt >= -180 && tilt <= 180)) tilt = inRange('tiltDeg', tilt, -180, 180, undefined, row);
    const geometryDeg = skewGeometry(lineOfSight(latitude, longitude, height, slot));
    skews[row] = Number.isNaN(geometryDeg) ? 0 : lineDeg(geometryDeg + (tilt + 0));
  }
  return { skewDeg: skews };
}

/** Look angles and polarization skew in one pass over columns of stations and slots. */

import { finite, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { lineDeg } from '../../numeric/angle.js';
import { denseAt, outBytes, outColumn, rowCount } from '../../numeric/columns.js';
import { denseColumn } from '../../numeric/denseColumn.js';
import { direction, lineOfSight, plainlyGood } from './lookAngles.js';
import type { LookAnglesColumns } from './lookAnglesBatch.js';
import { skewGeometry } from './polarizationSkew.js';
import type {
  PolarizationSkewBatchInput,
  PolarizationSkewColumns,
} from './polarizationSkewBatch.js';

const SWAPPED = 'were latitude and longitude swapped?';

/** What a number in a column `outcome` of {@link lookAnglesAndSkewBatch} says: the `kind` of `lookAngles` and `polarizationSkew`. */
export const lookOutcomes = ['visible', 'below-horizon', 'overhead'] as const;

const LOOK_ANGLES_AND_SKEW_BATCH_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  orbitalLongitudeDeg: true,
  tiltDeg: true,
} satisfies Keys<PolarizationSkewBatchInput>;

/** Columns of {@link lookAnglesAndSkewBatch}. */
export interface LookAnglesAndSkewColumns extends LookAnglesColumns, PolarizationSkewColumns {
  /** What became of the row: the place of its word in {@link lookOutcomes}. */
  readonly outcome: Uint8Array;
}

const LOOK_ANGLES_AND_SKEW_BATCH_OUT_KEYS = {
  azimuthDeg: true,
  elevationDeg: true,
  slantRangeKm: true,
  skewDeg: true,
  outcome: true,
} satisfies Keys<NonNullable<Parameters<typeof lookAnglesAndSkewBatch>[1]>>;

/**
 * Look angles and polarization skew for many stations, many slots or both, row by row, from one line of sight each.
 *
 * Each row equals `lookAngles` and `polarizationSkew` bit for bit.
 *
 * @param input  Columns of one length, or single numbers for all rows.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the field and the row of a bad value.
 *
 * Source: as `lookAngles` and `polarizationSkew`.
 * Accuracy: as `lookAngles` and `polarizationSkew`.
 * @example
 * ```ts
 * import { lookAnglesAndSkewBatch, lookOutcomes } from 'slantpath/pointing';
 * const sky = lookAnglesAndSkewBatch({
 *   latitudeDeg: [46.4, -0.4],
 *   longitudeDeg: [9.6, 102],
 *   heightM: [1900, 35],
 *   orbitalLongitudeDeg: 16.4,
 * });
 * [...sky.skewDeg].map((value) => value.toFixed(1)); // => ['-6.5', '-89.6']
 * [...sky.outcome].map((place) => lookOutcomes[place]); // => ['visible', 'below-horizon']
 * ```
 */
export function lookAnglesAndSkewBatch(
  input: PolarizationSkewBatchInput,
  out: Partial<LookAnglesAndSkewColumns> = {},
): LookAnglesAndSkewColumns {
  const asked = knownOnly('input', input, LOOK_ANGLES_AND_SKEW_BATCH_INPUT_KEYS);
  const { latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg } = asked;
  const tiltDeg = asked.tiltDeg ?? 0;
  const rows = rowCount({ latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg, tiltDeg });
  const given = known('out', out, LOOK_ANGLES_AND_SKEW_BATCH_OUT_KEYS);
  const azimuths = outColumn('out.azimuthDeg', given.azimuthDeg, rows);
  const elevations = outColumn('out.elevationDeg', given.elevationDeg, rows);
  const ranges = outColumn('out.slantRangeKm', given.slantRangeKm, rows);
  const skews = outColumn('out.skewDeg', given.skewDeg, rows);
  const outcome = outBytes('out.outcome', given.outcome, rows);
  const latitudes = denseColumn('latitudeDeg', latitudeDeg, rows);
  const longitudes = denseColumn('longitudeDeg', longitudeDeg, rows);
  const heights = denseColumn('heightM', heightM, rows);
  const slots = denseColumn('orbitalLongitudeDeg', orbitalLongitudeDeg, rows);
  const tilts = denseColumn('tiltDeg', tiltDeg, rows);
  for (let row = 0; row < rows; row++) {
    let latitude = denseAt(latitudes, row);
    let height = denseAt(heights, row);
    let tilt = denseAt(tilts, row);
    const longitude = denseAt(longitudes, row);
    const slot = denseAt(slots, row);
    if (!plainlyGood(latitude, longitude, height, slot)) {
      latitude = inRange('latitudeDeg', latitude, -90, 90, SWAPPED, row);
      finite('longitudeDeg', longitude, undefined, row);
      height = inRange('heightM', height, -1000, 100000, 'is the height in metres?', row);
      finite('orbitalLongitudeDeg', slot, undefined, row);
    }
    if (!(tilt >= -180 && tilt <= 180)) tilt = inRange('tiltDeg', tilt, -180, 180, undefined, row);
    const line = lineOfSight(latitude, longitude, height, slot);
    const look = direction(line.eastKm, line.northKm, line.upKm);
    const geometryDeg = skewGeometry(line);
    const overhead = Number.isNaN(geometryDeg);
    azimuths[row] = look.azimuthDeg;
    elevations[row] = look.elevationDeg;
    ranges[row] = look.slantRangeKm;
    skews[row] = overhead ? 0 : lineDeg(geometryDeg + (tilt + 0));
    outcome[row] = overhead ? 2 : line.upKm > 0 ? 0 : 1;
  }
  return {
    azimuthDeg: azimuths,
    elevationDeg: elevations,
    slantRangeKm: ranges,
    skewDeg: skews,
    outcome,
  };
}

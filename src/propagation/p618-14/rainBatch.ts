/** Rain attenuation by P.618-14 for columns of stations, for network planners. */

import { finite } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { cosDeg, sinDeg } from '../../numeric/angle.js';
import { type Column, inRow, outBytes, outColumn, rowCount } from '../../numeric/columns.js';
import { markOutside } from '../../numeric/rows/outsideFields.js';
import {
  checkedElevationDeg,
  checkedFrequencyGHz,
  checkedHeightM,
  checkedLatitudeDeg,
  checkedPercent,
  checkedRainHeightKm,
  checkedRainRate,
} from '../inputs.js';
import { type RainCoefficients, rainCoefficients } from '../p838-3/coefficients.js';
import { mixedAlpha, mixedK, powerLaw } from '../p838-3/specificRainAttenuation.js';
import type { RainAttenuationInput } from './rain.js';
import {
  attenuationAtPercentDb,
  cellPathKm,
  horizontalReduction,
  latitudeExponent,
  latitudeTermDeg,
  percentTerms,
  rainAbove,
  slantPathKm,
  verticalAdjustment,
} from './rainSteps.js';

/** The same fields as for one station, each a column or one number for all rows. */
export type RainAttenuationColumns = {
  readonly [Field in keyof RainAttenuationInput]: Column;
};

const RAIN_ATTENUATION_COLUMNS_KEYS = {
  exceededPercent: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
} satisfies Keys<RainAttenuationColumns>;

/** Columns of {@link rainAttenuationBatch}. */
export interface RainAttenuationResult {
  /** Attenuation exceeded for the percentage asked for, dB, positive as a loss. */
  readonly attenuationDb: Float64Array;
  /** Fields outside their stated range, row by row: read with `fieldsOutside` of the root entry; 0 for none. */
  readonly outsideStatedRange: Uint8Array;
}

const RAIN_ATTENUATION_BATCH_OUT_KEYS = {
  attenuationDb: true,
  outsideStatedRange: true,
} satisfies Keys<RainAttenuationResult>;

/** The columns by name, in the order in which they are checked. */
export function rainColumns(input: RainAttenuationColumns): RainAttenuationColumns {
  return {
    latitudeDeg: input.latitudeDeg,
    heightM: input.heightM,
    rainHeightKm: input.rainHeightKm,
    rainRate001MmPerH: input.rainRate001MmPerH,
    frequencyGHz: input.frequencyGHz,
    elevationDeg: input.elevationDeg,
    tiltDeg: input.tiltDeg,
    exceededPercent: input.exceededPercent,
  };
}

/**
 * Rain attenuation exceeded for a percentage of an average year, for columns of stations.
 *
 * Each row equals `rainAttenuation` bit for bit. A row outside the stated range (1 to 55 GHz, 0.001 to 5 % of the time) is computed and marked.
 *
 * @param input  The fields of `rainAttenuation`, each a list with one number per station or one number for all.
 * @param out  Columns to write into, of the right length; new ones where not given.
 * @throws {@link DomainError} naming the field, and the row for a bad value in a column.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.1.1.
 * @example
 * ```ts
 * import { rainAttenuationBatch } from 'slantpath/propagation';
 * const { attenuationDb } = rainAttenuationBatch({
 *   latitudeDeg: [46.4, 46.7],
 *   heightM: [1900, 600],
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 12,
 *   elevationDeg: 36,
 *   tiltDeg: 0,
 *   exceededPercent: 0.01,
 * });
 * [...attenuationDb].map((value) => value.toFixed(2)); // => ['2.85', '5.20']
 * ```
 */
export function rainAttenuationBatch(
  input: RainAttenuationColumns,
  out: Partial<RainAttenuationResult> = {},
): RainAttenuationResult {
  const columns = rainColumns(known('input', input, RAIN_ATTENUATION_COLUMNS_KEYS));
  const rows = rowCount(columns);
  const given = known('out', out, RAIN_ATTENUATION_BATCH_OUT_KEYS);
  const attenuationDb = outColumn('out.attenuationDb', given.attenuationDb, rows);
  const outsideStatedRange = outBytes('out.outsideStatedRange', given.outsideStatedRange, rows);
  fillRainAttenuation(columns, attenuationDb);
  markOutside(outsideStatedRange, 'frequencyGHz', columns.frequencyGHz, 1, 55);
  markOutside(outsideStatedRange, 'exceededPercent', columns.exceededPercent, 0.001, 5);
  return { attenuationDb, outsideStatedRange };
}

/** Value of a checked column; the guard is called only for a value that it may refuse or bring back. */
function guarded(
  value: number,
  minimum: number,
  maximum: number,
  guard: (value: number, row: number) => number,
  row: number,
): number {
  return typeof value === 'number' && value >= minimum && value <= maximum
    ? value
    : guard(value, row);
}

const checkedRate = (value: number, row: number) =>
  checkedRainRate('rainRate001MmPerH', value, row);
const checkedTilt = (value: number, row: number) => finite('tiltDeg', value, undefined, row);

/** Most frequencies whose coefficients are kept: a plan of carriers has fewer, a sweep gains nothing from more. */
const MOST_FREQUENCIES = 64;

/** Coefficients that are worked out once for a frequency, however the rows take turns. */
function keptCoefficients(): (frequencyGHz: number) => RainCoefficients {
  const kept = new Map<number, RainCoefficients>();
  return (frequencyGHz) => {
    const before = kept.get(frequencyGHz);
    if (before) return before;
    const found = rainCoefficients(frequencyGHz);
    if (kept.size < MOST_FREQUENCIES) kept.set(frequencyGHz, found);
    return found;
  };
}

/** Writes the attenuation of each row; what depends on frequency, tilt or percentage alone is kept from row to row. */
export function fillRainAttenuation(columns: RainAttenuationColumns, out: Float64Array): void {
  const { latitudeDeg, heightM, rainHeightKm, rainRate001MmPerH } = columns;
  const { frequencyGHz, elevationDeg, tiltDeg, exceededPercent } = columns;
  const coefficientsAt = keptCoefficients();
  let coefficients = rainCoefficients(1);
  let frequencyBefore = 1;
  let percent = percentTerms(1);
  let cosDoubleTilt = 1;
  let tiltBefore = 0;
  for (let row = 0; row < out.length; row++) {
    const latitude = guarded(inRow(latitudeDeg, row), -90, 90, checkedLatitudeDeg, row);
    const station = guarded(inRow(heightM, row), -500, 10000, checkedHeightM, row);
    const top = guarded(inRow(rainHeightKm, row), -5, 20, checkedRainHeightKm, row);
    const rate = guarded(inRow(rainRate001MmPerH, row), 0, 1000, checkedRate, row);
    const f = guarded(inRow(frequencyGHz, row), 0.1, 1000, checkedFrequencyGHz, row);
    const elevation = guarded(inRow(elevationDeg, row), 0, 90, checkedElevationDeg, row);
    const tilt = guarded(inRow(tiltDeg, row), -360, 360, checkedTilt, row);
    const exceeded = guarded(inRow(exceededPercent, row), 1e-6, 100, checkedPercent, row);
    if (f !== frequencyBefore) {
      coefficients = coefficientsAt(f);
      frequencyBefore = f;
    }
    if (tilt !== tiltBefore) {
      cosDoubleTilt = cosDeg(2 * tilt);
      tiltBefore = tilt;
    }
    if (exceeded !== percent.percent) percent = percentTerms(exceeded);
    const rainAboveKm = rainAbove(top, station);
    if (!(rainAboveKm > 0 && rate > 0)) {
      out[row] = 0;
      continue;
    }
    const sinElevation = sinDeg(elevation);
    const cosElevation = cosDeg(elevation);
    const mix = cosElevation * cosElevation * cosDoubleTilt;
    const k = mixedK(coefficients, mix);
    const gamma = powerLaw(k, mixedAlpha(coefficients, mix, k), rate);
    const projectionKm = slantPathKm(rainAboveKm, elevation, sinElevation) * cosElevation;
    const reducedKm = projectionKm * horizontalReduction(projectionKm, gamma, f);
    const cellKm = cellPathKm(rainAboveKm, reducedKm, sinElevation, cosElevation);
    const latitudeTerm = latitudeTermDeg(latitude);
    const adjustment = verticalAdjustment(latitudeTerm, elevation, sinElevation, cellKm, gamma, f);
    const attenuation001Db = gamma * (cellKm * adjustment);
    out[row] =
      attenuation001Db > 0
        ? attenuationAtPercentDb(
            attenuation001Db,
            percent,
            latitudeExponent(exceeded, latitudeTerm, elevation, sinElevation),
            sinElevation,
          )
        : 0;
  }
}

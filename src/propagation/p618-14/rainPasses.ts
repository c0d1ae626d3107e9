/**
 * Rain attenuation of some rows at once, step by step: each step is a short loop over dense columns.
 *
 * One long loop over all steps is more code than an engine unfolds; it then hands every number to a function in a box of its own,
 * which takes five times as long as the mathematics.
 */

import { cosDeg, sinDeg } from '../../numeric/angle.js';
import { denseAt } from '../../numeric/columns.js';
import { type RainCoefficients, rainCoefficients } from '../p838-3/coefficients.js';
import { mixedAlpha, mixedK, powerLaw } from '../p838-3/specificRainAttenuation.js';
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

/** Checked inputs of some rows, and what the steps find on the way. */
export interface RainRows {
  readonly latitudeDeg: Float64Array;
  readonly heightM: Float64Array;
  readonly rainHeightKm: Float64Array;
  readonly rainRate001MmPerH: Float64Array;
  readonly frequencyGHz: Float64Array;
  readonly elevationDeg: Float64Array;
  readonly tiltDeg: Float64Array;
  readonly exceededPercent: Float64Array;
  readonly sinElevation: Float64Array;
  readonly cosElevation: Float64Array;
  readonly gamma: Float64Array;
  readonly cellKm: Float64Array;
  readonly attenuation001Db: Float64Array;
}

/** Room for so many rows. */
export function rainRows(rows: number): RainRows {
  // One piece of memory: thirteen of them take longer than the mathematics of thirty rows.
  const whole = new Float64Array(13 * rows);
  let next = 0;
  const column = () => {
    next += rows;
    return whole.subarray(next - rows, next);
  };
  return {
    latitudeDeg: column(),
    heightM: column(),
    rainHeightKm: column(),
    rainRate001MmPerH: column(),
    frequencyGHz: column(),
    elevationDeg: column(),
    tiltDeg: column(),
    exceededPercent: column(),
    sinElevation: column(),
    cosElevation: column(),
    gamma: column(),
    cellKm: column(),
    attenuation001Db: column(),
  };
}

/** Most frequencies whose coefficients are kept: a plan of carriers has fewer, a sweep gains nothing from more. */
const MOST_FREQUENCIES = 64;

/** Coefficients that are worked out once for a frequency, however the rows take turns. */
export function keptCoefficients(): (frequencyGHz: number) => RainCoefficients {
  const kept = new Map<number, RainCoefficients>();
  return (frequencyGHz) => {
    const before = kept.get(frequencyGHz);
    if (before) return before;
    const found = rainCoefficients(frequencyGHz);
    if (kept.size < MOST_FREQUENCIES) kept.set(frequencyGHz, found);
    return found;
  };
}

function elevations({ elevationDeg, sinElevation, cosElevation }: RainRows, rows: number): void {
  for (let row = 0; row < rows; row++) {
    const elevation = denseAt(elevationDeg, row);
    sinElevation[row] = sinDeg(elevation);
    cosElevation[row] = cosDeg(elevation);
  }
}

/** Specific attenuation; what depends on frequency or tilt alone is kept from row to row. */
function specific(
  { frequencyGHz, tiltDeg, rainRate001MmPerH, cosElevation, gamma }: RainRows,
  rows: number,
  coefficientsAt: (frequencyGHz: number) => RainCoefficients,
): void {
  let frequencyBefore = denseAt(frequencyGHz, 0);
  let coefficients = coefficientsAt(frequencyBefore);
  let tiltBefore = 0;
  let cosDoubleTilt = 1;
  for (let row = 0; row < rows; row++) {
    const frequency = denseAt(frequencyGHz, row);
    if (frequency !== frequencyBefore) {
      coefficients = coefficientsAt(frequency);
      frequencyBefore = frequency;
    }
    const tilt = denseAt(tiltDeg, row);
    if (tilt !== tiltBefore) {
      cosDoubleTilt = cosDeg(2 * tilt);
      tiltBefore = tilt;
    }
    const cosine = denseAt(cosElevation, row);
    const mix = cosine * cosine * cosDoubleTilt;
    const k = mixedK(coefficients, mix);
    const rate = denseAt(rainRate001MmPerH, row);
    gamma[row] = rate > 0 ? powerLaw(k, mixedAlpha(coefficients, mix, k), rate) : 0;
  }
}

/** Slant length through the rain cell; 0 above the rain. */
function cells(
  { heightM, rainHeightKm, frequencyGHz, elevationDeg, sinElevation, ...found }: RainRows,
  rows: number,
): void {
  const { cosElevation, gamma, cellKm } = found;
  for (let row = 0; row < rows; row++) {
    const rainAboveKm = rainAbove(denseAt(rainHeightKm, row), denseAt(heightM, row));
    const sine = denseAt(sinElevation, row);
    const cosine = denseAt(cosElevation, row);
    const projectionKm = slantPathKm(rainAboveKm, denseAt(elevationDeg, row), sine) * cosine;
    const reducedKm =
      projectionKm *
      horizontalReduction(projectionKm, denseAt(gamma, row), denseAt(frequencyGHz, row));
    cellKm[row] = rainAboveKm > 0 ? cellPathKm(rainAboveKm, reducedKm, sine, cosine) : 0;
  }
}

/** Attenuation at 0.01 %. */
function attenuations(
  { latitudeDeg, elevationDeg, frequencyGHz, sinElevation, gamma, cellKm, ...found }: RainRows,
  rows: number,
): void {
  const { attenuation001Db } = found;
  for (let row = 0; row < rows; row++) {
    const rain = denseAt(gamma, row);
    const cell = denseAt(cellKm, row);
    const adjustment = verticalAdjustment(
      latitudeTermDeg(denseAt(latitudeDeg, row)),
      denseAt(elevationDeg, row),
      denseAt(sinElevation, row),
      cell,
      rain,
      denseAt(frequencyGHz, row),
    );
    // Without rain or above it one of them is 0.
    attenuation001Db[row] = rain > 0 && cell > 0 ? rain * (cell * adjustment) : 0;
  }
}

/** Attenuation at the percentage, into `out` from a row on. */
function percentages(
  { latitudeDeg, elevationDeg, exceededPercent, sinElevation, attenuation001Db }: RainRows,
  rows: number,
  out: Float64Array,
  from: number,
): void {
  let terms = percentTerms(denseAt(exceededPercent, 0));
  for (let row = 0; row < rows; row++) {
    const percent = denseAt(exceededPercent, row);
    if (percent !== terms.percent) terms = percentTerms(percent);
    const sine = denseAt(sinElevation, row);
    const whole = denseAt(attenuation001Db, row);
    const beta = latitudeExponent(
      percent,
      latitudeTermDeg(denseAt(latitudeDeg, row)),
      denseAt(elevationDeg, row),
      sine,
    );
    out[from + row] = whole > 0 ? attenuationAtPercentDb(whole, terms, beta, sine) : 0;
  }
}

/** Attenuation of the first rows of `columns`, into `out` from the row `from` on. */
export function attenuationOfRows(
  columns: RainRows,
  rows: number,
  coefficientsAt: (frequencyGHz: number) => RainCoefficients,
  out: Float64Array,
  from: number,
): void {
  elevations(columns, rows);
  specific(columns, rows, coefficientsAt);
  cells(columns, rows);
  attenuations(columns, rows);
  percentages(columns, rows, out, from);
}

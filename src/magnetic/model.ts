/**
 * The field of the World Magnetic Model at a point: one pass over the spherical harmonics for the field and its rate.
 *
 * Source: NOAA NCEI and British Geological Survey, The US/UK World Magnetic Model for 2025-2030, technical report, section 1.2,
 * equations 7 to 17.
 */

import { RADIANS_PER_DEGREE } from '../numeric/angle.js';
import { denseAt, valueAt } from '../numeric/columns.js';
import { COEFFICIENTS, DEGREE, EPOCH } from './coefficients.js';

/** Decimal years that are taken at all; the model itself is valid from 2025.0 to 2030.0. */
export const FIRST_YEAR = 1990;
export const LAST_YEAR = 2100;

/** Field components in nanotesla and their change per year. */
export interface FieldVector {
  readonly north: number;
  readonly east: number;
  readonly down: number;
  readonly northRate: number;
  readonly eastRate: number;
  readonly downRate: number;
}

/** WGS 84: semi-major axis and square of the eccentricity; radius of the magnetic reference sphere. */
const SEMI_MAJOR_KM = 6378.137;
const ECCENTRICITY2 = (2 - 1 / 298.257223563) / 298.257223563;
const REFERENCE_KM = 6371.2;

const WIDTH = 5;

/** For each order m and in it each degree n: g, h and their rates in nanotesla, and the root of n^2 - m^2. */
const TERMS = /* @__PURE__ */ COEFFICIENTS.map((row, m) =>
  Float64Array.from({ length: (row.length / 4) * WIDTH }, (_, index) => {
    const term = Math.floor(index / WIDTH);
    const n = Math.max(1, m) + term;
    const place = index % WIDTH;
    return place < 4 ? valueAt(row, 4 * term + place) / 10 : Math.sqrt(n * n - m * m);
  }),
);

/** Field at a geodetic place (degrees, kilometres above the ellipsoid) and decimal year, unchecked. */
export function fieldVector(
  latitudeDeg: number,
  longitudeDeg: number,
  heightKm: number,
  decimalYear: number,
): FieldVector {
  const latitude = latitudeDeg * RADIANS_PER_DEGREE;
  const longitude = longitudeDeg * RADIANS_PER_DEGREE;
  const [sinLatitude, cosLatitude] = [Math.sin(latitude), Math.cos(latitude)];
  const normalKm = SEMI_MAJOR_KM / Math.sqrt(1 - ECCENTRICITY2 * sinLatitude * sinLatitude);
  const outKm = (normalKm + heightKm) * cosLatitude;
  const axisKm = (normalKm * (1 - ECCENTRICITY2) + heightKm) * sinLatitude;
  const radiusKm = Math.sqrt(outKm * outKm + axisKm * axisKm);
  // Geocentric latitude, and its turn against the geodetic one.
  const [sin, cos] = [axisKm / radiusKm, outKm / radiusKm];
  const sinTurn = sin * cosLatitude - cos * sinLatitude;
  const cosTurn = cos * cosLatitude + sin * sinLatitude;
  const sums = harmonicSums(sin, cos, longitude, REFERENCE_KM / radiusKm);
  const { north, east, down, northRate, eastRate, downRate } = sums;
  const years = decimalYear - EPOCH;
  const xRate = northRate * cosTurn - downRate * sinTurn;
  const zRate = northRate * sinTurn + downRate * cosTurn;
  return {
    north: north * cosTurn - down * sinTurn + years * xRate,
    east: east + years * eastRate,
    down: north * sinTurn + down * cosTurn + years * zRate,
    northRate: xRate,
    eastRate,
    downRate: zRate,
  };
}

/**
 * Field and rate at the model's epoch in the geocentric frame, by sine and cosine of the geocentric latitude, longitude in
 * radians, and reference radius over radius.
 */
function harmonicSums(sin: number, cos: number, longitude: number, ratio: number): FieldVector {
  const [sinStep, cosStep] = [Math.sin(longitude), Math.cos(longitude)];
  let [north, east, down, northRate, eastRate, downRate] = [0, 0, 0, 0, 0, 0];
  // Sine and cosine of m times the longitude; (a / r)^(m + 2); the Legendre function of n = m over the cosine of the latitude.
  let [sinM, cosM, powerM, sectoral] = [0, 1, ratio * ratio, 1];
  for (let m = 0; m <= DEGREE; m++) {
    const terms = TERMS[m] as Float64Array;
    if (m > 0) {
      [sinM, cosM] = [sinM * cosStep + cosM * sinStep, cosM * cosStep - sinM * sinStep];
      powerM *= ratio;
      if (m > 1) sectoral *= cos * Math.sqrt(1 - 1 / (2 * m));
    }
    // Legendre functions of degree n - 1 and n, for m > 0 over the cosine of the latitude, which spares the pole a division;
    // for m = 0 the slopes of both besides.
    let before = m === 0 ? 1 : 0;
    let here = m === 0 ? sin : sectoral;
    let slopeBefore = 0;
    let slope = cos;
    let power = m === 0 ? powerM * ratio : powerM;
    const last = terms.length - WIDTH;
    for (let at = 0, n = Math.max(1, m); at <= last; at += WIDTH, n++) {
      const root = denseAt(terms, at + 4);
      const g = denseAt(terms, at);
      const h = denseAt(terms, at + 1);
      const gRate = denseAt(terms, at + 2);
      const hRate = denseAt(terms, at + 3);
      const along = power * (g * cosM + h * sinM);
      const alongRate = power * (gRate * cosM + hRate * sinM);
      const turn = m === 0 ? slope : root * before - n * sin * here;
      const value = (n + 1) * (m === 0 ? here : here * cos);
      north -= turn * along;
      northRate -= turn * alongRate;
      down -= value * along;
      downRate -= value * alongRate;
      if (m > 0) {
        const across = m * power * here;
        east += across * (g * sinM - h * cosM);
        eastRate += across * (gRate * sinM - hRate * cosM);
      }
      if (at === last) break;
      const rootNext = denseAt(terms, at + WIDTH + 4);
      const next = ((2 * n + 1) * sin * here - root * before) / rootNext;
      if (m === 0) {
        const slopeNext = ((2 * n + 1) * (cos * here + sin * slope) - n * slopeBefore) / (n + 1);
        slopeBefore = slope;
        slope = slopeNext;
      }
      before = here;
      here = next;
      power *= ratio;
    }
  }
  return { north, east, down, northRate, eastRate, downRate };
}

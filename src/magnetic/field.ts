/** The Earth's magnetic field at a station: declination, inclination, intensities, their rates. */

import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { inRange } from '../errors.js';
import { DEGREES_PER_RADIAN, wrapLongitudeDeg } from '../numeric/angle.js';
import { FIRST_YEAR, fieldVector, LAST_YEAR } from './model.js';

/** Where a compass can be trusted, by the horizontal intensity: the zones of the World Magnetic Model. */
export type CompassZone = 'usable' | 'caution' | 'blackout';

/** Magnetic field at a place and time after the World Magnetic Model 2025. */
export interface MagneticField {
  /** Declination in degrees: from true north to magnetic north, east positive, (-180, 180]. */
  readonly declinationDeg: number;
  /** One standard deviation of the declination in degrees, as stated for the model's global average. */
  readonly declinationStandardUncertaintyDeg: number;
  /** Inclination in degrees: below the horizontal positive, -90 to 90. */
  readonly inclinationDeg: number;
  /** Intensity of the horizontal part in nanotesla. */
  readonly horizontalIntensityNt: number;
  /** Intensity of the whole field in nanotesla. */
  readonly totalIntensityNt: number;
  /** Component towards true north in nanotesla. */
  readonly northNt: number;
  /** Component towards the east in nanotesla. */
  readonly eastNt: number;
  /** Component downwards in nanotesla. */
  readonly downNt: number;
  /** Change of the declination in degrees per year. */
  readonly declinationRateDegPerYear: number;
  /** Change of the inclination in degrees per year. */
  readonly inclinationRateDegPerYear: number;
  /** Change of the horizontal intensity in nanotesla per year. */
  readonly horizontalIntensityRateNtPerYear: number;
  /** Change of the whole intensity in nanotesla per year. */
  readonly totalIntensityRateNtPerYear: number;
  /** Change of the northward component in nanotesla per year. */
  readonly northRateNtPerYear: number;
  /** Change of the eastward component in nanotesla per year. */
  readonly eastRateNtPerYear: number;
  /** Change of the downward component in nanotesla per year. */
  readonly downRateNtPerYear: number;
  /** `blackout` below 2000 nT of horizontal intensity (no compass), `caution` below 6000 nT, else `usable`. */
  readonly compassZone: CompassZone;
  /** The model that was evaluated. */
  readonly model: 'WMM2025';
  /** `valid` from 2025.0 to 2030.0; otherwise the answer is an extrapolation that gets worse with time. */
  readonly validity: 'valid' | 'before-model' | 'after-model';
  /** Fields outside the model's stated range: `decimalYear`, `heightM`. */
  readonly outsideStatedRange: readonly string[];
}

/**
 * Magnetic field at a station after the World Magnetic Model 2025 (degree 12, valid 2025.0 to 2030.0).
 *
 * The model leaves out iron nearby, magnetic rock and magnetic storms; its stated uncertainty of the
 * declination, sqrt(0.26^2 + (5417 / H)^2) degrees, is a global average over all of these.
 *
 * @param station  Geodetic latitude and longitude, height above the ellipsoid in metres. Stated range of
 *   the model: 1 km below to 850 km above the ellipsoid.
 * @param decimalYear  Date as a decimal year, 2026.5 being the middle of 2026; see `instantToDecimalYear`.
 *   1990 to 2100; outside 2025.0 to 2030.0 the result says so in `validity`.
 * @returns Declination and the other elements with their yearly changes and the compass zone.
 * @throws {@link DomainError} for a station outside its domain or a year that is no decimal year.
 *
 * Source: NOAA NCEI and British Geological Survey, The US/UK World Magnetic Model for 2025-2030, evaluated in
 * one pass of its own. Accuracy: the official test values within 8e-4 nT in X, H and F (where the test file itself carries 7.2e-4 nT), and to the
 * last published digit in all else.
 * @example
 * ```ts
 * import { magneticField } from 'slantpath/magnetic';
 * const field = magneticField({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 }, 2026.5);
 * field.declinationDeg.toFixed(2); // => '3.79'
 * field.declinationStandardUncertaintyDeg.toFixed(2); // => '0.36'
 * ```
 */
export function magneticField(station: Station, decimalYear: number): MagneticField {
  const { latitudeDeg, longitudeDeg, heightM } = checkedStation(station);
  const year = inRange('decimalYear', decimalYear, FIRST_YEAR, LAST_YEAR, YEAR_SLIP);
  const v = fieldVector(latitudeDeg, wrapLongitudeDeg(longitudeDeg), heightM / 1000, year);
  const { north: x, east: y, down: z, northRate: dx, eastRate: dy, downRate: dz } = v;
  const h = Math.sqrt(x * x + y * y);
  const f = Math.sqrt(h * h + z * z);
  const dh = (x * dx + y * dy) / h;
  return {
    declinationDeg: Math.atan2(y, x) * DEGREES_PER_RADIAN,
    declinationStandardUncertaintyDeg: declinationStandardUncertaintyDeg(h),
    inclinationDeg: Math.atan2(z, h) * DEGREES_PER_RADIAN,
    horizontalIntensityNt: h,
    totalIntensityNt: f,
    northNt: x,
    eastNt: y,
    downNt: z,
    declinationRateDegPerYear: ((x * dy - y * dx) / (h * h)) * DEGREES_PER_RADIAN,
    inclinationRateDegPerYear: ((h * dz - z * dh) / (f * f)) * DEGREES_PER_RADIAN,
    horizontalIntensityRateNtPerYear: dh,
    totalIntensityRateNtPerYear: (x * dx + y * dy + z * dz) / f,
    northRateNtPerYear: dx,
    eastRateNtPerYear: dy,
    downRateNtPerYear: dz,
    compassZone: compassZone(h),
    model: 'WMM2025',
    validity: year < 2025 ? 'before-model' : year > 2030 ? 'after-model' : 'valid',
    outsideStatedRange: year < 2025 || year > 2030 ? ['decimalYear'] : [],
  };
}

export const YEAR_SLIP = 'is it a decimal year such as 2026.5?';

/** Stated standard deviation of the declination: WMM2025 report, error model. */
export function declinationStandardUncertaintyDeg(horizontalIntensityNt: number): number {
  return Math.hypot(0.26, 5417 / horizontalIntensityNt);
}

/** Zone by horizontal intensity: WMM2025 report, blackout and caution zones. */
function compassZone(horizontalIntensityNt: number): CompassZone {
  if (horizontalIntensityNt < 2000) return 'blackout';
  return horizontalIntensityNt < 6000 ? 'caution' : 'usable';
}

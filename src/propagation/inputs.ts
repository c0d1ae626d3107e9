/** Guards for the inputs that every recommendation shares; the words of a slip stand here once. */

import { inRange, isInside } from '../errors.js';

/** Frequency in GHz, held to what any of the formulas can digest. */
export function checkedFrequencyGHz(
  value: number,
  index?: number,
  parameter = 'frequencyGHz',
): number {
  return inRange(parameter, value, 0.1, 1000, 'was the frequency given in MHz?', index);
}

/** Elevation in degrees, 0 to 90. */
export function checkedElevationDeg(value: number, index?: number): number {
  return inRange('elevationDeg', value, 0, 90, 'is the satellite below the horizon?', index);
}

/** Elevation in degrees, 0.1 to 90, for formulas that divide by its sine. */
export function checkedRaisedElevationDeg(value: number, index?: number): number {
  return inRange('elevationDeg', value, 0.1, 90, 'is the satellite below the horizon?', index);
}

/** Percent of time, 0.000001 to 100. */
export function checkedPercent(
  value: number,
  index?: number,
  parameter = 'exceededPercent',
): number {
  return inRange(parameter, value, 1e-6, 100, 'is it the availability or a fraction?', index);
}

/** Geodetic latitude in degrees. */
export function checkedLatitudeDeg(value: number, index?: number): number {
  return inRange('latitudeDeg', value, -90, 90, 'were latitude and longitude swapped?', index);
}

/** Height of a station above mean sea level in metres. */
export function checkedHeightM(value: number, index?: number): number {
  return inRange('heightM', value, -500, 10000, 'is it in feet?', index);
}

/** Rain height above mean sea level in kilometres; it may lie below a high station. */
export function checkedRainHeightKm(value: number, index?: number): number {
  return inRange('rainHeightKm', value, -5, 20, 'was it given in metres?', index);
}

/** Rain rate in mm/h; zero means no rain. */
export function checkedRainRate(parameter: string, value: number, index?: number): number {
  return inRange(parameter, value, 0, 1000, undefined, index);
}

/** Names of the values that lie outside the interval a recommendation states for them. */
export function namesOutside(
  ...stated: readonly (readonly [name: string, value: number, from: number, to: number])[]
): readonly string[] {
  return stated.filter(([, value, from, to]) => !isInside(value, from, to)).map(([n]) => n);
}

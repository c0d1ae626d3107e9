/**
 * Probability of rain from the rain rate at 0.01 %, the latitude and a season factor.
 *
 * If every month of the year were alike, P.837-7 would tie the probability of rain to the rain rate at 0.01 %
 * and the temperature, here a smooth one that depends on latitude alone. Real years depart from that, but the
 * departure changes slowly from place to place: the grid keeps it on a coarser grid than the rain rate.
 */

import { sinDeg } from '../numeric/angle.js';
import { normalExceedance } from '../numeric/normal.js';

const SHIFT = 0.7938;
const SPREAD = 1.26;
/** Where the logarithmic scale of the probability turns linear, percent. */
const TURN_PERCENT = 0.2;

/** Smooth temperature of a latitude in degrees Celsius, 26.85 at the equator, not below 0. */
function zonalCelsius(latitudeDeg: number): number {
  return Math.max(0, 26.85 - 40 * sinDeg(latitudeDeg) ** 2);
}

/** Probability of rain in percent if all months were alike. */
function evenYearPercent(rainRate001MmPerH: number, latitudeDeg: number): number {
  if (rainRate001MmPerH <= 0) return 0.01;
  const celsius = zonalCelsius(latitudeDeg);
  const meanRateLog = Math.log(0.5874) + 0.0883 * celsius;
  const z = (Math.log(rainRate001MmPerH) + SHIFT - meanRateLog) / SPREAD;
  return Math.min(70, 0.01 / normalExceedance(z));
}

/** Departure of a place's probability of rain from that of an even year, for the grid. */
export function rainSeason(
  rainProbabilityPercent: number,
  rainRate001MmPerH: number,
  latitudeDeg: number,
): number {
  const even = evenYearPercent(rainRate001MmPerH, latitudeDeg);
  return Math.log1p(rainProbabilityPercent / TURN_PERCENT) - Math.log1p(even / TURN_PERCENT);
}

/** Probability of rain in percent, 0 to 70, from the departure of {@link rainSeason}. */
export function seasonalRainPercent(
  season: number,
  rainRate001MmPerH: number,
  latitudeDeg: number,
): number {
  const even = evenYearPercent(rainRate001MmPerH, latitudeDeg);
  const percent = TURN_PERCENT * Math.expm1(Math.log1p(even / TURN_PERCENT) + season);
  const most = rainRate001MmPerH > 0 ? 70 : 0.01;
  return Math.min(Math.max(percent, rainRate001MmPerH > 0 ? 0.01 : 0), most);
}

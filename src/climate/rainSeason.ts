/**
 * Probability of rain from the rain rate at 0.01 %, the mean temperature and a season factor.
 *
 * If every month of the year were alike, P.837-7 would tie the probability of rain to the rain rate at 0.01 %
 * and the temperature. Real years are not, but how far they depart changes slowly from place to place: the
 * grid keeps that departure on a coarser grid than the rain rate.
 */

import { normalExceedance } from '../numeric/normal.js';

const SHIFT = 0.7938;
const SPREAD = 1.26;
/** Where the logarithmic scale of the probability turns linear, percent. */
const TURN_PERCENT = 0.2;

/** Probability of rain in percent if all months were alike. */
function evenYearPercent(rainRate001MmPerH: number, meanTemperatureK: number): number {
  if (rainRate001MmPerH <= 0) return 0.01;
  const celsius = Math.max(0, meanTemperatureK - 273.15);
  const meanRateLog = Math.log(0.5874) + 0.0883 * celsius;
  const z = (Math.log(rainRate001MmPerH) + SHIFT - meanRateLog) / SPREAD;
  return Math.min(70, 0.01 / normalExceedance(z));
}

/** Departure of a place's probability of rain from that of an even year, for the grid. */
export function rainSeason(
  rainProbabilityPercent: number,
  rainRate001MmPerH: number,
  meanTemperatureK: number,
): number {
  const even = evenYearPercent(rainRate001MmPerH, meanTemperatureK);
  return Math.log1p(rainProbabilityPercent / TURN_PERCENT) - Math.log1p(even / TURN_PERCENT);
}

/** Probability of rain in percent, 0 to 70, from the departure of {@link rainSeason}. */
export function seasonalRainPercent(
  season: number,
  rainRate001MmPerH: number,
  meanTemperatureK: number,
): number {
  const even = evenYearPercent(rainRate001MmPerH, meanTemperatureK);
  const percent = TURN_PERCENT * Math.expm1(Math.log1p(even / TURN_PERCENT) + season);
  const most = rainRate001MmPerH > 0 ? 70 : 0.01;
  return Math.min(Math.max(percent, rainRate001MmPerH > 0 ? 0.01 : 0), most);
}

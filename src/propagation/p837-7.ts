/**
 * ITU-R P.837-7: rain rate exceeded for any percentage of an average year and the probability of rain,
 * from the mean rainfall and mean temperature of the twelve months.
 *
 * Each month rains for a part of its time, with a lognormal spread of rain rates about a mean that grows
 * with temperature; the year is the mixture of its months.
 */

import { inRange } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { valueAt } from '../numeric/columns.js';
import { normalExceedance, normalExceedanceQuantile } from '../numeric/normal.js';
import { bracketedRoot } from '../numeric/root.js';
import { twelve } from './twelveMonths.js';

/** Mean rainfall and mean temperature of each month of the year, January first. */
export interface MonthlyNormals {
  /** Mean total rainfall of each of the twelve months in millimetres, 0 to 5000. */
  readonly monthlyRainMm: ArrayLike<number>;
  /** Mean surface temperature of each of the twelve months in kelvin, 170 to 340. */
  readonly monthlyTemperatureK: ArrayLike<number>;
}

const MONTHLY_NORMALS_KEYS = {
  monthlyRainMm: true,
  monthlyTemperatureK: true,
} satisfies Keys<MonthlyNormals>;

/** What a month contributes, in the order of the recommendation. */
export interface RainMonth {
  /** Mean rain rate while it rains, mm/h (r of the recommendation). */
  readonly meanRainRateMmPerH: number;
  /** Part of the month's time in which it rains, percent, 0 to 70 (P0 of the month). */
  readonly rainProbabilityPercent: number;
}

/** Probability of rain in an average year, with its months. */
export interface RainProbability {
  /** The recommendation implemented. */
  readonly edition: 'P.837-7';
  /** The twelve months, January first. */
  readonly months: readonly RainMonth[];
  /** Part of an average year in which it rains, percent, 0 to 70 (P0 of the year). */
  readonly rainProbabilityPercent: number;
}

/** Rain rate exceeded for a percentage of an average year. */
export interface RainRate extends RainProbability {
  /** The percentage asked for. */
  readonly exceededPercent: number;
  /** Rain rate exceeded for that part of an average year, one-minute integration, mm/h; 0 where it rains less often. */
  readonly rainRateMmPerH: number;
}

/** Days of each month, February at its mean over four years. */
const DAYS = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const DAYS_OF_YEAR = 365.25;
/** Mean and spread of the lognormal of rain rates. */
const SHIFT = 0.7938;
const SPREAD = 1.26;
const MOST_RAIN_PERCENT = 70;

/** A month by equations 1 to 3. */
function rainMonth(totalMm: number, temperatureK: number, days: number): RainMonth {
  const celsius = temperatureK - 273.15;
  const rate = celsius >= 0 ? 0.5874 * Math.exp(0.0883 * celsius) : 0.5874;
  const percent = (100 * totalMm) / (24 * days * rate);
  if (percent <= MOST_RAIN_PERCENT)
    return { meanRainRateMmPerH: rate, rainProbabilityPercent: percent };
  return {
    meanRainRateMmPerH: (100 / MOST_RAIN_PERCENT) * (totalMm / (24 * days)),
    rainProbabilityPercent: MOST_RAIN_PERCENT,
  };
}

/**
 * Probability of rain in an average year from monthly normals (P.837-7).
 *
 * @param normals  Twelve mean rain totals in millimetres and twelve mean temperatures in kelvin.
 * @returns The months' mean rain rates and probabilities, and the year's probability in percent.
 * @throws {@link DomainError} naming `monthlyRainMm` or `monthlyTemperatureK`.
 *
 * Source: ITU-R P.837-7, Annex 1, steps 1 to 5.
 * Accuracy: the official validation examples to 1e-8 relative.
 * @example
 * ```ts
 * import { rainProbability } from 'slantpath/propagation';
 * const year = rainProbability({
 *   monthlyRainMm: [56, 39, 47, 47, 51, 52, 49, 56, 60, 62, 65, 62],
 *   monthlyTemperatureK: [278, 278, 280, 282, 285, 288, 290, 290, 288, 285, 281, 279],
 * });
 * year.rainProbabilityPercent.toFixed(2); // => '5.29'
 * ```
 */
export function rainProbability(normals: MonthlyNormals): RainProbability {
  const { monthlyRainMm, monthlyTemperatureK } = known('normals', normals, MONTHLY_NORMALS_KEYS);
  const totals = twelve('monthlyRainMm', monthlyRainMm, 0, 5000, 'is the rainfall in millimetres?');
  const temperatures = twelve(
    'monthlyTemperatureK',
    monthlyTemperatureK,
    170,
    340,
    'is the temperature in kelvin?',
  );
  const months = DAYS.map((days, month) =>
    rainMonth(valueAt(totals, month), valueAt(temperatures, month), days),
  );
  const sum = months.reduce(
    (total, month, index) => total + valueAt(DAYS, index) * month.rainProbabilityPercent,
    0,
  );
  return { edition: 'P.837-7', months, rainProbabilityPercent: sum / DAYS_OF_YEAR };
}

/** Percentage of an average year in which the rain rate exceeds exp(`logRate`). */
function exceedance(months: readonly RainMonth[], logRate: number): number {
  let sum = 0;
  for (let index = 0; index < 12; index++) {
    const month = months[index] as RainMonth;
    if (month.rainProbabilityPercent === 0) continue;
    const z = (logRate + SHIFT - Math.log(month.meanRainRateMmPerH)) / SPREAD;
    sum += valueAt(DAYS, index) * month.rainProbabilityPercent * normalExceedance(z);
  }
  return sum / DAYS_OF_YEAR;
}

const RAIN_RATE_INPUT_KEYS = {
  monthlyRainMm: true,
  monthlyTemperatureK: true,
  exceededPercent: true,
} satisfies Keys<Parameters<typeof rainRate>[0]>;

/**
 * Rain rate exceeded for a percentage of an average year, from monthly normals (P.837-7).
 *
 * @param input  Twelve mean rain totals in millimetres, twelve mean temperatures in kelvin, and
 *   `exceededPercent`, 0.000000001 to 100 (0.01 is the input of rain attenuation).
 * @returns Rain rate in mm/h; 0 where `exceededPercent` is the probability of rain or more.
 * @throws {@link DomainError} naming `monthlyRainMm`, `monthlyTemperatureK` or `exceededPercent`.
 *
 * Source: ITU-R P.837-7, Annex 1. The recommendation stops at 0.001 % of the percentage; here the root is
 * taken to the last digits.
 * Accuracy: the official validation examples to 1e-5 relative (their own stop).
 * @example
 * ```ts
 * import { rainRate } from 'slantpath/propagation';
 * const rain = rainRate({
 *   monthlyRainMm: [56, 39, 47, 47, 51, 52, 49, 56, 60, 62, 65, 62],
 *   monthlyTemperatureK: [278, 278, 280, 282, 285, 288, 290, 290, 288, 285, 281, 279],
 *   exceededPercent: 0.01,
 * });
 * rain.rainRateMmPerH.toFixed(2); // => '26.53'
 * ```
 */
export function rainRate(input: MonthlyNormals & { readonly exceededPercent: number }): RainRate {
  knownOnly('input', input, RAIN_RATE_INPUT_KEYS);
  const probability = rainProbability(input);
  const exceededPercent = inRange('exceededPercent', input.exceededPercent, 1e-9, 100);
  const rainRateMmPerH = rateOfMonths(probability, exceededPercent);
  return { ...probability, exceededPercent, rainRateMmPerH };
}

/** The rate by a bracketed root: between the months' own answers for the same share of their rain. */
function rateOfMonths(year: RainProbability, exceededPercent: number): number {
  if (exceededPercent >= year.rainProbabilityPercent) return 0;
  const z = normalExceedanceQuantile(exceededPercent / year.rainProbabilityPercent);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const month of year.months) {
    if (month.rainProbabilityPercent === 0) continue;
    const logRate = Math.log(month.meanRainRateMmPerH) - SHIFT + SPREAD * z;
    low = Math.min(low, logRate);
    high = Math.max(high, logRate);
  }
  // A hair of room, so that rounding cannot put the root outside.
  const root = bracketedRoot(
    (logRate) => Math.log(exceedance(year.months, logRate) / exceededPercent),
    { from: low - 1e-9, to: high + 1e-9 },
  );
  return Math.exp(root ?? high);
}

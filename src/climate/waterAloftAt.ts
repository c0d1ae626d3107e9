/** Water vapour and cloud of a climate at any percentage of the year. */

import { DomainError, inRange, objects } from '../errors.js';
import { known } from '../keys.js';
import { valueAt } from '../numeric/columns.js';
import { betweenPercents, blend } from '../propagation/internal.js';
import type { Climate, WaterAloft } from './climateAt.js';
import { CLIMATE_KEYS } from './climateAt.js';

/**
 * Water vapour and cloud liquid exceeded for a percentage of an average year, between those that a climate lists.
 *
 * Linear in the value and logarithmic in the percentage, as P.836-6 and P.840-9 interpolate. Beyond the list there is no
 * value: the shipped grid has 5 to 50 %, because P.618-14 holds gas and cloud to 5 % below that. At 1 % they would be
 * 10 to 28 % more. A grid of one's own may carry rarer percentages.
 *
 * @param climate  Climate of the place, from `climateAt`.
 * @param exceededPercent  Percentage of an average year, within those of the climate: 5 to 50 in the shipped grid.
 * @throws {@link DomainError} naming `climate` or `exceededPercent`.
 *
 * Source: ITU-R P.836-6 and P.840-9, interpolation between percentages.
 * @example
 * ```ts
 * import { climateAt, waterAloftAt } from 'slantpath/climate';
 * const climate = climateAt({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 });
 * waterAloftAt(climate, 15).waterVapourContentKgPerM2.toFixed(1); // => '13.3'
 * ```
 */
export function waterAloftAt(climate: Climate, exceededPercent: number): WaterAloft {
  const { waterAloft } = known('climate', climate, CLIMATE_KEYS);
  if (!Array.isArray(waterAloft) || waterAloft.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'climate.waterAloft',
      received: waterAloft,
      allowed: 'a list with at least one percentage',
    });
  const levels = objects('climate.waterAloft', waterAloft);
  const percents = levels.map((level, at) =>
    inRange(`climate.waterAloft[${at}].exceededPercent`, level.exceededPercent, 0, 100),
  );
  inRange(
    'exceededPercent',
    exceededPercent,
    valueAt(percents, 0),
    valueAt(percents, percents.length - 1),
    'the climate lists no other percentages; P.618-14 takes its rarest below it',
  );
  const { below, above, ratio } = betweenPercents('climate.waterAloft', percents, exceededPercent);
  const value = (at: number, name: keyof WaterAloft): number =>
    inRange(`climate.waterAloft[${at}].${name}`, (levels[at] as WaterAloft)[name], 0, 1000);
  const between = (name: keyof WaterAloft) => blend(value(below, name), value(above, name), ratio);
  return {
    exceededPercent,
    waterVapourDensityGPerM3: between('waterVapourDensityGPerM3'),
    waterVapourContentKgPerM2: between('waterVapourContentKgPerM2'),
    vapourScaleHeightKm: between('vapourScaleHeightKm'),
    liquidWaterKgPerM2: between('liquidWaterKgPerM2'),
  };
}

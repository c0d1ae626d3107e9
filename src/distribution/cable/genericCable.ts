/** Generic 75 ohm drop cables, for planning when the reel's own data sheet is not at hand. */

import { oneOf } from '../../errors.js';
import type { CableType } from './cable.js';

/** Series of 75 ohm drop cable, thinnest first. */
export type CableSeries = 'series-59' | 'series-6' | 'series-7' | 'series-11';

const CABLES = {
  'series-59': {
    skinLossDbPer100m: 26.71,
    dielectricLossDbPer100m: 0,
    loopResistanceOhmPer100m: 5.3,
  },
  'series-6': {
    skinLossDbPer100m: 19.965,
    dielectricLossDbPer100m: 1.334,
    loopResistanceOhmPer100m: 4.1,
  },
  'series-7': {
    skinLossDbPer100m: 17.05,
    dielectricLossDbPer100m: 0.17,
    loopResistanceOhmPer100m: 2.8,
  },
  'series-11': {
    skinLossDbPer100m: 12.99,
    dielectricLossDbPer100m: 0.91,
    loopResistanceOhmPer100m: 1.8,
  },
} as const;

/**
 * A generic cable of a series, with a solid copper centre.
 *
 * Loss of series 6: fitted to four published points, 270 to 2150 MHz, within 1.3 percent. Loss of series 59, 7 and 11: practice of the trade,
 * fitted to rows of the usual drop-cable table from memory (no standard was read), 55 to 1000 MHz, within 7, 3 and 3 percent of
 * those; above 1000 MHz they are an extrapolation. Loop resistance: copper centre (20, 18, 16, 14 AWG) at
 * 20 degrees Celsius and a braid of 10 to 20 ohm/km by practice of the trade; a copper-clad steel centre has
 * about 8 ohm more per 100 m in series 6. Use the data sheet of the reel where you have it.
 *
 * @throws {@link DomainError} for a series that is not listed.
 * @example
 * ```ts
 * import { genericCable } from 'slantpath/distribution';
 * genericCable('series-6').skinLossDbPer100m; // => 19.965
 * ```
 */
export function genericCable(series: CableSeries): CableType {
  oneOf('series', series, ['series-59', 'series-6', 'series-7', 'series-11']);
  return { name: series, ...CABLES[series] };
}

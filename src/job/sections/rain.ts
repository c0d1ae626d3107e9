/** Section of the plan: the rain of the place, from the best source that the job file names. */

import { rainHeight, rainRate } from '../../propagation/index.js';
import type { JobFile } from '../jobFile.js';
import { within } from '../within.js';

/** Rain of the place. */
export interface RainPlan {
  /** Where the figures come from. */
  readonly source: 'measured' | 'monthly-normals' | 'climate-grid';
  /** Rain rate exceeded for 0.01 % of the average year in mm/h. */
  readonly rainRate001MmPerH: number;
  /** Mean rain height above sea level in kilometres (P.839-4). */
  readonly rainHeightKm: number;
  /** Editions used. */
  readonly editions: readonly string[];
}

/** Rain for the job. */
export function rainPlan(job: JobFile): RainPlan {
  const { rain } = job;
  return within('rain', () => {
    if (rain.source === 'climate-grid') throw new Error('no grid');
    const { rainHeightKm, edition } = rainHeight(rain.isothermHeightKm);
    if (rain.source === 'measured')
      return {
        source: rain.source,
        rainRate001MmPerH: rain.rainRate001MmPerH,
        rainHeightKm,
        editions: [edition],
      };
    const rate = rainRate({
      monthlyRainMm: rain.rainfallMm,
      monthlyTemperatureK: rain.temperatureC.map((celsius) => celsius + 273.15),
      exceededPercent: 0.01,
    });
    return {
      source: rain.source,
      rainRate001MmPerH: rate.rainRateMmPerH,
      rainHeightKm,
      editions: [rate.edition, edition],
    };
  });
}

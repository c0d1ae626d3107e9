/** Section of the plan: the climate of the place, with the rain from the source that the job file names. */

import { type Climate, climateAt, type LocalRain } from '../../climate/index.js';
import { within } from '../../errors.js';
import { rainHeight } from '../../propagation/index.js';
import type { JobFile } from '../jobFile.js';

/** Rain of the place, for the record. */
export interface RainPlan {
  /** Where the rain rate comes from. */
  readonly source: Climate['rainSource'];
  /** Rain rate exceeded for 0.01 % of the average year in mm/h. */
  readonly rainRate001MmPerH: number;
  /** Its standard uncertainty as a ratio of it. */
  readonly rainRateStandardUncertaintyRatio: number;
  /** Mean rain height above sea level in kilometres. */
  readonly rainHeightKm: number;
  /** Recommendations used. */
  readonly editions: readonly string[];
}

/** The source in the terms of `climateAt`. */
function localRain({ rain }: JobFile): LocalRain {
  switch (rain.source) {
    case 'climate-grid':
      return {};
    case 'measured':
      return { measured: { rainRate001MmPerH: rain.rainRate001MmPerH, years: rain.years } };
    case 'monthly-normals':
      return {
        monthlyNormals: {
          monthlyRainMm: rain.rainfallMm,
          monthlyTemperatureK: rain.temperatureC.map((celsius) => celsius + 273.15),
        },
      };
  }
}

/** Climate for the job; a rain height of the job's own takes the place of the grid's. */
export function jobClimate(job: JobFile): Climate {
  const climate = within('', () => climateAt(job.station, localRain(job)), {
    latitudeDeg: 'station.latitudeDeg',
    longitudeDeg: 'station.longitudeDeg',
    heightM: 'station.heightM',
    measured: 'rain',
    'monthlyNormals.monthlyRainMm': 'rain.rainfallMm',
    'monthlyNormals.monthlyTemperatureK': 'rain.temperatureC',
    monthlyRainMm: 'rain.rainfallMm',
    monthlyTemperatureK: 'rain.temperatureC',
  });
  const { isothermHeightKm } = job.rain;
  if (isothermHeightKm === undefined) return climate;
  return { ...climate, isothermHeightKm, rainHeightKm: rainHeight(isothermHeightKm).rainHeightKm };
}

/** What the record keeps of it. */
export function rainPlan(climate: Climate): RainPlan {
  return {
    source: climate.rainSource,
    rainRate001MmPerH: climate.rainRate001MmPerH,
    rainRateStandardUncertaintyRatio: climate.rainUncertainty.standardUncertaintyRatio,
    rainHeightKm: climate.rainHeightKm,
    editions: [
      ...(climate.rainSource === 'measured' ? [] : ['P.837-7']),
      'P.839-4',
      'P.838-3',
      'P.618-14',
      'P.676-13',
      'P.840-9',
    ],
  };
}

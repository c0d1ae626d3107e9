/** Section of the plan: the climate of the place, with the rain from the source that the job file names. */

import type { Climate, LocalRain } from '../../climate/index.js';
import type { Station } from '../../earth/index.js';
import { within } from '../../errors.js';
import { rainHeight } from '../../propagation/index.js';
import type { JobRain } from '../file/jobFile.js';
import type { Ledger } from './ledger.js';

/** What gives the climate of a place: `climateAt` of `slantpath/climate`, or the like from another grid. */
export type ClimateSource = (station: Station, local?: LocalRain) => Climate;

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
function localRain(rain: JobRain | undefined): LocalRain {
  switch (rain?.source) {
    case 'measured':
      return { measured: { rainRate001MmPerH: rain.rainRate001MmPerH, years: rain.years } };
    case 'monthly-normals':
      return {
        monthlyNormals: {
          monthlyRainMm: rain.rainfallMm,
          monthlyTemperatureK: rain.temperatureC.map((celsius) => celsius + 273.15),
        },
      };
    default:
      return {};
  }
}

/** Climate for the job, or `null` without a source of climate; a rain height of the job's own takes the place of the grid's. */
export function jobClimate(
  rain: JobRain | undefined,
  station: Station,
  source: ClimateSource | null,
  notes: Ledger,
): Climate | null {
  notes.word(rain?.source, 'rain.source', 'climate-grid');
  if (!source) {
    notes.miss('rain', 'climate');
    return null;
  }
  const climate = within('rain', () => source(station, localRain(rain)));
  const isothermHeightKm = rain?.isothermHeightKm;
  if (isothermHeightKm === undefined) return climate;
  return { ...climate, isothermHeightKm, rainHeightKm: rainHeight(isothermHeightKm).rainHeightKm };
}

/** What the record keeps of it. */
export function rainPlan(climate: Climate | null): RainPlan | null {
  if (!climate) return null;
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

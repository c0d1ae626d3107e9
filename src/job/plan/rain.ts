/** Section of the plan: the climate of the place, with the rain from the source that the job file names. */

import type { Climate, LocalRain } from '../../climate/index.js';
import type { Station } from '../../earth/index.js';
import { within } from '../../errors.js';
import { filmThicknessMm, layerLoss, rainHeight } from '../../propagation/index.js';
import type { JobFile, JobRain } from '../file/jobFile.js';
import type { Ledger } from './ledger.js';
import { USUAL_FEED_DIAMETER_M } from './mountParts.js';

/** What gives the climate of a place: `climateAt` of `slantpath/climate`, or the like from another grid. */
export type ClimateSource = (station: Station, local?: LocalRain) => Climate;

/** Water on the cover of the feed in the rain exceeded for 0.01 % of the average year; no fade of the plan counts it in. */
export interface WetFeedPlan {
  /** Even film of water in millimetres, on a feed of 60 mm where the file names none; good to a factor of two. */
  readonly filmMm: number;
  /** Highest frequency that is received or sent, in GHz: it loses the most. */
  readonly frequencyGHz: number;
  /** Loss by that film in dB, 0 or more; nearly nothing on a new cover that repels water. */
  readonly lossDb: number;
  /** Largest loss to expect in dB: twice that of the even film. */
  readonly mostDb: number;
}

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
  /** What water on the cover of the feed takes beside; `null` without a carrier, or where nothing is known of it. */
  readonly wetFeed: WetFeedPlan | null;
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

/** Rain rates in mm/h and frequencies in GHz that the film and its loss are stated for. */
const HEAVIEST_MM_PER_H = 300;
const FREQUENCIES_GHZ = { lowest: 1, highest: 60 };

/** What a wet feed takes; `null` without a carrier, or outside what is stated of films. */
function wetFeedPlan(job: JobFile, rainRate001MmPerH: number): WetFeedPlan | null {
  const frequencies = [
    ...job.slots.flatMap(({ carriers }) => carriers ?? []),
    ...(job.transmit ?? []),
  ].map(({ frequencyGHz }) => frequencyGHz);
  if (frequencies.length === 0 || rainRate001MmPerH > HEAVIEST_MM_PER_H) return null;
  const frequencyGHz = frequencies.reduce((a, b) => Math.max(a, b));
  if (frequencyGHz < FREQUENCIES_GHZ.lowest || frequencyGHz > FREQUENCIES_GHZ.highest) return null;
  const diameterM = job.mounts.reduce(
    (widest, mount) =>
      Math.max(widest, (mount.kind === 'fixed' ? mount.feeds?.feedDiameterM : undefined) ?? 0),
    0,
  );
  const filmMm = filmThicknessMm({
    rainRateMmPerH: rainRate001MmPerH,
    radiusM: (diameterM > 0 ? diameterM : USUAL_FEED_DIAMETER_M) / 2,
  });
  const loss = layerLoss({ frequencyGHz, on: 'cover', layer: 'water', thicknessMm: filmMm });
  if (loss.kind !== 'loss') return null;
  return { filmMm, frequencyGHz, lossDb: loss.lossDb, mostDb: loss.mostDb };
}

/** What the record keeps of it. */
export function rainPlan(job: JobFile, climate: Climate | null): RainPlan | null {
  if (!climate) return null;
  return {
    source: climate.rainSource,
    rainRate001MmPerH: climate.rainRate001MmPerH,
    rainRateStandardUncertaintyRatio: climate.rainUncertainty.standardUncertaintyRatio,
    rainHeightKm: climate.rainHeightKm,
    wetFeed: wetFeedPlan(job, climate.rainRate001MmPerH),
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

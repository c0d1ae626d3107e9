/** Climate of a place: what the propagation recommendations need to know of it. */

import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { type Keys, known } from '../keys.js';
import { rainHeight } from '../propagation/p839-4.js';
import { layerValue, vapourValue } from './grid/layerValue.js';
import type { Layers } from './grid/tiles.js';
import { seasonalRainPercent } from './rainSeason.js';
import {
  LOCAL_RAIN_KEYS,
  type LocalRain,
  localRainFigures,
  type RainSource,
} from './rainSource.js';
import { type RainUncertainty, uncertaintyOf } from './rainUncertainty.js';

/** Water in the air above a place, exceeded for one percentage of an average year. */
export interface WaterAloft {
  /** Percentage of an average year. */
  readonly exceededPercent: number;
  /** Water vapour density at the station's height, g/m3 (P.836-6). */
  readonly waterVapourDensityGPerM3: number;
  /** Water vapour in the column above the station, kg/m2 (P.836-6). */
  readonly waterVapourContentKgPerM2: number;
  /** Scale height of water vapour, km (P.836-6). */
  readonly vapourScaleHeightKm: number;
  /** Liquid water in clouds above the place, kg/m2 (P.840-9). */
  readonly liquidWaterKgPerM2: number;
}

/** Climate of a place. */
export interface Climate {
  /** Latitude in degrees, north positive. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, -180 to below 180. */
  readonly longitudeDeg: number;
  /** Height of the station above mean sea level in metres. */
  readonly heightM: number;
  /** Rain rate exceeded for 0.01 % of an average year, one-minute integration, mm/h (P.837-7 unless measured or a zone). */
  readonly rainRate001MmPerH: number;
  /** Part of an average year in which it rains, percent (P.837-7). */
  readonly rainProbabilityPercent: number;
  /** Where the rain rate comes from. */
  readonly rainSource: RainSource;
  /** How far the rain rate may be off. */
  readonly rainUncertainty: RainUncertainty;
  /** Mean annual height of the 0 degree Celsius isotherm above mean sea level, km (P.839-4). */
  readonly isothermHeightKm: number;
  /** Mean annual rain height above mean sea level, km (P.839-4). */
  readonly rainHeightKm: number;
  /** Mean annual surface temperature, kelvin (P.1510-1). */
  readonly meanTemperatureK: number;
  /** Wet term of the surface refractivity exceeded for 50 % of an average year, N-units (P.453-14). */
  readonly wetRefractivityNUnits: number;
  /** Water in the air for rising percentages: 5, 10, 20 and 50 in the shipped grid. */
  readonly waterAloft: readonly WaterAloft[];
  /** Height of the ground in the map, metres (P.1511-1 smoothed to the grid): a check on the station's height, no more. */
  readonly groundHeightM: number;
  /** What the figures are derived from. */
  readonly provenance: string;
}

export const CLIMATE_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  heightM: true,
  rainRate001MmPerH: true,
  rainProbabilityPercent: true,
  rainSource: true,
  rainUncertainty: true,
  isothermHeightKm: true,
  rainHeightKm: true,
  meanTemperatureK: true,
  wetRefractivityNUnits: true,
  waterAloft: true,
  groundHeightM: true,
  provenance: true,
} satisfies Keys<Climate>;

/** Percentages for which a grid has water, from the names of its layers. */
export function waterPercents(names: readonly string[]): readonly number[] {
  return names
    .map((name) => /^cloudLiquid(\d+(?:\.\d+)?)$/.exec(name)?.[1])
    .filter((percent) => percent !== undefined)
    .map(Number)
    .sort((a, b) => a - b);
}

/** What a decoded grid offers. */
export interface ClimateGrid {
  readonly layers: Layers;
  readonly percents: readonly number[];
  readonly source: string;
}

/** Longitude in [-180, 180). */
function turned(longitudeDeg: number): number {
  if (longitudeDeg >= -180 && longitudeDeg < 180) return longitudeDeg + 0;
  const east = (((longitudeDeg + 180) % 360) + 360) % 360;
  return east - 180;
}

function waterAt(grid: ClimateGrid, place: Station, exceededPercent: number): WaterAloft {
  const { layers } = grid;
  const heightKm = place.heightM / 1000;
  const scale = layers(`vapourScaleHeight${exceededPercent}`);
  const vapour = (kind: string) =>
    vapourValue(layers(`${kind}${exceededPercent}`), scale, place, heightKm);
  return {
    exceededPercent,
    waterVapourDensityGPerM3: vapour('vapourDensity'),
    waterVapourContentKgPerM2: vapour('vapourColumn'),
    vapourScaleHeightKm: layerValue(scale, place),
    liquidWaterKgPerM2: Math.max(0, layerValue(layers(`cloudLiquid${exceededPercent}`), place)),
  };
}

/** Climate of a place from a decoded grid and what is known locally. */
export function climateFrom(grid: ClimateGrid, station: Station, local: LocalRain): Climate {
  const checked = checkedStation(station);
  const place = { ...checked, longitudeDeg: turned(checked.longitudeDeg) };
  const figures = localRainFigures(known('local', local, LOCAL_RAIN_KEYS));
  const { layers } = grid;
  const rateLayer = layers('rainRate001');
  const gridRate = Math.max(0, layerValue(rateLayer, place));
  const meanTemperatureK = layerValue(layers('meanTemperature'), place);
  const rainRate001MmPerH = figures?.rainRate001MmPerH ?? gridRate;
  const rainProbabilityPercent =
    figures?.rainProbabilityPercent ??
    seasonalRainPercent(layerValue(layers('rainSeason'), place), gridRate, place.latitudeDeg);
  const isothermHeightKm = layerValue(layers('isothermHeight'), place);
  const rainSource = figures?.source ?? 'climate-grid';
  return {
    latitudeDeg: place.latitudeDeg + 0,
    longitudeDeg: place.longitudeDeg,
    heightM: place.heightM + 0,
    rainRate001MmPerH,
    rainProbabilityPercent,
    rainSource,
    rainUncertainty: uncertaintyOf({
      source: rainSource,
      rainRate001MmPerH,
      rainProbabilityPercent,
      years: figures?.years,
      gridErrorMmPerH: rateLayer.landError95,
    }),
    isothermHeightKm,
    rainHeightKm: rainHeight(isothermHeightKm).rainHeightKm,
    meanTemperatureK,
    wetRefractivityNUnits: Math.max(0, layerValue(layers('wetRefractivity'), place)),
    waterAloft: grid.percents.map((percent) => waterAt(grid, place, percent)),
    groundHeightM: layerValue(layers('altitude'), place) * 1000 + 0,
    provenance: grid.source,
  };
}

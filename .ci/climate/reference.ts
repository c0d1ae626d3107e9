/** What the recommendations give from the full-resolution maps at any place: the truth the grid is held against. */

import {
  cloudLiquid,
  type MapPlace,
  mapValueBicubic,
  rainRate,
  waterVapour,
} from '../../src/propagation/index.js';
import { type Maps, placedValue } from './maps.js';

const MONTHS = Array.from({ length: 12 }, (_, month) => String(month + 1).padStart(2, '0'));

/** The monthly rain maps: those at a quarter of a degree where the folder has them. */
export function rainMap(maps: Maps, month: string) {
  const quarter = `rain-monthly-total-quarter-${month}`;
  return maps(maps.has(quarter) ? quarter : `rain-monthly-total-${month}`);
}

/** Monthly rain totals and temperatures at a place. */
function normalsAt(maps: Maps, place: MapPlace) {
  return {
    monthlyRainMm: MONTHS.map((month) => placedValue(rainMap(maps, month), place)),
    monthlyTemperatureK: MONTHS.map((month) =>
      placedValue(maps(`temperature-monthly-${month}`), place),
    ),
  };
}

/** Rain rate exceeded for 0.01 % and probability of rain at a place, by P.837-7 from the interpolated months. */
export function rainAt(maps: Maps, place: MapPlace) {
  return rainRate({ ...normalsAt(maps, place), exceededPercent: 0.01 });
}

/** Height of the ground in the map, kilometres. */
export function altitudeAt(maps: Maps, place: MapPlace): number {
  return mapValueBicubic(maps('altitude'), place);
}

/** Water vapour at a place and height by P.836-6. */
export function vapourAt(maps: Maps, place: MapPlace, heightKm: number, exceededPercent: number) {
  return waterVapour({
    latitudeDeg: place.latitudeDeg,
    longitudeDeg: place.longitudeDeg,
    heightM: heightKm * 1000,
    exceededPercent,
    mapAltitude: maps('water-vapour-map-altitude'),
    maps: [
      {
        exceededPercent,
        surfaceDensity: maps(`surface-water-vapour-density-${exceededPercent}pc`),
        totalColumn: maps(`total-water-vapour-${exceededPercent}pc`),
        scaleHeight: maps(`water-vapour-scale-height-${exceededPercent}pc`),
      },
    ],
  });
}

/** Cloud liquid at a place by P.840-9. */
export function liquidAt(maps: Maps, place: MapPlace, exceededPercent: number): number {
  return cloudLiquid({
    latitudeDeg: place.latitudeDeg,
    longitudeDeg: place.longitudeDeg,
    exceededPercent,
    maps: [{ exceededPercent, liquid: maps(`cloud-liquid-${exceededPercent}pc`) }],
  }).liquidWaterKgPerM2;
}

/** Errors of a coded layer against the recommendations at full resolution, at random places over land and sea. */

import { layerValue, vapourValue } from '../../src/climate/grid/layerValue.js';
import type { Layer } from '../../src/climate/grid/tiles.js';
import { seasonalRainPercent } from '../../src/climate/rainSeason.js';
import { type MapPlace, mapValue } from '../../src/propagation/index.js';
import { landMask } from './field.js';
import type { Maps } from './maps.js';
import { altitudeAt, liquidAt, rainAt, vapourAt } from './reference.js';

/** Spread of the errors of one quantity over land or sea, in its unit; relative ones in percent of the true value. */
interface ErrorSpread {
  readonly count: number;
  readonly p50: number;
  readonly p95: number;
  readonly p99: number;
  readonly worst: number;
  readonly worstAt: MapPlace;
  readonly relative50: number;
  readonly relative95: number;
  readonly relative99: number;
}

export interface ErrorTable {
  readonly land: ErrorSpread;
  readonly sea: ErrorSpread;
}

/** A repeatable stream of places, evenly spread over the area within sight of geostationary satellites. */
export function places(count: number): MapPlace[] {
  let state = 20250101;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const list: MapPlace[] = [];
  while (list.length < count) {
    const latitudeDeg = (Math.asin(2 * next() - 1) * 180) / Math.PI;
    const longitudeDeg = 360 * next() - 180;
    if (Math.abs(latitudeDeg) <= 81) list.push({ latitudeDeg, longitudeDeg });
  }
  return list;
}

/** Below this the relative error says nothing. */
const FLOORS: Readonly<Record<string, number>> = {
  rainRate001: 5,
  rainSeason: 0.2,
  altitude: 0.2,
  cloudLiquid: 0.1,
  isothermHeight: 0.5,
  wetRefractivity: 5,
};

/** True value and the layer's at a place. */
function pair(
  name: string,
  maps: Maps,
  layer: Layer,
  done: (name: string) => Layer,
  place: MapPlace,
): readonly [number, number] {
  const percent = Number(/\d+$/.exec(name)?.[0] ?? 0);
  const kind = name === 'rainRate001' ? name : name.replace(/\d+$/, '');
  const own = layerValue(layer, place);
  if (kind === 'rainRate001') return [rainAt(maps, place).rainRateMmPerH, own];
  if (kind === 'rainSeason') {
    const rate = layerValue(done('rainRate001'), place);
    const truth = rainAt(maps, place).rainProbabilityPercent;
    return [truth, seasonalRainPercent(own, rate, place.latitudeDeg)];
  }
  if (kind === 'altitude') return [altitudeAt(maps, place), own];
  if (kind === 'cloudLiquid') return [liquidAt(maps, place, percent), own];
  if (kind === 'vapourColumn' || kind === 'vapourDensity') {
    const altitudeKm = altitudeAt(maps, place);
    const truth = vapourAt(maps, place, altitudeKm, percent);
    const got = vapourValue(layer, done(`vapourScaleHeight${percent}`), place, altitudeKm);
    return [
      kind === 'vapourColumn' ? truth.waterVapourContentKgPerM2 : truth.waterVapourDensityGPerM3,
      got,
    ];
  }
  const map: Readonly<Record<string, string>> = {
    isothermHeight: 'zero-degree-isotherm-height',
    meanTemperature: 'temperature-annual',
    wetRefractivity: 'nwet-median',
    vapourScaleHeight: `water-vapour-scale-height-${percent}pc`,
  };
  return [mapValue(maps(map[kind] as string), place), own];
}

function spreadOf(
  rows: readonly { place: MapPlace; truth: number; error: number }[],
  floor: number,
): ErrorSpread {
  const quantile = (sorted: readonly number[], part: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
  const absolute = rows.map(({ error }) => error).sort((a, b) => a - b);
  const relative = rows
    .filter(({ truth }) => Math.abs(truth) >= floor)
    .map(({ error, truth }) => (100 * error) / Math.abs(truth))
    .sort((a, b) => a - b);
  // A map may be without sea, or without land.
  const none = { place: { latitudeDeg: 0, longitudeDeg: 0 }, truth: 0, error: 0 };
  const worst = rows.reduce((a, b) => (b.error > a.error ? b : a), none);
  return {
    count: rows.length,
    p50: quantile(absolute, 0.5),
    p95: quantile(absolute, 0.95),
    p99: quantile(absolute, 0.99),
    worst: worst.error,
    worstAt: worst.place,
    relative50: quantile(relative, 0.5),
    relative95: quantile(relative, 0.95),
    relative99: quantile(relative, 0.99),
  };
}

/** Errors of a layer at random places. */
export function measured(
  name: string,
  maps: Maps,
  layer: Layer,
  done: (name: string) => Layer,
  count: number,
): ErrorTable {
  const land = landMask(maps('altitude'));
  const floor = FLOORS[name] ?? FLOORS[name.replace(/\d+$/, '')] ?? 0;
  const rows = places(count).map((place) => {
    const [truth, got] = pair(name, maps, layer, done, place);
    return { place, truth, error: Math.abs(got - truth) };
  });
  return {
    land: spreadOf(
      rows.filter(({ place }) => land(place)),
      floor,
    ),
    sea: spreadOf(
      rows.filter(({ place }) => !land(place)),
      floor,
    ),
  };
}

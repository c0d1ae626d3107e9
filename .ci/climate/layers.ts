/** The layers of the climate grid: where each comes from, on which grid and with which step it is kept. */

import type { LayerTransform } from '../../src/climate/grid/gridFile.js';
import { layerValue } from '../../src/climate/grid/layerValue.js';
import type { Layer } from '../../src/climate/grid/tiles.js';
import { rainSeason } from '../../src/climate/rainSeason.js';
import { type MapPlace, mapValue, mapValueBicubic } from '../../src/propagation/index.js';
import { type Field, fieldOf, sampled } from './field.js';
import type { Maps } from './maps.js';
import { rainAt, rainMap } from './reference.js';

/** How one layer is made. */
export interface LayerPlan {
  readonly name: string;
  /** Rows of the grid it is kept on. */
  readonly rows: number;
  readonly transform: LayerTransform;
  readonly scale: number;
  readonly step: number;
  /** Tolerance at sea, in steps. */
  readonly seaSteps: number;
  /** Step of a refinement on a grid twice as fine, and from where on a departure on land is kept; undefined for none. */
  readonly refinement?: { readonly step: number; readonly from: number };
  readonly companion: string;
  /** The quantity on its finest grid, already transformed; `done` gives layers coded before. */
  readonly field: (maps: Maps, done: (name: string) => Layer) => Field;
}

/** Percentages kept for water vapour and cloud: the floor of P.618-14 and what lies above it. */
const PERCENTS = [5, 10, 20, 50] as const;

const rainKept = new WeakMap<Maps, { readonly rate: Field; readonly probability: Field }>();

/** P.837-7 on a grid twice as fine as the rain maps, so that their own nodes and what lies between them count alike. */
function rainFields(maps: Maps): { readonly rate: Field; readonly probability: Field } {
  const known = rainKept.get(maps);
  if (known) return known;
  const months = rainMap(maps, '01');
  const step = months.first?.stepDeg ?? 180 / (months.rows - 1);
  const rows = Math.round(360 / step) + 1;
  const probability = new Float64Array(rows * 2 * (rows - 1));
  const rate = fieldOf(rows, (place, index) => {
    const rain = rainAt(maps, place);
    probability[index] = rain.rainProbabilityPercent;
    return rain.rainRateMmPerH;
  });
  const both = {
    rate,
    probability: fieldOf(rows, (_, index) => probability[index] as number),
  };
  rainKept.set(maps, both);
  return both;
}

const plain = (
  name: string,
  map: string,
  rows: number,
  step: number,
  companion = '',
): LayerPlan => ({
  name,
  rows,
  transform: 'linear',
  scale: 1,
  step,
  seaSteps: 1,
  companion,
  field: (maps) => sampled(maps(map), rows),
});

/** A vapour quantity carried down to sea level with the scale height that the decoder will use. */
function seaLevel(maps: Maps, map: string, scaleHeight: Layer, rows: number): Field {
  const source = maps(map);
  const altitude = maps('water-vapour-map-altitude');
  return fieldOf(Math.max(rows, source.rows), (place: MapPlace) => {
    const scaleKm = Math.max(0.1, layerValue(scaleHeight, place));
    return Math.log(mapValue(source, place)) + mapValueBicubic(altitude, place) / scaleKm;
  });
}

const vapour = (
  kind: string,
  map: string,
  percent: number,
  rows: number,
  step: number,
  companion: string,
): LayerPlan => ({
  name: `${kind}${percent}`,
  rows,
  transform: 'logarithm',
  scale: 1,
  step,
  seaSteps: 1,
  companion,
  field: (maps, done) =>
    seaLevel(maps, `${map}-${percent}pc`, done(`vapourScaleHeight${percent}`), rows),
});

/** Rows of tiles of 12 degrees. */
export const TILE_ROWS = 15;

/** The layers shipped, in the order of coding. */
export const PLANS: readonly LayerPlan[] = [
  {
    name: 'rainRate001',
    rows: 361,
    transform: 'logarithm-of-one-plus',
    scale: 5,
    step: 0.025,
    seaSteps: 1,
    refinement: { step: 0.04, from: 0.03 },
    companion: '',
    field: (maps) => {
      const { rate } = rainFields(maps);
      return { ...rate, values: rate.values.map((value) => Math.log1p(value / 5)) };
    },
  },
  plain('isothermHeight', 'zero-degree-isotherm-height', 121, 0.04),
  plain('meanTemperature', 'temperature-annual', 241, 1),
  {
    name: 'rainSeason',
    rows: 241,
    transform: 'linear',
    scale: 1,
    step: 0.06,
    seaSteps: 1,
    companion: '',
    field: (maps) => {
      const { rate, probability } = rainFields(maps);
      return fieldOf(rate.rows, ({ latitudeDeg }, index) =>
        rainSeason(probability.values[index] as number, rate.values[index] as number, latitudeDeg),
      );
    },
  },
  plain('wetRefractivity', 'nwet-median', 241, 2.5),
  {
    ...plain('altitude', 'altitude', 181, 0.15),
    transform: 'logarithm-of-one-plus',
    scale: 0.2,
    seaSteps: 0.5,
    field: (maps) => {
      const fine = sampled(maps('altitude'), 181);
      const bend = (km: number) => Math.sign(km) * Math.log1p(Math.abs(km) / 0.2);
      return { ...fine, values: fine.values.map(bend) };
    },
  },
  ...PERCENTS.flatMap((percent, index): LayerPlan[] => {
    const before = (kind: string) => (index === 0 ? '' : `${kind}${PERCENTS[index - 1]}`);
    return [
      plain(`cloudLiquid${percent}`, `cloud-liquid-${percent}pc`, 121, 0.02, before('cloudLiquid')),
      plain(
        `vapourScaleHeight${percent}`,
        `water-vapour-scale-height-${percent}pc`,
        81,
        0.1,
        before('vapourScaleHeight'),
      ),
      vapour('vapourColumn', 'total-water-vapour', percent, 161, 0.05, before('vapourColumn')),
      vapour(
        'vapourDensity',
        'surface-water-vapour-density',
        percent,
        81,
        0.05,
        before('vapourDensity'),
      ),
    ];
  }),
];

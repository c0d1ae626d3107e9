import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { climateFromGrid } from 'slantpath/climate';
import { rainRate } from 'slantpath/propagation';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { builtGrid } from '../../.ci/climate/build.js';
import { PLANS } from '../../.ci/climate/layers.js';
import { type Maps, mapsOf } from '../../.ci/climate/maps.js';

/** A smooth invented climate: the value of each map at a place. */
function invented(name: string, latitudeDeg: number, longitudeDeg: number): number {
  const warm = Math.cos((latitudeDeg * Math.PI) / 180);
  const wave = 1 + 0.3 * Math.cos((longitudeDeg * Math.PI) / 180);
  if (name.startsWith('rain-monthly')) return 20 + 150 * warm * wave;
  if (name.startsWith('temperature')) return 255 + 45 * warm;
  if (name === 'zero-degree-isotherm-height') return 5 * warm;
  if (name === 'nwet-median') return 10 + 110 * warm;
  if (name.endsWith('altitude')) return 0.4 * wave;
  if (name.startsWith('water-vapour-scale')) return 2;
  if (name.startsWith('total-water')) return 5 + 50 * warm;
  if (name.startsWith('surface-water')) return 2 + 18 * warm;
  return 0.5 * warm;
}

const percents = [5, 10, 20, 50].flatMap((percent) =>
  [
    'cloud-liquid',
    'water-vapour-scale-height',
    'total-water-vapour',
    'surface-water-vapour-density',
  ].map((name) => `${name}-${percent}pc`),
);
const months = Array.from({ length: 12 }, (_, month) => String(month + 1).padStart(2, '0'));
const names = [
  ...months.flatMap((month) => [`rain-monthly-total-${month}`, `temperature-monthly-${month}`]),
  'temperature-annual',
  'zero-degree-isotherm-height',
  'nwet-median',
  'altitude',
  'water-vapour-map-altitude',
  ...percents,
];
const [ROWS, COLUMNS] = [37, 73];
let folder = '';
let maps: Maps;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'maps-'));
  for (const name of names) {
    const bytes = Buffer.alloc(4 * ROWS * COLUMNS);
    for (let index = 0; index < ROWS * COLUMNS; index++)
      bytes.writeFloatLE(
        invented(name, 90 - 5 * Math.floor(index / COLUMNS), -180 + 5 * (index % COLUMNS)),
        4 * index,
      );
    writeFileSync(join(folder, `${name}.f32.gz`), gzipSync(bytes));
  }
  const grids = names.map((name) => ({ file: `${name}.f32.gz`, rows: ROWS, columns: COLUMNS }));
  writeFileSync(join(folder, 'manifest.json'), JSON.stringify({ grids }));
  maps = mapsOf(folder);
});
afterAll(() => rmSync(folder, { recursive: true }));

test("a user's maps become a grid whose climate is that of the maps", () => {
  const plans = PLANS.map((plan) => ({ ...plan, rows: ROWS, seaSteps: 0.5 }));
  const grid = builtGrid(plans, maps, 'invented maps', 4, () => {}, 200);
  const climateOf = climateFromGrid(JSON.parse(JSON.stringify(grid)));
  for (const [latitudeDeg, longitudeDeg] of [
    [0, 0],
    [45, -120],
    [-30, 175],
  ] as const) {
    const climate = climateOf({ latitudeDeg, longitudeDeg, heightM: 400 });
    const of = (name: string) => invented(name, latitudeDeg, longitudeDeg);
    const truth = rainRate({
      monthlyRainMm: new Array(12).fill(of('rain-monthly')),
      monthlyTemperatureK: new Array(12).fill(of('temperature')),
      exceededPercent: 0.01,
    });
    expect(climate.rainRate001MmPerH / truth.rainRateMmPerH).toBeCloseTo(1, 1.6);
    // Half a step of the rate and one of the season move the probability by up to 6 %.
    const probability = climate.rainProbabilityPercent / truth.rainProbabilityPercent;
    expect(Math.abs(probability - 1)).toBeLessThan(0.06);
    expect(Math.abs(climate.isothermHeightKm - of('zero-degree-isotherm-height'))).toBeLessThan(
      0.03,
    );
    expect(Math.abs(climate.meanTemperatureK - of('temperature'))).toBeLessThan(1);
    const half = climate.waterAloft[3];
    const carried = Math.exp((of('altitude') - 0.4) / 2);
    expect((half?.waterVapourContentKgPerM2 ?? 0) / (of('total-water') * carried)).toBeCloseTo(
      1,
      1,
    );
    expect(climate.provenance).toBe('invented maps');
  }
  expect(grid.layers.every(({ landError95 }) => Number.isFinite(landError95))).toBe(true);
});

test('a map that is missing or of another size is named', () => {
  expect(() => maps('sunshine')).toThrow(/sunshine/);
  writeFileSync(
    join(folder, 'manifest.json'),
    JSON.stringify({ grids: [{ file: 'altitude.f32.gz', rows: 5, columns: 9 }] }),
  );
  expect(() => mapsOf(folder)('altitude')).toThrow(/altitude/);
});

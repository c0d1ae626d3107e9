import { type Climate, climateAt } from 'slantpath/climate';
import { describe, expect, test } from 'vitest';
import { places } from '../../.ci/climate/errors.js';
import { landMask } from '../../.ci/climate/field.js';
import { rainAt } from '../../.ci/climate/reference.js';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { sharedMaps } from '../support/maps.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const full = referenceTable('climate/full-resolution.csv');
const stationOf = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'latitude_deg'),
  longitudeDeg: cell(row, 'longitude_deg'),
  heightM: cell(row, 'height_m'),
});
const water = (index: number) => (climate: Climate) =>
  climate.waterAloft[index] as Climate['waterAloft'][number];

/** Quantity, unit, column, limit, and how the grid gives it. */
const QUANTITIES: readonly (readonly [
  string,
  string,
  string,
  number,
  (climate: Climate) => number,
])[] = [
  ['isotherm height', 'km', 'isotherm_height_km', 0.041, (c) => c.isothermHeightKm],
  ['mean temperature', 'K', 'mean_temperature_k', 1, (c) => c.meanTemperatureK],
  ['wet refractivity', 'N-units', 'wet_refractivity', 2.5, (c) => c.wetRefractivityNUnits],
  ['ground altitude', 'km', 'ground_altitude_km', 0.8, (c) => c.groundHeightM / 1000],
  ...[5, 10, 20, 50].flatMap((percent, index) => {
    const at = water(index);
    return [
      [
        `vapour density at ${percent} %`,
        'g/m3',
        `vapour_density_g_m3_${percent}`,
        0.11,
        (c: Climate) => at(c).waterVapourDensityGPerM3,
      ],
      [
        `vapour content at ${percent} %`,
        'kg/m2',
        `vapour_content_kg_m2_${percent}`,
        0.051,
        (c: Climate) => at(c).waterVapourContentKgPerM2,
      ],
      [
        `vapour scale height at ${percent} %`,
        'km',
        `scale_height_km_${percent}`,
        0.8,
        (c: Climate) => at(c).vapourScaleHeightKm,
      ],
      [
        `cloud liquid at ${percent} %`,
        'kg/m2',
        `cloud_liquid_kg_m2_${percent}`,
        0.13,
        (c: Climate) => at(c).liquidWaterKgPerM2,
      ],
    ] as const;
  }),
];

for (const [quantity, unit, column, limit, got] of QUANTITIES)
  publishedTable({
    part: 'climate',
    quantity,
    unit,
    source: 'the full-resolution maps recomputed in NumPy',
    status: 'recomputed',
    limit,
    relative: column.startsWith('vapour'),
    reason:
      'error of the embedded grid, 99 % of places on land; see the decision on the climate grid',
    count: 72,
    cases: () =>
      full.map((row) => ({
        name: `${row['latitude_deg']} ${row['longitude_deg']} (${row['surface']})`,
        expected: cell(row, column),
        got: got(climateAt(stationOf(row))),
      })),
  });

for (const [file, column, quantity, unit, limit, relative, got] of [
  [
    'p839-4-rain-height',
    'rain_height_km',
    'rain height',
    'km',
    0.041,
    false,
    (c: Climate) => c.rainHeightKm,
  ],
  [
    'p837-7-rain-rate-r001',
    'rain_rate_mm_h',
    'rain rate at 0.01 %',
    'mm/h',
    0.05,
    true,
    (c: Climate) => c.rainRate001MmPerH,
  ],
  [
    'p837-7-rain-probability',
    'p_rain_percent',
    'probability of rain',
    '%',
    0.1,
    true,
    (c: Climate) => c.rainProbabilityPercent,
  ],
  [
    'p453-14-nwet',
    'n_wet',
    'wet refractivity',
    'N-units',
    2,
    false,
    (c: Climate) => c.wetRefractivityNUnits,
  ],
  [
    'p1510-1-temperature',
    'temperature_k',
    'mean temperature',
    'K',
    1,
    false,
    (c: Climate) => c.meanTemperatureK,
  ],
] as const)
  publishedTable({
    part: 'climate',
    quantity: `${quantity}, embedded grid`,
    unit,
    source: `ITU-R validation examples rev. 5.1, ${file.slice(0, file.indexOf('-', 5)).toUpperCase()}`,
    status: 'published',
    limit,
    relative,
    reason: 'error of the embedded grid',
    count: file === 'p1510-1-temperature' ? 8 : 5,
    cases: () =>
      referenceTable(`propagation/${file}.csv`).map((row) => ({
        name: `${row['latitude_deg']} ${row['longitude_deg']}`,
        expected: cell(row, column),
        got: got(
          climateAt({
            latitudeDeg: cell(row, 'latitude_deg'),
            longitudeDeg: cell(row, 'longitude_deg'),
            heightM: 0,
          }),
        ),
      })),
  });

const native = referenceTable('climate/rain-native.csv');
/** Errors of the grid at the places of the table, in percent of the true value where that is at least `from`. */
function errors(column: string, from: number, got: (climate: Climate) => number): number[] {
  return native
    .filter((row) => cell(row, column) >= from)
    .map((row) => {
      const place = {
        latitudeDeg: cell(row, 'latitude_deg'),
        longitudeDeg: cell(row, 'longitude_deg'),
        heightM: 0,
      };
      return 100 * Math.abs(got(climateAt(place)) / cell(row, column) - 1);
    })
    .sort((a, b) => a - b);
}
const part = (sorted: readonly number[], share: number) =>
  sorted[Math.floor(share * sorted.length)] as number;

publishedTable({
  part: 'climate',
  quantity: 'rain rate at 0.01 % on land',
  unit: 'mm/h',
  source: 'ITU-R P.837-7 from its native maps, recomputed in NumPy',
  status: 'recomputed',
  limit: 6,
  reason: 'error of the embedded grid at its worst place of these',
  count: 200,
  cases: () =>
    native
      .filter((_, index) => index % 10 === 0)
      .map((row) => ({
        name: `${row['latitude_deg']} ${row['longitude_deg']}`,
        expected: cell(row, 'rain_rate_001_mm_h'),
        got: climateAt({
          latitudeDeg: cell(row, 'latitude_deg'),
          longitudeDeg: cell(row, 'longitude_deg'),
          heightM: 0,
        }).rainRate001MmPerH,
      })),
});

describe('what is said of the grid on land holds against the native maps', () => {
  test('rain rate: 0.7 % at the median, 2.5 % for 95 % of places, 4.5 % for 99 %', () => {
    const rate = errors('rain_rate_001_mm_h', 5, (c) => c.rainRate001MmPerH);
    expect(rate.length).toBeGreaterThan(1700);
    expect(part(rate, 0.5)).toBeLessThan(0.7);
    expect(part(rate, 0.95)).toBeLessThan(2.5);
    expect(part(rate, 0.99)).toBeLessThan(4.5);
    // Not better than said either: a claim that is half of what it could be is no claim.
    expect(part(rate, 0.95)).toBeGreaterThan(1.5);
  });

  test('probability of rain: 2.1 % at the median, 8 % for 95 % of places', () => {
    const probability = errors('rain_probability_percent', 0.2, (c) => c.rainProbabilityPercent);
    expect(part(probability, 0.5)).toBeLessThan(2.2);
    expect(part(probability, 0.95)).toBeLessThan(8);
  });
});

const maps = sharedMaps();
describe.runIf(maps)('the embedded grid against the maps beside the checkout', () => {
  test(`rain rate keeps the stated error at ${runs(3000, 1000)} random places`, () => {
    if (!maps) return;
    const land = landMask(maps('altitude'));
    const errors = { land: [] as number[], sea: [] as number[] };
    for (const place of places(runs(3000, 1000))) {
      const truth = rainAt(maps, place).rainRateMmPerH;
      if (truth < 5) continue;
      const got = climateAt({ ...place, heightM: 0 }).rainRate001MmPerH;
      errors[land(place) ? 'land' : 'sea'].push(Math.abs(got / truth - 1));
    }
    for (const [list, median, most] of [
      [errors.land, 0.0075, 0.0265],
      [errors.sea, 0.012, 0.027],
    ] as const) {
      list.sort((a, b) => a - b);
      expect(list.length).toBeGreaterThan(runs(700, 230));
      expect(list[list.length >> 1]).toBeLessThan(median);
      expect(list[Math.floor(list.length * 0.95)]).toBeLessThan(most);
    }
  });
});

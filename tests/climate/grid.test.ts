import { type Climate, climateAt } from 'slantpath/climate';
import { describe, expect, test } from 'vitest';
import { places } from '../../.ci/climate/errors.js';
import { landMask } from '../../.ci/climate/field.js';
import { rainAt } from '../../.ci/climate/reference.js';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { sharedMaps } from '../support/maps.js';
import { publishedTable } from '../support/published.js';

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
  ['rain rate at 0.01 %', 'mm/h', 'rain_rate_001_mm_h', 1.2, (c) => c.rainRate001MmPerH],
  ['probability of rain', '%', 'rain_probability_percent', 2, (c) => c.rainProbabilityPercent],
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
    reason:
      'error of the embedded grid; the official rain maps are at a quarter of a degree, its source at half a degree',
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

const maps = sharedMaps();
describe.runIf(maps)('the embedded grid against the maps beside the checkout', () => {
  test('rain rate keeps the stated error at 3000 random places', () => {
    if (!maps) return;
    const land = landMask(maps('altitude'));
    const errors = { land: [] as number[], sea: [] as number[] };
    for (const place of places(3000)) {
      const truth = rainAt(maps, place).rainRateMmPerH;
      if (truth < 5) continue;
      const got = climateAt({ ...place, heightM: 0 }).rainRate001MmPerH;
      errors[land(place) ? 'land' : 'sea'].push(Math.abs(got / truth - 1));
    }
    for (const [list, median, most] of [
      [errors.land, 0.004, 0.016],
      [errors.sea, 0.006, 0.015],
    ] as const) {
      list.sort((a, b) => a - b);
      expect(list.length).toBeGreaterThan(700);
      expect(list[list.length >> 1]).toBeLessThan(median);
      expect(list[Math.floor(list.length * 0.95)]).toBeLessThan(most);
    }
  });
});

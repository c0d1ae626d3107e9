import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  cloudLiquid,
  cloudLiquidLognormal,
  groundAltitude,
  mapValue,
  mapValueBicubic,
  meanTemperature,
  medianWetRefractivity,
  rainHeight,
  waterVapour,
  yearToYear,
} from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { sharedMaps } from '../support/maps.js';
import { publishedTable } from '../support/published.js';

const maps = sharedMaps();
const placeOf = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'latitude_deg'),
  longitudeDeg: cell(row, 'longitude_deg'),
});
const nameOf = (row: CsvRow) => `${row['latitude_deg']} ${row['longitude_deg']}`;
const full = {
  part: 'propagation',
  status: 'published',
  relative: true,
  limit: 1e-7,
  reason: 'the maps beside the checkout are in single precision',
  outside: true,
} as const;

publishedTable({
  part: 'propagation',
  quantity: 'rain height',
  unit: 'km',
  source: 'ITU-R validation examples rev. 5.1, P.839-4',
  status: 'published',
  limit: 1e-8,
  reason: 'last printed digit',
  count: 5,
  cases: () =>
    referenceTable('propagation/p839-4-rain-height.csv').map((row) => ({
      name: nameOf(row),
      expected: cell(row, 'rain_height_km'),
      got: rainHeight(cell(row, 'h0_km')).rainHeightKm,
    })),
});

publishedTable({
  part: 'propagation',
  quantity: 'sampling of a single year',
  unit: '',
  source: 'P.678-3 summed term by term in NumPy',
  status: 'recomputed',
  limit: 3e-8,
  reason: 'the sum over half a million lags is partly integrated',
  relative: true,
  count: 6,
  cases: () =>
    referenceTable('propagation/p678-3-sampling-recomputed.csv').map((row) => ({
      name: `${row['exceeded_percent']} %`,
      expected: cell(row, 'sampling_ratio'),
      got: yearToYear({ exceededPercent: cell(row, 'exceeded_percent'), climaticRatio: 0 })
        .standardDeviationRatio,
    })),
});

if (maps) {
  publishedTable({
    ...full,
    quantity: 'isotherm height from the map',
    unit: 'km',
    source: 'ITU-R validation examples rev. 5.1, P.839-4 map',
    count: 5,
    cases: () =>
      referenceTable('propagation/p839-4-rain-height.csv').map((row) => ({
        name: nameOf(row),
        expected: cell(row, 'h0_km'),
        got: mapValue(maps('zero-degree-isotherm-height'), placeOf(row)),
      })),
  });
  publishedTable({
    ...full,
    quantity: 'mean temperature from the map',
    unit: 'K',
    source: 'ITU-R validation examples rev. 5.1, P.1510-1 map',
    count: 8,
    cases: () =>
      referenceTable('propagation/p1510-1-temperature.csv').map((row) => ({
        name: nameOf(row),
        expected: cell(row, 'temperature_k'),
        got: meanTemperature(maps('temperature-annual'), placeOf(row)).temperatureK,
      })),
  });
  publishedTable({
    ...full,
    quantity: 'median wet refractivity from the map',
    unit: 'N-units',
    source: 'ITU-R validation examples rev. 5.1, P.453-14 map',
    count: 5,
    cases: () =>
      referenceTable('propagation/p453-14-nwet.csv').map((row) => ({
        name: nameOf(row),
        expected: cell(row, 'n_wet'),
        got: medianWetRefractivity(maps('nwet-median'), placeOf(row)).wetRefractivityNUnits,
      })),
  });
  publishedTable({
    ...full,
    quantity: 'cloud liquid from the maps',
    unit: 'kg/m2',
    source: 'ITU-R validation examples rev. 8.3.0, P.840-9 maps',
    count: 6,
    cases: () =>
      referenceTable('propagation/p840-9-columnar-liquid.csv')
        .filter((row) => cell(row, 'time_percent') >= 1 && cell(row, 'time_percent') <= 50)
        .map((row) => ({
          name: `${nameOf(row)} ${row['time_percent']} %`,
          expected: cell(row, 'l_kg_m2'),
          got: cloudLiquid({
            ...placeOf(row),
            exceededPercent: cell(row, 'time_percent'),
            maps: [1, 2, 3, 5, 10, 20, 50].map((percent) => ({
              exceededPercent: percent,
              liquid: maps(`cloud-liquid-${percent}pc`),
            })),
          }).liquidWaterKgPerM2,
        })),
  });
  publishedTable({
    part: 'propagation',
    quantity: 'ground altitude from the map',
    unit: 'km',
    source: 'ITU-R validation examples rev. 5.1, P.1511-2',
    status: 'published',
    limit: 0.2,
    reason: 'the map beside the checkout is at half a degree, the official one far finer',
    outside: true,
    count: 5,
    cases: () =>
      referenceTable('propagation/p1511-2-altitude.csv').map((row) => ({
        name: nameOf(row),
        expected: cell(row, 'altitude_km'),
        got: groundAltitude(maps('altitude'), placeOf(row)).groundHeightM / 1000,
      })),
  });
}

/** A map of 5 degrees whose values are a function of the place. */
function mapOf(value: (latitudeDeg: number, longitudeDeg: number) => number) {
  const rows = 37;
  const columns = 73;
  const values = new Float64Array(rows * columns);
  for (let index = 0; index < values.length; index++)
    values[index] = value(
      90 - 5 * Math.floor(index / columns),
      -180 + 5 * ((index % columns) % (columns - 1)),
    );
  return { rows, columns, values };
}

const place = fc.record({
  latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  longitudeDeg: fc.double({ min: -900, max: 900, noNaN: true }),
});

describe('maps of P.1144', () => {
  const wave = mapOf(
    (latitudeDeg, longitudeDeg) => latitudeDeg + 20 * Math.cos(longitudeDeg / 57.3),
  );

  test('bilinear is exact for a plane in latitude and stays between the nodes', () => {
    const plane = mapOf((latitudeDeg) => latitudeDeg);
    fc.assert(
      fc.property(place, (at) => {
        expect(mapValue(plane, at)).toBeCloseTo(at.latitudeDeg, 10);
        const value = mapValue(wave, at);
        expect(value >= -110 && value <= 110).toBe(true);
      }),
    );
  });

  test('a turn of longitude changes nothing, on the date line too', () => {
    for (const longitudeDeg of [-180, -179.9, 0, 12.3, 179.9])
      for (const look of [mapValue, mapValueBicubic])
        expect(look(wave, { latitudeDeg: 3, longitudeDeg })).toBeCloseTo(
          look(wave, { latitudeDeg: 3, longitudeDeg: longitudeDeg + 720 }),
          9,
        );
  });

  test('bicubic meets the nodes and follows a parabola between them', () => {
    const parabola = mapOf((latitudeDeg) => latitudeDeg ** 2);
    expect(mapValueBicubic(parabola, { latitudeDeg: 40, longitudeDeg: 5 })).toBeCloseTo(1600, 9);
    expect(mapValueBicubic(parabola, { latitudeDeg: 42, longitudeDeg: 6 })).toBeCloseTo(1764, 9);
    expect(mapValue(parabola, { latitudeDeg: 42, longitudeDeg: 6 })).toBeCloseTo(1770, 9);
  });

  test('poles and corners are inside', () => {
    for (const latitudeDeg of [90, -90])
      for (const longitudeDeg of [-180, 180, 0])
        expect(mapValue(wave, { latitudeDeg, longitudeDeg })).toBeCloseTo(
          latitudeDeg + 20 * Math.cos((longitudeDeg === 180 ? -180 : longitudeDeg) / 57.3),
          10,
        );
  });

  test.each([
    ['latitudeDeg', wave, { latitudeDeg: 120, longitudeDeg: 0 }],
    ['longitudeDeg', wave, { latitudeDeg: 0, longitudeDeg: Number.NaN }],
    ['map.rows', { ...wave, rows: 1 }, { latitudeDeg: 0, longitudeDeg: 0 }],
    ['map.values', { ...wave, values: [1, 2] }, { latitudeDeg: 0, longitudeDeg: 0 }],
  ])('refuses a bad %s', (parameter, map, at) => {
    const call = () => mapValue(map, at);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });
});

describe('water vapour of P.836-6', () => {
  const flat = (value: number) => mapOf(() => value);
  const at = (exceededPercent: number, heightM = 0) =>
    waterVapour({
      latitudeDeg: 12.3,
      longitudeDeg: 45.6,
      heightM,
      exceededPercent,
      mapAltitude: flat(0.5),
      maps: [
        {
          exceededPercent: 5,
          surfaceDensity: flat(20),
          totalColumn: flat(50),
          scaleHeight: flat(2),
        },
        {
          exceededPercent: 20,
          surfaceDensity: flat(10),
          totalColumn: flat(30),
          scaleHeight: flat(2),
        },
      ],
    });

  test('at the height of the map the map stands; higher up it falls with the scale height', () => {
    expect(at(5, 500).waterVapourContentKgPerM2).toBeCloseTo(50, 10);
    expect(at(5, 2500).waterVapourContentKgPerM2).toBeCloseTo(50 / Math.E, 10);
    expect(at(5, 2500).waterVapourDensityGPerM3).toBeCloseTo(20 / Math.E, 10);
  });

  test('half way in the logarithm of the percentage is half way in the value', () => {
    expect(at(10, 500).waterVapourContentKgPerM2).toBeCloseTo(40, 10);
    expect(at(10, 500).waterVapourDensityGPerM3).toBeCloseTo(15, 10);
  });

  test('beyond the percentages the end is used and named', () => {
    expect(at(1, 500).waterVapourContentKgPerM2).toBeCloseTo(50, 10);
    expect(at(1).outsideStatedRange).toEqual(['exceededPercent']);
    expect(at(5).outsideStatedRange).toEqual([]);
  });
});

describe('lognormal cloud of P.840-9', () => {
  test('at half the probability of cloud it is the median, and 0 from that probability on', () => {
    const cloud = { logMean: -2, logDeviation: 0.8, cloudProbabilityPercent: 40 };
    const liquid = (exceededPercent: number) =>
      cloudLiquidLognormal({ ...cloud, exceededPercent }).liquidWaterKgPerM2;
    expect(liquid(20)).toBeCloseTo(Math.exp(-2), 12);
    expect(liquid(40)).toBe(0);
    expect(liquid(90)).toBe(0);
    expect(liquid(1)).toBeGreaterThan(liquid(5));
  });
});

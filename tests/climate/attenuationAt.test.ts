import fc from 'fast-check';
import { attenuationAt, attenuationAtBatch, climateAt } from 'slantpath/climate';
import { rainAttenuation, totalAttenuation } from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { liquidAt, rainAt, vapourAt } from '../../.ci/climate/reference.js';
import { mapValue } from '../../src/propagation/p1144.js';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { sharedMaps } from '../support/maps.js';
import { publishedTable } from '../support/published.js';

const clinic = climateAt({ latitudeDeg: -0.4, longitudeDeg: 102, heightM: 35 });
const path = {
  frequencyGHz: 14.2,
  elevationDeg: 80,
  tiltDeg: 0,
  diameterM: 1.8,
  exceededPercent: 0.1,
};

const rows = referenceTable('propagation/p618-14-total.csv');
const pathOf = (row: CsvRow) => ({
  frequencyGHz: cell(row, 'frequency_ghz'),
  elevationDeg: cell(row, 'elevation_deg'),
  tiltDeg: cell(row, 'tilt_deg'),
  diameterM: 1,
  efficiencyRatio: 0.65,
  exceededPercent: cell(row, 'time_percent'),
});
const stationOf = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'latitude_deg'),
  longitudeDeg: cell(row, 'longitude_deg'),
  heightM: 1000 * cell(row, 'station_height_km'),
});
const total = (
  quantity: string,
  limit: number,
  reason: string,
  got: (row: CsvRow) => number,
  more: { readonly outside?: true } = {},
) =>
  publishedTable({
    ...more,
    part: 'climate',
    quantity,
    unit: 'dB',
    source: 'ITU-R validation examples rev. 8.3.0, P.618-14',
    status: 'published',
    limit,
    reason,
    relative: true,
    count: 29,
    cases: () =>
      rows.map((row) => ({
        name: `${row['latitude_deg']} ${row['frequency_ghz']} GHz ${row['time_percent']} %`,
        expected: cell(row, 'a_total_db'),
        got: got(row),
      })),
  });

total(
  'total attenuation from the embedded grid',
  0.0325,
  'the grid, and rain totals at half a degree where the examples have a quarter; gas from P.836-6 where they have P.2145-0',
  (row) => attenuationAt(climateAt(stationOf(row)), pathOf(row)).attenuationDb,
);

const maps = sharedMaps();
if (maps)
  total(
    'total attenuation from the full maps',
    0.025,
    'rain totals at half a degree where the examples have a quarter; gas from P.836-6 where they have P.2145-0',
    (row) => {
      const station = stationOf(row);
      const climate = {
        ...climateAt(station),
        rainRate001MmPerH: rainAt(maps, station).rainRateMmPerH,
        rainHeightKm: mapValue(maps('zero-degree-isotherm-height'), station) + 0.36,
        meanTemperatureK: mapValue(maps('temperature-annual'), station),
        wetRefractivityNUnits: mapValue(maps('nwet-median'), station),
        waterAloft: [5, 10, 20, 50].map((percent) => ({
          ...vapourAt(maps, station, station.heightM / 1000, percent),
          vapourScaleHeightKm: 2,
          liquidWaterKgPerM2: liquidAt(maps, station, percent),
        })),
      };
      return attenuationAt(climate, pathOf(row)).attenuationDb;
    },
    { outside: true },
  );

describe('attenuation at a place', () => {
  test('is the total of P.618-14 from the causes it lists', () => {
    const faded = attenuationAt(clinic, path);
    const again = totalAttenuation({
      ...path,
      latitudeDeg: clinic.latitudeDeg,
      heightM: clinic.heightM,
      rainHeightKm: clinic.rainHeightKm,
      rainRate001MmPerH: clinic.rainRate001MmPerH,
      wetRefractivityNUnits: clinic.wetRefractivityNUnits,
      gasDb: faded.gasDb,
      cloudDb: faded.cloudDb,
    });
    expect(faded).toMatchObject(again);
  });

  test('the spread is the change of the total for a change of the rain', () => {
    const { spread } = attenuationAt(clinic, path);
    const shifted = (part: number) =>
      attenuationAt({ ...clinic, rainRate001MmPerH: clinic.rainRate001MmPerH * part }, path)
        .attenuationDb;
    const slope = (shifted(1.001) - shifted(0.999)) / 0.002;
    expect(spread.rainInputDb).toBeCloseTo(
      slope * clinic.rainUncertainty.standardUncertaintyRatio,
      1,
    );
    expect(spread.singleYearDb).toBeCloseTo(slope * clinic.rainUncertainty.singleYearRatio, 1);
    expect(spread.standardUncertaintyDb).toBeCloseTo(
      Math.hypot(spread.rainInputDb, spread.rainModelDb),
      12,
    );
  });

  test('where it does not rain, or above 5 % of the time, rain adds no spread', () => {
    const desert = climateAt({ latitudeDeg: 23, longitudeDeg: 30, heightM: 188 });
    for (const { spread } of [
      attenuationAt({ ...desert, rainRate001MmPerH: 0 }, path),
      attenuationAt(clinic, { ...path, exceededPercent: 20 }),
    ])
      expect(spread).toEqual({
        rainInputDb: 0,
        rainModelDb: 0,
        standardUncertaintyDb: 0,
        singleYearDb: 0,
      });
  });

  test('an availability typed for an exceedance is refused, 50 % is the last that is taken', () => {
    for (const exceededPercent of [99.9, 50.1, 100])
      expect(() => attenuationAt(clinic, { ...path, exceededPercent })).toThrow(
        expect.objectContaining({ parameter: 'exceededPercent', slip: 'is it the availability?' }),
      );
    expect(attenuationAt(clinic, { ...path, exceededPercent: 50 }).attenuationDb).toBeGreaterThan(
      0,
    );
  });

  test('rarer is worse, and every number is finite at any place and path', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: -400, max: 6000, noNaN: true }),
        fc.double({ min: 1, max: 55, noNaN: true }),
        fc.double({ min: 5, max: 90, noNaN: true }),
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        (latitudeDeg, longitudeDeg, heightM, frequencyGHz, elevationDeg, exceededPercent) => {
          const climate = climateAt({ latitudeDeg, longitudeDeg, heightM });
          const at = (percent: number) =>
            attenuationAt(climate, {
              ...path,
              frequencyGHz,
              elevationDeg,
              exceededPercent: percent,
            });
          const faded = at(exceededPercent);
          for (const value of [faded.attenuationDb, ...Object.values(faded.spread)])
            expect(Number.isFinite(value) && value >= 0).toBe(true);
          expect(at(exceededPercent / 2).attenuationDb).toBeGreaterThanOrEqual(
            faded.attenuationDb - 1e-9,
          );
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('attenuation at columns of stations', () => {
  const stations = {
    latitudeDeg: [46.4, 46.7, -0.4, 78],
    longitudeDeg: [9.6, 10.1, 102, -240],
    heightM: Float64Array.of(1900, 600, 35, 10),
    frequencyGHz: [12, 20, 14.2, 30],
    elevationDeg: 33,
    tiltDeg: 45,
    diameterM: 0.9,
    exceededPercent: [0.01, 0.1, 7, 1],
  };

  test('each row equals the scalar result bit for bit', () => {
    const batch = attenuationAtBatch(stations);
    for (let row = 0; row < 4; row++) {
      const climate = climateAt({
        latitudeDeg: stations.latitudeDeg[row] as number,
        longitudeDeg: stations.longitudeDeg[row] as number,
        heightM: stations.heightM[row] as number,
      });
      const one = {
        frequencyGHz: stations.frequencyGHz[row] as number,
        elevationDeg: 33,
        tiltDeg: 45,
        diameterM: 0.9,
        exceededPercent: stations.exceededPercent[row] as number,
      };
      const faded = attenuationAt(climate, one);
      expect(batch.rainRate001MmPerH[row]).toBe(climate.rainRate001MmPerH);
      expect(batch.gasDb[row]).toBe(faded.gasDb);
      expect(batch.cloudDb[row]).toBe(faded.cloudDb);
      expect(batch.attenuationDb[row]).toBe(faded.attenuationDb);
      expect(batch.rainDb[row]).toBe(rainAttenuation({ ...climate, ...one }).attenuationDb);
    }
  });

  test('writes into given columns and takes another climate', () => {
    const out = { attenuationDb: new Float64Array(4) };
    const climateOf = (station: Parameters<typeof climateAt>[0]) => ({
      ...climateAt(station),
      rainRate001MmPerH: 0,
    });
    const dry = attenuationAtBatch({ ...stations, climateOf }, out);
    expect(dry.attenuationDb).toBe(out.attenuationDb);
    expect([...dry.rainDb]).toEqual([0, 0, 0, 0]);
  });

  test.each([
    ['latitudeDeg', { latitudeDeg: [0, 91, 0, 0] }, 1],
    ['elevationDeg', { elevationDeg: [30, 30, 95, 30] }, 2],
    ['frequencyGHz', { frequencyGHz: [12, 12, 12, 12000] }, 3],
    ['exceededPercent', { exceededPercent: [0.1, 0, 0.1, 0.1] }, 1],
    ['exceededPercent', { exceededPercent: [0.1, 0.1, 99.9, 0.1] }, 2],
    ['diameterM', { diameterM: [1, 1, 1, -1] }, 3],
    ['heightM', { heightM: [1, 2] }, undefined],
  ])('names the row of a bad %s', (parameter, change, index) => {
    expect(() => attenuationAtBatch({ ...stations, ...change })).toThrow(
      expect.objectContaining({ parameter, index }),
    );
  });
});

import fc from 'fast-check';
import {
  ecefToEnu,
  ecefToStation,
  enuToDirection,
  enuToEcef,
  geocentricToStation,
  stationToEcef,
  stationToGeocentric,
} from 'slantpath/earth';
import { lookAngles } from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const rows = referenceTable('earth/ecef.csv');
const stationOf = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'latitude_deg'),
  longitudeDeg: cell(row, 'longitude_deg'),
  heightM: cell(row, 'height_m'),
});
const ecefOf = (row: CsvRow) => ({
  xKm: cell(row, 'x_km'),
  yKm: cell(row, 'y_km'),
  zKm: cell(row, 'z_km'),
});
const named = (row: CsvRow) => `${row['latitude_deg']} ${row['longitude_deg']} ${row['height_m']}`;
const source = 'closed formulas in 40 digits (NGA.STND.0036)';

publishedTable({
  part: 'earth',
  quantity: 'Earth-fixed coordinates',
  unit: 'km',
  source,
  status: 'recomputed',
  limit: 5e-12,
  reason: 'rounding of numbers near 6378',
  count: 120,
  cases: () =>
    rows.flatMap((row) =>
      (['xKm', 'yKm', 'zKm'] as const).map((axis) => ({
        name: `${named(row)} ${axis}`,
        expected: ecefOf(row)[axis],
        got: stationToEcef(stationOf(row))[axis],
      })),
    ),
});

for (const [quantity, field, unit, limit] of [
  ['latitude from Earth-fixed', 'latitudeDeg', 'deg', 1e-13],
  ['longitude from Earth-fixed', 'longitudeDeg', 'deg', 1e-13],
  ['height from Earth-fixed', 'heightM', 'm', 1e-8],
] as const)
  publishedTable({
    part: 'earth',
    quantity,
    unit,
    source,
    status: 'recomputed',
    limit,
    reason: 'rounding of coordinates given to 1e-12 km',
    circularDeg: field === 'longitudeDeg',
    count: 40,
    cases: () =>
      rows.map((row) => ({
        name: named(row),
        expected: stationOf(row)[field],
        got: ecefToStation(ecefOf(row))[field],
      })),
  });

publishedTable({
  part: 'earth',
  quantity: 'geocentric latitude',
  unit: 'deg',
  source,
  status: 'recomputed',
  limit: 1e-13,
  reason: 'rounding',
  count: 40,
  cases: () =>
    rows.map((row) => ({
      name: named(row),
      expected: cell(row, 'geocentric_latitude_deg'),
      got: stationToGeocentric(stationOf(row)).geocentricLatitudeDeg,
    })),
});

test('the geocentric latitude and radius of the WMM2025 report, table 3b', () => {
  const centre = stationToGeocentric({ latitudeDeg: -80, longitudeDeg: 240, heightM: 1e5 });
  expect((centre.geocentricLatitudeDeg * Math.PI) / 180).toBeCloseTo(-1.3951289589, 10);
  expect(centre.radiusKm).toBeCloseTo(6457.4023484473705, 10);
});

const station = fc.record({
  latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  longitudeDeg: fc.double({ min: -720, max: 720, noNaN: true }),
  heightM: fc.double({ min: -1000, max: 100000, noNaN: true }),
});
const metres = fc.double({ min: -1000, max: 1000, noNaN: true });

describe('frames', () => {
  test('there and back', () => {
    fc.assert(
      fc.property(station, (place) => {
        const back = ecefToStation(stationToEcef(place));
        expect(Math.abs(back.latitudeDeg - place.latitudeDeg)).toBeLessThan(1e-13);
        expect(Math.abs(back.heightM - place.heightM)).toBeLessThan(2e-8);
        expect(back.longitudeDeg >= -180 && back.longitudeDeg < 180).toBe(true);
        const centre = geocentricToStation(stationToGeocentric(place));
        expect(Math.abs(centre.latitudeDeg - place.latitudeDeg)).toBeLessThan(1e-13);
      }),
      { numRuns: runs(2000) },
    );
  });

  test('a satellite position goes both ways too', () => {
    const { latitudeDeg, heightM } = ecefToStation({ xKm: 0, yKm: 42164.169, zKm: 0 });
    expect(latitudeDeg).toBe(0);
    expect(heightM).toBeCloseTo(35786032, 4);
  });

  test('local frame: there and back, lengths kept', () => {
    fc.assert(
      fc.property(station, metres, metres, metres, (place, eastKm, northKm, upKm) => {
        const ecef = enuToEcef(place, { eastKm, northKm, upKm });
        const back = ecefToEnu(place, ecef);
        expect(Math.abs(back.eastKm - eastKm)).toBeLessThan(1e-11);
        expect(Math.abs(back.northKm - northKm)).toBeLessThan(1e-11);
        expect(Math.abs(back.upKm - upKm)).toBeLessThan(1e-11);
        const direction = enuToDirection(back);
        expect(direction.slantRangeKm).toBeCloseTo(Math.hypot(eastKm, northKm, upKm), 9);
      }),
    );
  });

  test('the local frame gives the look angles of a slot', () => {
    const place = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
    const angle = (16.4 * Math.PI) / 180;
    const slot = { xKm: 42164.169 * Math.cos(angle), yKm: 42164.169 * Math.sin(angle), zKm: 0 };
    const direction = enuToDirection(ecefToEnu(place, slot));
    const look = lookAngles(place, 16.4);
    if (direction.kind !== 'inclined' || look.kind === 'overhead') throw new Error('not inclined');
    expect(direction.azimuthDeg).toBeCloseTo(look.azimuthDeg, 10);
    expect(direction.elevationDeg).toBeCloseTo(look.elevationDeg, 10);
    expect(direction.slantRangeKm).toBeCloseTo(look.slantRangeKm, 7);
  });

  test('straight up has no azimuth, nothing has no direction', () => {
    expect(enuToDirection({ eastKm: 0, northKm: 0, upKm: 2 })).toEqual({
      kind: 'vertical',
      elevationDeg: 90,
      slantRangeKm: 2,
    });
    expect(enuToDirection({ eastKm: 0, northKm: 0, upKm: 0 })).toEqual({
      kind: 'same-place',
      slantRangeKm: 0,
    });
  });

  test.each([
    [() => ecefToStation({ xKm: 1, yKm: 2, zKm: 3 }), 'ecef', 'out-of-range'],
    [() => ecefToStation({ xKm: 6378137, yKm: 0, zKm: 0 }), 'ecef', 'out-of-range'],
    [() => ecefToStation({ xKm: Number.NaN, yKm: 0, zKm: 0 }), 'xKm', 'not-finite'],
    [() => ecefToStation({ xKm: 7000, yKm: 0 } as never), 'zKm', 'missing'],
    [() => ecefToStation(undefined as never), 'ecef', 'missing'],
    [
      () => enuToDirection({ eastKm: Number.POSITIVE_INFINITY, northKm: 0, upKm: 0 }),
      'eastKm',
      'not-finite',
    ],
    [() => enuToDirection({ eastKm: 1e300, northKm: 0, upKm: 0 }), 'eastKm', 'out-of-range'],
    [
      () => geocentricToStation({ geocentricLatitudeDeg: 91, longitudeDeg: 0, radiusKm: 6378 }),
      'geocentricLatitudeDeg',
      'out-of-range',
    ],
    [
      () => geocentricToStation({ geocentricLatitudeDeg: 1, longitudeDeg: 0, radiusKm: 6378137 }),
      'radiusKm',
      'out-of-range',
    ],
  ])('refuses bad input %#', (call, parameter, code) => {
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });
});

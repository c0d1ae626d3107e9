import fc from 'fast-check';
import { geodesicBetween, geodesicEnd } from 'slantpath/geodesic';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const rows = referenceTable('geodesic/lines.csv');
const start = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'from_latitude_deg'),
  longitudeDeg: cell(row, 'from_longitude_deg'),
});
const end = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'to_latitude_deg'),
  longitudeDeg: cell(row, 'to_longitude_deg'),
});
const named = (row: CsvRow) => `${row['distance_km']} km from ${row['from_latitude_deg']}`;
const source = 'geodesics by quadrature in 40 digits';

publishedTable({
  part: 'geodesic',
  quantity: 'distance',
  unit: 'km',
  source,
  status: 'recomputed',
  limit: 3e-11,
  reason: 'nanometres: rounding of the end points given to 1e-14 degree',
  count: 60,
  cases: () =>
    rows.map((row) => ({
      name: named(row),
      expected: cell(row, 'distance_km'),
      got: geodesicBetween(start(row), end(row)).distanceKm,
    })),
});

publishedTable({
  part: 'geodesic',
  quantity: 'offset across the line of the bearings',
  unit: 'm',
  source,
  status: 'recomputed',
  limit: 1e-7,
  reason: 'the bearing of a short line is known as well as its end points',
  count: 120,
  cases: () =>
    rows.flatMap((row) => {
      const line = geodesicBetween(start(row), end(row));
      if (line.kind !== 'line') throw new Error('no line');
      const metres = Math.min(line.distanceKm, 6378) * 1000 * (Math.PI / 180);
      return [
        {
          name: `${named(row)} bearing`,
          expected: cell(row, 'bearing_deg') * metres,
          got: line.azimuthDeg * metres,
        },
        {
          name: `${named(row)} return bearing`,
          expected: cell(row, 'return_bearing_deg') * metres,
          got: line.returnAzimuthDeg * metres,
        },
      ];
    }),
});

publishedTable({
  part: 'geodesic',
  quantity: 'end of a line',
  unit: 'deg',
  source,
  status: 'recomputed',
  limit: 3e-13,
  reason: 'rounding of angles up to 180 degrees',
  circularDeg: true,
  count: 180,
  cases: () =>
    rows.flatMap((row) => {
      const got = geodesicEnd(start(row), {
        azimuthDeg: cell(row, 'bearing_deg'),
        distanceKm: cell(row, 'distance_km'),
      });
      return [
        {
          name: `${named(row)} latitude`,
          expected: end(row).latitudeDeg,
          got: got.latitudeDeg,
        },
        {
          name: `${named(row)} longitude`,
          expected: end(row).longitudeDeg,
          got: got.longitudeDeg,
        },
        {
          name: `${named(row)} return bearing`,
          expected: cell(row, 'return_bearing_deg'),
          got: got.returnAzimuthDeg,
        },
      ];
    }),
});

describe('geodesics', () => {
  test('the direct example of Karney 2013, table 2', () => {
    const { latitudeDeg, longitudeDeg, returnAzimuthDeg } = geodesicEnd(
      { latitudeDeg: 40, longitudeDeg: 0 },
      { azimuthDeg: 30, distanceKm: 10000 },
    );
    expect(latitudeDeg).toBeCloseTo(41.79331020506, 11);
    expect(longitudeDeg).toBeCloseTo(137.84490004377, 11);
    expect(returnAzimuthDeg).toBeCloseTo(149.09016931807 + 180, 11);
  });

  test('one degree of the equator is a / 57.29578', () => {
    const line = geodesicBetween(
      { latitudeDeg: 0, longitudeDeg: 179.5 },
      { latitudeDeg: 0, longitudeDeg: -179.5 },
    );
    expect(line.distanceKm).toBeCloseTo((6378.137 * Math.PI) / 180, 9);
    expect(line.kind === 'line' && [line.azimuthDeg, line.returnAzimuthDeg]).toEqual([90, 270]);
  });

  test('the same place has no bearing', () => {
    const place = { latitudeDeg: 46.4, longitudeDeg: 9.6 };
    expect(geodesicBetween(place, { ...place, longitudeDeg: 369.6 })).toEqual({
      kind: 'same-place',
      distanceKm: 0,
    });
  });

  test('there and back, in range and finite', () => {
    const latitude = fc.double({ min: -90, max: 90, noNaN: true });
    const longitude = fc.double({ min: -720, max: 720, noNaN: true });
    fc.assert(
      fc.property(latitude, longitude, latitude, longitude, (a, b, c, d) => {
        const from = { latitudeDeg: a, longitudeDeg: b };
        const line = geodesicBetween(from, { latitudeDeg: c, longitudeDeg: d });
        if (line.kind === 'same-place') return;
        for (const bearing of [line.azimuthDeg, line.returnAzimuthDeg])
          expect(bearing >= 0 && bearing < 360 && !Object.is(bearing, -0)).toBe(true);
        const reached = geodesicEnd(from, line);
        expect(Math.abs(reached.latitudeDeg - c)).toBeLessThan(1e-8);
      }),
      { numRuns: runs(2000) },
    );
  });

  test.each([
    [
      () =>
        geodesicBetween({ latitudeDeg: 91, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 0 }),
      'from.latitudeDeg',
    ],
    [
      () => geodesicBetween({ latitudeDeg: 1, longitudeDeg: 0 }, { latitudeDeg: 0 } as never),
      'to.longitudeDeg',
    ],
    [() => geodesicBetween(undefined as never, { latitudeDeg: 0, longitudeDeg: 0 }), 'from'],
    [
      () =>
        geodesicEnd({ latitudeDeg: 1, longitudeDeg: 0 }, { azimuthDeg: Number.NaN, distanceKm: 1 }),
      'azimuthDeg',
    ],
    [
      () => geodesicEnd({ latitudeDeg: 1, longitudeDeg: 0 }, { azimuthDeg: 0, distanceKm: 111319 }),
      'distanceKm',
    ],
  ])('refuses bad input %#', (call, parameter) => {
    expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
  });
});

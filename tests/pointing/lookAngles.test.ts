import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { lookAngles, lookAnglesToPoint } from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const ellipsoid = referenceTable('pointing/look-angles-wgs84.csv');

for (const [quantity, unit, limit, column, field] of [
  ['azimuth', 'deg', 1e-6, 'azimuth_deg', 'azimuthDeg'],
  ['elevation', 'deg', 1e-6, 'elevation_geometric_deg', 'elevationDeg'],
  ['slant range', 'km', 1e-4, 'range_km', 'slantRangeKm'],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity,
    unit,
    source: 'WGS 84 vectors recomputed with two general-purpose geodesy libraries',
    status: 'recomputed',
    limit,
    reason: 'last printed digit',
    circularDeg: quantity === 'azimuth',
    count: quantity === 'azimuth' ? 19 : 20,
    cases: () =>
      ellipsoid
        .filter((row) => quantity !== 'azimuth' || cell(row, 'elevation_geometric_deg') < 90)
        .map((row) => {
          const station = {
            latitudeDeg: cell(row, 'lat_deg'),
            longitudeDeg: cell(row, 'lon_deg_east'),
            heightM: cell(row, 'height_m'),
          };
          const look = lookAngles(station, cell(row, 'sat_lon_deg_east'));
          const azimuthDeg = look.kind === 'overhead' ? Number.NaN : look.azimuthDeg;
          return {
            name: `${station.latitudeDeg} ${station.longitudeDeg} to ${row['sat_lon_deg_east']}`,
            expected: cell(row, column),
            got: { ...look, azimuthDeg }[field],
          };
        }),
  });
}

const latitude = fc.double({ min: -90, max: 90, noNaN: true });
const longitude = fc.double({ min: -720, max: 720, noNaN: true });

describe('look angles', () => {
  test('mirror east and west: azimuth mirrors, elevation and range stay', () => {
    fc.assert(
      fc.property(
        latitude,
        fc.double({ min: 0.001, max: 180, noNaN: true }),
        (latitudeDeg, offset) => {
          const station = { latitudeDeg, longitudeDeg: 0, heightM: 0 };
          const east = lookAngles(station, offset);
          const west = lookAngles(station, -offset);
          if (east.kind === 'overhead' || west.kind === 'overhead') return;
          expect(west.elevationDeg).toBeCloseTo(east.elevationDeg, 12);
          // Straight below, as straight above, azimuth has no meaning.
          if (Math.abs(east.elevationDeg) > 89.999) return;
          expect(Math.cos(((west.azimuthDeg + east.azimuthDeg) * Math.PI) / 180)).toBeCloseTo(
            1,
            12,
          );
        },
      ),
    );
  });

  test('a full turn of both longitudes changes nothing', () => {
    const here = lookAngles({ latitudeDeg: 10, longitudeDeg: 183, heightM: 0 }, 150);
    expect(lookAngles({ latitudeDeg: 10, longitudeDeg: -177, heightM: 0 }, 510)).toEqual(here);
  });

  test('azimuth stays in [0, 360) and every number is finite', () => {
    fc.assert(
      fc.property(latitude, longitude, longitude, (latitudeDeg, longitudeDeg, slot) => {
        const look = lookAngles({ latitudeDeg, longitudeDeg, heightM: 0 }, slot);
        expect(Number.isFinite(look.elevationDeg) && Number.isFinite(look.slantRangeKm)).toBe(true);
        if (look.kind === 'overhead') return;
        expect(look.azimuthDeg >= 0 && look.azimuthDeg < 360).toBe(true);
        expect(Object.is(look.azimuthDeg, -0)).toBe(false);
      }),
      { numRuns: runs(1000) },
    );
  });

  test('under the satellite azimuth has no meaning', () => {
    const look = lookAngles({ latitudeDeg: 0, longitudeDeg: 20, heightM: 0 }, 20);
    expect(look.kind).toBe('overhead');
    expect('azimuthDeg' in look).toBe(false);
    expect(look.slantRangeKm).toBeCloseTo(42164.169 - 6378.137, 9);
  });

  test('seen from the poles the satellite is below the horizon', () => {
    for (const latitudeDeg of [90, -90])
      expect(lookAngles({ latitudeDeg, longitudeDeg: 0, heightM: 0 }, 0).kind).toBe(
        'below-horizon',
      );
  });

  test.each([
    ['latitudeDeg', { latitudeDeg: 91, longitudeDeg: 0, heightM: 0 }, 0, 'out-of-range'],
    ['latitudeDeg', { latitudeDeg: Number.NaN, longitudeDeg: 0, heightM: 0 }, 0, 'not-finite'],
    [
      'longitudeDeg',
      { latitudeDeg: 0, longitudeDeg: Number.POSITIVE_INFINITY, heightM: 0 },
      0,
      'not-finite',
    ],
    ['heightM', { latitudeDeg: 0, longitudeDeg: 0, heightM: 1e6 }, 0, 'out-of-range'],
    [
      'orbitalLongitudeDeg',
      { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 },
      Number.NaN,
      'not-finite',
    ],
  ])('refuses a bad %s', (parameter, station, slot, code) => {
    const call = () => lookAngles(station, slot);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });
});

describe('straight up', () => {
  // On the equator the satellite is 42164.17 km from the Earth's centre and 35786.03 km above: the zenith angle is 1.17823 times
  // the difference of longitude.
  const station = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
  const differenceDeg = (zenithDeg: number) => zenithDeg / (42164.17 / 35786.03);
  const point = (zenithDeg: number) => {
    const radians = (differenceDeg(zenithDeg) * Math.PI) / 180;
    return { xKm: 42164.17 * Math.cos(radians), yKm: 42164.17 * Math.sin(radians), zKm: 0 };
  };

  test.each([0, 0.9e-9, -0.9e-9])('is what lies within 1e-9 degree of the zenith: %s', (off) => {
    expect(lookAngles(station, differenceDeg(off)).kind).toBe('overhead');
    expect(lookAnglesToPoint(station, point(off)).kind).toBe('overhead');
  });

  test.each([1.1e-9, -1.1e-9])('is not what lies further off: %s', (off) => {
    const azimuthDeg = off > 0 ? 90 : 270;
    expect(lookAngles(station, differenceDeg(off))).toMatchObject({ kind: 'visible', azimuthDeg });
    expect(lookAnglesToPoint(station, point(off))).toMatchObject({ kind: 'visible', azimuthDeg });
  });
});

test('a point is taken from one metre on', () => {
  const station = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
  const above = (metres: number) =>
    lookAnglesToPoint(station, { xKm: 6378.137 + metres / 1000, yKm: 0, zKm: 0 });
  expect(() => above(0.995)).toThrow(/ecef/);
  expect(above(1.005).slantRangeKm).toBeCloseTo(0.001005, 9);
});

test('half a turn of difference is straight through the Earth', () => {
  // At the equator, on the other side: 42164.17 + 6378.137 km away, straight down.
  const under = lookAngles({ latitudeDeg: 0, longitudeDeg: 90, heightM: 0 }, -90);
  expect(under.kind).toBe('below-horizon');
  expect(under.slantRangeKm).toBeCloseTo(48542.307, 2);
});

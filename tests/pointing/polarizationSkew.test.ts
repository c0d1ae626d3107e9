import fc from 'fast-check';
import { polarizationSkew, polarizationSkewBatch } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const table = referenceTable('pointing/look-angles-wgs84.csv');

publishedTable({
  part: 'pointing',
  quantity: 'polarization skew',
  unit: 'deg',
  source: 'WGS 84 vectors recomputed with two general-purpose geodesy libraries',
  status: 'recomputed',
  limit: 6e-6,
  reason: 'last printed digit',
  count: 19,
  cases: () =>
    table
      .filter((row) => cell(row, 'elevation_geometric_deg') < 90)
      .map((row) => {
        const skew = polarizationSkew({
          station: {
            latitudeDeg: cell(row, 'lat_deg'),
            longitudeDeg: cell(row, 'lon_deg_east'),
            heightM: cell(row, 'height_m'),
          },
          orbitalLongitudeDeg: cell(row, 'sat_lon_deg_east'),
        });
        return {
          name: `${row['lat_deg']} ${row['lon_deg_east']} to ${row['sat_lon_deg_east']}`,
          expected: cell(row, 'skew_exact_deg_clockwise_seen_from_behind_dish'),
          got: skew.kind === 'visible' ? skew.skewDeg : Number.NaN,
        };
      }),
});

publishedTable({
  part: 'pointing',
  quantity: 'polarization skew with tilt',
  unit: 'deg',
  source: '60 random cases in 50-digit arithmetic (projected axes)',
  status: 'recomputed',
  limit: 4e-10,
  reason: 'printed to 1e-10',
  count: 60,
  cases: () =>
    referenceTable('pointing/skew-random.csv').map((row) => {
      const skew = polarizationSkew({
        station: {
          latitudeDeg: cell(row, 'lat_deg'),
          longitudeDeg: cell(row, 'lon_deg'),
          heightM: cell(row, 'height_m'),
        },
        orbitalLongitudeDeg: cell(row, 'slot_deg'),
        polarization: { kind: 'linear', tiltDeg: cell(row, 'tilt_deg') },
      });
      return {
        name: `${row['lat_deg']} to ${row['slot_deg']}`,
        expected: cell(row, 'skew_deg'),
        got: 'skewDeg' in skew ? skew.skewDeg : Number.NaN,
      };
    }),
});

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

test('on the meridian nothing is turned; east of it the feed turns counter-clockwise in the north, clockwise in the south', () => {
  const at = (latitudeDeg: number, slot: number) => {
    const skew = polarizationSkew({
      station: { ...station, latitudeDeg },
      orbitalLongitudeDeg: slot,
    });
    return skew.kind === 'visible' ? skew.skewDeg : Number.NaN;
  };
  expect(at(46.4, 9.6)).toBeCloseTo(0, 12);
  expect(at(46.4, 30)).toBeLessThan(0);
  expect(at(-30, 30)).toBeGreaterThan(0);
  expect(at(46.4, 30)).toBeCloseTo(-at(46.4, -10.8), 10);
  expect(at(30, 30)).toBeCloseTo(-at(-30, 30), 10);
});

test('tilt adds, and a line has no head: the result stays in [-90, 90)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -80, max: 80, noNaN: true }),
      fc.double({ min: -70, max: 70, noNaN: true }),
      fc.double({ min: -180, max: 180, noNaN: true }),
      (latitudeDeg, slot, tiltDeg) => {
        const skew = polarizationSkew({
          station: { latitudeDeg, longitudeDeg: 0, heightM: 0 },
          orbitalLongitudeDeg: slot,
          polarization: { kind: 'linear', tiltDeg },
        });
        if (skew.kind === 'circular' || skew.kind === 'overhead') return;
        expect(skew.skewDeg >= -90 && skew.skewDeg < 90).toBe(true);
        const turns = (skew.skewDeg - skew.geometryDeg - tiltDeg) / 180;
        expect(turns).toBeCloseTo(Math.round(turns), 9);
      },
    ),
  );
});

test('in the zenith the polarization has a bearing; a circular one needs nothing', () => {
  const under = { latitudeDeg: 0, longitudeDeg: 20, heightM: 0 };
  const ask = (polarization?: { kind: 'linear'; tiltDeg: number } | { kind: 'circular' }) =>
    polarizationSkew({
      station: under,
      orbitalLongitudeDeg: 20,
      ...(polarization ? { polarization } : {}),
    });
  expect(ask()).toEqual({ kind: 'overhead', polarizationBearingDeg: 0, tiltDeg: 0 });
  // Clockwise for one who looks up is counter-clockwise on the map: 30 degrees west of north.
  expect(ask({ kind: 'linear', tiltDeg: 30 })).toMatchObject({ polarizationBearingDeg: 150 });
  expect(ask({ kind: 'circular' })).toEqual({ kind: 'circular' });
  // A step east of the place below, facing west: the axis lies to the right, a quarter turn from upright.
  const near = polarizationSkew({
    station: { ...under, longitudeDeg: 20.5 },
    orbitalLongitudeDeg: 20,
  });
  expect(near.kind === 'visible' && near.skewDeg).toBe(-90);
});

test('the batch equals the scalar calls bit for bit', () => {
  const column = (name: string) => table.map((row) => cell(row, name));
  const input = {
    latitudeDeg: column('lat_deg'),
    longitudeDeg: column('lon_deg_east'),
    heightM: 100,
    orbitalLongitudeDeg: column('sat_lon_deg_east'),
    tiltDeg: 3.5,
  };
  const { skewDeg } = polarizationSkewBatch(input);
  expect(skewDeg.length).toBe(20);
  table.forEach((_, row) => {
    const skew = polarizationSkew({
      station: {
        latitudeDeg: input.latitudeDeg[row] as number,
        longitudeDeg: input.longitudeDeg[row] as number,
        heightM: 100,
      },
      orbitalLongitudeDeg: input.orbitalLongitudeDeg[row] as number,
      polarization: { kind: 'linear', tiltDeg: 3.5 },
    });
    expect(skewDeg[row]).toBe('skewDeg' in skew ? skew.skewDeg : 0);
  });
  expect(() =>
    polarizationSkewBatch({ ...input, tiltDeg: Float64Array.of(...column('lat_deg').fill(200)) }),
  ).toThrow(expect.objectContaining({ parameter: 'tiltDeg', index: 0 }));
});

test.each([
  ['polarization.tiltDeg', { polarization: { kind: 'linear', tiltDeg: 200 } }],
  ['polarization.kind', { polarization: { kind: 'round' } }],
  ['station', { station: undefined }],
  ['orbitalLongitudeDeg', { orbitalLongitudeDeg: '16' }],
])('refuses a bad %s', (parameter, bad) => {
  const input = { station, orbitalLongitudeDeg: 16.4, ...bad } as never;
  expect(() => polarizationSkew(input)).toThrow(
    expect.objectContaining({ name: 'DomainError', parameter }),
  );
});

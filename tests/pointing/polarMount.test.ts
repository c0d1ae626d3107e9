import { polarMount } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('pointing/polar-mount.csv');
const least = referenceTable('pointing/polar-mount-least-worst.csv');

type Mount = Extract<ReturnType<typeof polarMount>, { kind: 'mount' }>;

function mount(
  row: CsvRow,
  fit: 'polar-axis' | 'apex-and-ends' | 'least-worst',
  earthModel: 'sphere' | 'ellipsoid',
): Mount {
  const latitudeDeg = Number(row['latitude_deg'] ?? row['lat_deg']);
  const found = polarMount({
    station: { latitudeDeg, longitudeDeg: 30, heightM: 0 },
    minimumElevationDeg: Number(row['minimum_elevation_deg'] ?? 0),
    fit,
    earthModel,
  });
  if (found.kind !== 'mount') throw new Error('no arc');
  return found;
}

for (const [quantity, column, got, limit] of [
  [
    'declination on a sphere',
    'declination_offset_true_polar_deg_sphere',
    (row: CsvRow) => mount(row, 'polar-axis', 'sphere').mountDeclinationDeg,
    6e-6,
  ],
  [
    'declination on WGS 84',
    'declination_offset_WGS84_deg',
    (row: CsvRow) => mount(row, 'polar-axis', 'ellipsoid').mountDeclinationDeg,
    6e-6,
  ],
  [
    'apex elevation on a sphere',
    'apex_elevation_sphere_deg',
    (row: CsvRow) => mount(row, 'polar-axis', 'sphere').apexElevationDeg,
    6e-6,
  ],
  [
    'apex elevation on WGS 84',
    'apex_elevation_WGS84_deg',
    (row: CsvRow) => mount(row, 'polar-axis', 'ellipsoid').apexElevationDeg,
    6e-6,
  ],
  [
    'forward tilt of the axis',
    'modified_axis_forward_tilt_deg',
    (row: CsvRow) => mount(row, 'apex-and-ends', 'sphere').forwardTiltDeg,
    6e-6,
  ],
  [
    'elevation of the axis',
    'modified_axis_elevation_deg(lat+tilt)',
    (row: CsvRow) => mount(row, 'apex-and-ends', 'sphere').axisElevationDeg,
    6e-6,
  ],
  [
    'modified declination',
    'modified_declination_deg',
    (row: CsvRow) => mount(row, 'apex-and-ends', 'sphere').mountDeclinationDeg,
    6e-6,
  ],
  [
    'largest error, polar axis',
    'max_error_simple_polar_deg',
    (row: CsvRow) => mount(row, 'polar-axis', 'sphere').largestErrorDeg,
    6e-6,
  ],
  [
    'largest error, modified',
    'max_error_modified_deg',
    (row: CsvRow) => mount(row, 'apex-and-ends', 'sphere').largestErrorDeg,
    6e-6,
  ],
  [
    'half width of the arc',
    'arc_half_width_at_0deg_elevation_deg',
    (row: CsvRow) => mount(row, 'polar-axis', 'sphere').halfWidthDeg,
    6e-5,
  ],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity: `polar mount: ${quantity}`,
    unit: 'deg',
    source: 'polar mount by latitude, recomputed on a sphere and on WGS 84',
    status: 'recomputed',
    limit,
    reason: 'last printed digit',
    count: 17,
    cases: () =>
      rows.map((row) => ({
        name: `latitude ${row['latitude_deg']}`,
        expected: cell(row, column),
        got: got(row),
      })),
  });
}

for (const [quantity, column, field, limit] of [
  ['least largest error', 'largest_error_deg', 'largestErrorDeg', 1e-6],
  ['tilt of the least largest error', 'tilt_deg', 'forwardTiltDeg', 2e-5],
  ['declination of the least largest error', 'declination_deg', 'mountDeclinationDeg', 2e-5],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity: `polar mount: ${quantity}`,
    unit: 'deg',
    source: 'brute force over the tilt in steps of 0.00001 degree, 2,001 slots',
    status: 'recomputed',
    limit,
    reason: 'step of the grid and last printed digit',
    count: 9,
    cases: () =>
      least.map((row) => ({
        name: `latitude ${row['lat_deg']} above ${row['minimum_elevation_deg']}`,
        expected: cell(row, column),
        got: mount(row, 'least-worst', 'sphere')[field],
      })),
  });
}

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

test('the mount of the southern hemisphere mirrors the northern one; east stays east', () => {
  const slots = [-20, 9.6, 30];
  const north = polarMount({ station: hut, orbitalLongitudesDeg: slots });
  const south = polarMount({
    station: { ...hut, latitudeDeg: -46.4 },
    orbitalLongitudesDeg: slots,
  });
  expect(south).toEqual(north);
  if (north.kind !== 'mount') throw new Error('no arc');
  expect(north.slots[0]?.rotationEastDeg).toBeLessThan(-29);
  expect(north.slots[1]?.rotationEastDeg).toBeCloseTo(0, 10);
  expect(north.slots[2]?.rotationEastDeg).toBeGreaterThan(20);
});

test('the modified mount is right at apex and ends; the least-worst one halves what is left', () => {
  const modified = polarMount({ station: hut, fit: 'apex-and-ends' });
  const least_ = polarMount({ station: hut });
  if (modified.kind !== 'mount' || least_.kind !== 'mount') throw new Error('no arc');
  expect(modified.apexErrorDeg).toBeCloseTo(0, 9);
  expect(modified.endErrorDeg).toBeCloseTo(0, 9);
  expect(least_.largestErrorDeg / modified.largestErrorDeg).toBeCloseTo(0.5, 3);
  expect(modified.apexBeamElevationDeg).toBeCloseTo(modified.apexElevationDeg, 9);
  expect(Math.max(...least_.curve.map((point) => Math.abs(point.errorDeg)))).toBeLessThanOrEqual(
    least_.largestErrorDeg + 1e-9,
  );
});

test('no arc, no mount', () => {
  expect(polarMount({ station: { ...hut, latitudeDeg: 84 } }).kind).toBe('none');
  expect(polarMount({ station: hut, minimumElevationDeg: 60 }).kind).toBe('none');
});

test.each([
  ['fit', { fit: 'best' }],
  ['earthModel', { earthModel: 'flat' }],
  ['orbitalLongitudesDeg', { orbitalLongitudesDeg: [1, Number.NaN] }],
  ['minimumElevationDeg', { minimumElevationDeg: -1 }],
])('refuses a bad %s', (parameter, bad) => {
  expect(() => polarMount({ station: hut, ...bad } as never)).toThrow(
    expect.objectContaining({ name: 'DomainError', parameter }),
  );
});

import { lookAngles, lookAnglesBatch } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('pointing/look-angles-random.csv');
const source = '1,000 random cases in 50-digit arithmetic (WGS 84 vectors)';

/** Azimuth difference as it appears on the sky. */
function onSkyDeg(differenceDeg: number, elevationDeg: number): number {
  const turn = ((((differenceDeg + 180) % 360) + 360) % 360) - 180;
  return turn * Math.cos((elevationDeg * Math.PI) / 180);
}

for (const [quantity, unit, limit, reason] of [
  ['azimuth on the sky', 'deg', 5e-11, 'five in the last printed digit; the library promises 1e-8'],
  ['elevation', 'deg', 5e-11, 'five in the last printed digit; the library promises 1e-8'],
  ['slant range', 'km', 5e-8, 'five in the last printed digit; the library promises 1e-6 (1 mm)'],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity,
    unit,
    source,
    status: 'recomputed',
    limit,
    reason,
    count: 1000,
    cases: () =>
      rows.map((row) => {
        const look = lookAngles(
          {
            latitudeDeg: cell(row, 'lat_deg'),
            longitudeDeg: cell(row, 'lon_deg'),
            heightM: cell(row, 'height_m'),
          },
          cell(row, 'slot_deg'),
        );
        const azimuthDeg = look.kind === 'overhead' ? Number.NaN : look.azimuthDeg;
        const name = `${row['lat_deg']} ${row['lon_deg']} to ${row['slot_deg']}`;
        if (quantity === 'elevation')
          return { name, expected: cell(row, 'elevation_deg'), got: look.elevationDeg };
        if (quantity === 'slant range')
          return { name, expected: cell(row, 'range_km'), got: look.slantRangeKm };
        return {
          name,
          expected: 0,
          got: onSkyDeg(azimuthDeg - cell(row, 'azimuth_deg'), look.elevationDeg),
        };
      }),
  });
}

test('the batch equals the scalar calls bit for bit, and takes numbers, lists and given columns', () => {
  const column = (name: string) => rows.map((row) => cell(row, name));
  const input = {
    latitudeDeg: Float64Array.from(column('lat_deg')),
    longitudeDeg: column('lon_deg'),
    heightM: Int32Array.from(column('height_m')),
    orbitalLongitudeDeg: 12.5,
  };
  const out = { azimuthDeg: new Float64Array(1000) };
  const sky = lookAnglesBatch(input, out);
  expect(sky.azimuthDeg).toBe(out.azimuthDeg);
  rows.forEach((_, row) => {
    const look = lookAngles(
      {
        latitudeDeg: input.latitudeDeg[row] as number,
        longitudeDeg: input.longitudeDeg[row] as number,
        heightM: input.heightM[row] as number,
      },
      12.5,
    );
    expect(sky.elevationDeg[row]).toBe(look.elevationDeg);
    expect(sky.slantRangeKm[row]).toBe(look.slantRangeKm);
    expect(sky.azimuthDeg[row]).toBe(look.kind === 'overhead' ? 0 : look.azimuthDeg);
  });
});

test('the batch names field and row of a bad value', () => {
  const good = { latitudeDeg: 46, longitudeDeg: 9, heightM: 0, orbitalLongitudeDeg: [1, 2, 3] };
  const bad = (input: object, details: object) =>
    expect(() => lookAnglesBatch(input as never)).toThrow(expect.objectContaining(details));
  bad(
    { ...good, orbitalLongitudeDeg: [1, Number.NaN, 3] },
    { parameter: 'orbitalLongitudeDeg', index: 1 },
  );
  bad(
    { ...good, orbitalLongitudeDeg: Float64Array.of(1, 2, Number.NaN) },
    { parameter: 'orbitalLongitudeDeg', index: 2 },
  );
  bad(
    { ...good, latitudeDeg: [0, 0, 91] },
    { parameter: 'latitudeDeg', index: 2, code: 'out-of-range' },
  );
  bad(
    { ...good, latitudeDeg: ['0', 0, 0] },
    { parameter: 'latitudeDeg', index: 0, code: 'not-a-number' },
  );
  bad({ ...good, heightM: Float64Array.of(0, 2e5, 0) }, { parameter: 'heightM', index: 1 });
  bad({ ...good, longitudeDeg: [1, 2] }, { code: 'length-mismatch' });
  bad({ ...good, orbitalLongitudeDeg: [] }, { code: 'empty' });
  bad({ ...good, longitudeDeg: undefined }, { code: 'missing', parameter: 'longitudeDeg' });
  expect(() => lookAnglesBatch(good, { azimuthDeg: new Float64Array(2) })).toThrow(
    expect.objectContaining({ code: 'length-mismatch' }),
  );
});

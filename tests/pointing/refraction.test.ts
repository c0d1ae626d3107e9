import fc from 'fast-check';
import { apparentElevation, geometricElevation } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('pointing/refraction-p834.csv');
const within = rows.filter((row) => cell(row, 'free_space_elevation_deg') <= 10);
const source = 'P.834-9 coefficients recomputed';

for (const [quantity, column, got] of [
  ['refraction from geometric elevation', 'correction_formula_free_space_deg', apparentElevation],
  [
    'refraction from apparent elevation',
    'formula_with_the_same_number_as_apparent_elevation_deg',
    geometricElevation,
  ],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity,
    unit: 'deg',
    source,
    status: 'recomputed',
    limit: 6e-7,
    reason: 'last printed digit',
    count: 24,
    cases: () =>
      within.map((row) => ({
        name: `${row['free_space_elevation_deg']} deg at ${row['station_height_km']} km`,
        expected: cell(row, column),
        got: got(cell(row, 'free_space_elevation_deg'), 1000 * cell(row, 'station_height_km'))
          .refractionDeg,
      })),
  });
}

publishedTable({
  part: 'pointing',
  quantity: 'refraction against integration',
  unit: 'deg',
  source: 'integration through the reference atmosphere of P.834-9',
  status: 'recomputed',
  limit: 0.0117,
  reason:
    'the Recommendation’s fit is stated good to about 0.01; above 10 degrees the cotangent form',
  count: 36,
  cases: () =>
    rows.map((row) => ({
      name: `${row['free_space_elevation_deg']} deg at ${row['station_height_km']} km`,
      expected: cell(row, 'correction_by_integration_deg'),
      got: apparentElevation(
        cell(row, 'free_space_elevation_deg'),
        1000 * cell(row, 'station_height_km'),
      ).refractionDeg,
      ...(cell(row, 'free_space_elevation_deg') > 10 ? { limit: 0.0015 } : {}),
    })),
});

test('the apparent elevation rises with the geometric one and closes with its inverse', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 89, noNaN: true }),
      fc.double({ min: 0, max: 3000, noNaN: true }),
      (elevationDeg, heightM) => {
        const up = apparentElevation(elevationDeg, heightM);
        expect(
          apparentElevation(elevationDeg + 0.01, heightM).apparentElevationDeg,
        ).toBeGreaterThan(up.apparentElevationDeg);
        const back = geometricElevation(up.apparentElevationDeg, heightM).geometricElevationDeg;
        expect(Math.abs(back - elevationDeg)).toBeLessThan(0.02);
        expect(up.apparentElevationDeg - up.geometricElevationDeg).toBeCloseTo(
          up.refractionDeg,
          12,
        );
      },
    ),
  );
});

test('says what lies outside the stated range, and which method was used', () => {
  expect(apparentElevation(5, 100)).toMatchObject({
    method: 'formula',
    edition: 'P.834-9',
    outsideStatedRange: [],
  });
  expect(apparentElevation(30).method).toBe('cotangent');
  expect(apparentElevation(5, 4000).outsideStatedRange).toEqual(['heightM']);
  expect(apparentElevation(-1.9, 0).outsideStatedRange).toEqual(['elevationDeg']);
  expect(apparentElevation(-1.9, 3000).outsideStatedRange).toEqual([]);
  expect(apparentElevation(90).refractionDeg).toBe(0);
  expect(() => apparentElevation(95)).toThrow(
    expect.objectContaining({ parameter: 'elevationDeg' }),
  );
  expect(() => geometricElevation(5, 20000)).toThrow(
    expect.objectContaining({ parameter: 'heightM' }),
  );
});

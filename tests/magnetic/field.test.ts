import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { declinationBatch, instantToDecimalYear, magneticField } from 'slantpath/magnetic';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable, sharedTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const official = referenceTable('magnetic/wmm2025-test-values.csv');
const grid = referenceTable('magnetic/wmm2025-grid.csv');

const at = (row: CsvRow, heightColumn: string) =>
  magneticField(
    {
      latitudeDeg: cell(row, 'lat_deg'),
      longitudeDeg: cell(row, 'lon_deg'),
      heightM: cell(row, heightColumn) * 1000,
    },
    cell(row, 'decimal_year'),
  );
const named = (row: CsvRow) => `${row['decimal_year']} ${row['lat_deg']} ${row['lon_deg']}`;

const residue = 'printed to 1e-6 nT, with the residue of the test file itself (7.2e-4 nT)';
for (const [quantity, unit, column, field, limit, reason] of [
  ['declination', 'deg', 'declination_deg', 'declinationDeg', 0.005, 'printed to 0.01'],
  [
    'declination unrounded',
    'deg',
    'declination_recomputed_deg',
    'declinationDeg',
    5.1e-7,
    'last digit',
  ],
  ['inclination', 'deg', 'inclination_deg', 'inclinationDeg', 0.005, 'printed to 0.01'],
  ['horizontal intensity', 'nT', 'H_nT', 'horizontalIntensityNt', 7.2e-4, residue],
  ['north component', 'nT', 'X_nT', 'northNt', 7.2e-4, residue],
  ['east component', 'nT', 'Y_nT', 'eastNt', 3e-6, 'printed to 1e-6'],
  ['down component', 'nT', 'Z_nT', 'downNt', 3e-6, 'printed to 1e-6'],
  ['total intensity', 'nT', 'F_nT', 'totalIntensityNt', 7.2e-4, residue],
  ['declination rate', 'deg/yr', 'dD_deg_per_yr', 'declinationRateDegPerYear', 1e-6, 'last digit'],
  ['inclination rate', 'deg/yr', 'dI_deg_per_yr', 'inclinationRateDegPerYear', 1e-6, 'last digit'],
  ['H rate', 'nT/yr', 'dH_nT_per_yr', 'horizontalIntensityRateNtPerYear', 3e-6, 'last digits'],
  ['north rate', 'nT/yr', 'dX_nT_per_yr', 'northRateNtPerYear', 3e-6, 'last digits'],
  ['east rate', 'nT/yr', 'dY_nT_per_yr', 'eastRateNtPerYear', 3e-6, 'last digits'],
  ['down rate', 'nT/yr', 'dZ_nT_per_yr', 'downRateNtPerYear', 3e-6, 'last digits'],
  ['F rate', 'nT/yr', 'dF_nT_per_yr', 'totalIntensityRateNtPerYear', 3e-6, 'last digits'],
  [
    'declination uncertainty',
    'deg',
    'declination_uncertainty_deg',
    'declinationStandardUncertaintyDeg',
    5.1e-4,
    'printed to 0.001',
  ],
] as const)
  publishedTable({
    part: 'magnetic',
    quantity,
    unit,
    source: 'WMM2025 official test values (NOAA NCEI and BGS)',
    status: quantity.includes('un') ? 'recomputed' : 'published',
    limit,
    reason,
    circularDeg: quantity.startsWith('declination') && unit === 'deg',
    count: 60,
    cases: () =>
      official.map((row) => ({
        name: named(row),
        expected: cell(row, column),
        got: at(row, 'height_km_above_ellipsoid')[field],
      })),
  });

publishedTable({
  part: 'magnetic',
  quantity: 'components on the report grid',
  unit: 'nT',
  source: 'WMM2025 coefficients, separately written evaluation',
  status: 'recomputed',
  limit: 6e-5,
  reason: 'printed to 1e-4',
  count: 36,
  cases: () =>
    grid.flatMap((row) =>
      (['X_nT', 'Y_nT', 'Z_nT'] as const).map((column, index) => ({
        name: `${named(row)} ${column}`,
        expected: cell(row, column),
        got:
          [at(row, 'height_km').northNt, at(row, 'height_km').eastNt, at(row, 'height_km').downNt][
            index
          ] ?? Number.NaN,
      })),
    ),
});

test('the worked point of the report, table 3b: 2027.5, 100 km, 80 S 240 E', () => {
  const field = magneticField({ latitudeDeg: -80, longitudeDeg: 240, heightM: 1e5 }, 2027.5);
  expect(field.northNt).toBeCloseTo(5983.9760496518, 6);
  expect(field.eastNt).toBeCloseTo(14760.1359757868, 6);
  expect(field.downNt).toBeCloseTo(-49317.6706154255, 5);
  expect((field.declinationDeg * Math.PI) / 180).toBeCloseTo(1.1856308407, 10);
  expect((field.inclinationDeg * Math.PI) / 180).toBeCloseTo(-1.2584221541, 10);
  expect(field.northRateNtPerYear).toBeCloseTo(30.555353353, 7);
});

test('all official rows that lie beside the checkout', () => {
  const rows = sharedTable('published/wmm2025.csv') ?? official;
  expect(rows.length).toBeGreaterThanOrEqual(60);
  for (const row of rows) {
    const field = at(row, 'height_km_above_ellipsoid');
    expect(field.declinationDeg.toFixed(2)).toBe(cell(row, 'declination_deg').toFixed(2));
    expect(field.inclinationDeg.toFixed(2)).toBe(cell(row, 'inclination_deg').toFixed(2));
  }
});

const latitude = fc.double({ min: -90, max: 90, noNaN: true });
const longitude = fc.double({ min: -720, max: 720, noNaN: true });
const year = fc.double({ min: 1990, max: 2100, noNaN: true });

describe('magnetic field', () => {
  test('a full turn of longitude changes nothing', () => {
    const here = magneticField({ latitudeDeg: 10, longitudeDeg: 183, heightM: 0 }, 2026);
    expect(magneticField({ latitudeDeg: 10, longitudeDeg: -177, heightM: 0 }, 2026)).toEqual(here);
  });

  test('zones by horizontal intensity', () => {
    const zone = (latitudeDeg: number, longitudeDeg: number) =>
      magneticField({ latitudeDeg, longitudeDeg, heightM: 0 }, 2025).compassZone;
    expect(zone(86, 140)).toBe('blackout');
    expect(zone(80, 0)).toBe('usable');
    expect(zone(89, -121)).toBe('blackout');
    expect(zone(82, 87)).toBe('caution');
  });

  test('a date outside 2025.0 to 2030.0 is said', () => {
    const place = { latitudeDeg: 46, longitudeDeg: 9, heightM: 0 };
    expect(magneticField(place, 2025)).toMatchObject({ validity: 'valid', outsideStatedRange: [] });
    expect(magneticField(place, 2030)).toMatchObject({ validity: 'valid' });
    expect(magneticField(place, 2030.1)).toMatchObject({
      validity: 'after-model',
      outsideStatedRange: ['decimalYear'],
    });
    expect(magneticField(place, 2024.9).validity).toBe('before-model');
  });

  test('poles: the field is the same vector seen from every meridian', () => {
    const a = magneticField({ latitudeDeg: 90, longitudeDeg: 0, heightM: 0 }, 2026);
    const b = magneticField({ latitudeDeg: 90, longitudeDeg: 90, heightM: 0 }, 2026);
    expect(b.horizontalIntensityNt).toBeCloseTo(a.horizontalIntensityNt, 3);
    // North at 90 E points along the meridian of 90 W, against east at 0 E.
    expect(b.northNt).toBeCloseTo(-a.eastNt, 3);
    expect(b.eastNt).toBeCloseTo(a.northNt, 3);
    expect(b.downNt).toBeCloseTo(a.downNt, 6);
  });

  test('every number is finite, and each batch row equals the scalar bit for bit', () => {
    const rows: { la: number; lo: number; y: number }[] = [];
    fc.assert(
      fc.property(latitude, longitude, year, (la, lo, y) => {
        rows.push({ la, lo, y });
        const field = magneticField({ latitudeDeg: la, longitudeDeg: lo, heightM: 500 }, y);
        for (const value of Object.values(field))
          if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      }),
      { numRuns: runs(1000) },
    );
    const out = { declinationDeg: new Float64Array(rows.length) };
    const columns = declinationBatch(
      {
        latitudeDeg: rows.map((row) => row.la),
        longitudeDeg: rows.map((row) => row.lo),
        heightM: 500,
        decimalYear: rows.map((row) => row.y),
      },
      out,
    );
    expect(columns.declinationDeg).toBe(out.declinationDeg);
    rows.forEach(({ la, lo, y }, row) => {
      const field = magneticField({ latitudeDeg: la, longitudeDeg: lo, heightM: 500 }, y);
      expect(Object.is(columns.declinationDeg[row], field.declinationDeg)).toBe(true);
      expect(columns.declinationStandardUncertaintyDeg[row]).toBe(
        field.declinationStandardUncertaintyDeg,
      );
      expect(columns.horizontalIntensityNt[row]).toBe(field.horizontalIntensityNt);
    });
  });

  test.each([
    ['latitudeDeg', { latitudeDeg: 116, longitudeDeg: 46, heightM: 0 }, 2026, 'out-of-range'],
    ['longitudeDeg', { latitudeDeg: 0, longitudeDeg: Number.NaN, heightM: 0 }, 2026, 'not-finite'],
    ['decimalYear', { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 }, 26, 'out-of-range'],
    ['decimalYear', { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 }, Number.NaN, 'not-finite'],
  ])('refuses a bad %s', (parameter, station, decimalYear, code) => {
    const call = () => magneticField(station, decimalYear);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });

  test('a bad row is named', () => {
    expect(() =>
      declinationBatch({
        latitudeDeg: [1, 2, 95],
        longitudeDeg: 0,
        heightM: 0,
        decimalYear: 2026,
      }),
    ).toThrow(expect.objectContaining({ parameter: 'latitudeDeg', index: 2 }));
  });
});

test('decimal years: leap years have 366 days', () => {
  expect(instantToDecimalYear('2025-01-01')).toBe(2025);
  expect(instantToDecimalYear('2025-07-02T12:00:00Z')).toBe(2025.5);
  expect(instantToDecimalYear('2028-07-02')).toBe(2028.5);
  expect(instantToDecimalYear(Date.UTC(2027, 11, 31, 12))).toBeCloseTo(2027 + 364.5 / 365, 12);
});

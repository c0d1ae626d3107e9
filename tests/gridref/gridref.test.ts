import fc from 'fast-check';
import {
  coordinatesToMgrs,
  coordinatesToPlusCode,
  mgrsToCoordinates,
  type PlusCodeLength,
  plusCodeToCoordinates,
} from 'slantpath/gridref';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const encoding = referenceTable('gridref/plus-code-encoding.csv');
const short = referenceTable('gridref/plus-code-short.csv');
const mgrs = referenceTable('gridref/mgrs.csv');

describe('plus codes', () => {
  test('every encoding case of the specification', () => {
    expect(encoding.length).toBe(48);
    for (const row of encoding) {
      const place = {
        latitudeDeg: cell(row, 'latitude_deg'),
        longitudeDeg: cell(row, 'longitude_deg'),
      };
      const length = cell(row, 'length') as PlusCodeLength;
      expect(coordinatesToPlusCode({ ...place, length })).toBe(row['code']);
    }
  });

  test('every short code leads back', () => {
    expect(short.length).toBe(13);
    for (const row of short) {
      const near = {
        latitudeDeg: cell(row, 'near_latitude_deg'),
        longitudeDeg: cell(row, 'near_longitude_deg'),
      };
      expect(plusCodeToCoordinates(row['short_code'] ?? '', near)).toEqual(
        plusCodeToCoordinates(row['code'] ?? ''),
      );
    }
  });

  test('the cell holds the place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 89.9, noNaN: true }),
        fc.double({ min: -180, max: 179.9, noNaN: true }),
        (latitudeDeg, longitudeDeg) => {
          const area = plusCodeToCoordinates(coordinatesToPlusCode({ latitudeDeg, longitudeDeg }));
          expect(Math.abs(area.latitudeDeg - latitudeDeg)).toBeLessThanOrEqual(6.25001e-5);
          expect(Math.abs(area.longitudeDeg - longitudeDeg)).toBeLessThanOrEqual(6.25001e-5);
          expect(area.latitudeSpanDeg).toBeCloseTo(1 / 8000, 10);
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  test.each([
    ['8FRFCJ2222', 'code', /plus sign/],
    ['8FRFCJ22+2', 'code', /plus code/],
    ['AAAA+22', 'code', /plus code/],
    ['', 'code', /plus code/],
    ['CJ22+22', 'near', /near the short code/],
    [undefined, 'code', /plus code/],
  ])('refuses %j', (code, parameter, message) => {
    const call = () => plusCodeToCoordinates(code as string);
    expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
    expect(call).toThrow(message);
  });

  test('refuses a bad place or length', () => {
    expect(() => coordinatesToPlusCode({ latitudeDeg: 95, longitudeDeg: 0 })).toThrow(
      expect.objectContaining({ parameter: 'latitudeDeg' }),
    );
    expect(() =>
      coordinatesToPlusCode({ latitudeDeg: 5, longitudeDeg: 0, length: 9 as never }),
    ).toThrow(expect.objectContaining({ parameter: 'length', code: 'not-an-option' }));
  });
});

/** Square, easting and northing of a reference of ten digits. */
function partsOf(reference: string) {
  const match = /^(\d{1,2}[A-Z]{3})(\d{5})(\d{5})$/.exec(reference);
  return {
    square: match?.[1]?.padStart(5, '0') ?? '',
    eastingM: Number(match?.[2]),
    northingM: Number(match?.[3]),
  };
}

publishedTable({
  part: 'gridref',
  quantity: 'MGRS easting and northing',
  unit: 'm',
  source: "UTM by Krueger's series in 40 digits",
  status: 'recomputed',
  limit: 0.51,
  reason: 'digits are cut off at whole metres: the middle of the cell is compared',
  count: 100,
  cases: () =>
    mgrs.flatMap((row) => {
      const reference = coordinatesToMgrs({
        latitudeDeg: cell(row, 'latitude_deg'),
        longitudeDeg: cell(row, 'longitude_deg'),
      });
      const parts = partsOf(reference);
      expect(parts.square).toBe(row['square']);
      const name = `${row['latitude_deg']} ${row['longitude_deg']}`;
      return [
        { name: `${name} E`, expected: cell(row, 'easting_m'), got: parts.eastingM + 0.5 },
        { name: `${name} N`, expected: cell(row, 'northing_m'), got: parts.northingM + 0.5 },
      ];
    }),
});

describe('MGRS', () => {
  test('the cell of a reference holds the place, at each number of digits', () => {
    for (const row of mgrs)
      for (const digits of [5, 4, 3, 2, 1] as const) {
        const latitudeDeg = cell(row, 'latitude_deg');
        const longitudeDeg = cell(row, 'longitude_deg');
        const area = mgrsToCoordinates(coordinatesToMgrs({ latitudeDeg, longitudeDeg, digits }));
        const tolerance = 10 ** -digits + 2e-5;
        expect(Math.abs(area.latitudeDeg - latitudeDeg)).toBeLessThan(tolerance);
        const turn = ((area.longitudeDeg - longitudeDeg + 540) % 360) - 180;
        expect(Math.abs(turn) * Math.cos((latitudeDeg * Math.PI) / 180)).toBeLessThan(tolerance);
      }
  });

  test('spaces and small letters', () => {
    expect(mgrsToCoordinates('32t ns 46123 38666')).toEqual(mgrsToCoordinates('32TNS4612338666'));
  });

  test.each([
    '32TNS123',
    '61TNS1212',
    '32INS1212',
    '32TNO1212',
    'NS1212',
    '',
    '46.4',
    '32TAA5050',
    undefined,
  ])('refuses %j', (text) => {
    expect(() => mgrsToCoordinates(text as string)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'reference' }),
    );
  });

  test('any text gives a place or a DomainError', () => {
    const signs = [...'0123456789CDEFGHJKLMNPQRSTUVWX '];
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...signs), { maxLength: 14 }).map((list) => list.join('')),
        (text) => {
          for (const read of [mgrsToCoordinates, plusCodeToCoordinates])
            try {
              const { latitudeDeg, longitudeDeg } = read(text);
              expect(Number.isFinite(latitudeDeg) && Number.isFinite(longitudeDeg)).toBe(true);
            } catch (error) {
              expect((error as Error).name).toBe('DomainError');
            }
        },
      ),
      { numRuns: runs(5000) },
    );
    for (let zone = 1; zone <= 60; zone += 7)
      for (const band of 'CGNSX')
        for (const column of 'AHJRSZ')
          for (const row of 'AFLV')
            try {
              const { latitudeDeg } = mgrsToCoordinates(`${zone}${band}${column}${row}5050`);
              expect(Math.abs(latitudeDeg) <= 90).toBe(true);
            } catch (error) {
              expect((error as Error).name).toBe('DomainError');
            }
  });

  test('refuses the polar regions and bad digits', () => {
    expect(() => coordinatesToMgrs({ latitudeDeg: 85, longitudeDeg: 0 })).toThrow(
      expect.objectContaining({ parameter: 'latitudeDeg', code: 'out-of-range' }),
    );
    expect(() =>
      coordinatesToMgrs({ latitudeDeg: 5, longitudeDeg: 0, digits: 6 as never }),
    ).toThrow(expect.objectContaining({ parameter: 'digits' }));
  });
});

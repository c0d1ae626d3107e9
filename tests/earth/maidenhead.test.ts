import fc from 'fast-check';
import { coordinatesToMaidenhead, maidenheadToCoordinates } from 'slantpath/earth';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

describe('Maidenhead locators', () => {
  // Examples usually printed with the system (from memory), borne out by the arithmetic of 20 by 10 degrees, 2 by 1 degree, 5 by 2.5 minutes.
  test.each([
    [48.14666, 11.60833, 'JN58TD'],
    [-34.91, -56.21166, 'GF15VC'],
    [38.92, -77.065, 'FM18LW'],
    [-41.28333, 174.745, 'RE78IR'],
    [41.714775, -72.72726, 'FN31PR'],
    [37.413708, -122.1073236, 'CM87WJ'],
    [0, 0, 'JJ00AA'],
    [-90, -180, 'AA00AA'],
    [90, 179.99, 'RR99XX'],
  ])('%d %d is %s', (latitudeDeg, longitudeDeg, locator) => {
    expect(coordinatesToMaidenhead({ latitudeDeg, longitudeDeg })).toBe(locator);
    const cell = maidenheadToCoordinates(locator.toLowerCase());
    expect(Math.abs(cell.latitudeDeg - latitudeDeg)).toBeLessThanOrEqual(
      cell.latitudeSpanDeg / 2 + 1e-12,
    );
    expect(Math.abs(cell.longitudeDeg - longitudeDeg)).toBeLessThanOrEqual(
      cell.longitudeSpanDeg / 2 + 1e-12,
    );
  });

  test('each length: the size of the cell, and back', () => {
    const place = { latitudeDeg: 46.4, longitudeDeg: 9.6 };
    expect(coordinatesToMaidenhead({ ...place, length: 2 })).toBe('JN');
    expect(coordinatesToMaidenhead({ ...place, length: 4 })).toBe('JN46');
    expect(maidenheadToCoordinates('JN')).toEqual({
      latitudeDeg: 45,
      longitudeDeg: 10,
      latitudeSpanDeg: 10,
      longitudeSpanDeg: 20,
    });
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -720, max: 720, noNaN: true }),
        fc.constantFrom(2, 4, 6, 8, 10),
        (latitudeDeg, longitudeDeg, length) => {
          const locator = coordinatesToMaidenhead({ latitudeDeg, longitudeDeg, length });
          expect(locator.length).toBe(length);
          const cell = maidenheadToCoordinates(locator);
          expect(Math.abs(cell.latitudeDeg - latitudeDeg)).toBeLessThanOrEqual(
            cell.latitudeSpanDeg / 2 + 1e-9,
          );
          const again = coordinatesToMaidenhead({ ...cell, length });
          expect(again).toBe(locator);
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  test.each(['JN4', 'ZZ00', 'JN46ZZ', '', '46.4', 'JN46TJ5', undefined, 7])(
    'refuses %j',
    (text) => {
      expect(() => maidenheadToCoordinates(text as string)).toThrow(
        expect.objectContaining({ parameter: 'locator' }),
      );
    },
  );

  test('refuses a length that is none', () => {
    expect(() =>
      coordinatesToMaidenhead({ latitudeDeg: 1, longitudeDeg: 1, length: 5 as never }),
    ).toThrow(expect.objectContaining({ parameter: 'length', code: 'not-an-option' }));
  });
});

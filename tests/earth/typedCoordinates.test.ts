import fc from 'fast-check';
import { coordinatesToText, textToCoordinates } from 'slantpath/earth';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

/** The place meant by all of these: 46 24' N, 9 36' E. */
const SAME_PLACE = [
  '46.4, 9.6',
  '46.4,9.6',
  '46.4 9.6',
  '46.4; 9.6',
  '46.4/9.6',
  '46.4\n9.6',
  '46.4\t9.6',
  '(46.4, 9.6)',
  '+46.4+009.6/',
  '46,4 9,6',
  '46,4; 9,6',
  '46,4, 9,6',
  '46,4 N; 9,6 E',
  '46,4N9,6E',
  '46.4N 9.6E',
  '46.4n 9.6e',
  'N46.4 E9.6',
  'E 9.6 N 46.4',
  '9.6 E, 46.4 N',
  '46.4° N, 9.6° E',
  '46.4º 9.6º',
  '46.4 north 9.6 east',
  'lat 46.4 lon 9.6',
  'lon: 9.6, lat: 46.4',
  'Latitude: 46.4° N, Longitude: 9.6° E',
  '46 24 9 36',
  '46 24 N 9 36 E',
  'N 46 24 E 9 36',
  'N 46° 24.000′ E 009° 36.000′',
  "46° 24' N 9° 36' E",
  '46°24′N9°36′E',
  '46 deg 24 min N 9 deg 36 min E',
  '46-24N 9-36E',
  '46 24,0 9 36,0',
  '46 24 0 9 36 0',
  '46:24:00 9:36:00',
  '46° 24\' 0" N, 9° 36\' 0" E',
  "46° 24' 0'' N, 9° 36' 0'' E",
  '46°24’0.0”N 9°36’0.0”E',
  '46 24 00.0 N, 9.6 E',
];

describe('typed coordinates', () => {
  test.each(SAME_PLACE)('%j', (text) => {
    const { latitudeDeg, longitudeDeg } = textToCoordinates(text);
    expect([latitudeDeg, longitudeDeg]).toEqual([46.4, 9.6]);
  });

  test.each([
    ['-33.8688 151.2093', -33.8688, 151.2093],
    ['33,8688 S 151,2093 E', -33.8688, 151.2093],
    ['−0.4, 102', -0.4, 102],
    ['S 0 24 E 102', -0.4, 102],
    ['-0 24, -0 30', -0.4, -0.5],
    ['0 30 W 0 24 S', -0.4, -0.5],
    ['46.5-009.6', 46.5, -9.6],
    ['10, 183', 10, -177],
    ['10 N 180 E', 10, -180],
    ['90 N 0 E', 90, 0],
  ])('%s', (text, latitudeDeg, longitudeDeg) => {
    expect(textToCoordinates(text)).toMatchObject({ latitudeDeg, longitudeDeg });
  });

  test('notation and the worth of the last digit', () => {
    expect(textToCoordinates('46.512 9.6')).toMatchObject({
      notation: 'decimal',
      latitudeStepDeg: 0.001,
      longitudeStepDeg: 0.1,
    });
    const minutes = textToCoordinates('46 24.5 9 36');
    expect(minutes.notation).toBe('degrees-minutes');
    expect(minutes.latitudeStepDeg).toBeCloseTo(1 / 600, 15);
    expect(textToCoordinates('46 24 15 9 36 0').notation).toBe('degrees-minutes-seconds');
    expect(textToCoordinates('JN46TJ')).toMatchObject({
      notation: 'maidenhead',
      longitudeDeg: 9.625,
    });
  });

  test.each([
    ['46,9', 'malformed', /decimal mark/],
    ['46,5,9,6', 'malformed', /decimal mark/],
    ['46,5 9', 'malformed', /decimal mark/],
    ['46 30 9', 'malformed', /second coordinate begin/],
    ['46.4 N 9.6', 'malformed', /lack its letter/],
    ['46 N 9 O', 'malformed', /east or west/],
    ['-46 N 9 E', 'malformed', /sign and a letter/],
    ['5123456 321456', 'malformed', /map grid/],
    ['46 N 9 N', 'malformed', /coordinates such as/],
    ['46', 'malformed', /coordinates such as/],
    ['hut 3', 'malformed', /coordinates such as/],
    ['46.4.1 9.6', 'malformed', /coordinates such as/],
    ["46' 24° N 9 E", 'malformed', /coordinates such as/],
    ['46.5 30 N 9 E', 'malformed', /coordinates such as/],
    ['46 75 9 36', 'out-of-range', /below 60/],
    ['46 24 60 9 36 0', 'out-of-range', /seconds/],
    ['151.2, -33.9', 'out-of-range', /swapped/],
    ['10, 400', 'out-of-range', /longitudeDeg/],
    ['   ', 'malformed', /1 to 200/],
    ['', 'empty', /1 to 200/],
    ['1'.repeat(300), 'malformed', /1 to 200/],
    [undefined, 'missing', /1 to 200/],
    [46.4, 'malformed', /1 to 200/],
  ])('refuses %j', (text, code, message) => {
    const call = () => textToCoordinates(text as string);
    expect(call).toThrow(expect.objectContaining({ name: 'DomainError', code }));
    expect(call).toThrow(message);
  });

  test('any text gives a place or a DomainError', () => {
    const signs = [...'0123456789 .,;:+-°\'"NSEWnsewo/\nxyzABR'];
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...signs), { maxLength: 30 }).map((list) => list.join('')),
        (text) => {
          try {
            const { latitudeDeg, longitudeDeg } = textToCoordinates(text);
            expect(Math.abs(latitudeDeg) <= 90).toBe(true);
            expect(longitudeDeg >= -180 && longitudeDeg < 180).toBe(true);
          } catch (error) {
            expect((error as Error).name).toBe('DomainError');
          }
        },
      ),
      { numRuns: runs(20000) },
    );
  });
});

describe('coordinates written out', () => {
  const hut = { latitudeDeg: 46.4, longitudeDeg: -9.6 };

  test('each notation', () => {
    expect(coordinatesToText(hut)).toBe('46.40000° N, 9.60000° W');
    expect(coordinatesToText({ ...hut, notation: 'degrees-minutes' })).toBe(
      "46° 24.000' N, 9° 36.000' W",
    );
    expect(coordinatesToText({ ...hut, notation: 'degrees-minutes-seconds', decimals: 0 })).toBe(
      '46° 24\' 00" N, 9° 36\' 00" W',
    );
  });

  test('rounding carries over, 60 never appears', () => {
    const edge = { latitudeDeg: -59.99999999, longitudeDeg: 179.99999999 };
    expect(coordinatesToText({ ...edge, notation: 'degrees-minutes' })).toBe(
      "60° 00.000' S, 180° 00.000' E",
    );
    expect(coordinatesToText({ ...edge, notation: 'degrees-minutes-seconds' })).toBe(
      '60° 00\' 00.0" S, 180° 00\' 00.0" E',
    );
  });

  test('what is written is read back to half a step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 179.9, noNaN: true }),
        fc.constantFrom('decimal', 'degrees-minutes', 'degrees-minutes-seconds'),
        fc.integer({ min: 0, max: 6 }),
        (latitudeDeg, longitudeDeg, notation, decimals) => {
          const back = textToCoordinates(
            coordinatesToText({ latitudeDeg, longitudeDeg, notation, decimals }),
          );
          expect(back.notation).toBe(notation);
          const half = 0.5 * back.latitudeStepDeg + 1e-12;
          expect(Math.abs(back.latitudeDeg - latitudeDeg)).toBeLessThanOrEqual(half);
          const turn = ((back.longitudeDeg - longitudeDeg + 540) % 360) - 180;
          expect(Math.abs(turn)).toBeLessThanOrEqual(half);
        },
      ),
      { numRuns: runs(3000) },
    );
  });

  test.each([
    [{ latitudeDeg: 91, longitudeDeg: 0 }, 'latitudeDeg', 'out-of-range'],
    [{ latitudeDeg: 1, longitudeDeg: Number.NaN }, 'longitudeDeg', 'not-finite'],
    [{ latitudeDeg: 1, longitudeDeg: 1, notation: 'grads' }, 'notation', 'not-an-option'],
    [{ latitudeDeg: 1, longitudeDeg: 1, decimals: 12 }, 'decimals', 'out-of-range'],
    [{ latitudeDeg: 1, longitudeDeg: 1, decimals: 1.5 }, 'decimals', 'out-of-range'],
  ])('refuses %j', (place, parameter, code) => {
    expect(() => coordinatesToText(place as never)).toThrow(
      expect.objectContaining({ parameter, code }),
    );
  });
});

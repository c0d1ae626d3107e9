import fc from 'fast-check';
import {
  dbmToDbmv,
  dbmToDbuv,
  dbmvToDbm,
  dbmvToDbuv,
  dbuvToDbm,
  dbuvToDbmv,
} from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'distribution',
  quantity: 'level of one milliwatt',
  unit: 'dB',
  source: 'definition of dBuV and dBmV, recomputed',
  status: 'recomputed',
  limit: 5e-5,
  reason: 'four decimals are printed for 50 ohm',
  count: 3,
  cases: () => [
    { name: '75 ohm, dBuV', expected: 108.750613, got: dbmToDbuv(0), limit: 5e-7 },
    { name: '50 ohm, dBuV', expected: 106.9897, got: dbmToDbuv(0, { impedanceOhm: 50 }) },
    { name: '75 ohm, dBmV', expected: 48.750613, got: dbmToDbmv(0), limit: 5e-7 },
  ],
});

publishedTable({
  part: 'distribution',
  quantity: 'outlet limits in dBm',
  unit: 'dB',
  source: 'EN 60728-1 satellite limits 47 and 77 dBuV, as printed in dBm in texts of the trade',
  status: 'published',
  limit: 0.005,
  reason: 'two decimals are printed',
  count: 2,
  cases: () => [
    { name: 'lower', expected: -61.75, got: dbuvToDbm(47) },
    { name: 'upper', expected: -31.75, got: dbuvToDbm(77) },
  ],
});

const level = fc.double({ min: -200, max: 200, noNaN: true });

describe('units of level', () => {
  test('each conversion undoes its inverse', () => {
    fc.assert(
      fc.property(level, fc.double({ min: 1, max: 600, noNaN: true }), (value, impedanceOhm) => {
        const impedance = { impedanceOhm };
        expect(dbuvToDbm(dbmToDbuv(value, impedance), impedance)).toBeCloseTo(value, 10);
        expect(dbmvToDbm(dbmToDbmv(value, impedance), impedance)).toBeCloseTo(value, 10);
        expect(dbmvToDbuv(dbuvToDbmv(value))).toBeCloseTo(value, 10);
        expect(dbuvToDbmv(dbmToDbuv(value, impedance))).toBeCloseTo(
          dbmToDbmv(value, impedance),
          10,
        );
      }),
    );
  });

  test('a microvolt across 75 ohm is V squared over R', () => {
    expect(dbuvToDbm(0)).toBeCloseTo(10 * Math.log10((1e-6 * 1e-6) / 75 / 1e-3), 12);
  });

  test.each([
    [() => dbmToDbuv(Number.NaN), 'levelDbm', 'not-finite'],
    [() => dbmToDbuv(0, { impedanceOhm: 0 }), 'impedanceOhm', 'out-of-range'],
    [() => dbuvToDbm('47' as unknown as number), 'levelDbuv', 'not-a-number'],
    [() => dbmvToDbm(0, { impedanceOhm: -75 }), 'impedanceOhm', 'out-of-range'],
  ])('refuses bad input %#', (call, parameter, code) => {
    expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter, code }));
  });
});

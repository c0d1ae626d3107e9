import { expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import { combineCarrierRatios } from '../../src/link/index.js';
import { denseAt, inRow, outColumn, rowCount, valueAt } from '../../src/numeric/columns.js';
import { sumPowerDbm } from '../../src/numeric/decibel.js';

test('a single number counts for every row', () => {
  expect(rowCount({ a: 1, b: 2 })).toBe(1);
  expect(rowCount({ a: 1, b: [5, 6, 7] })).toBe(3);
  expect([inRow(1, 2), inRow([5, 6, 7], 2)]).toEqual([1, 7]);
});

test.each([
  [{ a: [1, 2], b: [1] }, 'b', 'length-mismatch'],
  [{ a: [] }, 'a', 'empty'],
  [{ a: undefined as never }, 'a', 'missing'],
  [{ a: '12' as never }, 'a', 'malformed'],
])('refuses columns that do not fit: %j', (columns, parameter, code) => {
  expect(() => rowCount(columns)).toThrow(expect.objectContaining({ parameter, code }));
});

test('a result column is made or reused, never cut', () => {
  const own = new Float64Array(3);
  expect(outColumn('out', own, 3)).toBe(own);
  expect(outColumn('out', undefined, 2)).toHaveLength(2);
  expect(() => outColumn('out', own, 4)).toThrow(
    expect.objectContaining({ code: 'length-mismatch' }),
  );
  expect(() => outColumn('out', [1, 2] as never, 2)).toThrow(
    expect.objectContaining({ code: 'malformed' }),
  );
});

test('a reading past the end stops, and a hole in a list of the caller is named with its row', () => {
  expect(valueAt([1, 2], 1)).toBe(2);
  expect(() => valueAt([1, 2], 2)).toThrow(RangeError);
  expect(() => denseAt(new Float64Array(2), 2)).toThrow(RangeError);
  const holed = [-60, undefined, -61] as number[];
  for (const call of [() => sumPowerDbm(holed), () => combineCarrierRatios(holed)])
    expect(call).toThrow(DomainError);
});

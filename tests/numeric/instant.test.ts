import { describe, expect, test } from 'vitest';
import { epochMsToIso, instantToEpochMs } from '../../src/numeric/instant.js';

describe('instants', () => {
  test.each([
    ['2026-03-02T10:08:07Z', Date.UTC(2026, 2, 2, 10, 8, 7)],
    ['2026-03-02T10:08:07.250Z', Date.UTC(2026, 2, 2, 10, 8, 7, 250)],
    ['2026-03-02T10:08Z', Date.UTC(2026, 2, 2, 10, 8)],
    ['2026-03-02', Date.UTC(2026, 2, 2)],
    ['2026-03-02T11:08:07+01:00', Date.UTC(2026, 2, 2, 10, 8, 7)],
    ['2026-03-02T05:38-0430', Date.UTC(2026, 2, 2, 10, 8)],
    ['2028-02-29', Date.UTC(2028, 1, 29)],
  ])('%s', (text, epochMs) => {
    expect(instantToEpochMs('instant', text)).toBe(epochMs);
  });

  test('a number is epoch milliseconds', () => {
    expect(instantToEpochMs('instant', 1772446087000)).toBe(1772446087000);
    expect(epochMsToIso(1772446087000)).toBe('2026-03-02T10:08:07.000Z');
  });

  test.each([
    ['2026-02-29', 'malformed'],
    ['2026-13-01', 'malformed'],
    ['2026-03-02T24:00Z', 'malformed'],
    ['2026-03-02T10:60Z', 'malformed'],
    ['2026-03-02T10:08:07', 'malformed'],
    ['2.3.2026', 'malformed'],
    ['', 'malformed'],
    [Number.NaN, 'not-finite'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
    [1772446087000000, 'out-of-range'],
    [undefined, 'missing'],
    [null, 'missing'],
    [new Date(0), 'not-a-number'],
  ])('refuses %s', (instant, code) => {
    expect(() => instantToEpochMs('from', instant as never)).toThrow(
      expect.objectContaining({ parameter: 'from', code }),
    );
  });

  test('a time without a zone is told so', () => {
    expect(() => instantToEpochMs('from', '2026-03-02T10:08')).toThrow(/end it with Z/);
  });
});

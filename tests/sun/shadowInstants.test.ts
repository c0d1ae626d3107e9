import fc from 'fast-check';
import { shadowInstants, sunDirection } from 'slantpath/sun';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('sun/shadow-instants.csv');
const found = (row: CsvRow) =>
  shadowInstants({
    station: {
      latitudeDeg: cell(row, 'latitude_deg'),
      longitudeDeg: cell(row, 'longitude_deg'),
      heightM: cell(row, 'height_m'),
    },
    azimuthDeg: cell(row, 'azimuth_deg'),
    day: row['day'] ?? '',
  }).find((one) => one.pointer === row['pointer']);
const source = 'roots of the IAU 2006/2000A recomputation';

for (const [quantity, unit, limit, reason] of [
  ['shadow instant', 's', 1, 'the ephemerides differ by 0.3 seconds of arc'],
  ['error of the bearing per minute', 'deg/min', 5e-5, 'last digits'],
] as const)
  publishedTable({
    part: 'sun',
    quantity,
    unit,
    source,
    status: 'recomputed',
    limit,
    reason,
    count: rows.length,
    cases: () =>
      rows.map((row) => {
        const one = found(row);
        return {
          name: `${row['day']} ${row['latitude_deg']} ${row['azimuth_deg']}`,
          expected:
            unit === 's'
              ? Date.parse(row['instant_utc'] ?? '') / 1000
              : cell(row, 'azimuth_change_deg_per_min'),
          got:
            unit === 's'
              ? Date.parse(one?.instantUtc ?? '') / 1000
              : (one?.errorDegPerMin ?? Number.NaN),
        };
      }),
  });

describe('north by the shadow', () => {
  test('at each instant the Sun stands over the bearing or opposite', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -66, max: 66, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true }),
        fc.integer({ min: 0, max: 365 }),
        (latitudeDeg, longitudeDeg, azimuthDeg, dayOfYear) => {
          const station = { latitudeDeg, longitudeDeg, heightM: 0 };
          const day = new Date(Date.UTC(2028, 0, 1 + dayOfYear)).toISOString().slice(0, 10);
          for (const one of shadowInstants({ station, azimuthDeg, day })) {
            const sun = sunDirection(station, { instant: one.instantUtc });
            if (sun.kind === 'overhead') continue;
            const wanted = one.pointer === 'sun' ? azimuthDeg : azimuthDeg + 180;
            const turn = ((sun.azimuthDeg - wanted + 900) % 360) - 180;
            expect(Math.abs(turn) * Math.cos((sun.elevationDeg * Math.PI) / 180)).toBeLessThan(
              1e-4,
            );
            expect(sun.apparentElevationDeg).toBeCloseTo(one.sunElevationDeg, 3);
            expect(one.sunElevationDeg >= 5 && one.errorDegPerMin >= 0).toBe(true);
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  test('nothing in the polar night', () => {
    const station = { latitudeDeg: 75, longitudeDeg: 20, heightM: 0 };
    expect(shadowInstants({ station, azimuthDeg: 180, day: '2026-12-21' })).toEqual([]);
  });

  test.each([
    [{ day: '2026-06-31' }, 'day'],
    [{ day: '2026-06-10T10:00Z' }, 'day'],
    [{ day: 20260610 }, 'day'],
    [{ azimuthDeg: Number.NaN }, 'azimuthDeg'],
    [{ minimumElevationDeg: 70 }, 'minimumElevationDeg'],
    [{ station: undefined }, 'station'],
  ])('refuses %j', (change, parameter) => {
    const good = {
      station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 0 },
      azimuthDeg: 170,
      day: '2026-06-10',
    };
    expect(() => shadowInstants({ ...good, ...change } as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    );
  });
});

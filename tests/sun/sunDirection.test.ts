import fc from 'fast-check';
import { solarTime, sunDirection } from 'slantpath/sun';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const example = referenceTable('sun/spa-example.csv');
const independent = referenceTable('sun/sun-direction-iau2006.csv');

publishedTable({
  part: 'sun',
  quantity: 'direction of the Sun, worked example',
  unit: 'deg (equation of time: min)',
  source: 'NREL/TP-560-34302 (2008), Appendix A.5',
  status: 'published',
  limit: 0.0005,
  reason: 'the ephemerides differ by 0.3 seconds of arc; refraction to its last digit',
  count: 8,
  cases: () => {
    const place = { latitudeDeg: 39.742476, longitudeDeg: -105.1786, heightM: 1830.14 };
    const instant = '2003-10-17T19:30:30Z';
    const sun = sunDirection(place, { instant, pressureHpa: 820, temperatureK: 284.15 });
    if (sun.kind !== 'above-horizon') throw new Error('not above the horizon');
    const got: Record<string, number> = {
      'topocentric azimuth': sun.azimuthDeg,
      'elevation without refraction': sun.elevationDeg,
      refraction: sun.refractionDeg,
      elevation: sun.apparentElevationDeg,
      'topocentric right ascension': sun.rightAscensionDeg,
      'topocentric declination': sun.sunDeclinationDeg,
      'topocentric hour angle': sun.hourAngleDeg,
      'equation of time': solarTime(place, instant).equationOfTimeMin,
    };
    return example.map((row) => ({
      name: row['quantity'] ?? '',
      expected: cell(row, 'value'),
      got: got[row['quantity'] ?? ''] ?? Number.NaN,
      limit: cell(row, 'limit'),
    }));
  },
});

const sunOf = (row: CsvRow) =>
  sunDirection(
    {
      latitudeDeg: cell(row, 'latitude_deg'),
      longitudeDeg: cell(row, 'longitude_deg'),
      heightM: cell(row, 'height_m'),
    },
    { instant: row['instant_utc'] ?? '' },
  );

publishedTable({
  part: 'sun',
  quantity: 'angle between the Sun given and the Sun recomputed',
  unit: 'deg',
  source: 'IAU 2006/2000A reduction (IAU SOFA routines), 300 cases of 2024 to 2035',
  status: 'recomputed',
  limit: 0.001,
  reason: 'a tenth of what a shadow shows; UTC is taken for UT1 on both sides',
  count: 300,
  cases: () =>
    independent.map((row) => {
      const sun = sunOf(row);
      if (sun.kind === 'overhead') throw new Error('overhead');
      const radians = Math.PI / 180;
      const east = (sun.azimuthDeg - cell(row, 'azimuth_deg')) * radians;
      const across = Math.sin(east) * Math.cos(sun.elevationDeg * radians);
      const up = (sun.elevationDeg - cell(row, 'elevation_deg')) * radians;
      return {
        name: `${row['instant_utc']} ${row['latitude_deg']}`,
        expected: 0,
        got: Math.hypot(across, up) / radians,
      };
    }),
});

publishedTable({
  part: 'sun',
  quantity: 'equation of time',
  unit: 'min',
  source: 'IAU 2006/2000A reduction (IAU SOFA routines), 2028',
  status: 'recomputed',
  limit: 0.003,
  reason: 'a fifth of a second',
  count: 24,
  cases: () =>
    referenceTable('sun/equation-of-time.csv').map((row) => ({
      name: row['instant_utc'] ?? '',
      expected: cell(row, 'equation_of_time_min'),
      got: solarTime({ latitudeDeg: 50, longitudeDeg: 179.9, heightM: 0 }, row['instant_utc'] ?? '')
        .equationOfTimeMin,
    })),
});

const station = fc.record({
  latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  longitudeDeg: fc.double({ min: -720, max: 720, noNaN: true }),
  heightM: fc.double({ min: -400, max: 9000, noNaN: true }),
});
const instant = fc.integer({ min: Date.UTC(1900, 0, 1), max: Date.UTC(2100, 11, 31) });

describe('direction of the Sun', () => {
  test('every number finite and in its interval', () => {
    fc.assert(
      fc.property(station, instant, (place, epochMs) => {
        const sun = sunDirection(place, { instant: epochMs });
        for (const value of Object.values(sun))
          if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        expect(sun.refractionDeg >= 0 && sun.refractionDeg < 1).toBe(true);
        expect(Math.abs(sun.sunDeclinationDeg)).toBeLessThan(23.5);
        expect(sun.angularRadiusDeg > 0.262 && sun.angularRadiusDeg < 0.2715).toBe(true);
        if (sun.kind !== 'overhead') expect(sun.azimuthDeg >= 0 && sun.azimuthDeg < 360).toBe(true);
      }),
      { numRuns: runs(3000) },
    );
  });

  test('text and epoch milliseconds are the same instant; a full turn changes nothing', () => {
    const place = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
    const sun = sunDirection(place, { instant: '2026-03-02T11:30:00Z' });
    expect(sunDirection(place, { instant: Date.UTC(2026, 2, 2, 11, 30) })).toEqual(sun);
    const turned = sunDirection(
      { ...place, longitudeDeg: 369.6 },
      { instant: '2026-03-02T11:30Z' },
    );
    expect(turned.elevationDeg).toBeCloseTo(sun.elevationDeg, 9);
  });

  test('the disc is 0.54196 degree wide in early January, 0.52415 in early July', () => {
    const place = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
    const width = (day: string) =>
      2 * sunDirection(place, { instant: `${day}T06:00Z` }).angularRadiusDeg;
    expect(width('2026-01-03')).toBeCloseTo(0.54196, 3);
    expect(width('2026-07-06')).toBeCloseTo(0.52415, 3);
  });

  test('thin air bends less', () => {
    const low = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
    const at = { instant: '2026-03-20T06:20:00Z' };
    const sea = sunDirection(low, at);
    const hill = sunDirection({ ...low, heightM: 4000 }, at);
    expect(sea.kind).toBe('above-horizon');
    expect(hill.refractionDeg / sea.refractionDeg).toBeCloseTo(0.61, 1);
  });

  test.each([
    [{ latitudeDeg: 91, longitudeDeg: 0, heightM: 0 }, { instant: 0 }, 'latitudeDeg'],
    [{ latitudeDeg: 1, longitudeDeg: 0, heightM: 0 }, { instant: 'noon' }, 'instant'],
    [{ latitudeDeg: 1, longitudeDeg: 0, heightM: 0 }, { instant: Number.NaN }, 'instant'],
    [
      { latitudeDeg: 1, longitudeDeg: 0, heightM: 0 },
      { instant: 0, temperatureK: 11 },
      'temperatureK',
    ],
    [
      { latitudeDeg: 1, longitudeDeg: 0, heightM: 0 },
      { instant: 0, pressureHpa: 82000 },
      'pressureHpa',
    ],
    [{ latitudeDeg: 1, longitudeDeg: 0, heightM: 0 }, undefined, 'at'],
  ])('refuses bad input %#', (place, at, parameter) => {
    expect(() => sunDirection(place, at as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    );
  });
});

describe('solar time', () => {
  test('at the meridian it is noon', () => {
    const place = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
    const time = solarTime(place, '2026-06-10T11:21:00Z');
    const { hourAngleDeg } = sunDirection(place, { instant: '2026-06-10T11:21:00Z' });
    expect(time.apparentSolarTimeH - 12).toBeCloseTo(hourAngleDeg / 15, 3);
    expect(time.meanSolarTimeH).toBeCloseTo(11.35 + 9.6 / 15, 9);
  });
});

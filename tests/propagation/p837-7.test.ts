import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { type MonthlyNormals, rainProbability, rainRate } from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const months = referenceTable('propagation/p837-7-monthly-inputs.csv');

function normalsOf(row: CsvRow): MonthlyNormals {
  const own = months.filter(
    (month) =>
      month['latitude_deg'] === row['latitude_deg'] &&
      month['longitude_deg'] === row['longitude_deg'],
  );
  return {
    monthlyRainMm: own.map((month) => cell(month, 'rain_total_mm')),
    monthlyTemperatureK: own.map((month) => cell(month, 'temperature_k')),
  };
}

const placeName = (row: CsvRow) => `${row['latitude_deg']} ${row['longitude_deg']}`;

publishedTable({
  part: 'propagation',
  quantity: 'probability of rain',
  unit: '%',
  source: 'ITU-R validation examples rev. 5.1, P.837-7',
  status: 'published',
  limit: 3e-8,
  reason: 'the monthly inputs were taken from maps in single precision',
  relative: true,
  count: 5,
  cases: () =>
    referenceTable('propagation/p837-7-rain-probability.csv').map((row) => ({
      name: placeName(row),
      expected: cell(row, 'p_rain_percent'),
      got: rainProbability(normalsOf(row)).rainProbabilityPercent,
    })),
});

publishedTable({
  part: 'propagation',
  quantity: 'rain rate',
  unit: 'mm/h',
  source: 'ITU-R validation examples rev. 5.1, P.837-7',
  status: 'published',
  limit: 1e-5,
  reason:
    'the recommendation stops its search at 0.001 % of the percentage; here the root is taken to the last digit',
  relative: true,
  count: 24,
  cases: () =>
    referenceTable('propagation/p837-7-rain-rate.csv').map((row) => ({
      name: `${placeName(row)} ${row['time_percent']} %`,
      expected: cell(row, 'rain_rate_mm_h'),
      got: rainRate({ ...normalsOf(row), exceededPercent: cell(row, 'time_percent') })
        .rainRateMmPerH,
    })),
});

publishedTable({
  part: 'propagation',
  quantity: 'rain rate at 0.01 % against the ready map',
  unit: 'mm/h',
  source: 'ITU-R validation examples rev. 5.1, P.837-7 map of 0.01 %',
  status: 'published',
  limit: 5e-4,
  reason:
    'the map was computed at nodes 0.125 degree apart and interpolated; here the months are interpolated and the rate computed',
  relative: true,
  count: 5,
  cases: () =>
    referenceTable('propagation/p837-7-rain-rate-r001.csv').map((row) => ({
      name: placeName(row),
      expected: cell(row, 'rain_rate_mm_h'),
      got: rainRate({ ...normalsOf(row), exceededPercent: 0.01 }).rainRateMmPerH,
    })),
});

const normals = fc.record({
  monthlyRainMm: fc.array(fc.double({ min: 0, max: 2000, noNaN: true }), {
    minLength: 12,
    maxLength: 12,
  }),
  monthlyTemperatureK: fc.array(fc.double({ min: 200, max: 320, noNaN: true }), {
    minLength: 12,
    maxLength: 12,
  }),
});
const percent = fc.double({ min: 1e-6, max: 100, noNaN: true });

describe('rain rate of P.837-7', () => {
  test('is finite, falls with the percentage and is 0 from the probability of rain on', () => {
    fc.assert(
      fc.property(normals, percent, percent, (months, p, q) => {
        const [rarer, oftener] = [Math.min(p, q), Math.max(p, q)];
        const heavy = rainRate({ ...months, exceededPercent: rarer });
        const light = rainRate({ ...months, exceededPercent: oftener });
        expect(Number.isFinite(heavy.rainRateMmPerH)).toBe(true);
        expect(heavy.rainRateMmPerH).toBeGreaterThanOrEqual(light.rainRateMmPerH * (1 - 1e-12));
        if (oftener >= light.rainProbabilityPercent) expect(light.rainRateMmPerH).toBe(0);
        for (const month of heavy.months)
          expect(month.rainProbabilityPercent).toBeLessThanOrEqual(70);
      }),
      { numRuns: 200 },
    );
  });

  test('the order of months of equal length does not matter', () => {
    const rain = [50, 40, 45, 60, 70, 20, 15, 10, 30, 80, 90, 70];
    const kelvin = [275, 276, 280, 284, 288, 292, 294, 293, 289, 284, 279, 276];
    const swapped = (list: number[]) =>
      list.map((value, month) => (month === 0 ? list[2] : month === 2 ? list[0] : value) as number);
    const rate = (monthlyRainMm: number[], monthlyTemperatureK: number[]) =>
      rainRate({ monthlyRainMm, monthlyTemperatureK, exceededPercent: 0.01 }).rainRateMmPerH;
    expect(rate(swapped(rain), swapped(kelvin))).toBeCloseTo(rate(rain, kelvin), 12);
  });

  test('rain that would fill more than 70 % of a month is made heavier instead', () => {
    const drowned = rainProbability({
      monthlyRainMm: new Array(12).fill(1500),
      monthlyTemperatureK: new Array(12).fill(280),
    });
    expect(drowned.months[0]?.rainProbabilityPercent).toBe(70);
    expect(drowned.months[0]?.meanRainRateMmPerH).toBeCloseTo(1500 / (0.7 * 24 * 31), 12);
  });

  const good = {
    monthlyRainMm: new Array(12).fill(50),
    monthlyTemperatureK: new Array(12).fill(285),
    exceededPercent: 0.01,
  };
  test.each([
    ['monthlyRainMm', { ...good, monthlyRainMm: [1, 2] }, 'length-mismatch', /twelve values/],
    ['monthlyRainMm', { ...good, monthlyRainMm: undefined }, 'missing', /twelve values/],
    ['monthlyRainMm', { ...good, monthlyRainMm: new Array(12).fill(-1) }, 'out-of-range', /\[0\]/],
    [
      'monthlyTemperatureK',
      { ...good, monthlyTemperatureK: new Array(12).fill(12) },
      'out-of-range',
      /is the temperature in kelvin/,
    ],
    ['exceededPercent', { ...good, exceededPercent: 0 }, 'out-of-range', /exceededPercent/],
    ['exceededPercent', { ...good, exceededPercent: Number.NaN }, 'not-finite', /exceededPercent/],
  ])('refuses a bad %s', (parameter, input, code, message) => {
    const call = () => rainRate(input as Parameters<typeof rainRate>[0]);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
    expect(call).toThrow(message);
  });
});

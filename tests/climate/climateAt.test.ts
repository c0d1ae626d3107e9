import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  type Climate,
  climateAt,
  climateFromGrid,
  RAIN_ZONES,
  rainZoneRate,
  SHIPPED_CLIMATE_GRID,
  waterAloftAt,
} from 'slantpath/climate';
import { rainRate, yearToYear } from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { SINGLE_YEAR_PERCENT_RATIO } from '../../src/climate/rainUncertainty.js';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const normals = {
  monthlyRainMm: [56, 39, 47, 47, 51, 52, 49, 56, 60, 62, 65, 62],
  monthlyTemperatureK: [278, 278, 280, 282, 285, 288, 290, 290, 288, 285, 281, 279],
};

/** Every number of a climate, with its path. */
function numbers(value: unknown, path = 'climate'): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => numbers(each, `${path}.${key}`));
}

describe('climate of a place', () => {
  test('everywhere all numbers are finite and in their range, and the result is plain data', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.double({ min: -400, max: 9000, noNaN: true }),
        (latitudeDeg, longitudeDeg, heightM) => {
          const climate = climateAt({ latitudeDeg, longitudeDeg, heightM });
          for (const [path, value] of numbers(climate)) {
            expect(Number.isFinite(value), path).toBe(true);
            expect(Object.is(value, -0), path).toBe(false);
          }
          expect(climate.longitudeDeg >= -180 && climate.longitudeDeg < 180).toBe(true);
          expect(climate.rainRate001MmPerH >= 0 && climate.rainRate001MmPerH < 160).toBe(true);
          expect(climate.rainProbabilityPercent).toBeLessThanOrEqual(70);
          expect(climate.rainHeightKm - climate.isothermHeightKm).toBeCloseTo(0.36, 12);
          for (const water of climate.waterAloft)
            expect(water.liquidWaterKgPerM2).toBeGreaterThanOrEqual(0);
          expect(JSON.parse(JSON.stringify(climate))).toEqual(climate);
        },
      ),
      { numRuns: 250 },
    );
  });

  test('a turn of longitude changes nothing; the date line and the poles are seams without a step', () => {
    const at = (latitudeDeg: number, longitudeDeg: number) =>
      climateAt({ latitudeDeg, longitudeDeg, heightM: 0 });
    expect(at(10, 183).rainRate001MmPerH).toBe(at(10, -177).rainRate001MmPerH);
    const step = (a: Climate, b: Climate) => Math.abs(a.rainRate001MmPerH - b.rainRate001MmPerH);
    expect(step(at(-17, 179.9999), at(-17, -179.9999))).toBeLessThan(0.01);
    expect(step(at(90, 0), at(90, 133))).toBe(0);
    expect(step(at(-90, 0), at(-90, 133))).toBeLessThan(0.2);
  });

  test('higher up there is less vapour, and rarer percentages have more', () => {
    const low = climateAt({ ...hut, heightM: 500 });
    const high = climateAt({ ...hut, heightM: 2500 });
    low.waterAloft.forEach((water, index) => {
      const above = high.waterAloft[index] as typeof water;
      expect(above.waterVapourContentKgPerM2).toBeLessThan(water.waterVapourContentKgPerM2);
      const rarer = low.waterAloft[index - 1];
      if (rarer)
        expect(rarer.waterVapourContentKgPerM2).toBeGreaterThan(water.waterVapourContentKgPerM2);
    });
    expect(low.waterAloft.map(({ exceededPercent }) => exceededPercent)).toEqual([5, 10, 20, 50]);
  });

  test('a kilometre up takes what the scale height says', () => {
    const clinic = { latitudeDeg: -0.4, longitudeDeg: 102 };
    const low = climateAt({ ...clinic, heightM: 0 }).waterAloft;
    const high = climateAt({ ...clinic, heightM: 1000 }).waterAloft;
    low.forEach((water, index) => {
      const part = (high[index]?.waterVapourContentKgPerM2 ?? 0) / water.waterVapourContentKgPerM2;
      expect(part * Math.exp(1 / water.vapourScaleHeightKm)).toBeCloseTo(1, 2);
    });
  });

  test('water between two percentages lies between theirs; beyond the list it is refused', () => {
    const climate = climateAt(hut);
    const [five, ten] = climate.waterAloft;
    const seven = waterAloftAt(climate, Math.sqrt(50));
    expect(seven.liquidWaterKgPerM2).toBeCloseTo(
      ((five?.liquidWaterKgPerM2 ?? 0) + (ten?.liquidWaterKgPerM2 ?? 0)) / 2,
      12,
    );
    for (const exceededPercent of [0.01, 4.99, 50.1])
      expect(() => waterAloftAt(climate, exceededPercent)).toThrow(
        expect.objectContaining({
          parameter: 'exceededPercent',
          received: exceededPercent,
          message: expect.stringContaining('5 to 50'),
        }),
      );
    expect(waterAloftAt(climate, 10)).toEqual(ten);
  });
});

describe('sources of rain', () => {
  test('measured before normals before the grid, and the result says which', () => {
    const measured = { rainRate001MmPerH: 44, years: 8 };
    const all = climateAt(hut, { measured, monthlyNormals: normals, rainZone: 'K' });
    expect([all.rainSource, all.rainRate001MmPerH]).toEqual(['measured', 44]);
    const second = climateAt(hut, { monthlyNormals: normals, rainZone: 'K' });
    expect(second.rainSource).toBe('monthly-normals');
    expect(second.rainRate001MmPerH).toBe(
      rainRate({ ...normals, exceededPercent: 0.01 }).rainRateMmPerH,
    );
    expect(climateAt(hut, { rainZone: 'K' }).rainSource).toBe('climate-grid');
    const zone = climateAt(hut, { rainZone: 'K', measured, use: 'rain-zone' });
    expect([zone.rainSource, zone.rainRate001MmPerH]).toEqual(['rain-zone', 42]);
  });

  test('a longer record is surer, a zone the least sure', () => {
    const spread = (local: Parameters<typeof climateAt>[1]) =>
      climateAt(hut, local).rainUncertainty.standardUncertaintyRatio;
    const years = (count: number) => spread({ measured: { rainRate001MmPerH: 30, years: count } });
    expect(years(20)).toBeLessThan(years(2));
    expect(years(10)).toBeLessThan(spread({}));
    expect(spread({ monthlyNormals: normals })).toBeLessThanOrEqual(spread({}));
    expect(spread({ rainZone: 'K', use: 'rain-zone' })).toBeGreaterThan(spread({}));
    for (const { terms, standardUncertaintyRatio } of [climateAt(hut).rainUncertainty])
      expect(Math.hypot(...terms.map((term) => term.standardUncertaintyRatio))).toBeCloseTo(
        standardUncertaintyRatio,
        12,
      );
  });

  test('the spread of single years at 0.01 % is that of P.678-3', () => {
    expect(
      yearToYear({ exceededPercent: 0.01, climaticRatio: 0.2 }).standardDeviationRatio,
    ).toBeCloseTo(SINGLE_YEAR_PERCENT_RATIO, 7);
  });

  test.each([
    ['measured', { use: 'measured' }],
    ['monthlyNormals', { use: 'monthly-normals' }],
    ['rainZone', { use: 'rain-zone' }],
    ['zone', { rainZone: 'I', use: 'rain-zone' }],
    ['use', { use: 'guess' }],
    ['measured.years', { measured: { rainRate001MmPerH: 40 } }],
    ['measured.rainRate001MmPerH', { measured: { rainRate001MmPerH: -1, years: 3 } }],
    ['monthlyRainMm', { monthlyNormals: { monthlyTemperatureK: normals.monthlyTemperatureK } }],
  ])('refuses a missing or bad %s', (parameter, local) => {
    const call = () => climateAt(hut, local as Parameters<typeof climateAt>[1]);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });

  test.each([
    ['latitudeDeg', { latitudeDeg: 96.4, longitudeDeg: 9.6, heightM: 0 }],
    ['longitudeDeg', { latitudeDeg: 46.4, longitudeDeg: Number.NaN, heightM: 0 }],
    ['heightM', { latitudeDeg: 46.4, longitudeDeg: 9.6 }],
  ])('refuses a bad %s of the station', (parameter, station) => {
    expect(() => climateAt(station as Parameters<typeof climateAt>[0])).toThrow(
      expect.objectContaining({ parameter }),
    );
  });
});

describe('historical rain zones', () => {
  test('the table stands at its percentages and falls between them', () => {
    expect(rainZoneRate({ zone: 'P', exceededPercent: 0.001 }).rainRateMmPerH).toBe(250);
    expect(rainZoneRate({ zone: 'E', exceededPercent: 1 }).rainRateMmPerH).toBe(0.6);
    expect(RAIN_ZONES.join('')).toBe('ABCDEFGHJKLMNPQ');
    for (const zone of RAIN_ZONES) {
      let before = Number.POSITIVE_INFINITY;
      for (let exponent = -3; exponent <= 0; exponent += 0.05) {
        const { rainRateMmPerH, superseded } = rainZoneRate({
          zone,
          exceededPercent: Math.min(1, 10 ** exponent),
        });
        expect(superseded).toBe(true);
        expect(rainRateMmPerH).toBeLessThan(before + 1e-12);
        before = rainRateMmPerH;
      }
    }
  });
});

describe("a grid of one's own", () => {
  const copy = () => JSON.parse(JSON.stringify(SHIPPED_CLIMATE_GRID));

  test('the shipped grid, read back as JSON, gives the shipped climate', () => {
    expect(climateFromGrid(copy())(hut)).toEqual(climateAt(hut));
  });

  test('a layer that is missing, cut or malformed is named', () => {
    const without = copy();
    without.layers = without.layers.filter(({ name }: { name: string }) => name !== 'altitude');
    expect(() => climateFromGrid(without)(hut)).toThrow(
      expect.objectContaining({ parameter: 'layers.altitude', code: 'missing' }),
    );
    const foreign = copy();
    foreign.tiles.fill('ABC*');
    expect(() => climateFromGrid(foreign)(hut)).toThrow(/base64/);
    expect(() => climateFromGrid({ ...copy(), format: 'other' })).toThrow(
      expect.objectContaining({ parameter: 'format' }),
    );
    const circular = copy();
    circular.layers[0].companion = circular.layers[0].name;
    expect(() => climateFromGrid(circular)).toThrow(
      expect.objectContaining({ parameter: 'layers[0].companion' }),
    );
    const short = copy();
    short.tiles.pop();
    expect(() => climateFromGrid(short)).toThrow(expect.objectContaining({ parameter: 'tiles' }));
    const unweighted = copy();
    unweighted.layers[1].weights[0].pop();
    expect(() => climateFromGrid(unweighted)).toThrow(
      expect.objectContaining({ parameter: 'layers[1].weights[0]' }),
    );
    const stepless = copy();
    stepless.layers[2].step = 0;
    expect(() => climateFromGrid(stepless)).toThrow(
      expect.objectContaining({ parameter: 'layers[2].step' }),
    );
  });
});

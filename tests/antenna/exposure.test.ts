import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { exposureLimit, powerDensity, safeDistance } from 'slantpath/antenna';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const transmitter = (row: CsvRow) => ({
  diameterM: cell(row, 'diameter_m'),
  powerW: cell(row, 'power_w'),
  frequencyGHz: cell(row, 'frequency_ghz'),
  antennaGainDbi: cell(row, 'gain_dbi'),
});

publishedTable({
  part: 'antenna',
  quantity: 'power density in front of a reflector',
  unit: 'W/m2 or m',
  source: 'FCC OET Bulletin 65 (1997), aperture antennas; values recomputed',
  status: 'recomputed',
  limit: 2e-5,
  reason: 'four or five printed digits, relative',
  relative: true,
  count: 18,
  cases: () =>
    referenceTable('antenna/exposure.csv').flatMap((row) => {
      const field = powerDensity(transmitter(row), 1);
      const edge = cell(row, 'far_field_from_m');
      const at = (metres: number) => powerDensity(transmitter(row), metres).powerDensityWPerM2;
      const values: [string, number][] = [
        ['surface_w_m2', field.surfaceWPerM2],
        ['near_field_w_m2', field.nearFieldWPerM2],
        ['near_field_end_m', field.nearFieldEndM],
        ['far_field_from_m', field.farFieldFromM],
        ['far_at_boundary_w_m2', at(edge + 1e-4)],
        ['transition_at_boundary_w_m2', at(edge - 1e-4)],
      ];
      return values.map(([column, got]) => ({
        name: `${row['diameter_m']} m ${column}`,
        expected: cell(row, column),
        got,
      }));
    }),
});

publishedTable({
  part: 'antenna',
  quantity: 'near field and distances of two stations',
  unit: 'W/m2 or m',
  source:
    'public radiation-hazard analyses of 1.5 m stations at 14.25 GHz after OET Bulletin 65 (2011, 2015)',
  status: 'published',
  limit: 1e-4,
  reason: 'five printed digits; the distances to the three digits of their wavelength (0.0211 m)',
  relative: true,
  count: 5,
  cases: () => {
    // Printed in mW/cm2, ten times smaller; efficiency 0.65 as there.
    const station = (powerW: number) =>
      powerDensity({ diameterM: 1.5, frequencyGHz: 14.25, powerW }, 1);
    const first = station(180.43);
    const far = powerDensity(
      { diameterM: 1.5, frequencyGHz: 14.25, powerW: 180.43, antennaGainDbi: 45.9 },
      65,
    );
    return [
      { name: '180.43 W near field', expected: 265.46, got: first.nearFieldWPerM2 },
      { name: '522.58 W near field', expected: 768.87, got: station(522.58).nearFieldWPerM2 },
      { name: 'near field ends', expected: 26.659, got: first.nearFieldEndM, limit: 4e-3 },
      { name: 'far field begins', expected: 63.981, got: first.farFieldFromM, limit: 4e-3 },
      {
        name: '180.43 W, 45.9 dBi at 63.981 m, brought to 65 m by the square of the distance',
        expected: 136.46 * (63.981 / 65) ** 2,
        got: far.powerDensityWPerM2,
        limit: 1e-3,
      },
    ];
  },
});

publishedTable({
  part: 'antenna',
  quantity: 'limits of exposure',
  unit: 'W/m2',
  source: 'ICNIRP Guidelines 2020, tables 5 and 6; 47 CFR 1.1310',
  status: 'published',
  limit: 0.005,
  reason: 'printed digits',
  count: 12,
  cases: () => {
    const limit = (
      standard: 'ICNIRP 2020 local' | 'FCC 1.1310',
      group: 'public' | 'occupational',
      frequencyGHz: number,
      expected: number,
    ) => ({
      name: `${standard} ${group} ${frequencyGHz} GHz`,
      expected,
      got: exposureLimit({ standard, group, frequencyGHz }).powerDensityWPerM2,
    });
    return [
      limit('ICNIRP 2020 local', 'public', 14, 34.47),
      limit('ICNIRP 2020 local', 'public', 30, 30.12),
      limit('ICNIRP 2020 local', 'public', 3, 40),
      limit('ICNIRP 2020 local', 'occupational', 3, 200),
      // 275 / 14^0.177.
      limit('ICNIRP 2020 local', 'occupational', 14, 172.37),
      limit('ICNIRP 2020 local', 'public', 300, 20.04),
      // 0.058 * 1000^0.86.
      limit('ICNIRP 2020 local', 'public', 1, 22.05),
      limit('FCC 1.1310', 'public', 14, 10),
      limit('FCC 1.1310', 'occupational', 14, 50),
      limit('FCC 1.1310', 'public', 0.9, 6),
      limit('FCC 1.1310', 'occupational', 0.9, 30),
      limit('FCC 1.1310', 'public', 1.5, 10),
    ];
  },
});

test('whole-body limits at 14 GHz as reproduced in open texts: 10 and 50 W/m2', () => {
  const at = { standard: 'ICNIRP 2020 whole body', frequencyGHz: 14 } as const;
  expect(exposureLimit({ ...at, group: 'public' }).powerDensityWPerM2).toBe(10);
  expect(exposureLimit({ ...at, group: 'occupational' }).powerDensityWPerM2).toBe(50);
});

test('each edge of the tables: value on both sides, averaging time, ends of the range', () => {
  const at = (
    standard: 'ICNIRP 2020 local' | 'ICNIRP 2020 whole body' | 'FCC 1.1310',
    group: 'public' | 'occupational',
    frequencyGHz: number,
  ) => exposureLimit({ standard, group, frequencyGHz });
  // 47 CFR 1.1310, table 1: f/1500 and f/300 mW/cm2 from 300 MHz to 1.5 GHz, 1 and 5 mW/cm2 to 100 GHz; 30 and 6 minutes.
  for (const [group, factor, minutes] of [
    ['public', 1, 30],
    ['occupational', 5, 6],
  ] as const) {
    expect(at('FCC 1.1310', group, 0.3)).toMatchObject({
      powerDensityWPerM2: expect.closeTo(2 * factor, 12),
      averagingMin: minutes,
    });
    expect(at('FCC 1.1310', group, 1.4997).powerDensityWPerM2).toBeCloseTo(9.998 * factor, 9);
    expect(at('FCC 1.1310', group, 1.5001).powerDensityWPerM2).toBe(10 * factor);
    expect(at('FCC 1.1310', group, 100).powerDensityWPerM2).toBe(10 * factor);
    // ICNIRP 2020, table 5, whole body: f/200 W/m2 (MHz) from 400 MHz to 2 GHz, 10 W/m2 to 300 GHz; 30 minutes.
    const body = (frequencyGHz: number) => at('ICNIRP 2020 whole body', group, frequencyGHz);
    expect(body(0.4)).toMatchObject({
      powerDensityWPerM2: expect.closeTo(2 * factor, 12),
      averagingMin: 30,
    });
    expect(body(1).powerDensityWPerM2).toBeCloseTo(5 * factor, 12);
    expect(body(1.999).powerDensityWPerM2).toBeCloseTo(9.995 * factor, 12);
    expect(body(2.001).powerDensityWPerM2).toBe(10 * factor);
    expect(body(300).powerDensityWPerM2).toBe(10 * factor);
    // Table 6, local: 0.058 f^0.86 (MHz) to 2 GHz, 40 W/m2 above 2 to 6 GHz, 55 / f^0.177 (GHz) beyond; 6 minutes. Powers by hand.
    const local = (frequencyGHz: number) => at('ICNIRP 2020 local', group, frequencyGHz);
    expect(local(0.4)).toMatchObject({
      powerDensityWPerM2: expect.closeTo(10.0276 * factor, 2),
      averagingMin: 6,
    });
    // Where the power law ends it stands at 40.0, as the flat part does.
    expect(local(2).powerDensityWPerM2).toBe(0.058 * 2000 ** 0.86 * factor);
    expect(local(2.001).powerDensityWPerM2).toBe(40 * factor);
    expect(local(6).powerDensityWPerM2).toBe(40 * factor);
    expect(local(6.001).powerDensityWPerM2).toBeCloseTo(40.0513 * factor, 2);
  }
  for (const [standard, low, high] of [
    ['FCC 1.1310', 0.2999, 100.01],
    ['ICNIRP 2020 whole body', 0.3999, 300.01],
    ['ICNIRP 2020 local', 0.3999, 300.01],
  ] as const)
    for (const beyond of [low, high])
      expect(() => at(standard, 'public', beyond)).toThrow(
        expect.objectContaining({ parameter: 'frequencyGHz', code: 'out-of-range' }),
      );
});

const FCC = { standard: 'FCC 1.1310', group: 'public' } as const;

describe('safe distance', () => {
  test('the three outcomes', () => {
    const at = { frequencyGHz: 14.25 } as const;
    const strong = safeDistance({ ...at, diameterM: 2.4, powerW: 40 }, FCC);
    expect(strong).toMatchObject({ kind: 'distance', region: 'transition' });
    // 10 W/m2 by the far-field formula would be at 163.02 m, inside its boundary of 164.27 m.
    expect(strong.kind === 'distance' && strong.distanceM).toBeCloseTo(22.989 * 68.4474 * 0.1, 2);
    expect(safeDistance({ ...at, diameterM: 1.2, powerW: 4 }, FCC).kind).toBe('at-the-surface');
    expect(safeDistance({ ...at, diameterM: 1.8, powerW: 0.0625 }, FCC).kind).toBe('not-reached');
  });

  test('beyond it the limit is kept, just before it is not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 5000, noNaN: true }),
        fc.double({ min: 2, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (diameterM, powerW, frequencyGHz, factor) => {
          const dish = { diameterM, powerW, frequencyGHz };
          const safe = safeDistance(dish, FCC);
          if (safe.kind !== 'distance') return;
          const limit = safe.limit.powerDensityWPerM2 * (1 + 1e-9);
          expect(
            powerDensity(dish, safe.distanceM * factor).powerDensityWPerM2,
          ).toBeLessThanOrEqual(limit);
          // Where the two forms meet, one is 3 % above the other.
          expect(powerDensity(dish, safe.distanceM * 0.97).powerDensityWPerM2).toBeGreaterThan(
            limit * 0.97,
          );
        },
      ),
      { numRuns: runs(300) },
    );
  });

  test('the density never rises with distance, but for 3 % where the far field begins', () => {
    const dish = { diameterM: 1.8, frequencyGHz: 14, powerW: 20 };
    let before = powerDensity(dish, 0).powerDensityWPerM2;
    for (let metres = 1; metres < 500; metres++) {
      const here = powerDensity(dish, metres).powerDensityWPerM2;
      expect(here).toBeLessThanOrEqual(before * 1.0282);
      before = here;
    }
  });

  test('every result carries the cautions', () => {
    const { cautions } = powerDensity({ diameterM: 1.8, frequencyGHz: 14, powerW: 20 }, 5);
    expect(cautions.join(' ')).toMatch(/local law.*licensed/s);
    expect(safeDistance({ diameterM: 1.8, frequencyGHz: 14, powerW: 20 }, FCC).cautions).toEqual(
      cautions,
    );
  });

  test.each([
    [() => powerDensity({ diameterM: 1.2, frequencyGHz: 14.25, powerW: 0 }, 1), 'powerW'],
    [() => powerDensity({ diameterM: 1.2, frequencyGHz: 14250, powerW: 4 }, 1), 'frequencyGHz'],
    [() => powerDensity({ diameterM: 1.2, frequencyGHz: 14.25, powerW: 4 }, -1), 'distanceM'],
    [
      () => powerDensity({ diameterM: 1.2, frequencyGHz: 14.25, powerW: 4, antennaGainDbi: 50 }, 1),
      'antennaGainDbi',
    ],
    [
      () =>
        safeDistance(
          { diameterM: 1.2, frequencyGHz: 14.25, powerW: 4 },
          { standard: 'other' as never, group: 'public' },
        ),
      'standard',
    ],
    [
      () => exposureLimit({ standard: 'FCC 1.1310', group: 'anyone' as never, frequencyGHz: 14 }),
      'group',
    ],
    [
      () => exposureLimit({ standard: 'ICNIRP 2020 local', group: 'public', frequencyGHz: 14000 }),
      'frequencyGHz',
    ],
  ])('refuses bad input %#', (call, parameter) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });
});

describe('exactly at an edge', () => {
  // One metre at 10 GHz, of which the wavelength is 29.9792458 mm: 20 log10(pi / 0.0299792458) = 40.4065 dBi without a loss.
  const dish = { diameterM: 1, frequencyGHz: 10, powerW: 1 };
  const losslessDbi = 20 * Math.log10(Math.PI / 0.0299792458);

  test('no more gain than a lossless reflector has, by a few thousandths of a dB', () => {
    expect(() => powerDensity({ ...dish, antennaGainDbi: losslessDbi - 0.004 }, 1)).not.toThrow();
    expect(() => powerDensity({ ...dish, antennaGainDbi: losslessDbi + 0.004 }, 1)).toThrow(
      /antennaGainDbi/,
    );
  });

  test('the near field reaches to its end, the far field begins where it begins', () => {
    const { nearFieldEndM, farFieldFromM } = powerDensity(dish, 1);
    expect(powerDensity(dish, nearFieldEndM).region).toBe('near-field');
    expect(powerDensity(dish, farFieldFromM).region).toBe('far-field');
  });

  test('a density that equals the limit keeps it', () => {
    // 10 W/m2 for the public above 1.5 GHz: 4 P over the area of the reflector, or 16 e P / (pi D^2) with e = 0.65 on the axis.
    const limit = { standard: 'FCC 1.1310', group: 'public' } as const;
    /** The outcomes of reflectors whose power makes the density 10 to the last digit, as for some of them it does. */
    const kinds = (share: number, density: 'surfaceWPerM2' | 'nearFieldWPerM2') =>
      [0.6, 0.9, 1, 1.2, 1.8, 2.4, 3.7]
        .map((diameterM) => ({
          ...dish,
          diameterM,
          powerW: (10 * Math.PI * diameterM ** 2) / (16 * share),
        }))
        .flatMap((one) =>
          [-2, -1, 0, 1, 2].map((ulps) =>
            safeDistance({ ...one, powerW: one.powerW * (1 + ulps * Number.EPSILON) }, limit),
          ),
        )
        .filter((safe) => safe[density] === 10)
        .map(({ kind }) => kind);
    expect(new Set(kinds(1, 'surfaceWPerM2'))).toEqual(new Set(['not-reached']));
    expect(new Set(kinds(0.65, 'nearFieldWPerM2'))).toEqual(new Set(['at-the-surface']));
  });

  test('at 2 GHz the local limit is still that of the row below it', () => {
    // ICNIRP 2020, table 6: 0.058 f^0.86 with f in MHz up to 2 GHz, 40 W/m2 above it.
    const at = { standard: 'ICNIRP 2020 local', group: 'public', frequencyGHz: 2 } as const;
    expect(exposureLimit(at).powerDensityWPerM2).toBeCloseTo(0.058 * 2000 ** 0.86, 9);
    expect(0.058 * 2000 ** 0.86).toBeGreaterThan(40.01);
  });
});

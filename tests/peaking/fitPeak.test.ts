import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import {
  fitPeak,
  type PeakFit,
  type PeakFound,
  type PeakSamples,
} from '../../src/peaking/index.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const found = (fit: PeakFit): PeakFound => {
  if (fit.kind !== 'peak') throw new Error(`no peak: ${JSON.stringify(fit)}`);
  return fit;
};
const places = [-1, -0.6, -0.3, 0.1, 0.4, 0.7, 1];
const lobe = (peak: number, width: number, top = -40) =>
  places.map((x) => top - 12 * ((x - peak) / width) ** 2);

const fits = referenceTable('peaking/parabola-fits.csv');
const cases = [...new Set(fits.map((row) => row['case'] ?? ''))];

for (const [quantity, column, unit, got] of [
  ['position', 'position_deg', 'deg', (fit: PeakFound) => fit.positionDeg],
  ['lower end of the interval', 'low_deg', 'deg', (fit: PeakFound) => fit.interval95Deg[0]],
  ['upper end of the interval', 'high_deg', 'deg', (fit: PeakFound) => fit.interval95Deg[1]],
  ['beamwidth', 'width_deg', 'deg', (fit: PeakFound) => fit.beamwidthDeg],
  ['scatter', 'scatter_db', 'dB', (fit: PeakFound) => fit.standardDeviationDb],
  [
    'shape probability',
    'shape_probability',
    '',
    (fit: PeakFound) => fit.shapeProbabilityRatio ?? Number.NaN,
  ],
] as const)
  publishedTable({
    part: 'peaking',
    quantity: `fitted ${quantity}`,
    unit,
    source: 'numpy polyfit with covariance, interval by F test of the profile (scipy)',
    status: 'recomputed',
    limit: 4e-12,
    reason: 'digits of the table',
    count: 4,
    cases: () =>
      cases.map((name) => {
        const rows = fits.filter((row) => row['case'] === name);
        const first = rows[0] ?? {};
        const fit = found(
          fitPeak({
            positionDeg: rows.map((row) => cell(row, 'x_deg')),
            levelDbm: rows.map((row) => cell(row, 'level_dbm')),
            outliers: 'keep',
            lobe: 'parabola',
          }),
        );
        return { name, expected: cell(first, column), got: got(fit) };
      }),
  });

describe('fit of the peak', () => {
  test('an exact lobe comes back exactly, from any part of it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.9, max: 0.9, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: -100, max: 100, noNaN: true }),
        (peak, width, shift) => {
          const fit = found(
            fitPeak({
              positionDeg: places.map((x) => x + shift),
              levelDbm: lobe(peak, width),
              outliers: 'keep',
              standardDeviationDb: 0.001,
              lobe: 'parabola',
            }),
          );
          expect(fit.positionDeg).toBeCloseTo(peak + shift, 8);
          expect(fit.beamwidthDeg).toBeCloseTo(width, 8);
          expect(fit.peakLevelDbm).toBeCloseTo(-40, 8);
        },
      ),
    );
  });

  test('mirrored, shifted and reordered readings give the mirrored, shifted, same peak', () => {
    const levelDbm = [-43.2, -41.3, -40.5, -40.1, -40.4, -41.6, -42.6];
    const fit = found(fitPeak({ positionDeg: places, levelDbm }));
    const mirrored = found(fitPeak({ positionDeg: places.map((x) => -x), levelDbm }));
    expect(mirrored.positionDeg).toBeCloseTo(-fit.positionDeg, 6);
    expect(mirrored.interval95Deg[0]).toBeCloseTo(-fit.interval95Deg[1], 4);
    const order = [3, 0, 6, 2, 5, 1, 4];
    const shuffled = found(
      fitPeak({
        positionDeg: order.map((i) => (places[i] as number) + 10),
        levelDbm: order.map((i) => (levelDbm[i] as number) + 7),
      }),
    );
    expect(shuffled.positionDeg).toBeCloseTo(fit.positionDeg + 10, 6);
    expect(shuffled.standardDeviationDb).toBeCloseTo(fit.standardDeviationDb, 6);
    expect(shuffled.peakLevelDbm).toBeCloseTo(fit.peakLevelDbm + 7, 6);
  });

  test('a known width needs fewer readings and gives a shorter interval', () => {
    const levelDbm = lobe(0.2, 2).map((y, i) => y + 0.1 * (i % 2));
    const plain = { positionDeg: places, levelDbm, lobe: 'parabola' } as const;
    const free = found(fitPeak(plain));
    const known = found(fitPeak({ ...plain, beamwidthDeg: 2 }));
    expect(known.beamwidthDeg).toBe(2);
    expect(known.beamwidthStandardUncertaintyDeg).toBe(0);
    expect(known.interval95Deg[1] - known.interval95Deg[0]).toBeLessThan(
      free.interval95Deg[1] - free.interval95Deg[0],
    );
    expect(
      fitPeak({
        positionDeg: [-1, 1],
        levelDbm: [-43, -43.5],
        beamwidthDeg: 2,
        standardDeviationDb: 0.2,
      }).kind,
    ).toBe('peak');
  });

  test('loss now and after the move, in the band read and in others', () => {
    const fit = found(
      fitPeak({
        positionDeg: places,
        levelDbm: lobe(0.2, 2),
        lobe: 'parabola',
        standardDeviationDb: 0.1,
        currentPositionDeg: 0.7,
        bands: [
          { name: 'Ka down', beamwidthDeg: 1 },
          { name: 'squinting', beamwidthDeg: 2, squintDeg: 0.5 },
        ],
      }),
    );
    // 12 (0.5 / 2)^2 = 0.75 dB, four times as much at half the beamwidth, none where the squint makes it up.
    expect(fit.lossNowDb).toBeCloseTo(0.75, 10);
    expect(fit.bands[0]?.lossNowDb).toBeCloseTo(3, 10);
    expect(fit.bands[1]?.lossNowDb).toBeCloseTo(0, 10);
    expect(fit.lossNowUpper95Db).toBeGreaterThan(fit.lossNowDb);
    // The width found from the readings is uncertain, and the bound counts with the narrower one in each band.
    expect(fit.bands[0]?.lossAtPeakUpper95Db).toBeCloseTo(4 * fit.lossAtPeakUpper95Db, 10);
  });

  test('a noise floor, known or found, no longer widens the lobe', () => {
    const wide = Array.from({ length: 13 }, (_, i) => -1.5 + i / 4);
    const levelDbm = wide.map((x) => 10 * Math.log10(10 ** (-4 - 1.2 * (x / 1.4) ** 2) + 1e-5));
    const ignored = found(
      fitPeak({ positionDeg: wide, levelDbm, lobe: 'parabola', outliers: 'keep' }),
    );
    expect(ignored.beamwidthDeg).toBeGreaterThan(1.5);
    const known = found(
      fitPeak({ positionDeg: wide, levelDbm, lobe: 'parabola', noiseFloorDbm: -50 }),
    );
    expect(known.beamwidthDeg).toBeCloseTo(1.4, 6);
    expect(known.noiseFloorDbm).toBe(-50);
    expect(known.peakLevelDbm).toBeCloseTo(-40, 6);
    const fitted = found(
      fitPeak({ positionDeg: wide, levelDbm, lobe: 'parabola', noiseFloor: 'fitted' }),
    );
    expect(fitted.noiseFloorDbm).toBeCloseTo(-50, 4);
    expect(fitted.beamwidthDeg).toBeCloseTo(1.4, 4);
  });

  test('drift is told from the lobe where the order of places is not that of time', () => {
    const timeS = [0, 60, 20, 100, 40, 120, 80];
    const levelDbm = lobe(0.1, 2).map((y, i) => y - 0.01 * (timeS[i] as number));
    const fit = found(fitPeak({ positionDeg: places, levelDbm, timeS, lobe: 'parabola' }));
    expect(fit.positionDeg).toBeCloseTo(0.1, 8);
    expect(fit.driftDbPerMin).toBeCloseTo(-0.6, 8);
    expect(
      fitPeak({ positionDeg: places, levelDbm, timeS: places.map((x) => 50 * (x + 1)) }),
    ).toMatchObject({ kind: 'too-few', reason: 'drift' });
  });

  test('a fade is set aside and named', () => {
    const positionDeg = Array.from({ length: 12 }, (_, i) => -1.1 + i / 5);
    const levelDbm = positionDeg.map(
      (x, i) => -40 - 3 * (x - 0.1) ** 2 + 0.05 * ((i * 7) % 5) - (i === 9 ? 6 : 0),
    );
    const fit = found(fitPeak({ positionDeg, levelDbm }));
    expect(fit.outliers).toEqual([9]);
    expect(fit.positionDeg).toBeCloseTo(0.1, 1);
    const kept = fitPeak({ positionDeg, levelDbm, outliers: 'keep' });
    expect(kept.kind === 'peak' && kept.outliers).toEqual([]);
  });

  test('equal readings in coarse steps do not count as free of scatter', () => {
    const fit = found(
      fitPeak({
        positionDeg: [-1, -0.5, 0, 0.5, 1],
        levelDbm: [-48, -42, -40, -42, -48],
        levelStepDb: 1,
        lobe: 'parabola',
      }),
    );
    expect(fit.coverage).toBe('at-least');
    expect(fit.standardDeviationDb).toBeCloseTo(1 / Math.sqrt(12), 9);
    expect(fit.positionDeg).toBeCloseTo(0, 12);
    // Ends within a step: 4 k p <= 1 dB; top and ends at least 7 dB apart: k >= 7 / (1 - 2 p); so p <= 1/30.
    expect(fit.interval95Deg[1]).toBeGreaterThan(1 / 30);
    expect(fit.interval95Deg[0]).toBeCloseTo(-fit.interval95Deg[1], 6);
  });
});

describe('outcomes without a peak', () => {
  const x5 = [-1, -0.5, 0, 0.5, 1];
  test.each<[string, PeakSamples, object]>([
    [
      'rising at the end',
      { positionDeg: x5, levelDbm: [-48, -46.1, -44.4, -43, -42] },
      { kind: 'edge', side: 'higher', edgeDeg: 1 },
    ],
    [
      'rising at the beginning',
      { positionDeg: x5, levelDbm: [-42, -43, -44.4, -46.1, -48] },
      { kind: 'edge', side: 'lower', edgeDeg: -1 },
    ],
    [
      'a plain slope',
      { positionDeg: x5, levelDbm: [-42, -43.1, -43.9, -45, -46.1] },
      { kind: 'edge', side: 'lower', likelyPositionDeg: null },
    ],
    [
      'nothing but flicker',
      { positionDeg: x5, levelDbm: [-42, -41.8, -42.1, -41.9, -42] },
      { kind: 'flat', fromDeg: -1, toDeg: 1 },
    ],
    ['all equal', { positionDeg: x5, levelDbm: [-42, -42, -42, -42, -42] }, { kind: 'flat' }],
    [
      'a dip',
      { positionDeg: x5, levelDbm: [-40, -42.1, -42.9, -42, -40] },
      { kind: 'not-main-lobe', reason: 'dip' },
    ],
    [
      'three readings',
      { positionDeg: [0, 1, 2], levelDbm: [-42, -40, -42] },
      { kind: 'too-few', reason: 'readings', readingsNeeded: 4 },
    ],
    [
      'two places',
      { positionDeg: [0, 1, 0, 1, 0], levelDbm: [-42, -40, -42, -41, -42] },
      { kind: 'too-few', reason: 'places', places: 2 },
    ],
    [
      'one place, known width',
      { positionDeg: [0, 0, 0, 0], levelDbm: [-42, -40, -42, -41], beamwidthDeg: 2 },
      { kind: 'too-few', reason: 'places' },
    ],
    [
      'half as wide as it should be',
      {
        positionDeg: places,
        levelDbm: lobe(0, 1).map((y, i) => y + 0.05 * (i % 3)),
        beamwidthDeg: 2,
      },
      { kind: 'not-main-lobe', reason: 'too-narrow' },
    ],
    [
      'twice as wide as it should be',
      {
        positionDeg: places,
        levelDbm: lobe(0, 2).map((y, i) => y + 0.02 * (i % 3)),
        beamwidthDeg: 1,
      },
      { kind: 'not-main-lobe', reason: 'too-wide' },
    ],
    [
      'far more scatter than stated',
      {
        positionDeg: places,
        levelDbm: [-42, -44, -40, -43, -40, -44, -41],
        standardDeviationDb: 0.1,
      },
      { kind: 'contradictory', reason: 'scatter' },
    ],
    [
      'two peaks',
      {
        positionDeg: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
        levelDbm: [-50, -45.1, -42, -45, -49.9, -51, -50.1, -45, -42.1, -45, -50],
      },
      { kind: 'contradictory', reason: 'two-peaks' },
    ],
  ])('%s', (_name, samples, outcome) => {
    expect(fitPeak(samples)).toMatchObject(outcome);
  });
});

describe('bad input', () => {
  const good = { positionDeg: [0, 1, 2, 3], levelDbm: [-42, -40, -40, -42] };
  test.each<[string, string, unknown]>([
    ['positionDeg', 'empty', { positionDeg: [], levelDbm: [] }],
    ['positionDeg', 'missing', { levelDbm: [1] }],
    ['levelDbm', 'length-mismatch', { positionDeg: [0, 1], levelDbm: [1] }],
    ['levelDbm', 'not-finite', { ...good, levelDbm: [-42, Number.NaN, -40, -42] }],
    ['positionDeg', 'not-a-number', { ...good, positionDeg: [0, '1', 2, 3] }],
    ['beamwidthDeg', 'out-of-range', { ...good, beamwidthDeg: -1 }],
    ['standardDeviationDb', 'out-of-range', { ...good, standardDeviationDb: 0 }],
    ['levelStepDb', 'out-of-range', { ...good, levelStepDb: -0.5 }],
    ['timeS', 'length-mismatch', { ...good, timeS: [1] }],
    ['outliers', 'not-an-option', { ...good, outliers: 'drop' }],
    ['bands[0].beamwidthDeg', 'out-of-range', { ...good, bands: [{ name: 'x', beamwidthDeg: 0 }] }],
    ['samples', 'missing', undefined],
  ])('%s %s', (parameter, code, samples) => {
    const call = () => fitPeak(samples as PeakSamples);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });

  test('levels that differ by the rounding of the arithmetic alone are flat', () => {
    const levelDbm = [-40, -40 + 1e-13, -40 + 2e-13, -40 + 1e-13, -40];
    expect(fitPeak({ positionDeg: [-2, -1, 0, 1, 2], levelDbm }).kind).toBe('flat');
    const bump = [0, 1e-160, 0];
    expect(
      fitPeak({ positionDeg: [-1, 0, 1], levelDbm: bump, standardDeviationDb: 0.1 }).kind,
    ).toBe('flat');
    expect(
      fitPeak({ positionDeg: [-2, -1, 0, 1, 2], levelDbm: [0, 3e-160, 4e-160, 3e-160, 0] }).kind,
    ).toBe('flat');
  });

  test('one reading on the peak and two far outside the lobe: the uncertainty stays a number', () => {
    const beamwidthDeg = 0.07;
    const positionDeg = [2, -5.5e-165, -2];
    const levelDbm = [0, -40, 0];
    const fit = fitPeak({ positionDeg, levelDbm, beamwidthDeg, standardDeviationDb: 0.001 });
    expect(fit).toMatchObject({ kind: 'peak', coverage: 'not-assured' });
    expect(fit.kind === 'peak' && fit.standardUncertaintyDeg).toBeCloseTo(6 * beamwidthDeg, 12);
  });

  test('whatever the numbers, the result holds nothing but finite ones', () => {
    const level = fc.double({ min: -300, max: 300, noNaN: true });
    const place = fc.double({ min: -720, max: 720, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.oneof(place, fc.integer({ min: -3, max: 3 })),
            fc.oneof(level, fc.integer({ min: -44, max: -40 })),
          ),
          { minLength: 1, maxLength: 14 },
        ),
        fc.record(
          {
            beamwidthDeg: fc.double({ min: 1e-3, max: 180, noNaN: true }),
            noiseFloorDbm: level,
            noiseFloor: fc.constantFrom('as-given' as const, 'fitted' as const),
            levelStepDb: fc.constantFrom(0, 0.1, 1),
            standardDeviationDb: fc.double({ min: 1e-3, max: 5, noNaN: true }),
          },
          { requiredKeys: [] },
        ),
        (rows, options) => {
          const fit = fitPeak({
            positionDeg: rows.map(([x]) => x),
            levelDbm: rows.map(([, y]) => y),
            ...options,
          });
          const numbers = JSON.stringify(fit, (_key, value) =>
            typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
          );
          expect(numbers).not.toContain('NOT FINITE');
          expect(JSON.parse(JSON.stringify(fit))).toEqual(fit);
        },
      ),
      { numRuns: runs(1500) },
    );
  });

  test('its arguments stay as they are', () => {
    const samples = Object.freeze({
      positionDeg: Object.freeze([0, 1, 2, 3]),
      levelDbm: Object.freeze([-42, -40, -40, -42]),
    });
    expect(fitPeak(samples).kind).toBe('peak');
  });
});

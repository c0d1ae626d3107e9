import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import {
  averagedScatter,
  peakBound,
  planEfficiency,
  simulatedReadings,
} from '../../src/peaking/index.js';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('peaking/cramer-rao.csv');
const numbers = (text: string | undefined) => (text ?? '').split(';').map(Number);
const inputOf = (row: CsvRow) => ({
  positionDeg: numbers(row['positions_deg']),
  peakDeg: cell(row, 'peak_deg'),
  beamwidthDeg: cell(row, 'beamwidth_deg'),
  standardDeviationDb: cell(row, 'scatter_db'),
  width: row['width_known'] === '1' ? ('known' as const) : ('unknown' as const),
  ...(row['above_noise_db'] ? { peakAboveNoiseDb: cell(row, 'above_noise_db') } : {}),
  ...(row['times_s'] ? { timeS: numbers(row['times_s']) } : {}),
});

publishedTable({
  part: 'peaking',
  quantity: 'Cramer-Rao bound',
  unit: 'deg',
  source: 'inverse of the Fisher matrix (numpy)',
  status: 'recomputed',
  limit: 4.7e-12,
  reason: 'digits of the table',
  count: 6,
  cases: () =>
    rows.map((row, i) => {
      const bound = peakBound(inputOf(row));
      return {
        name: `case ${i + 1}`,
        expected: cell(row, 'bound_deg'),
        got: bound.kind === 'bound' ? bound.standardUncertaintyDeg : Number.NaN,
      };
    }),
});

describe('bound', () => {
  test('known width, two places: scatter over the slopes', () => {
    // Slope 24 * 0.5 / 1 = 12 dB per degree on either side: 0.3 / (12 sqrt 2).
    const bound = peakBound({
      positionDeg: [-0.5, 0.5],
      peakDeg: 0,
      beamwidthDeg: 1,
      standardDeviationDb: 0.3,
      width: 'known',
    });
    expect(bound.kind === 'bound' && bound.standardUncertaintyDeg).toBeCloseTo(
      0.3 / (12 * Math.SQRT2),
      14,
    );
    expect(bound.kind === 'bound' && bound.meanLossDb).toBeCloseTo(
      12 * (0.3 / (12 * Math.SQRT2)) ** 2,
      14,
    );
  });

  test('a further reading never makes it worse, a noise floor never better', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1.5, max: 1.5, noNaN: true }), { minLength: 4, maxLength: 10 }),
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        (positionDeg, more) => {
          const common = { peakDeg: 0.1, beamwidthDeg: 2, standardDeviationDb: 0.2 };
          const before = peakBound({ positionDeg, ...common });
          const after = peakBound({ positionDeg: [...positionDeg, more], ...common });
          if (before.kind !== 'bound' || before.standardUncertaintyDeg > 100) return;
          if (after.kind !== 'bound') throw new Error('a further reading undid the bound');
          expect(after.standardUncertaintyDeg).toBeLessThan(
            before.standardUncertaintyDeg * (1 + 1e-9),
          );
          const noisy = peakBound({ positionDeg, ...common, peakAboveNoiseDb: 5 });
          if (noisy.kind === 'bound')
            expect(noisy.standardUncertaintyDeg).toBeGreaterThan(
              before.standardUncertaintyDeg * (1 - 1e-9),
            );
        },
      ),
    );
  });

  test('undetermined with too few places, or time going with place', () => {
    const common = { peakDeg: 0, beamwidthDeg: 2, standardDeviationDb: 0.2 };
    expect(peakBound({ positionDeg: [0, 1], ...common }).kind).toBe('undetermined');
    expect(peakBound({ positionDeg: [-1, 0, 1, 2], timeS: [0, 1, 2, 3], ...common }).kind).toBe(
      'undetermined',
    );
    expect(planEfficiency({ positionDeg: [0, 1], ...common }, 0.1)).toBe(0);
  });

  test('the step of the display counts as a twelfth of its square', () => {
    const common = { positionDeg: [-1, 0, 1], peakDeg: 0, beamwidthDeg: 2 };
    const stepped = peakBound({ ...common, standardDeviationDb: 0.3, levelStepDb: 1 });
    const plain = peakBound({ ...common, standardDeviationDb: Math.sqrt(0.09 + 1 / 12) });
    expect(stepped).toEqual(plain);
  });

  test.each([
    ['standardDeviationDb', { standardDeviationDb: 0 }],
    ['beamwidthDeg', { beamwidthDeg: 0 }],
    ['positionDeg', { positionDeg: [] }],
    ['positionDeg', { positionDeg: [Number.NaN] }],
    ['timeS', { timeS: [1] }],
  ])('refuses a bad %s', (parameter, change) => {
    const input = {
      positionDeg: [0, 1, 2],
      peakDeg: 0,
      beamwidthDeg: 2,
      standardDeviationDb: 0.1,
      ...change,
    };
    expect(() => peakBound(input)).toThrow(DomainError);
    expect(() => peakBound(input)).toThrow(expect.objectContaining({ parameter }));
  });
});

describe('scatter of an average', () => {
  test('agrees with the sum over the correlation matrix (numpy)', () => {
    const average = averagedScatter({
      standardDeviationDb: 0.4,
      readings: 10,
      spacingS: 1,
      correlationTimeS: 2,
    });
    expect(average.standardDeviationDb).toBeCloseTo(0.22994705462548579, 12);
    expect(average.independentReadings).toBeCloseTo(3.025967647885564, 10);
  });

  test('independent readings go by the square root', () => {
    expect(
      averagedScatter({ standardDeviationDb: 0.4, readings: 16, spacingS: 1 }).standardDeviationDb,
    ).toBeCloseTo(0.1, 14);
    expect(() => averagedScatter({ standardDeviationDb: 0.4, readings: 0, spacingS: 1 })).toThrow(
      DomainError,
    );
  });
});

describe('simulated readings', () => {
  const input = {
    offsetDeg: Array.from({ length: 4000 }, () => 0),
    lobe: { beamwidthDeg: 2 },
    peakLevelDbm: -40,
    standardDeviationDb: 0.5,
    seed: 3,
  };

  test('same seed, same readings; the stated scatter and correlation', () => {
    const levels = simulatedReadings({ ...input, correlationRatio: 0.8 });
    expect(simulatedReadings({ ...input, correlationRatio: 0.8 })).toEqual(levels);
    const mean = levels.reduce((a, b) => a + b, 0) / levels.length;
    const variance = levels.reduce((sum, y) => sum + (y - mean) ** 2, 0) / levels.length;
    const lag = levels
      .slice(1)
      .reduce((sum, y, i) => sum + (y - mean) * ((levels[i] ?? 0) - mean), 0);
    expect(mean).toBeCloseTo(-40, 0);
    expect(Math.sqrt(variance)).toBeCloseTo(0.5, 1);
    expect(lag / levels.length / variance).toBeCloseTo(0.8, 1);
  });

  test('noise floor, drift, fades, steps and side lobes', () => {
    const quiet = { ...input, standardDeviationDb: 0 };
    expect(simulatedReadings({ ...quiet, offsetDeg: [20], noiseFloorDbm: -60 })[0]).toBeCloseTo(
      -60,
      6,
    );
    expect(simulatedReadings({ ...quiet, offsetDeg: [0, 0, 0], driftDbPerReading: -0.5 })).toEqual([
      -40, -40.5, -41,
    ]);
    const faded = simulatedReadings({ ...quiet, fadeRatio: 0.1 }).filter((y) => y < -40.01);
    expect(faded.length / 4000).toBeCloseTo(0.1, 1);
    expect(
      simulatedReadings({ ...input, levelStepDb: 0.5 }).every((y) => Number.isInteger(2 * y)),
    ).toBe(true);
    const side = simulatedReadings({
      ...quiet,
      offsetDeg: [2.94],
      lobe: { diameterM: 0.9, frequencyGHz: 11.7 },
    });
    expect(side[0]).toBeCloseTo(-62.28, 1);
    expect(() => simulatedReadings({ ...input, seed: Number.NaN })).toThrow(DomainError);
  });
});

import fc from 'fast-check';
import { combinedReading, decideConformity, globalRisks } from 'slantpath/acceptance';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'acceptance',
  quantity: 'probability of conformity',
  unit: '',
  source:
    'JCGM 106:2012, Zener diode example (-5.47 V, u 0.05 V, limit -5.40 V); example from memory',
  status: 'practice',
  limit: 5e-7,
  reason: 'six decimals recomputed; the document prints 92 %',
  count: 1,
  cases: () => [
    {
      name: 'Phi(1.4)',
      expected: 0.919243,
      got: decideConformity({ reading: -5.47, standardUncertainty: 0.05, upperLimit: -5.4 })
        .conformityProbabilityRatio,
    },
  ],
});

publishedTable({
  part: 'acceptance',
  quantity: 'global risks',
  unit: '',
  source:
    'JCGM 106:2012, resistor example (inputs read in an open script of it), double integral recomputed',
  status: 'recomputed',
  limit: 6e-7,
  reason: 'six decimals',
  count: 6,
  cases: () => {
    const question = {
      processMean: 1500,
      processStandardDeviation: 0.12,
      instrumentStandardUncertainty: 0.04,
      tolerance: { from: 1499.8, to: 1500.2 },
    };
    const simple = globalRisks(question);
    const guarded = globalRisks({ ...question, acceptance: { from: 1499.82, to: 1500.18 } });
    return [
      { name: 'conformity', expected: 0.904419, got: simple.conformityRatio },
      { name: 'conformity, guarded', expected: 0.904419, got: guarded.conformityRatio },
      { name: 'consumer, guarded', expected: 0.009878, got: guarded.consumerRiskRatio },
      { name: 'producer, guarded', expected: 0.069027, got: guarded.producerRiskRatio },
      { name: 'consumer, simple', expected: 0.018942, got: simple.consumerRiskRatio },
      { name: 'producer, simple', expected: 0.037208, got: simple.producerRiskRatio },
    ];
  },
});

publishedTable({
  part: 'acceptance',
  quantity: 'mean and uncertainty of twenty temperatures',
  unit: '°C',
  source: 'JCGM 100:2008, 4.4.3 (data from memory, results recomputed and equal)',
  status: 'practice',
  limit: 5e-10,
  reason: 'nine decimals recomputed; the document prints 100.145, 1.489 and 0.333',
  count: 3,
  cases: () => {
    const readings = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
      100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    const combined = combinedReading({ readings });
    return [
      { name: 'mean', expected: 100.145, got: combined.mean },
      { name: 's', expected: 1.488844483, got: combined.standardDeviation ?? 0 },
      { name: 'u', expected: 0.332915747, got: combined.standardUncertainty },
    ];
  },
});

publishedTable({
  part: 'acceptance',
  quantity: 'coverage factor of repeated readings',
  unit: '',
  source: 'Student t, JCGM 100:2008 Table G.2, recomputed to six decimals',
  status: 'recomputed',
  limit: 6e-7,
  reason: 'six decimals',
  count: 45,
  cases: () =>
    referenceTable('acceptance/student-t.csv')
      .filter((row) => row['degrees_of_freedom'] !== 'infinity')
      .filter((row) => cell(row, 'degrees_of_freedom') <= 15)
      .flatMap((row) =>
        (
          [
            ['two_sided_90', 0.9],
            ['two_sided_95', 0.95],
            ['two_sided_99', 0.99],
          ] as const
        ).map(([column, coverageRatio]) => {
          const freedom = cell(row, 'degrees_of_freedom');
          const readings = Array.from({ length: freedom + 1 }, (_, i) => i);
          return {
            name: `${freedom} degrees, ${coverageRatio}`,
            expected: cell(row, column),
            got: combinedReading({ readings, coverageRatio }).coverageFactor,
          };
        }),
      ),
});

publishedTable({
  part: 'acceptance',
  quantity: 'risk at a limit by guard band',
  unit: '',
  source:
    'ISO 14253-1 and ILAC-G8 guard bands in units of U (from memory), normal tails recomputed',
  status: 'recomputed',
  limit: 5e-5,
  reason: 'percent with two decimals',
  count: 5,
  cases: () =>
    (
      [
        [0, 0.5],
        [0.5, 0.15866],
        [0.8225, 0.05],
        [1, 0.02275],
        [1.5, 0.00135],
      ] as const
    ).map(([guardBandRatio, expected]) => {
      const question = { standardUncertainty: 2, lowerLimit: 10 };
      const rule = { kind: 'guard-band', guardBandRatio } as const;
      const edge = decideConformity({ ...question, reading: 10, rule }).acceptance.from ?? 0;
      // The worst accepted reading stands exactly at the edge.
      const decision = decideConformity({ ...question, reading: edge, rule });
      expect(decision.verdict).toBe('conforms');
      return {
        name: `w = ${guardBandRatio} U`,
        expected,
        got: 1 - decision.conformityProbabilityRatio,
      };
    }),
});

publishedTable({
  part: 'acceptance',
  quantity: 'probability of conformity with few degrees of freedom',
  unit: '',
  source: 'Student t tails from a statistics library (scipy)',
  status: 'recomputed',
  limit: 1e-12,
  reason: 'double precision',
  count: 2,
  cases: () => [
    {
      name: 'one limit, 4 degrees',
      expected: 0.833458175226223,
      got: decideConformity({
        reading: 48.1,
        standardUncertainty: 1,
        degreesOfFreedom: 4,
        lowerLimit: 47,
      }).conformityProbabilityRatio,
    },
    {
      name: 'two limits, 3 degrees',
      expected: 0.760645567018082,
      got: decideConformity({
        reading: 1,
        standardUncertainty: 1,
        degreesOfFreedom: 3,
        lowerLimit: 0,
        upperLimit: 3.5,
      }).conformityProbabilityRatio,
    },
  ],
});

// In tenths, so that a failure shrinks in a few steps where numbers hang on one another.
const finite = fc.integer({ min: -20_000, max: 20_000 }).map((tenths) => tenths / 10);
const width = fc.integer({ min: 1, max: 3000 }).map((tenths) => tenths / 10);

describe('decision', () => {
  test('with the risk rule a reading conforms exactly where its probability allows', () => {
    fc.assert(
      fc.property(finite, width, finite, fc.constantFrom(1, 5, 20), (reading, u, limit, risk) => {
        const decision = decideConformity({
          reading,
          standardUncertainty: u,
          upperLimit: limit,
          rule: { kind: 'risk', riskPercent: risk },
        });
        const p = decision.conformityProbabilityRatio;
        if (decision.verdict === 'conforms')
          expect(p).toBeGreaterThanOrEqual(1 - risk / 100 - 1e-9);
        if (decision.verdict === 'does-not-conform') expect(p).toBeLessThan(risk / 100 + 1e-9);
        if (decision.verdict === 'undecided') {
          expect(p).toBeGreaterThanOrEqual(risk / 100 - 1e-9);
          expect(p).toBeLessThanOrEqual(1 - risk / 100 + 1e-9);
        }
      }),
    );
  });

  test('a mirrored question has the same answer', () => {
    fc.assert(
      fc.property(finite, width, finite, width, (reading, u, lower, span) => {
        const upper = lower + span;
        const a = decideConformity({
          reading,
          standardUncertainty: u,
          lowerLimit: lower,
          upperLimit: upper,
        });
        const b = decideConformity({
          reading: -reading,
          standardUncertainty: u,
          lowerLimit: -upper,
          upperLimit: -lower,
        });
        expect(b.verdict).toBe(a.verdict);
        expect(b.conformityProbabilityRatio).toBeCloseTo(a.conformityProbabilityRatio, 12);
        expect(b.margin).toBeCloseTo(a.margin, 6);
      }),
    );
  });

  test('simple acceptance is never undecided, and the limit itself conforms', () => {
    const at = (reading: number) =>
      decideConformity({
        reading,
        standardUncertainty: 1,
        lowerLimit: 47,
        rule: { kind: 'simple' },
      });
    expect(at(47)).toMatchObject({ verdict: 'conforms', guardBand: 0, margin: 0 });
    expect(at(46.999).verdict).toBe('does-not-conform');
  });

  test('a window narrower than the guard bands accepts nothing', () => {
    const decision = decideConformity({
      reading: 50,
      standardUncertainty: 2,
      lowerLimit: 49,
      upperLimit: 51,
    });
    expect(decision.verdict).toBe('undecided');
    expect(decision.conformityProbabilityRatio).toBeCloseTo(0.3829, 4);
  });

  test('tiny tails keep their digits', () => {
    const decision = decideConformity({
      reading: 0,
      standardUncertainty: 1,
      lowerLimit: 10,
      upperLimit: 11,
    });
    // Q(10) - Q(11) = 7.61985302416053e-24 - 1.91e-28
    expect(decision.conformityProbabilityRatio / 7.6196619e-24).toBeCloseTo(1, 6);
  });

  test.each([
    ['reading', { reading: Number.NaN }, 'not-finite'],
    ['standardUncertainty', { standardUncertainty: 0 }, 'out-of-range'],
    ['standardUncertainty', { standardUncertainty: undefined }, 'missing'],
    ['lowerLimit', { lowerLimit: undefined }, 'missing'],
    ['lowerLimit', { lowerLimit: 50, upperLimit: 40 }, 'inconsistent'],
    ['rule.kind', { rule: { kind: 'maybe' } }, 'not-an-option'],
    ['rule.riskPercent', { rule: { kind: 'risk', riskPercent: 60 } }, 'out-of-range'],
    ['degreesOfFreedom', { degreesOfFreedom: 0 }, 'out-of-range'],
  ])('refuses a bad %s', (parameter, change, code) => {
    const question = { reading: 50, standardUncertainty: 1, lowerLimit: 47, ...change };
    expect(() => decideConformity(question as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});

describe('global risks', () => {
  test('a perfect instrument wrongs nobody', () => {
    const risks = globalRisks({
      processMean: 0,
      processStandardDeviation: 1,
      instrumentStandardUncertainty: 1e-4,
      tolerance: { from: -1, to: 1 },
    });
    expect(risks.consumerRiskRatio).toBeLessThan(1e-4);
    expect(risks.producerRiskRatio).toBeLessThan(1e-4);
  });

  test('swapped intervals are named', () => {
    expect(() =>
      globalRisks({
        processMean: 0,
        processStandardDeviation: 1,
        instrumentStandardUncertainty: 1,
        tolerance: { from: 1, to: -1 },
      }),
    ).toThrow('were the ends swapped?');
  });
});

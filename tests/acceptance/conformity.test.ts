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

describe('each number of a verdict', () => {
  const between = { reading: 15, standardUncertainty: 1, lowerLimit: 10, upperLimit: 20 } as const;
  const twoSided = (reading: number) =>
    decideConformity({ ...between, reading, rule: { kind: 'guard-band' } }).verdict;

  test('the guard band is the quantile of the risk', () => {
    // Standard normal and Student's t with 5 degrees of freedom, one-sided 5 %: 1.6449 and 2.0150 in any table of quantiles.
    expect(decideConformity(between).guardBand).toBeCloseTo(1.6448536, 6);
    expect(decideConformity({ ...between, degreesOfFreedom: 5 }).guardBand).toBeCloseTo(
      2.0150484,
      6,
    );
    const rule = { kind: 'risk', riskPercent: 50 } as const;
    expect(decideConformity({ ...between, rule }).guardBand).toBe(0);
    expect(decideConformity({ ...between, rule, degreesOfFreedom: 3 }).guardBand).toBe(0);
  });

  test('the smallest risk has the tail that the asymptotic series gives', () => {
    const rule = { kind: 'risk', riskPercent: 1e-9 } as const;
    const z = decideConformity({ ...between, rule }).guardBand;
    const tail =
      (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / z) * (1 - 1 / z ** 2 + 3 / z ** 4);
    expect(tail / 1e-11).toBeCloseTo(1, 3);
  });

  test('two uncertainties of guard band: accepted from 12 to 18, rejected below 8 and above 22', () => {
    expect([12, 15, 18].map(twoSided)).toEqual(['conforms', 'conforms', 'conforms']);
    expect([8, 11.99, 18.01, 22].map(twoSided)).toEqual(Array(4).fill('undecided'));
    expect([7.99, 22.01].map(twoSided)).toEqual(Array(2).fill('does-not-conform'));
    const { acceptance, rejection, margin, guardBand } = decideConformity({
      ...between,
      reading: 18,
      rule: { kind: 'guard-band' },
    });
    expect({ acceptance, rejection, margin, guardBand }).toEqual({
      acceptance: { from: 12, to: 18 },
      rejection: { below: 8, above: 22 },
      margin: 2,
      guardBand: 2,
    });
  });

  test('a missing limit stays missing', () => {
    const { lowerLimit, upperLimit, ...rest } = between;
    const rule = { kind: 'guard-band' } as const;
    const below = decideConformity({ ...rest, upperLimit, rule });
    expect(below).toMatchObject({
      acceptance: { from: null, to: 18 },
      rejection: { below: null, above: 22 },
      margin: 5,
    });
    const above = decideConformity({ ...rest, lowerLimit, rule });
    expect(above).toMatchObject({
      acceptance: { from: 12, to: null },
      rejection: { below: 8, above: null },
      margin: 5,
    });
    // Phi(5) is 1 - 2.8665e-7.
    expect(1 - below.conformityProbabilityRatio).toBeCloseTo(2.8665e-7, 10);
    expect(decideConformity({ ...rest, reading: -15, upperLimit: -20, rule }).margin).toBe(-5);
  });

  test('far outside the probability is a tail, not a difference of ones', () => {
    // Phi(-10) = 7.6199e-24; the other limit lies ten uncertainties further.
    for (const reading of [0, 30]) {
      const ratio = decideConformity({ ...between, reading }).conformityProbabilityRatio;
      expect(ratio / 7.6199e-24).toBeCloseTo(1, 4);
    }
    // Student's t with one degree is the Cauchy distribution: 1/2 - atan(x)/pi, here between 10 and 20.
    const cauchy = (Math.atan(20) - Math.atan(10)) / Math.PI;
    for (const reading of [0, 30])
      expect(
        decideConformity({ ...between, reading, degreesOfFreedom: 1 }).conformityProbabilityRatio,
      ).toBeCloseTo(cauchy, 12);
    expect(
      decideConformity({ ...between, reading: 12, degreesOfFreedom: 1 }).conformityProbabilityRatio,
    ).toBeCloseTo((Math.atan(8) + Math.atan(2)) / Math.PI, 12);
  });

  test('what is wrong is refused by name', () => {
    const wrong = (change: object) => () => decideConformity({ ...between, ...change });
    const rule = (given: object) => wrong({ rule: given });
    expect(wrong({ lowerLimit: 20 })).toThrow(/lowerLimit must be below upperLimit/);
    expect(wrong({ lowerLimits: 1 })).toThrow(/lowerLimits/);
    expect(wrong({ degreesOfFreedom: 0.995 })).toThrow(/degreesOfFreedom/);
    expect(wrong({ degreesOfFreedom: 1 })).not.toThrow();
    expect(rule({ kind: 'guard-band', guardBandRatoi: 1 })).toThrow(/guardBandRatoi/);
    expect(rule({ kind: 'guard-band', guardBandRatio: 10 })).not.toThrow();
    expect(rule({ kind: 'guard-band', guardBandRatio: 10.05 })).toThrow(/guardBandRatio/);
    expect(rule({ kind: 'guard-band', guardBandRatio: 0 })).not.toThrow();
    expect(rule({ kind: 'guard-band', guardBandRatio: -0.01 })).toThrow(/guardBandRatio/);
    expect(rule({ kind: 'risk', riskPercent: 50.2 })).toThrow(/riskPercent/);
    expect(rule({ kind: 'risk', riskPercent: 0.99e-9 })).toThrow(/riskPercent/);
  });
});

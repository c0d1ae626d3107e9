import {
  clearSkyEquivalent,
  expectedReadings,
  judgeReadings,
  type RainyReading,
} from 'slantpath/acceptance';
import { genericCable } from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';

const beacon = (
  fadeDb: number,
  fromGHz: number,
  toGHz: number,
  change: Partial<RainyReading> = {},
): RainyReading => ({
  quantity: 'level',
  reading: 55,
  standardUncertainty: 0.5,
  frequencyGHz: toGHz,
  elevationDeg: 36,
  evidence: {
    kind: 'beacon',
    frequencyGHz: fromGHz,
    elevationDeg: 36,
    fadeDb,
    fadeStandardUncertaintyDb: 0.3,
  },
  ...change,
});

publishedTable({
  part: 'acceptance',
  quantity: 'fade carried to another frequency',
  unit: 'dB',
  source: 'frequency scaling of Recommendation ITU-R P.618, formula recomputed in Python',
  status: 'recomputed',
  limit: 1e-9,
  reason: 'double precision',
  count: 3,
  cases: () => [
    {
      name: '2 dB, 12.5 to 20 GHz',
      expected: 4.814026648661146,
      got: clearSkyEquivalent(beacon(2, 12.5, 20)).fadeDb,
    },
    {
      name: '3 dB, 11.2 to 12.7 GHz',
      expected: 3.812599642357259,
      got: clearSkyEquivalent(beacon(3, 11.2, 12.7)).fadeDb,
    },
    {
      name: '5 dB, 20 to 12.5 GHz',
      expected: 2.084832303821637,
      got: clearSkyEquivalent(beacon(5, 20, 12.5)).fadeDb,
    },
  ],
});

publishedTable({
  part: 'acceptance',
  quantity: 'clear-sky carrier-to-noise ratio',
  unit: 'dB',
  source: 'Roddy, Satellite Communications 3rd ed. (2001), Example 12.17',
  status: 'published',
  limit: 0.03,
  reason:
    'one decimal of the clear ratio; the book takes 272 K for the rain, the recommendation 275 K',
  count: 1,
  cases: () => [
    {
      name: 'a fade of 6.0173 dB at 10 dB',
      expected: 17.4,
      got: clearSkyEquivalent(
        beacon(6.0173, 12, 12, {
          quantity: 'carrier-to-noise',
          reading: 10,
          systemNoiseK: 544,
        }),
      ).clearSkyReading,
    },
  ],
});

describe('clear-sky equivalent', () => {
  test('no fade changes nothing but the uncertainty', () => {
    const dry = clearSkyEquivalent(beacon(0, 12.5, 20, { quantity: 'carrier-to-noise' }));
    expect(dry).toMatchObject({ fadeDb: 0, noiseRiseDb: 0, clearSkyReading: 55 });
    expect(dry.standardUncertainty).toBeGreaterThan(0.5);
  });

  test('the same carrier as its own beacon has no scatter of scaling', () => {
    const own = clearSkyEquivalent(beacon(4, 12, 12));
    expect(own.fadeDb).toBeCloseTo(4, 12);
    expect(own.standardUncertainty).toBeCloseTo(Math.hypot(0.5, 0.3), 12);
  });

  test('a lower path fades more, a ratio more than a level, and the doubt grows with the fade', () => {
    const base = beacon(3, 12, 20);
    const low = clearSkyEquivalent({ ...base, elevationDeg: 20 });
    expect(low.fadeDb).toBeGreaterThan(clearSkyEquivalent(base).fadeDb);
    const ratio = clearSkyEquivalent({ ...base, quantity: 'modulation-error-ratio' });
    expect(ratio.clearSkyReading).toBeGreaterThan(clearSkyEquivalent(base).clearSkyReading);
    expect(clearSkyEquivalent(beacon(6, 12, 20)).standardUncertainty).toBeGreaterThan(
      clearSkyEquivalent(base).standardUncertainty,
    );
  });

  test('from the rain rate: none without rain, more with more, wide uncertainty', () => {
    const from = (rainRateMmPerH: number) =>
      clearSkyEquivalent({
        ...beacon(0, 12, 12.5),
        evidence: { kind: 'rain-rate', rainRateMmPerH, rainHeightAboveStationKm: 2.5 },
      });
    expect(from(0).fadeDb).toBe(0);
    expect(from(30).fadeDb).toBeGreaterThan(from(10).fadeDb);
    expect(from(30).fadeStandardUncertaintyDb).toBeCloseTo(0.35 * from(30).fadeDb, 12);
  });

  test.each([
    ['quantity', { quantity: 'snr' }, 'not-an-option'],
    ['frequencyGHz', { frequencyGHz: 12500 }, 'out-of-range'],
    ['elevationDeg', { elevationDeg: 3 }, 'out-of-range'],
    ['standardUncertainty', { standardUncertainty: 0 }, 'out-of-range'],
    ['evidence', { evidence: undefined }, 'missing'],
    ['evidence.kind', { evidence: { kind: 'guess' } }, 'not-an-option'],
    [
      'evidence.fadeDb',
      {
        evidence: {
          kind: 'beacon',
          frequencyGHz: 12,
          elevationDeg: 30,
          fadeDb: -1,
          fadeStandardUncertaintyDb: 1,
        },
      },
      'out-of-range',
    ],
    [
      'evidence.rainRateMmPerH',
      { evidence: { kind: 'rain-rate', rainHeightAboveStationKm: 2 } },
      'missing',
    ],
  ])('refuses a bad %s', (parameter, change, code) => {
    expect(() => clearSkyEquivalent({ ...beacon(2, 12, 20), ...change } as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});

describe('expected readings and hidden faults', () => {
  const carriers = [
    {
      slot: '16.4 E',
      polarization: 'vertical',
      band: 'low',
      frequencyMHz: 1210,
      levelDbuv: 75,
      carrierToNoiseDb: 14,
    },
    {
      slot: '16.4 E',
      polarization: 'vertical',
      band: 'low',
      frequencyMHz: 1790,
      levelDbuv: 76,
      carrierToNoiseDb: 13,
    },
    {
      slot: '7.2 E',
      polarization: 'horizontal',
      band: 'high',
      frequencyMHz: 1790,
      levelDbuv: 74,
      carrierToNoiseDb: 12,
    },
  ];
  const plan = {
    carriers,
    tree: {
      kind: 'cable' as const,
      cable: genericCable('series-6'),
      lengthM: 40,
      to: { kind: 'outlet' as const, name: 'hut' },
    },
  };

  test('one level and one ratio for each carrier and outlet', () => {
    const expected = expectedReadings(plan);
    expect(expected).toHaveLength(6);
    const loss = ((19.965 * Math.sqrt(1.79) + 1.334 * 1.79) * 40) / 100;
    const found = expected.find((e) => e.slot === '7.2 E' && e.quantity === 'level');
    expect(found?.expected).toBeCloseTo(74 - loss, 9);
    expect(found?.testPoint).toBe('hut');
  });

  test('a pass 4 dB under expectation is flagged', () => {
    const expected = expectedReadings(plan);
    const reading = (offset: number) =>
      judgeReadings({
        readings: [
          {
            quantity: 'level',
            slot: '7.2 E',
            polarization: 'horizontal',
            band: 'high',
            testPoint: 'hut',
            reading: 74 - 11.64 + offset,
            standardUncertainty: 0.8,
          },
        ],
        limits: [{ quantity: 'level', lowerLimit: 47, upperLimit: 77 }],
        expected,
      })[0];
    expect(reading(-4)).toMatchObject({ hiddenFault: true, expectation: { finding: 'below' } });
    expect(reading(-1)).toMatchObject({
      hiddenFault: false,
      expectation: { finding: 'as-expected' },
    });
    expect(reading(4)).toMatchObject({ hiddenFault: false, expectation: { finding: 'above' } });
  });

  test('the most specific limit counts, and a place without a limit has no verdict', () => {
    const limits = [
      { quantity: 'level' as const, lowerLimit: 47 },
      { quantity: 'level' as const, slot: '16.4 E', lowerLimit: 60 },
      { quantity: 'level' as const, slot: '16.4 E', testPoint: 'hut', lowerLimit: 50 },
    ];
    const base = { quantity: 'level' as const, reading: 55, standardUncertainty: 0.5 };
    const judged = judgeReadings({
      readings: [
        { ...base, slot: '7.2 E' },
        { ...base, slot: '16.4 E', testPoint: 'roof' },
        { ...base, slot: '16.4 E', testPoint: 'hut' },
        { ...base, quantity: 'carrier-to-noise' },
      ],
      limits,
    });
    expect(judged.map((entry) => entry.decision?.verdict ?? null)).toEqual([
      'conforms',
      'does-not-conform',
      'conforms',
      null,
    ]);
  });

  test.each([
    ['readings', { readings: [] }, 'empty'],
    ['readings[0].quantity', { readings: [{ reading: 1, standardUncertainty: 1 }] }, 'missing'],
    [
      'readings[0].reading',
      { readings: [{ quantity: 'level', standardUncertainty: 1 }] },
      'missing',
    ],
    ['limits[0].lowerLimit', { limits: [{ quantity: 'level' }] }, 'missing'],
    ['limits', { limits: undefined }, 'missing'],
    [
      'expected[0].expected',
      { expected: [{ quantity: 'level', standardUncertainty: 1 }] },
      'missing',
    ],
  ])('refuses a bad %s', (parameter, change, code) => {
    const input = {
      readings: [{ quantity: 'level', reading: 50, standardUncertainty: 1 }],
      limits: [{ quantity: 'level', lowerLimit: 47 }],
      ...change,
    };
    expect(() => judgeReadings(input as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });

  test.each([
    ['carriers', { carriers: [] }, 'empty'],
    ['carriers[0].slot', { carriers: [{ ...carriers[0], slot: '' }] }, 'malformed'],
    [
      'carriers[0].frequencyMHz',
      { carriers: [{ ...carriers[0], frequencyMHz: 1.21 }] },
      'out-of-range',
    ],
    ['carriers', { carriers: [carriers[0], carriers[0]] }, 'inconsistent'],
  ])('a plan with a bad %s is refused', (parameter, change, code) => {
    expect(() => expectedReadings({ ...plan, ...change } as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});

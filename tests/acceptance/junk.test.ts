import * as acceptance from 'slantpath/acceptance';
import { expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { mutated, notFinite } from '../distribution/mutated.js';

const place = { slot: 'mid', polarization: 'vertical', band: 'low', testPoint: 'hut' };
const tree = {
  kind: 'cable',
  cable: { skinLossDbPer100m: 20 },
  lengthM: 20,
  to: {
    kind: 'splitter',
    lossDb: 4,
    outputs: [
      { kind: 'outlet', name: 'a' },
      { kind: 'outlet', name: 'b' },
    ],
  },
};
const installation = {
  diameterM: 0.9,
  systemNoiseK: 120,
  slots: [{ name: 'mid', azimuthDeg: 172, elevationDeg: 36 }],
  carriers: [
    {
      name: 'A',
      slot: 'mid',
      polarization: 'vertical',
      band: 'low',
      frequencyGHz: 11,
      frequencyMHz: 1250,
      levelDbuv: 75,
      carrierToNoiseDb: 14,
      thresholdDb: 6,
    },
  ],
  testPoints: [{ name: 'hut', lossDb: 10, noiseDbuv: 20 }],
};
const calls: readonly (readonly [string, (...args: never[]) => unknown, unknown, number])[] = [
  [
    'decideConformity',
    acceptance.decideConformity,
    {
      reading: 48,
      standardUncertainty: 1,
      lowerLimit: 47,
      upperLimit: 77,
      degreesOfFreedom: 5,
      rule: { kind: 'risk', riskPercent: 5 },
    },
    400,
  ],
  [
    'combinedReading',
    acceptance.combinedReading,
    { readings: [48, 49, 47], instrumentStandardUncertainty: 0.5, coverageRatio: 0.95 },
    400,
  ],
  [
    'decideRepeated',
    acceptance.decideRepeated,
    {
      readings: [48, 49],
      instrumentStandardUncertainty: 0.5,
      lowerLimit: 47,
      refusalReadings: 3,
      rule: { kind: 'guard-band', guardBandRatio: 1 },
    },
    400,
  ],
  [
    'globalRisks',
    acceptance.globalRisks,
    {
      processMean: 0,
      processStandardDeviation: 1,
      instrumentStandardUncertainty: 0.3,
      tolerance: { from: -2, to: 2 },
      acceptance: { from: -1.9, to: 1.9 },
    },
    200,
  ],
  [
    'judgeReadings',
    acceptance.judgeReadings,
    {
      readings: [{ quantity: 'level', ...place, reading: 55, standardUncertainty: 1 }],
      limits: [{ quantity: 'level', lowerLimit: 47 }],
      expected: [{ quantity: 'level', slot: 'mid', expected: 60, standardUncertainty: 1 }],
      expectationFactor: 2,
    },
    400,
  ],
  [
    'expectedReadings',
    acceptance.expectedReadings,
    {
      carriers: [
        {
          slot: 'mid',
          polarization: 'vertical',
          band: 'low',
          frequencyMHz: 1250,
          levelDbuv: 75,
          carrierToNoiseDb: 14,
        },
      ],
      tree,
      temperatureC: 20,
      bandwidthMHz: 30,
    },
    400,
  ],
  [
    'clearSkyEquivalent',
    acceptance.clearSkyEquivalent,
    {
      quantity: 'carrier-to-noise',
      reading: 9,
      standardUncertainty: 0.5,
      frequencyGHz: 20,
      elevationDeg: 36,
      systemNoiseK: 130,
      evidence: {
        kind: 'beacon',
        frequencyGHz: 12.5,
        elevationDeg: 34,
        fadeDb: 1,
        fadeStandardUncertaintyDb: 0.2,
      },
    },
    400,
  ],
  [
    'rankCauses',
    acceptance.rankCauses,
    {
      installation,
      observations: [
        { kind: 'level', carrier: 'A', testPoint: 'hut', levelDbuv: 60, standardUncertaintyDb: 1 },
        { kind: 'mast-lean', leanDeg: 1 },
        { kind: 'reception', carrier: 'A', testPoint: 'hut', received: 'nothing' },
      ],
      priorWeights: { nothing: 2 },
    },
    120,
  ],
];

test.each(calls)(
  '%s: valid input with one value replaced gives a clear error or finite numbers',
  (_, call, given, count) => {
    const random = randomStream(23);
    expect(notFinite(call(given as never))).toBeUndefined();
    let refused = 0;
    for (let i = 0; i < count; i++) {
      const changed = mutated(given, random);
      try {
        expect(notFinite(call(changed as never)), JSON.stringify(changed)).toBeUndefined();
      } catch (error) {
        if ((error as Error).name !== 'DomainError')
          throw new Error(`${JSON.stringify(changed)}: ${error}`);
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(count / 4);
  },
);

test('causeTestPoints: the same', () => {
  const random = randomStream(29);
  for (let i = 0; i < 300; i++) {
    const changed = mutated(
      { tree, options: { frequenciesMHz: [1200, 1800], temperatureC: 20 } },
      random,
    );
    const given = (changed ?? {}) as { tree: never; options: never };
    try {
      expect(notFinite(acceptance.causeTestPoints(given.tree, given.options))).toBeUndefined();
    } catch (error) {
      expect((error as Error).name, String(error)).toBe('DomainError');
    }
  }
});

import * as distribution from 'slantpath/distribution';
import { expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { mutated, notFinite } from './mutated.js';

const cable = distribution.genericCable('series-6');
const system = {
  source: {
    levelDbuv: [
      { frequencyMHz: 950, valueDb: 75 },
      { frequencyMHz: 2150, valueDb: 74 },
    ],
    carrierToNoiseDb: 14,
    bandwidthMHz: 27.5,
    supply: { currentA: 0.15, minimumVoltageV: 16 },
  },
  temperatureC: 30,
  tree: {
    kind: 'cable',
    name: 'run',
    cable: { ...cable, temperaturePercentPerK: 0.2 },
    lengthM: 20,
    to: {
      kind: 'amplifier',
      name: 'amplifier',
      gainDb: 20,
      noiseFigureDb: 6,
      maximumOutputDbuv: 110,
      automaticGain: { outputLevelDbuv: 85, rangeDb: 10 },
      supply: { currentA: 0.05, minimumVoltageV: 12 },
      to: {
        kind: 'switch',
        lossDb: 3,
        isolationDb: 25,
        noiseFigureDb: 8,
        outputs: [
          {
            kind: 'tap',
            name: 'tap',
            tapLossDb: 12,
            throughLossDb: 2,
            tapIsolationDb: 22,
            taps: [{ kind: 'outlet', name: 'a', lossDb: 1 }, null],
            to: {
              kind: 'splitter',
              lossDb: 4,
              diodeDropV: 0.7,
              outputs: [
                { kind: 'outlet', name: 'b', to: { kind: 'receiver', name: 'set' } },
                { kind: 'outlet', name: 'c' },
              ],
            },
          },
          null,
        ],
      },
    },
  },
} as unknown as distribution.DistributionSystem;

const frequenciesMHz = [950, 2150];
const calls: readonly (readonly [string, (...args: never[]) => unknown, readonly unknown[]])[] = [
  ['outletLevels', distribution.outletLevels, [system, frequenciesMHz]],
  [
    'windowChecks',
    distribution.windowChecks,
    [system, { frequenciesMHz, window: { lowestDbuv: 47, highestDbuv: 77 } }],
  ],
  ['outletIsolation', distribution.outletIsolation, [system, frequenciesMHz]],
  [
    'amplifierLoads',
    distribution.amplifierLoads,
    [system, { frequenciesMHz, carrierCount: 20, requiredRatioDb: 20 }],
  ],
  ['supplyAlong', distribution.supplyAlong, [system, { from: 'set', voltageV: 18, limitA: 0.4 }]],
  [
    'levelDepartures',
    distribution.levelDepartures,
    [system, { levels: [{ name: 'a', frequencyMHz: 1200, levelDbuv: 60 }], toleranceDb: 3 }],
  ],
  [
    'designDistribution',
    distribution.designDistribution,
    [
      {
        system,
        frequenciesMHz,
        window: { lowestDbuv: 47, highestDbuv: 77 },
        largestSlopeDb: 9,
        choices: [
          {
            part: 'tap',
            options: [
              { tapLossDb: 10, throughLossDb: 2 },
              { tapLossDb: 15, throughLossDb: 1 },
            ],
          },
        ],
      },
    ],
  ],
  [
    'longestRun',
    distribution.longestRun,
    [
      {
        cable,
        levelDbuv: 75,
        lowestLevelDbuv: 47,
        largestSlopeDb: 8,
        otherLossDb: 1,
        supply: { voltageV: 17, currentA: 0.2, minimumVoltageV: 16, otherDropV: 0.7 },
      },
    ],
  ],
  [
    'cableFit',
    distribution.cableFit,
    [
      [
        { frequencyMHz: 270, lossDbPer100m: 10.6 },
        { frequencyMHz: 2150, lossDbPer100m: 31.8 },
      ],
    ],
  ],
  [
    'cableLossDb',
    distribution.cableLossDb,
    [{ cable, lengthM: 20, frequencyMHz: 1000, temperatureC: 20 }],
  ],
  ['supplyCommand', distribution.supplyCommand, [{ polarization: 'vertical', band: 'low' }]],
  ['understoodCommand', distribution.understoodCommand, [{ voltageV: 13, toneVpp: 0.6 }]],
  ['outletLimits', distribution.outletLimits, ['satellite-if']],
  ['genericCable', distribution.genericCable, ['series-6']],
];

test.each(calls)(
  '%s: valid input with one value replaced gives a clear error or finite numbers',
  (_, call, args) => {
    const random = randomStream(17);
    expect(notFinite(call(...(args as never[])))).toBeUndefined();
    let refused = 0;
    for (let i = 0; i < 400; i++) {
      const given = mutated(args, random) as never[];
      try {
        expect(
          notFinite(call(...(Array.isArray(given) ? given : [given as never]))),
        ).toBeUndefined();
      } catch (error) {
        if ((error as Error).name !== 'DomainError')
          throw new Error(`${JSON.stringify(given)}: ${error}`);
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(100);
  },
);

import {
  type DistributionPart,
  type DistributionSystem,
  genericCable,
  longestRun,
  supplyAlong,
  supplyCommand,
  understoodCommand,
} from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';

const thin = { skinLossDbPer100m: 20, loopResistanceOhmPer100m: 4.1 };
const thick = { skinLossDbPer100m: 17, loopResistanceOhmPer100m: 2.8 };

/** Source, 3 m, switch, 30 m, amplifier, 45 m, splitter, 20 m, receiver. */
const chain = (change: Partial<{ diodes: boolean[]; mains: boolean }> = {}): DistributionPart => ({
  kind: 'cable',
  name: 'lead',
  cable: thin,
  lengthM: 3,
  to: {
    kind: 'switch',
    name: 'switch',
    lossDb: 4,
    ...(change.mains ? { feedsSource: true } : { supply: { currentA: 0.06, minimumVoltageV: 12 } }),
    outputs: [
      {
        kind: 'cable',
        name: 'riser',
        cable: thin,
        lengthM: 30,
        to: {
          kind: 'amplifier',
          name: 'amplifier',
          gainDb: 15,
          noiseFigureDb: 6,
          supply: { currentA: 0.08, minimumVoltageV: 12 },
          to: {
            kind: 'cable',
            name: 'corridor',
            cable: thick,
            lengthM: 45,
            to: {
              kind: 'splitter',
              name: 'splitter',
              lossDb: 4,
              ...(change.diodes ? { passesSupply: change.diodes } : {}),
              outputs: [
                {
                  kind: 'cable',
                  name: 'drop',
                  cable: thin,
                  lengthM: 20,
                  to: { kind: 'receiver', name: 'set' },
                },
                { kind: 'outlet', name: 'spare' },
              ],
            },
          },
        },
      },
    ],
  },
});
const system = (change = {}): DistributionSystem => ({
  source: { levelDbuv: 75, supply: { currentA: 0.18, minimumVoltageV: 16 } },
  tree: chain(change),
});

publishedTable({
  part: 'distribution',
  quantity: 'supply voltage at each powered part',
  unit: 'V',
  source: 'nodal analysis of the same network with a linear solver (numpy)',
  status: 'recomputed',
  limit: 1e-9,
  reason: 'a linear network',
  count: 4,
  cases: () => {
    const { points } = supplyAlong(system(), { from: 'set', voltageV: 18 });
    const at = (name: string) => points.find((point) => point.name === name)?.voltageV ?? 0;
    return [
      { name: 'splitter', expected: 17.7376, got: at('splitter') },
      { name: 'amplifier', expected: 16.6344, got: at('amplifier') },
      { name: 'switch', expected: 16.3392, got: at('switch') },
      { name: 'source', expected: 16.31706, got: at('source') },
    ];
  },
});

publishedTable({
  part: 'distribution',
  quantity: 'resistance of an 18 AWG centre inside the generic series 6 loop',
  unit: 'ohm/100 m',
  source: 'copper 1.7241e-8 ohm m, 1.0237 mm, recomputed; braid 10 to 30 ohm/km by practice',
  status: 'practice',
  limit: 1.1,
  reason: 'the braid is known only as a range; its middle is 2 ohm per 100 m',
  count: 1,
  cases: () => [
    {
      name: 'centre 2.095 and braid 2.0',
      expected: 2.095 + 2,
      got: genericCable('series-6').loopResistanceOhmPer100m ?? 0,
    },
  ],
});

describe('supply along the cable', () => {
  test('currents add up towards the feed, and enough is enough', () => {
    const supply = supplyAlong(system(), { from: 'set', voltageV: 18 });
    expect(supply.kind).toBe('enough');
    expect(supply.currentA).toBeCloseTo(0.32, 12);
    expect(supply.points.map(({ name }) => name)).toEqual([
      'set',
      'drop',
      'splitter',
      'corridor',
      'amplifier',
      'riser',
      'switch',
      'lead',
      'source',
    ]);
  });

  test('13 V at the same receiver leaves the unit short, and names the part', () => {
    const supply = supplyAlong(system(), { from: 'set', voltageV: 17.2 });
    expect(supply.kind).toBe('too-low');
    expect(supply.at).toBe('source');
  });

  test('a feed that cannot give the current says so', () => {
    const feed = { from: 'set', voltageV: 18, limitA: 0.3 };
    expect(supplyAlong(system(), feed).kind).toBe('too-much-current');
  });

  test('a splitter output without passage blocks', () => {
    const given = system({ diodes: [false, true] });
    const supply = supplyAlong(given, { from: 'set', voltageV: 18 });
    expect(supply).toMatchObject({ kind: 'blocked', at: 'splitter' });
    expect(supplyAlong(given, { from: 'spare', voltageV: 18 }).kind).toBe('enough');
  });

  test('a mains-fed switch takes the load off the receiver', () => {
    const supply = supplyAlong(system({ mains: true }), { from: 'set', voltageV: 18 });
    expect(supply).toMatchObject({ kind: 'self-powered', at: 'switch' });
    expect(supply.currentA).toBeCloseTo(0.08, 12);
  });

  test.each([
    ['from', { from: 'nobody', voltageV: 18 }, 'inconsistent'],
    ['from', { voltageV: 18 }, 'missing'],
    ['voltageV', { from: 'set', voltageV: 18000 }, 'out-of-range'],
    ['limitA', { from: 'set', voltageV: 18, limitA: 350 }, 'out-of-range'],
  ])('refuses a bad %s', (parameter, feed, code) => {
    expect(() => supplyAlong(system(), feed as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});

describe('commands by voltage and tone (practice of the trade, standard not read)', () => {
  test('voltage and tone for each choice', () => {
    expect(supplyCommand({ polarization: 'vertical', band: 'low' })).toEqual({
      nominalV: 13,
      atUnit: { fromV: 11.5, toV: 14 },
      tone: false,
    });
    expect(supplyCommand({ polarization: 'left-hand', band: 'high' })).toEqual({
      nominalV: 18,
      atUnit: { fromV: 16, toV: 19 },
      tone: true,
    });
  });

  test.each([
    [11.5, 0, { kind: 'understood', polarization: 'vertical', band: 'low' }],
    [14, 0.65, { kind: 'understood', polarization: 'vertical', band: 'high' }],
    [14.01, 0, { kind: 'ambiguous', band: 'low' }],
    [16, 0.4, { kind: 'understood', polarization: 'horizontal', band: 'high' }],
    [11.4, 0, { kind: 'out-of-range', side: 'below' }],
    [19.1, 0, { kind: 'out-of-range', side: 'above' }],
  ])('%f V with %f Vpp', (voltageV, toneVpp, expected) => {
    expect(understoodCommand({ voltageV, toneVpp })).toEqual(expected);
  });
});

describe('longest run', () => {
  const cable = genericCable('series-6');
  test('at the longest run by level the level is exactly the lowest', () => {
    const run = longestRun({ cable, levelDbuv: 75, lowestLevelDbuv: 53, otherLossDb: 2 });
    const loss = (19.965 * Math.sqrt(2.15) + 1.334 * 2.15) / 100;
    expect(run).toMatchObject({ limitedBy: 'level', bySlopeM: null, bySupplyM: null });
    expect(run.lengthM).toBeCloseTo(20 / loss, 9);
  });

  test('supply and slope limit where they are shorter', () => {
    const question = {
      cable,
      levelDbuv: 90,
      lowestLevelDbuv: 47,
      supply: { voltageV: 17, currentA: 0.25, minimumVoltageV: 16 },
    };
    const bySupply = longestRun(question);
    expect(bySupply.limitedBy).toBe('supply');
    expect(bySupply.lengthM).toBeCloseTo(1 / (0.25 * 0.041), 9);
    expect(longestRun({ ...question, largestSlopeDb: 4 }).limitedBy).toBe('slope');
  });

  test('no budget is no run; nothing that limits is null', () => {
    expect(longestRun({ cable, levelDbuv: 40, lowestLevelDbuv: 47 }).lengthM).toBe(0);
    const lossless = { skinLossDbPer100m: 0 };
    expect(longestRun({ cable: lossless, levelDbuv: 70, lowestLevelDbuv: 47 })).toMatchObject({
      lengthM: null,
      limitedBy: 'nothing',
    });
  });

  test('swapped frequencies are named', () => {
    expect(() =>
      longestRun({
        cable,
        levelDbuv: 70,
        lowestLevelDbuv: 47,
        highestFrequencyMHz: 950,
        lowestFrequencyMHz: 2150,
      }),
    ).toThrow('were the frequencies swapped?');
  });
});

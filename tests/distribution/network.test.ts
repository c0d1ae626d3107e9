/** Several sources on one tree, by hand: decibels added along the way, Ohm's law up the line. */

import { DomainError } from 'slantpath';
import {
  type DistributionNetwork,
  type DistributionPart,
  inputIsolation,
  inputSupply,
  networkLevels,
  networkSystem,
  outletIsolation,
  outletLevels,
  supplyAlong,
} from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';

/** A cable of 20 dB per 100 m at 1000 MHz that grows with the root of the frequency alone, 4 ohm per 100 m. */
const cable = {
  skinLossDbPer100m: 20,
  loopResistanceOhmPer100m: 4,
  temperaturePercentPerK: 0,
};
const line = (lengthM: number) => [{ kind: 'cable' as const, cable, lengthM }];
const inputs = [
  { name: 'VL', feed: { voltageV: 13, limitA: 0.4 } },
  { name: 'HL', lossDb: 3, feed: { voltageV: 18, limitA: 0.4 } },
  { name: 'terrestrial', lossDb: 18, alwaysThere: true },
];
const lower: DistributionPart = {
  kind: 'switch',
  name: 'lower switch',
  lossDb: 2,
  inputs: [{ name: 'VL' }, { name: 'HL', lossDb: 5, isolationDb: 30 }, { name: 'terrestrial' }],
  outputs: [{ kind: 'outlet', name: 'class 2', lossDb: 1 }],
};
const network = (): DistributionNetwork => ({
  sources: [
    {
      name: 'V low',
      levelDbuv: 80,
      carrierToNoiseDb: 15,
      input: 'VL',
      line: line(25),
      supply: { currentA: 0.2, minimumVoltageV: 11.5 },
    },
    { name: 'H low', levelDbuv: 84, input: 'HL', supply: { currentA: 0.2, minimumVoltageV: 16 } },
    {
      name: 'aerial',
      levelDbuv: 75,
      input: 'terrestrial',
      lowestMHz: 490,
      highestMHz: 640,
    },
  ],
  tree: {
    kind: 'switch',
    name: 'upper switch',
    lossDb: 2,
    inputs,
    throughLossDb: 1.5,
    through: { kind: 'cable', cable, lengthM: 10, to: lower },
    outputs: [{ kind: 'outlet', name: 'class 1', lossDb: 1 }, null],
  },
});
/** Loss of the cable in dB: 0.2 dB a metre times the root of the frequency in GHz. */
const lossDb = (lengthM: number, frequencyMHz: number) =>
  0.2 * lengthM * Math.sqrt(frequencyMHz / 1000);

describe('levels', () => {
  const [vLow, hLow, aerial] = networkLevels(network());
  test('each source comes with the loss of its own input, and the next switch has its own', () => {
    // 80 - line - 2 (switch) - 1 (outlet) at 950 MHz.
    expect(vLow?.outlets[0]?.points[0]?.levelDbuv).toBeCloseTo(77 - lossDb(25, 950), 9);
    // 84 - 3 (input) - 1, no line.
    expect(hLow?.outlets[0]?.points[0]?.levelDbuv).toBeCloseTo(80, 9);
    // 84 - 1.5 (through) - cable - 5 (input of the lower switch) - 1.
    expect(hLow?.outlets[1]?.points[1]?.levelDbuv).toBeCloseTo(76.5 - lossDb(10, 2150), 9);
    // Through the cascade the lower switch gives no figure of its own for the aerial's input: 2 dB.
    expect(aerial?.outlets.map(({ points }) => points[0]?.levelDbuv)).toEqual([
      expect.closeTo(75 - 18 - 1, 9),
      expect.closeTo(75 - 1.5 - lossDb(10, 490) - 2 - 1, 9),
    ]);
  });
  test('at asked frequencies, for the sources that bring them', () => {
    const asked = networkLevels(network(), [600, 1000]);
    expect(asked.map(({ outlets }) => outlets[0]?.points.map((p) => p.frequencyMHz))).toEqual([
      [1000],
      [1000],
      [600],
    ]);
  });
  test('a tree for one source is the same as before: no inputs, no way on', () => {
    const tree: DistributionPart = {
      kind: 'switch',
      lossDb: 2,
      outputs: [{ kind: 'outlet', name: 'a' }],
    };
    const [only] = networkLevels({ sources: [{ name: 's', levelDbuv: 70 }], tree }, [1000]);
    expect(only?.outlets).toEqual(outletLevels({ source: { levelDbuv: 70 }, tree }, [1000]));
  });
});

describe('isolation', () => {
  test('a wanted source over a stronger one is the isolation less what the other is stronger by', () => {
    const rows = inputIsolation(network());
    const of = (outlet: string, wanted: string) =>
      rows.find((row) => row.outlet === outlet && row.wanted === wanted)?.wantedAboveUnwantedDb;
    // Class 1, least at the top of the band where the line takes most: 77 - line - (80 - 25).
    expect(of('class 1', 'V low')).toBeCloseTo(77 - lossDb(25, 2150) - 80 + 25, 9);
    // Class 2: V low comes 80 - line - 1.5 - cable - 2 - 1, H low 84 - 1.5 - cable - 5 - 1, 30 dB apart where not chosen.
    expect(of('class 2', 'V low')).toBeCloseTo(80 - 3 - lossDb(25, 2150) - (84 - 6) + 30, 9);
    expect(of('class 1', 'H low')).toBeCloseTo(80 - (77 - lossDb(25, 950)) + 25, 9);
    // The aerial brings no frequency of the others.
    expect(rows.some(({ wanted }) => wanted === 'aerial')).toBe(false);
  });
  test('outlets of two switches of a cascade are isolated by the way between them', () => {
    const [pair] = outletIsolation(networkSystem(network(), 'V low'), [1000]);
    expect(pair?.between).toEqual(['class 1', 'class 2']);
    // 1 dB outlet, 25 dB across the switch (usual), 1.5 dB counted across, cable, 2 dB switch, 1 dB outlet.
    expect(pair?.lowestDb).toBeCloseTo(1 + 25 + lossDb(10, 1000) + 2 + 1, 9);
  });
});

describe('supply', () => {
  test('each input gives its unit what it takes', () => {
    // 25 m x 4 ohm / 100 m x 0.2 A = 0.2 V.
    expect(inputSupply(network())).toEqual([
      {
        kind: 'enough',
        source: 'V low',
        switch: 'upper switch',
        input: 'VL',
        currentA: 0.2,
        voltageV: expect.closeTo(12.8, 9),
      },
      {
        kind: 'enough',
        source: 'H low',
        switch: 'upper switch',
        input: 'HL',
        currentA: 0.2,
        voltageV: 18,
      },
    ]);
  });
  const changed = (change: (draft: ReturnType<typeof network>['sources'][number]) => object) => {
    const base = network();
    const [first] = base.sources;
    if (!first) throw new Error('no source');
    return inputSupply({ ...base, sources: [{ ...first, ...change(first) }] })[0];
  };
  test('an amplifier on the line takes its own', () => {
    const amplifier = {
      kind: 'amplifier' as const,
      gainDb: 10,
      noiseFigureDb: 6,
      supply: { currentA: 0.1, minimumVoltageV: 10 },
    };
    // From the switch: 10 m at 0.3 A, the amplifier, 15 m at 0.2 A: 0.12 V and 0.12 V.
    expect(changed(() => ({ line: [...line(15), amplifier, ...line(10)] }))).toMatchObject({
      kind: 'enough',
      currentA: expect.closeTo(0.3, 12),
      voltageV: expect.closeTo(12.76, 9),
    });
  });
  test('too far, too much, blocked, not fed', () => {
    expect(changed(() => ({ line: line(250) }))?.kind).toBe('too-low');
    expect(changed(() => ({ supply: { currentA: 0.5, minimumVoltageV: 11.5 } }))?.kind).toBe(
      'too-much-current',
    );
    const block = [{ kind: 'attenuator' as const, lossDb: 3, passesSupply: false }];
    expect(changed(() => ({ line: block }))).toMatchObject({ kind: 'blocked', voltageV: null });
    expect(changed(() => ({ input: 'terrestrial' }))?.kind).toBe('not-fed');
  });
  test('receivers feed through a cascade as through any part', () => {
    const along = supplyAlong(networkSystem(network(), 'V low'), { from: 'class 2', voltageV: 18 });
    // 35 m of cable at 0.2 A.
    expect(along.points.at(-1)?.voltageV).toBeCloseTo(18 - 0.2 * 1.4, 9);
  });
});

describe('what is wrong is refused with its place', () => {
  const refused = (change: (draft: { sources: object[]; tree: object }) => void): string => {
    const draft = structuredClone(network()) as unknown as { sources: object[]; tree: object };
    change(draft);
    try {
      networkLevels(draft as never);
    } catch (error) {
      if (error instanceof DomainError) return error.parameter;
      throw error;
    }
    return 'taken';
  };
  test.each<[string, Parameters<typeof refused>[0], string]>([
    [
      'two sources on one input',
      (d) => Object.assign(d.sources[1] ?? {}, { input: 'VL' }),
      'sources[1].input',
    ],
    [
      'an input that is not there',
      (d) => Object.assign(d.sources[1] ?? {}, { input: 'XX' }),
      'tree.inputs',
    ],
    [
      'no input where the switch tells them apart',
      (d) => Reflect.deleteProperty(d.sources[1] ?? {}, 'input'),
      'sources[1].input',
    ],
    [
      'a switch that is not there',
      (d) => Object.assign(d.sources[1] ?? {}, { into: 'cellar' }),
      'sources[1].into',
    ],
    [
      'two inputs of one name',
      (d) => Object.assign(d.tree, { inputs: [{ name: 'VL' }, { name: 'VL' }] }),
      'tree.inputs[1].name',
    ],
    [
      'a field that nobody knows',
      (d) => Object.assign(d.tree, { inputs: [{ name: 'VL', los: 3 }] }),
      'tree.inputs[0].los',
    ],
    ['no sources', (d) => Object.assign(d, { sources: [] }), 'sources'],
  ])('%s', (_, change, parameter) => {
    expect(refused(change)).toBe(parameter);
  });
  test('a switch that leads into itself', () => {
    expect(
      refused((d) => {
        Object.assign(d.tree, { through: d.tree });
      }),
    ).toMatch(/^tree\.through/);
  });
});

import {
  amplifierLoads,
  type DistributionPart,
  type DistributionSystem,
  designDistribution,
  genericCable,
  levelDepartures,
  outletIsolation,
  outletLevels,
} from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';

const cable = genericCable('series-6');
const outlet = (name: string, lossDb = 1): DistributionPart => ({ kind: 'outlet', name, lossDb });
const drop = (name: string, lengthM: number): DistributionPart => ({
  kind: 'cable',
  cable,
  lengthM,
  to: outlet(name),
});

describe('isolation', () => {
  const tree: DistributionPart = {
    kind: 'tap',
    name: 'tap',
    throughLossDb: 2,
    tapLossDb: 12,
    tapIsolationDb: 26,
    taps: [outlet('a'), outlet('b')],
    to: {
      kind: 'splitter',
      name: 'split',
      lossDb: 4,
      isolationDb: 22,
      outputs: [outlet('c'), outlet('d')],
    },
  };
  test('across taps, across a splitter, and from tap to through port', () => {
    const found = outletIsolation({ source: { levelDbuv: 80 }, tree }, [1000]);
    const between = (x: string, y: string) =>
      found.find(({ between: names }) => names.includes(x) && names.includes(y));
    expect(found).toHaveLength(6);
    expect(between('a', 'b')).toMatchObject({ at: 'tap', lowestDb: 28 });
    expect(between('c', 'd')).toMatchObject({ at: 'split', lowestDb: 24 });
    // Coupler without a figure: tap value and 10 dB; then the splitter and both outlets.
    expect(between('a', 'c')).toMatchObject({ at: 'tap', lowestDb: 12 + 10 + 4 + 1 + 1 });
  });

  test('an amplifier lets little back, and its gain counts in the worse direction', () => {
    const [pair] = outletIsolation(
      {
        source: { levelDbuv: 80 },
        tree: {
          kind: 'splitter',
          lossDb: 4,
          isolationDb: 20,
          outputs: [
            outlet('quiet', 0),
            { kind: 'amplifier', gainDb: 15, noiseFigureDb: 5, to: outlet('loud', 0) },
          ],
        },
      },
      [1000],
    );
    expect(pair?.lowestDb).toBe(5);
  });

  test('a receiver behind its outlet is no pair', () => {
    const tree: DistributionPart = {
      kind: 'outlet',
      name: 'wall',
      to: { kind: 'receiver', name: 'set' },
    };
    expect(outletIsolation({ source: { levelDbuv: 70 }, tree }, [950])).toEqual([]);
  });
});

describe('amplifier load', () => {
  const system = (levelDbuv: number): DistributionSystem => ({
    source: { levelDbuv },
    tree: {
      kind: 'amplifier',
      gainDb: 20,
      noiseFigureDb: 6,
      maximumOutputDbuv: 114,
      to: outlet('x'),
    },
  });

  test('two carriers at the rated level give 35 dB, and 2 dB per decibel', () => {
    const at = (levelDbuv: number) =>
      amplifierLoads(system(levelDbuv), { frequenciesMHz: [950, 2150] })[0]?.thirdOrderRatioDb;
    expect(at(94)).toBeCloseTo(35, 12);
    expect(at(91)).toBeCloseTo(41, 12);
  });

  test('many carriers: as a count of the products that fall into the middle channel', () => {
    const count = 40;
    const middle = 20;
    let triple = 0;
    let double = 0;
    for (let a = 0; a < count; a++)
      for (let b = a; b < count; b++) {
        const c = a + b - middle;
        if (c < 0 || c >= count || a === middle || b === middle) continue;
        if (a === b) double++;
        else triple++;
      }
    // A triple beat carries twice the voltage of a product of two carriers: 6 dB.
    const expected = 41 - 10 * Math.log10(4 * triple + double);
    const [load] = amplifierLoads(system(91), {
      frequenciesMHz: [950, 2150],
      carrierCount: count,
    });
    expect(Math.abs((load?.thirdOrderRatioDb ?? 0) - expected)).toBeLessThan(0.4);
  });

  test('at the allowed level the ratio is the required one', () => {
    const load = { frequenciesMHz: [950, 1550, 2150], carrierCount: 40, requiredRatioDb: 22 };
    const [first] = amplifierLoads(system(70), load);
    const [again] = amplifierLoads(system((first?.allowedOutputDbuv ?? 0) - 20), load);
    expect(again?.thirdOrderRatioDb).toBeCloseTo(22, 9);
    expect(again?.headroomDb).toBeCloseTo(0, 9);
  });

  test('the total is the power of all carriers', () => {
    const [load] = amplifierLoads(system(70), { frequenciesMHz: [950, 2150], carrierCount: 20 });
    expect(load?.totalOutputDbuv).toBeCloseTo(90 + 13.0103, 4);
  });

  test('an amplifier without a rating has no ratio', () => {
    const tree: DistributionPart = {
      kind: 'amplifier',
      gainDb: 20,
      noiseFigureDb: 6,
      to: outlet('x'),
    };
    expect(
      amplifierLoads({ source: { levelDbuv: 70 }, tree }, { frequenciesMHz: [950] })[0],
    ).toMatchObject({ thirdOrderRatioDb: null, headroomDb: null });
  });
});

describe('departures', () => {
  const system: DistributionSystem = {
    source: { levelDbuv: 78 },
    tree: {
      kind: 'splitter',
      name: 'attic splitter',
      lossDb: 4,
      outputs: [
        {
          kind: 'cable',
          name: 'east riser',
          cable,
          lengthM: 20,
          to: {
            kind: 'splitter',
            name: 'east splitter',
            lossDb: 4,
            outputs: [outlet('e1'), outlet('e2')],
          },
        },
        outlet('west'),
      ],
    },
  };
  const planned = new Map(
    outletLevels(system, [1500]).map(({ name, points }) => [name, points[0]?.levelDbuv ?? 0]),
  );
  const measured = (offsets: Record<string, number>) =>
    levelDepartures(system, {
      levels: Object.entries(offsets).map(([name, offset]) => ({
        name,
        frequencyMHz: 1500,
        levelDbuv: (planned.get(name) ?? 0) + offset,
      })),
    });

  test('the part nearest to the outlets that explains all', () => {
    expect(measured({ e1: -8, e2: -7, west: 0.5 })).toMatchObject({
      kind: 'common-part',
      part: 'east splitter',
    });
    expect(measured({ e1: -8, e2: 0, west: 0.5 })).toMatchObject({
      kind: 'common-part',
      part: 'e1',
    });
    expect(measured({ e1: -8, e2: -8, west: -8 }).part).toBe('attic splitter');
    expect(measured({ e1: 1, e2: -1, west: 2 }).kind).toBe('as-planned');
    expect(measured({ e1: -9, e2: 0, west: -9 }).kind).toBe('scattered');
  });

  test('an unknown outlet is named', () => {
    expect(() => measured({ cellar: 0 })).toThrow(
      expect.objectContaining({ parameter: 'levels[0].name', code: 'inconsistent' }),
    );
  });
});

describe('design', () => {
  const system: DistributionSystem = {
    source: { levelDbuv: 72 },
    tree: {
      kind: 'amplifier',
      name: 'amplifier',
      gainDb: 0,
      noiseFigureDb: 6,
      to: {
        kind: 'equaliser',
        name: 'equaliser',
        lossDb: 0,
        to: {
          kind: 'cable',
          cable,
          lengthM: 30,
          to: {
            kind: 'tap',
            name: 'first tap',
            tapLossDb: 15,
            throughLossDb: 1,
            taps: [drop('room 1', 15)],
            to: {
              kind: 'cable',
              cable,
              lengthM: 40,
              to: {
                kind: 'tap',
                name: 'second tap',
                tapLossDb: 15,
                throughLossDb: 1,
                taps: [drop('room 2', 10)],
                to: drop('room 3', 30),
              },
            },
          },
        },
      },
    },
  };
  const taps = [
    { tapLossDb: 10, throughLossDb: 2.5 },
    { tapLossDb: 15, throughLossDb: 1.5 },
    { tapLossDb: 20, throughLossDb: 1 },
  ];
  const choices = [
    { part: 'amplifier', options: [0, 10, 20, 30].map((gainDb) => ({ gainDb })) },
    {
      part: 'equaliser',
      options: [0, 6, 12].map((reach) => ({
        lossDb: [
          { frequencyMHz: 950, valueDb: reach },
          { frequencyMHz: 2150, valueDb: 0.5 },
        ],
      })),
    },
    { part: 'first tap', options: taps },
    { part: 'second tap', options: taps },
  ];
  const question = { system, choices, frequenciesMHz: [950, 1550, 2150] };

  /** Smallest margin by a plain loop over all combinations, with losses added by hand. */
  function bestByHand(): number {
    let best = Number.NEGATIVE_INFINITY;
    const run = (f: number, lengthM: number) =>
      ((19.965 * Math.sqrt(f / 1000) + 1.334 * (f / 1000)) * lengthM) / 100;
    for (const gain of [0, 10, 20, 30])
      for (const reach of [0, 6, 12])
        for (const t1 of taps)
          for (const t2 of taps) {
            let margin = Number.POSITIVE_INFINITY;
            for (const f of [950, 1550, 2150]) {
              const eq = reach + ((0.5 - reach) * (f - 950)) / 1200;
              const at1 = 72 + gain - eq - run(f, 30);
              const at2 = at1 - t1.throughLossDb - run(f, 40);
              const rooms = [
                at1 - t1.tapLossDb - run(f, 15) - 1,
                at2 - t2.tapLossDb - run(f, 10) - 1,
                at2 - t2.throughLossDb - run(f, 30) - 1,
              ];
              for (const level of rooms) margin = Math.min(margin, level - 47, 77 - level);
            }
            best = Math.max(best, margin);
          }
    return best;
  }

  test('finds the best of all combinations, as a plain loop by hand does', () => {
    const design = designDistribution(question);
    expect(design).toMatchObject({ kind: 'fits', tried: 108, changes: [] });
    expect(design.smallestMarginDb).toBeCloseTo(bestByHand(), 9);
    for (const check of design.outlets) expect(check.kind).toBe('inside');
    const again = designDistribution({ ...question, system: design.system, choices: [] });
    expect(again.smallestMarginDb).toBeCloseTo(design.smallestMarginDb, 9);
  });

  test('says what to change where nothing fits', () => {
    const weak = { ...system, source: { levelDbuv: 20 } };
    expect(designDistribution({ ...question, system: weak })).toMatchObject({
      kind: 'none-fits',
      fitting: 0,
      changes: [{ kind: 'raise-all' }],
    });
    const strong = { ...system, source: { levelDbuv: 125 } };
    expect(designDistribution({ ...question, system: strong }).changes[0]?.kind).toBe('lower-all');
    const flat = designDistribution({ ...question, largestSlopeDb: 0.5 });
    expect(flat.changes.every(({ kind }) => kind === 'equalise')).toBe(true);
  });

  test('the change asked for is enough', () => {
    const weak = { ...system, source: { levelDbuv: 20 } };
    const [change] = designDistribution({ ...question, system: weak }).changes;
    const raised = { ...system, source: { levelDbuv: 20 + (change?.amountDb ?? 0) + 1e-9 } };
    expect(designDistribution({ ...question, system: raised }).kind).toBe('fits');
  });

  test.each([
    ['choices[0].part', [{ part: 'nothing', options: [{ gainDb: 1 }] }], 'inconsistent'],
    ['choices[0].options', [{ part: 'amplifier', options: [] }], 'empty'],
    ['choices[0].options[0]', [{ part: 'amplifier', options: [{ lossDb: 1 }] }], 'inconsistent'],
    ['choices', undefined, 'missing'],
  ])('refuses %s', (parameter, bad, code) => {
    expect(() => designDistribution({ ...question, choices: bad as never })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });

  test('too many combinations are refused', () => {
    const many = choices.map((choice) => ({
      ...choice,
      options: Array.from({ length: 20 }, () => choice.options[0]),
    }));
    expect(() => designDistribution({ ...question, choices: many as never })).toThrow(
      'at most 20000 combinations',
    );
  });
});

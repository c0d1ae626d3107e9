import fc from 'fast-check';
import {
  type DistributionPart,
  type DistributionSystem,
  genericCable,
  outletLevels,
  outletLimits,
  windowChecks,
} from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const cable = genericCable('series-6');
const tree: DistributionPart = {
  kind: 'cable',
  cable,
  lengthM: 35,
  to: {
    kind: 'splitter',
    lossDb: 4.2,
    outputs: [
      {
        kind: 'amplifier',
        gainDb: 18,
        noiseFigureDb: 7,
        to: {
          kind: 'cable',
          cable,
          lengthM: 52,
          to: {
            kind: 'tap',
            throughLossDb: 1.8,
            tapLossDb: 14,
            taps: [{ kind: 'outlet', name: 'near', lossDb: 1.5 }, null],
            to: {
              kind: 'cable',
              cable,
              lengthM: 20,
              to: {
                kind: 'outlet',
                name: 'far',
                lossDb: 1.5,
                to: { kind: 'receiver', name: 'set', noiseFigureDb: 12 },
              },
            },
          },
        },
      },
      null,
    ],
  },
};
const system: DistributionSystem = {
  source: { levelDbuv: 74, carrierToNoiseDb: 14, bandwidthMHz: 27.5 },
  tree,
  temperatureC: 35,
};

const reference = referenceTable('distribution/tree.csv');
const frequencies = reference.map((row) => cell(row, 'frequency_MHz'));

publishedTable({
  part: 'distribution',
  quantity: 'level, noise and C/N behind cables, splitter, amplifier and tap',
  unit: 'dB',
  source: 'cascade in watts, computed independently in Python',
  status: 'recomputed',
  limit: 1e-8,
  reason: 'nine decimals are kept',
  count: 35,
  cases: () => {
    const outlets = outletLevels(system, frequencies);
    const [near, far, set] = ['near', 'far', 'set'].map((name) =>
      outlets.find((outlet) => outlet.name === name),
    );
    return reference.flatMap((row, i) =>
      (
        [
          ['near_level_dBuV', near?.points[i]?.levelDbuv],
          ['near_noise_dBuV', near?.points[i]?.noiseDbuv],
          ['near_cn_dB', near?.points[i]?.carrierToNoiseDb],
          ['far_level_dBuV', far?.points[i]?.levelDbuv],
          ['far_noise_dBuV', far?.points[i]?.noiseDbuv],
          ['far_cn_dB', far?.points[i]?.carrierToNoiseDb],
          ['receiver_cn_dB', set?.points[i]?.carrierToNoiseDb],
        ] as const
      ).map(([column, got]) => ({
        name: `${column} at ${row['frequency_MHz']} MHz`,
        expected: cell(row, column),
        got: got ?? Number.NaN,
      })),
    );
  },
});

publishedTable({
  part: 'distribution',
  quantity: 'limits at an outlet',
  unit: 'dBuV',
  source: 'EN 60728-1 as cited by two texts of the trade (secondary)',
  status: 'published',
  limit: 0,
  reason: 'whole decibels are printed',
  count: 10,
  cases: () =>
    (
      [
        ['satellite-if', 47, 77],
        ['dvb-c-64-qam', 47, 67],
        ['dvb-c-256-qam', 54, 74],
        ['dvb-t-64-qam', 45, 74],
        ['dvb-t2-64-qam', 39, 74],
      ] as const
    ).flatMap(([signal, low, high]) => [
      { name: `${signal} lowest`, expected: low, got: outletLimits(signal).lowestDbuv },
      { name: `${signal} highest`, expected: high, got: outletLimits(signal).highestDbuv },
    ]),
});

/** A random tree of passive parts with one outlet for each leaf. */
const passive = fc.letrec<{ part: DistributionPart }>((tie) => ({
  part: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constant<DistributionPart>({ kind: 'outlet', name: '?' }),
    fc.record({
      kind: fc.constantFrom('connector' as const, 'attenuator' as const),
      lossDb: fc.double({ min: 0, max: 10, noNaN: true }),
      to: tie('part'),
    }),
    fc.record({
      kind: fc.constant('cable' as const),
      cable: fc.constant(cable),
      lengthM: fc.double({ min: 0, max: 80, noNaN: true }),
      to: tie('part'),
    }),
    fc.record({
      kind: fc.constant('splitter' as const),
      lossDb: fc.double({ min: 4, max: 8, noNaN: true }),
      outputs: fc.tuple(tie('part'), tie('part')),
    }),
  ),
}));

/** Gives every outlet a name of its own. */
function numbered(part: DistributionPart, next = { number: 0 }): DistributionPart {
  if (part.kind === 'outlet') return { kind: 'outlet', name: `o${next.number++}` };
  if (part.kind === 'splitter')
    return { ...part, outputs: part.outputs.map((output) => output && numbered(output, next)) };
  return 'to' in part && part.to ? ({ ...part, to: numbered(part.to, next) } as never) : part;
}

describe('levels at outlets', () => {
  test('terms add up to the level, in the order of the way', () => {
    fc.assert(
      fc.property(passive.part, (drawn) => {
        const outlets = outletLevels({ source: { levelDbuv: 80 }, tree: numbered(drawn) }, [1500]);
        for (const outlet of outlets) {
          const sum = outlet.terms.reduce((total, term) => total + (term.gainDb[0] ?? 0), 80);
          expect(outlet.points[0]?.levelDbuv).toBeCloseTo(sum, 9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('a passive tree never improves the carrier-to-noise ratio, and levels fall with frequency', () => {
    fc.assert(
      fc.property(passive.part, (drawn) => {
        const given: DistributionSystem = {
          source: { levelDbuv: 80, carrierToNoiseDb: 15 },
          tree: numbered(drawn),
        };
        for (const outlet of outletLevels(given, [950, 2150])) {
          expect(outlet.slopeDb).toBeLessThanOrEqual(1e-9);
          for (const point of outlet.points)
            expect(point.carrierToNoiseDb).toBeLessThanOrEqual(15 + 1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('a warm line stays a warm line through any passive tree', () => {
    const [outlet] = outletLevels({ source: { levelDbuv: 60 }, tree }, [1000]);
    const [direct] = outletLevels(
      { source: { levelDbuv: 60 }, tree: { kind: 'outlet', name: 'x' } },
      [1000],
    );
    // k 290 K 27.5 MHz in dBm is -99.58, in dBuV 9.17.
    expect(direct?.points[0]?.noiseDbuv).toBeCloseTo(9.17, 2);
    expect(outlet?.points[0]?.noiseDbuv).toBeGreaterThan(direct?.points[0]?.noiseDbuv ?? 0);
  });

  test('automatic gain holds the mean output level while its range lasts', () => {
    const held = (levelDbuv: number) =>
      outletLevels(
        {
          source: { levelDbuv },
          tree: {
            kind: 'amplifier',
            gainDb: 30,
            noiseFigureDb: 6,
            automaticGain: { outputLevelDbuv: 85, rangeDb: 20 },
            to: { kind: 'outlet', name: 'x' },
          },
        },
        [950, 1550, 2150],
      )[0]?.points[1]?.levelDbuv;
    expect(held(50)).toBeCloseTo(80, 12);
    expect(held(60)).toBeCloseTo(85, 12);
    expect(held(75)).toBeCloseTo(85, 12);
    expect(held(80)).toBeCloseTo(90, 12);
  });

  test('values over frequency run straight between points and stay beyond them', () => {
    const lossAt = (frequencyMHz: number) =>
      outletLevels(
        {
          source: { levelDbuv: 0 },
          tree: {
            kind: 'equaliser',
            lossDb: [
              { frequencyMHz: 950, valueDb: 10 },
              { frequencyMHz: 2150, valueDb: 2 },
            ],
            to: { kind: 'outlet', name: 'x' },
          },
        },
        [frequencyMHz],
      )[0]?.points[0]?.levelDbuv;
    expect(lossAt(300)).toBe(-10);
    expect(lossAt(1550)).toBeCloseTo(-6, 12);
    expect(lossAt(2340)).toBe(-2);
  });

  test('the window tells too low, too high and too wide apart', () => {
    const check = (levelDbuv: number, lengthM: number) =>
      windowChecks(
        {
          source: { levelDbuv },
          tree: { kind: 'cable', cable, lengthM, to: { kind: 'outlet', name: 'x' } },
        },
        { frequenciesMHz: [300, 2150] },
      )[0]?.kind;
    expect(check(70, 10)).toBe('inside');
    expect(check(50, 40)).toBe('too-low');
    expect(check(95, 10)).toBe('too-high');
    expect(check(105, 190)).toBe('too-wide');
  });

  test('a receiver is held to its own window, -65 to -25 dBm by default', () => {
    const [receiver] = windowChecks(
      { source: { levelDbuv: 44 }, tree: { kind: 'receiver', name: 'set' } },
      { frequenciesMHz: [1500] },
    );
    expect(receiver?.window.lowestDbuv).toBeCloseTo(43.75, 2);
    expect(receiver?.window.highestDbuv).toBeCloseTo(83.75, 2);
    expect(receiver?.kind).toBe('inside');
  });

  test('the input is not changed', () => {
    const frozen = JSON.stringify(system);
    outletLevels(system, [950]);
    expect(JSON.stringify(system)).toBe(frozen);
  });
});

describe('refusals', () => {
  const outlet: DistributionPart = { kind: 'outlet', name: 'x' };
  const loop = { kind: 'connector', lossDb: 0.2 } as unknown as { to: unknown };
  loop.to = loop;
  test.each([
    ['tree', undefined, 'missing'],
    ['tree.kind', { kind: 'amp' }, 'not-an-option'],
    ['tree.to', { kind: 'connector', lossDb: 1 }, 'missing'],
    ['tree.lossDb', { kind: 'connector', lossDb: -1, to: outlet }, 'out-of-range'],
    ['tree.lossDb', { kind: 'connector', lossDb: [], to: outlet }, 'empty'],
    [
      'tree.lossDb[1].frequencyMHz',
      {
        kind: 'connector',
        lossDb: [
          { frequencyMHz: 900, valueDb: 1 },
          { frequencyMHz: 900, valueDb: 1 },
        ],
        to: outlet,
      },
      'inconsistent',
    ],
    ['tree.lengthM', { kind: 'cable', cable, lengthM: Number.NaN, to: outlet }, 'not-finite'],
    ['tree.outputs', { kind: 'splitter', lossDb: 4, outputs: [] }, 'empty'],
    ['tree.lossDb', { kind: 'splitter', lossDb: 2, outputs: [outlet, null] }, 'out-of-range'],
    ['tree.noiseFigureDb', { kind: 'amplifier', gainDb: 10, to: outlet }, 'missing'],
    [
      'tree.automaticGain.rangeDb',
      {
        kind: 'amplifier',
        gainDb: 10,
        noiseFigureDb: 5,
        automaticGain: { outputLevelDbuv: 80 },
        to: outlet,
      },
      'missing',
    ],
    ['tree.name', { kind: 'outlet' }, 'missing'],
    [
      'tree.outputs[1].name',
      { kind: 'splitter', lossDb: 4, outputs: [outlet, outlet] },
      'inconsistent',
    ],
    ['tree', { kind: 'splitter', lossDb: 4, outputs: [null, null] }, 'empty'],
  ])('names %s', (parameter, bad, code) => {
    expect(() => outletLevels({ source: { levelDbuv: 70 }, tree: bad as never }, [950])).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });

  test('a part that contains itself is refused, not followed for ever', () => {
    expect(() => outletLevels({ source: { levelDbuv: 70 }, tree: loop as never }, [950])).toThrow(
      'does a part contain itself?',
    );
  });

  test.each([
    [[], 'empty'],
    [[0], 'out-of-range'],
    [[1.2], 'out-of-range'],
    [[Number.NaN], 'not-finite'],
    [undefined, 'missing'],
  ])('frequencies %j are refused', (list, code) => {
    expect(() => outletLevels(system, list as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'frequenciesMHz', code }),
    );
  });

  test('no junk gets through as a number that is not one', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (given, list) => {
        try {
          const text = JSON.stringify(outletLevels(given as never, list as never));
          expect(text).not.toContain('null');
        } catch (error) {
          expect((error as Error).name).toBe('DomainError');
        }
      }),
      { numRuns: runs(300) },
    );
  });
});

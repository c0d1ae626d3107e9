/** The search of causes: what it cannot tell, what it answers, what it refuses. */

import fc from 'fast-check';
import {
  type CauseInstallation,
  type CauseObservation,
  causeRanker,
  causeTestPoints,
  rankCauses,
} from 'slantpath/acceptance';
import { genericCable } from 'slantpath/distribution';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const one: CauseInstallation = {
  diameterM: 0.9,
  slots: [{ name: 'mid', azimuthDeg: 172, elevationDeg: 36 }],
  carriers: [
    {
      name: 'A',
      slot: 'mid',
      polarization: 'vertical',
      band: 'low',
      frequencyGHz: 10.95,
      frequencyMHz: 1200,
      levelDbuv: 76,
      carrierToNoiseDb: 14,
    },
    {
      name: 'B',
      slot: 'mid',
      polarization: 'horizontal',
      band: 'low',
      frequencyGHz: 11.55,
      frequencyMHz: 1800,
      levelDbuv: 75,
      carrierToNoiseDb: 14,
    },
    {
      name: 'C',
      slot: 'mid',
      polarization: 'horizontal',
      band: 'high',
      frequencyGHz: 12.6,
      frequencyMHz: 2000,
      levelDbuv: 75,
      carrierToNoiseDb: 13,
    },
  ],
  testPoints: [{ name: 'hut', lossDb: 10 }],
};

/** Exact readings of carriers at the only test point, from changes of carrier and noise in dB. */
function readings(change: {
  carrierDb?: number;
  noiseDb?: number;
  gainDb?: number;
}): CauseObservation[] {
  const { carrierDb = 0, noiseDb = 0, gainDb = 0 } = change;
  return one.carriers.flatMap((carrier): CauseObservation[] => {
    const power = 10 ** ((carrier.levelDbuv - 10 + gainDb + carrierDb) / 10);
    const noise =
      10 ** ((carrier.levelDbuv - 10 + gainDb - carrier.carrierToNoiseDb + noiseDb) / 10) + 100;
    const place = { carrier: carrier.name, testPoint: 'hut' };
    return [
      { kind: 'level', ...place, levelDbuv: 10 * Math.log10(power + noise) },
      { kind: 'carrier-to-noise', ...place, carrierToNoiseDb: 10 * Math.log10(power / noise) },
    ];
  });
}
const rank = causeRanker({ installation: one });

describe('cannot tell where physics gives the same readings', () => {
  test('noise of the Sun or of a bad unit: the same until the clock is looked at', () => {
    const seen = readings({ noiseDb: 4 });
    const found = rank(seen);
    expect(found.kind).toBe('cannot-tell');
    expect(found.undecidedBetween).toEqual(
      expect.arrayContaining(['sun-outage', 'unit-out-of-tolerance']),
    );
    expect(found.next?.measurement.kind).toBe('sun-near');
    expect(rank([...seen, { kind: 'sun-near', slot: 'mid', seen: true }])).toMatchObject({
      kind: 'cause',
    });
    const clear = rank([...seen, { kind: 'sun-near', slot: 'mid', seen: false }]);
    expect(clear.ranking[0]?.cause).toBe('unit-out-of-tolerance');
  });

  test('mispointed or leaning: the same for one slot until the mast is measured', () => {
    const seen: CauseObservation[] = [
      ...readings({ carrierDb: -4.5 }),
      { kind: 'search', slot: 'mid', riseDb: 4.4 },
      { kind: 'rain-seen', seen: false },
      { kind: 'obstacle-seen', slot: 'mid', seen: false },
    ];
    const found = rank(seen);
    expect(found.kind).toBe('cannot-tell');
    expect([...found.undecidedBetween].slice(0, 2).sort()).toEqual(['mast-leaning', 'mispointed']);
    expect(found.next?.measurement.kind).toBe('mast-lean');
    const plumb = rank([...seen, { kind: 'mast-lean', leanDeg: 0.1 }]);
    expect(plumb.kind).toBe('cause');
    expect(plumb.ranking[0]?.cause).toBe('mispointed');
    const leaning = rank([...seen, { kind: 'mast-lean', leanDeg: 1.2 }]);
    expect(leaning.ranking[0]?.cause).toBe('mast-leaning');
  });

  test('too little gain of the unit or loss behind it: the same with one test point', () => {
    const found = rank(readings({ gainDb: -9 }));
    expect(found.kind).toBe('cannot-tell');
    expect(found.undecidedBetween).toContain('unit-out-of-tolerance');
    expect(found.undecidedBetween.length).toBeGreaterThan(1);
  });

  test('rain or an obstacle before every slot: the same without a look outside', () => {
    const noise = 10 * Math.log10(1 + (280 / 120) * (1 - 10 ** -0.4));
    const found = rank(readings({ carrierDb: -4, noiseDb: noise }));
    expect(found.kind).toBe('cannot-tell');
    expect(found.undecidedBetween).toEqual(expect.arrayContaining(['rain', 'obstructed']));
  });

  test('one reading is enough to begin, and is not enough to tell', () => {
    const found = rank([{ kind: 'level', carrier: 'A', testPoint: 'hut', levelDbuv: 55 }]);
    expect(found.kind).toBe('cannot-tell');
    expect(found.next).not.toBeNull();
  });

  test('readings that no cause explains are called so', () => {
    const wild = one.carriers.flatMap((carrier, i): CauseObservation[] => [
      {
        kind: 'level',
        carrier: carrier.name,
        testPoint: 'hut',
        levelDbuv: 66 + (i === 1 ? 25 : 0),
        standardUncertaintyDb: 0.1,
      },
      {
        kind: 'carrier-to-noise',
        carrier: carrier.name,
        testPoint: 'hut',
        carrierToNoiseDb: 14 + (i === 1 ? 12 : 0),
        standardUncertaintyDb: 0.1,
      },
    ]);
    expect(rank(wild)).toMatchObject({ kind: 'cannot-tell', reason: 'no-cause-fits' });
  });
});

describe('another satellite, of whose carriers some are missing', () => {
  const LEVELS = [null, -6, 0] as const;
  const cases = LEVELS.flatMap((a) => LEVELS.flatMap((b) => LEVELS.map((c) => [a, b, c] as const)));
  test.each(cases.filter((levels) => levels.some((level) => level !== null)))(
    'over the planned levels by %s, %s and %s dB (null: nothing there): the wrong slot comes first',
    (...levels) => {
      const seen = one.carriers.flatMap((carrier, i): CauseObservation[] => {
        const level = levels[i as 0 | 1 | 2];
        const atHut = carrier.levelDbuv - 10;
        const there = level === null ? 0 : 10 ** ((atHut + level) / 10);
        const noise = 10 ** ((atHut - carrier.carrierToNoiseDb) / 10) + 100;
        const rest = 10 ** ((atHut - 30) / 10);
        const place = { carrier: carrier.name, testPoint: 'hut' };
        return [
          { kind: 'level', ...place, levelDbuv: 10 * Math.log10(there + noise + rest) },
          { kind: 'reception', ...place, received: level === null ? 'nothing' : 'other' },
        ];
      });
      const looks: CauseObservation[] = [
        { kind: 'rain-seen', seen: false },
        { kind: 'obstacle-seen', slot: 'mid', seen: false },
      ];
      expect(rank([...seen, ...looks]).ranking[0]?.cause).toBe('wrong-slot');
    },
  );
});

describe('the answer', () => {
  test('probabilities add up to one, and the evidence names both sides', () => {
    const found = rank([
      ...readings({ noiseDb: 4 }),
      { kind: 'sun-near', slot: 'mid', seen: true },
    ]);
    const sum = found.ranking.reduce((total, { probabilityRatio }) => total + probabilityRatio, 0);
    expect(sum).toBeCloseTo(1, 12);
    const evidence = found.ranking[0]?.evidence ?? [];
    expect(evidence).toHaveLength(7);
    expect(evidence.find(({ observation }) => observation.kind === 'sun-near')).toMatchObject({
      predicted: 0.97,
      withoutFault: 0.01,
      speaks: 'for',
    });
    expect(evidence.every(({ speaks }) => speaks !== 'against')).toBe(true);
    const other = found.ranking.find(({ cause }) => cause === 'unit-out-of-tolerance');
    expect(other?.location).toBe('mid');
  });

  test('as planned is nothing wrong', () => {
    const found = rank([
      ...readings({}),
      { kind: 'rain-seen', seen: false },
      { kind: 'sun-near', slot: 'mid', seen: false },
      { kind: 'obstacle-seen', slot: 'mid', seen: false },
      { kind: 'mast-lean', leanDeg: 0.2 },
      { kind: 'supply-voltage', testPoint: 'hut', voltageV: 17.1 },
    ]);
    expect(found.ranking[0]?.cause).toBe('nothing');
  });

  test('a prior weight of 0 rules a cause out', () => {
    const found = rankCauses({
      installation: one,
      priorWeights: { 'sun-outage': 0 },
      observations: readings({ noiseDb: 4 }),
    });
    const sun = found.ranking.find(({ cause }) => cause === 'sun-outage');
    expect(sun?.probabilityRatio).toBe(0);
  });

  test('the order of observations does not matter', () => {
    const seen = readings({ carrierDb: -3 });
    const forth = rank(seen);
    const back = rank([...seen].reverse());
    forth.ranking.forEach((entry, i) => {
      expect(back.ranking[i]?.probabilityRatio).toBeCloseTo(entry.probabilityRatio, 5);
    });
  });

  test('the result is plain and finite', () => {
    const text = JSON.stringify(rank(readings({ noiseDb: 3 })));
    expect(JSON.parse(text)).toEqual(rank(readings({ noiseDb: 3 })));
  });

  test('a branch of the tree is blamed where the other is good', () => {
    const cable = genericCable('series-6');
    const testPoints = causeTestPoints(
      {
        kind: 'splitter',
        name: 'attic',
        lossDb: 4,
        outputs: ['east', 'west'].map((name) => ({
          kind: 'cable' as const,
          cable,
          lengthM: 20,
          to: { kind: 'outlet' as const, name },
        })),
      },
      { frequenciesMHz: one.carriers.map((carrier) => carrier.frequencyMHz) },
    );
    const level = (name: string, drop: number): CauseObservation[] =>
      one.carriers.map((carrier) => ({
        kind: 'level',
        carrier: carrier.name,
        testPoint: name,
        levelDbuv:
          carrier.levelDbuv -
          4 -
          ((19.965 * Math.sqrt(carrier.frequencyMHz / 1000) + 0.001334 * carrier.frequencyMHz) *
            20) /
            100 -
          drop,
      }));
    const found = rankCauses({
      installation: { ...one, testPoints },
      observations: [
        ...level('east', 7),
        ...level('west', 0),
        { kind: 'connector-check', segment: 'east', seen: true },
      ],
    });
    expect(found.ranking[0]).toMatchObject({ cause: 'bad-connector', location: 'east' });
    expect(found.ranking[0]?.parameters['lossAt1GHzDb']).toBeGreaterThan(3);
  });
});

describe('refusals', () => {
  const good = readings({});
  const level = { kind: 'level', carrier: 'A', testPoint: 'hut', levelDbuv: 60 };
  test.each([
    ['observations', [], 'empty'],
    ['observations', undefined, 'missing'],
    ['observations[0].kind', [{ kind: 'smell' }], 'not-an-option'],
    ['observations[0].carrier', [{ ...level, carrier: 'Z' }], 'inconsistent'],
    ['observations[0].testPoint', [{ ...level, testPoint: 'cellar' }], 'inconsistent'],
    ['observations[0].levelDbuv', [{ ...level, levelDbuv: Number.NaN }], 'not-finite'],
    ['observations[0].levelDbuv', [{ ...level, levelDbuv: '60' }], 'not-a-number'],
    [
      'observations[0].standardUncertaintyDb',
      [{ ...level, standardUncertaintyDb: 0 }],
      'out-of-range',
    ],
    ['observations[0].seen', [{ kind: 'rain-seen' }], 'missing'],
    ['observations[0].slot', [{ kind: 'sun-near', seen: true, slot: 'no' }], 'inconsistent'],
    ['observations[0].segment', [{ kind: 'cable-check', seen: true }], 'missing'],
    ['observations[0].received', [{ ...level, kind: 'reception' }], 'missing'],
  ])('names %s', (parameter, observations, code) => {
    expect(() => rank(observations as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });

  test.each([
    ['diameterM', { diameterM: 90 }, 'out-of-range'],
    ['slots', { slots: [] }, 'empty'],
    ['carriers[0].slot', { carriers: [{ ...one.carriers[0], slot: 'no' }] }, 'inconsistent'],
    [
      'carriers[0].frequencyGHz',
      { carriers: [{ ...one.carriers[0], frequencyGHz: 10950 }] },
      'out-of-range',
    ],
    [
      'testPoints[0].behind',
      { testPoints: [{ name: 'hut', lossDb: 1, behind: 'no' }] },
      'inconsistent',
    ],
    [
      'testPoints[0].behind',
      { testPoints: [{ name: 'hut', lossDb: 1, behind: 'hut' }] },
      'inconsistent',
    ],
    [
      'testPoints[1].name',
      {
        testPoints: [
          { name: 'hut', lossDb: 1 },
          { name: 'hut', lossDb: 1 },
        ],
      },
      'malformed',
    ],
  ])('an installation with a bad %s is refused', (parameter, change, code) => {
    expect(() =>
      rankCauses({ installation: { ...one, ...change } as never, observations: good }),
    ).toThrow(expect.objectContaining({ name: 'DomainError', parameter, code }));
  });

  test('no junk gets through as a number that is not one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.anything(), fc.constantFrom(...good)), { maxLength: 4 }),
        (list) => {
          try {
            expect(JSON.stringify(rank(list as never))).not.toMatch(/NaN|Infinity/);
          } catch (error) {
            expect((error as Error).name).toBe('DomainError');
          }
        },
      ),
      { numRuns: runs(60, 15) },
    );
  });
});

/** Defects on the way from the sky to the socket, one planted in a good job: the headline, and the finding that carries it. */

import { type FindingCode, type Outcome, parseJob, planJob, recordJob } from 'slantpath/job';
import { englishWords, germanWords, jobSheet } from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';
import {
  type Draft,
  oneSlot,
  plannedReadings,
  separate,
  twoWay,
  visited,
} from './support/goodJobs.js';

type Row = readonly [
  defect: string,
  good: () => Draft,
  change: (job: Draft) => Draft | undefined,
  headline: Outcome,
  code: FindingCode,
];

function only<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('the good job has no such field');
  return value;
}
/** The plan changes, and the readings with it: only the defect itself is left. */
const replanned =
  (change: (job: Draft) => void) =>
  (job: Draft): Draft => {
    change(job);
    return visited({ ...job, visits: [] }, 'middle');
  };
const unit = (job: Draft) => only(job.units?.[0]);
const cBand = (job: Draft) => {
  only(job.slots[0]).carriers = [
    {
      name: 'news',
      frequencyGHz: 4.08,
      polarization: 'vertical',
      eirpDbw: 60,
      symbolRateMBd: 20,
      mode: 'QPSK 3/4',
    },
  ];
  unit(job).bands = [{ name: 'C', fromGHz: 3.4, toGHz: 4.2, localOscillatorGHz: 5.15 }];
};

const cable = {
  skinLossDbPer100m: 19.965,
  dielectricLossDbPer100m: 1.334,
  loopResistanceOhmPer100m: 4.1,
};
/** One unit, one cable, two receivers, each in its own user band. */
const stacked = (): Draft => {
  const job = oneSlot();
  job.distribution = {
    trees: [
      {
        kind: 'cable',
        name: 'riser',
        cable,
        lengthM: 40,
        to: {
          kind: 'splitter',
          lossDb: 4,
          outputs: [
            { kind: 'receiver', name: 'set 1' },
            { kind: 'receiver', name: 'set 2' },
          ],
        },
      },
    ],
    stacking: {
      kind: 'user-bands',
      outputLevelDbuv: 84,
      userBands: [
        { userBand: 0, centreMHz: 1210, receiver: 'set 1' },
        { userBand: 1, centreMHz: 1420, receiver: 'set 2' },
      ],
    },
  };
  job.limits = job.limits?.filter(({ testPoint }) => testPoint === 'antenna') ?? [];
  return visited({ ...job, visits: [] }, 'middle');
};
const bands = (job: Draft) => only(job.distribution?.stacking?.userBands);
/** Two reflectors and an aerial on two mains-fed switches, one behind the other. */
const cascaded = (): Draft => {
  const job = separate();
  const inputs = (['middle', 'west'] as const).map((name) => ({
    name,
    isolationDb: 30,
    feed: { voltageV: 18, limitA: 0.4 },
  }));
  const terrestrial = { name: 'terrestrial', lossDb: 6, alwaysThere: true };
  const first = only(unit(job));
  job.units = ['middle', 'west'].map((slot) => ({
    ...structuredClone(first),
    name: `${slot} unit`,
    slots: [slot],
    switchedByVoltage: false,
  }));
  job.distribution = {
    trees: [
      {
        kind: 'switch',
        name: 'upper',
        lossDb: 8,
        feedsSource: true,
        inputs: [...inputs, terrestrial],
        throughLossDb: 2,
        through: {
          kind: 'cable',
          cable,
          lengthM: 12,
          to: {
            kind: 'switch',
            name: 'lower',
            lossDb: 8,
            inputs: [...inputs, terrestrial],
            outputs: [{ kind: 'outlet', name: 'cellar', lossDb: 1 }],
          },
        },
        outputs: [{ kind: 'outlet', name: 'desk', lossDb: 1 }],
      },
    ],
    lines: ['middle', 'west'].map((slot) => ({
      unit: `${slot} unit`,
      into: 'upper',
      input: slot,
      parts: [{ kind: 'cable' as const, cable, lengthM: 15 }],
    })),
    terrestrial: {
      into: 'upper',
      levelDbuv: 75,
      lowestMHz: 490,
      highestMHz: 690,
      minimumDbuv: 57,
      maximumDbuv: 77,
    },
  };
  job.limits = job.limits?.filter(({ testPoint }) => testPoint !== 'set') ?? [];
  const { readings: _old, ...visit } = only(visited({ ...job, visits: [] }, 'middle').visits?.[0]);
  return {
    ...job,
    visits: [
      {
        ...visit,
        peaking: only(job.visits?.[0]).peaking ?? [],
        readings: plannedReadings(planJob({ ...job, visits: [] })),
      },
    ],
  };
};

const ROWS: readonly Row[] = [
  [
    'receivers that end at 1900 MHz, carrier at 1900 MHz',
    oneSlot,
    (job) => {
      job.tuner = { highestMHz: 1900 };
      return undefined;
    },
    'does-not-conform',
    'carrier-cut-off-by-receiver',
  ],
  [
    'receivers that begin above the carrier',
    oneSlot,
    (job) => {
      job.tuner = { lowestMHz: 1700, highestMHz: 2150 };
      return undefined;
    },
    'does-not-conform',
    'carrier-outside-receiver',
  ],
  [
    'wideband unit, and nobody says what the receivers take',
    oneSlot,
    replanned((job) => {
      unit(job).bands = [
        { name: 'all', fromGHz: 10.7, toGHz: 12.75, localOscillatorGHz: 10.4, tone: false },
      ];
    }),
    'undecided',
    'carrier-outside-receiver',
  ],
  [
    'local oscillator off by up to 5 MHz, receivers look 3 MHz to each side',
    oneSlot,
    (job) => {
      unit(job).localOscillatorStabilityMHz = 5;
      job.tuner = { lockRangeMHz: 3 };
      return undefined;
    },
    'does-not-conform',
    'oscillator-beyond-lock-range',
  ],
  [
    'own uplink at the image of a C-band carrier',
    twoWay,
    replanned((job) => {
      cBand(job);
      const [sent] = only(job.transmit);
      // 2 x 5.15 - 4.08 = 6.22 GHz: the uplink of the same antenna.
      only(sent).frequencyGHz = 6.21;
      delete only(sent).minimumEirpDbw;
      delete only(sent).offAxisMask;
    }),
    'undecided',
    'image-conflict',
  ],
  [
    'two receivers with user bands that overlap',
    stacked,
    (job) => {
      only(bands(job)[1]).centreMHz = 1240;
      return undefined;
    },
    'does-not-conform',
    'user-bands-collide',
  ],
  [
    'one user band given to two receivers',
    stacked,
    (job) => {
      Object.assign(only(bands(job)[1]), { centreMHz: 1210, userBand: 0 });
      return undefined;
    },
    'does-not-conform',
    'user-bands-collide',
  ],
  [
    'user band at the very end of what the receivers take',
    stacked,
    (job) => {
      job.tuner = { lowestMHz: 950, highestMHz: 2150 };
      only(bands(job)[1]).centreMHz = 2140;
      return undefined;
    },
    'does-not-conform',
    'user-band-outside-receiver',
  ],
  [
    'third receiver without a user band',
    stacked,
    (job) => {
      bands(job).pop();
      return undefined;
    },
    'does-not-conform',
    'receiver-without-user-band',
  ],
  [
    'user band that arrives too low, by a cable beyond the longest',
    stacked,
    replanned((job) => {
      const [tree] = only(job.distribution).trees;
      if (tree?.kind === 'cable') tree.lengthM = 230;
    }),
    'does-not-conform',
    'receiver-level-too-low',
  ],
  [
    'bands side by side, two carriers at one place',
    oneSlot,
    (job) => {
      // 11.3 - 9.75 = 12.15 - 10.6 GHz.
      only(only(job.slots[0]).carriers?.[1]).frequencyGHz = 12.15;
      only(job.distribution).stacking = { kind: 'fixed-bands' };
      return { ...job, visits: [] };
    },
    'does-not-conform',
    'carriers-collide-on-cable',
  ],
  [
    'aerial that arrives too low at the second switch',
    cascaded,
    (job) => {
      only(only(job.distribution).terrestrial).levelDbuv = 66;
      return undefined;
    },
    'does-not-conform',
    'terrestrial-level-outside-limit',
  ],
  [
    'weak slot beside one 27 dB stronger on a switch that isolates by 30 dB',
    cascaded,
    replanned((job) => {
      for (const { slot, by } of [
        { slot: 0, by: -12 },
        { slot: 1, by: 15 },
      ])
        for (const each of only(job.slots[slot]).carriers ?? []) each.eirpDbw = 51 + by;
    }),
    'does-not-conform',
    'input-leaks',
  ],
  [
    'input that cannot give the current of its unit',
    cascaded,
    (job) => {
      only(unit(job).supply).currentA = 0.6;
      return undefined;
    },
    'does-not-conform',
    'supply-too-much-current',
  ],
];

test.each(ROWS)('%s', (_, good, change, headline, code) => {
  const job = good();
  const record = recordJob(change(job) ?? job);
  const found = record.findings.map((each) => `${each.severity} ${each.code}`);
  expect(found, record.outcome).toContainEqual(`${headline} ${code}`);
  // The sheet tells it in both languages.
  for (const words of [englishWords, germanWords])
    expect(jobSheet(record, { visit: 'after', words }).replace(/\s+/g, ' ')).toContain(
      words.codes.findings[code].says.slice(1),
    );
});

describe('nothing is said where nothing is wrong', () => {
  const findings = (change: (job: Draft) => void) => {
    const job = oneSlot();
    change(job);
    return recordJob(job).findings.filter(({ severity }) => severity !== 'note');
  };
  test('receivers of 950 to 2150 MHz that look 5 MHz to each side', () => {
    expect(
      findings((job) => {
        job.tuner = { lowestMHz: 950, highestMHz: 2150, lockRangeMHz: 5 };
        unit(job).localOscillatorStabilityMHz = 1;
      }),
    ).toEqual([]);
  });
});

describe('mobile radio on the way (intervals of 3GPP TS 36.101, table 5.5-1)', () => {
  const of = (change: (job: Draft) => void) => {
    const job = oneSlot();
    change(job);
    return planned(job).map(({ code, where, amount }) => [code, where.names, amount?.value]);
  };
  const planned = (job: Draft) =>
    recordJob({ ...job, visits: [] }).findings.filter(({ code }) => code.startsWith('mobile-band'));
  test('a carrier at 1900 MHz on the cable lies under bands 39 and cordless phones, one at 1935 under band 1 too, one at 1550 under none', () => {
    const tuned = planJob(oneSlot()).tuning.map((each) => each.intermediateFrequencyMHz);
    expect(tuned).toEqual([1550, 1900]);
    // 27.5 MBd times 1.35 about 1900 MHz: 1881.4 to 1918.6, all of it within 1880 to 1920; band 1 begins at 1920.
    expect(planned(oneSlot()).map(({ where }) => [where.carrier, where.names])).toEqual([
      ['weather', ['B39', 'DECT']],
    ]);
    const moved = of((job) => {
      only(only(job.slots[0]?.carriers)[1]).frequencyGHz += 0.035;
    });
    expect(moved[0]?.[1]).toContain('B1');
  });
  test('a carrier of the C band lies under what masts send at its own frequency', () => {
    const found = of(cBand);
    expect(found).toContainEqual(['mobile-band-in-beam', ['n77'], expect.closeTo(27, 6)]);
  });
});

test.each([
  ['two receivers on one cable', stacked],
  ['two slots and an aerial on a cascade of switches', cascaded],
])('%s: nothing is wrong', (_, good) => {
  const { findings, outcome } = recordJob(good());
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  expect(outcome).toBe('conforms');
});

describe('user bands by hand', () => {
  const plan = planJob(stacked());
  /** Series 6: 0.19965 dB a metre times the root of GHz and 0.01334 times GHz. */
  const perMetre = (gigahertz: number) => 0.19965 * Math.sqrt(gigahertz) + 0.01334 * gigahertz;
  test('level, slope and the longest cable of a user band', () => {
    const [first] = only(plan.stacking).bands;
    expect(first?.levelDbuv).toBeCloseTo(84 - 40 * perMetre(1.21) - 4, 6);
    expect(first?.lossDb).toBeCloseTo(40 * perMetre(1.21) + 4, 6);
    expect(first?.bandwidthMHz).toBeCloseTo(37.125, 9);
    const half = 0.037125 / 2;
    expect(first?.slopeDb).toBeCloseTo(40 * (perMetre(1.21 - half) - perMetre(1.21 + half)), 6);
    // The receiver wants -65 dBm, 43.75 dBuV at 75 ohm; the supply of 13 V for 11.5 V at 0.15 A would let 221 m less the diode.
    expect(first?.longestM).toBeCloseTo((84 - 4 - 43.75) / perMetre(1.21), 1);
  });
  test('a receiver finds its carriers in its user band, not at their own frequency', () => {
    const rows = plan.outlets.filter(({ outlet }) => outlet === 'set 2');
    expect(rows.map(({ intermediateFrequencyMHz }) => intermediateFrequencyMHz)).toEqual([
      1420, 1420,
    ]);
    expect(rows[0]?.levelDbuv).toBeCloseTo(84 - 40 * perMetre(1.42) - 4, 6);
  });
  test('tuning words: (IF + user band) / 4 - 350, a half going up', () => {
    const words = only(plan.stacking).requests.map((each) => [
      each.carrier,
      each.userBand,
      each.tuningWord,
    ]);
    expect(words).toEqual([
      ['news', 0, (1550 + 1210) / 4 - 350],
      ['weather', 0, Math.round((1900 + 1210) / 4) - 350],
      ['news', 1, Math.round((1550 + 1420) / 4) - 350],
      ['weather', 1, (1900 + 1420) / 4 - 350],
    ]);
  });
});

test('terrestrial signals come by their own input through both switches', () => {
  const { terrestrial, supplies } = planJob(cascaded()).inputs;
  expect(terrestrial.map(({ outlet, kind }) => [outlet, kind])).toEqual([
    ['desk', 'inside'],
    ['cellar', 'inside'],
  ]);
  expect(terrestrial[0]?.lowEndDbuv).toBeCloseTo(75 - 6 - 1, 9);
  // 15 m at 4.1 ohm per 100 m and 0.15 A.
  expect(supplies.map(({ voltageV }) => voltageV)).toEqual([
    expect.closeTo(18 - 0.15 * 0.615, 9),
    expect.closeTo(18 - 0.15 * 0.615, 9),
  ]);
});

test.each<[string, (job: Draft) => void, string]>([
  [
    'a line into an input that is not there',
    (job) => {
      only(job.distribution?.lines?.[0]).input = 'centre';
    },
    'distribution.lines[0].input',
  ],
  [
    'a line that names no input',
    (job) => {
      delete only(job.distribution?.lines?.[0]).input;
    },
    'distribution.lines[0].input',
  ],
  [
    'an aerial into an input that is not there',
    (job) => {
      only(job.distribution?.terrestrial).input = 'roof';
    },
    'distribution.terrestrial.input',
  ],
])('%s is refused', (_, change, parameter) => {
  const job = cascaded();
  change(job);
  expect(() => parseJob(job)).toThrow(expect.objectContaining({ parameter }));
});

test('the tuning of a carrier is the arithmetic of its oscillator', () => {
  const job = oneSlot();
  unit(job).localOscillatorStabilityMHz = 0.5;
  const [news] = recordJob(job).plan.tuning;
  // 11.3 GHz by 9.75 GHz; 27.5 MBd with a roll-off of 0.35; the image at 2 x 9.75 - 11.3 GHz.
  expect(news).toMatchObject({
    intermediateFrequencyMHz: 1550,
    imageFrequencyGHz: 8.2,
    oscillatorErrorKHz: 500,
    inRange: 'inside',
    inverted: false,
    voltageV: 13,
    tone: false,
  });
  expect(news?.occupiedMHz).toBeCloseTo(37.125, 9);
});

/** Commissioning of what is sent, and the wind: one defect planted in a good job, and the figures by hand. */

import { type FindingCode, parseJob, planJob, recordJob, type Severity } from 'slantpath/job';
import { englishWords, germanWords, jobSheet } from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';
import { type Draft, oneSlot, twoWay } from './support/goodJobs.js';

function only<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('the good job has no such field');
  return value;
}
type Sent = NonNullable<Draft['transmit']>[number];
type Mount = NonNullable<Draft['mounts']>[number];

/** A two-way terminal lined up, its levels read near the noise. */
const linedUp = (): Draft => {
  const job = twoWay();
  Object.assign(only(job.transmit?.[0]), {
    // 4 W are 36.02 dBm; 2 dB of back-off leave 34.02.
    upconverterLocalOscillatorGHz: 12.8,
    upconverterGainDb: 60,
    linearDriveLevelDbm: -26,
    measuredPairs: [
      { inputDbm: -40, outputDbm: 20 },
      { inputDbm: -30, outputDbm: 29.9 },
      { inputDbm: -25, outputDbm: 34.5 },
      { inputDbm: -23, outputDbm: 35.5 },
    ],
    offAxisMaskNames: ['S.524-9-14GHz'],
    crossPolarTest: { coPolarDbm: -48.5, crossPolarDbm: -79.4, noiseDbm: -84 },
  } satisfies Partial<Sent>);
  return job;
};
const sent = (change: (carrier: Sent) => void) => (job: Draft) => {
  change(only(job.transmit?.[0]));
};
/** A hut on a mast with a free-standing base. */
const inTheWind = (): Draft => {
  const job = oneSlot();
  job.wind = { basicSpeedMPerS: 24, terrain: 'II', heightM: 10, meanSpeedMPerS: 5 };
  Object.assign(only(job.mounts?.[0]), {
    mast: { lengthM: 1.2, outsideDiameterM: 0.0603, wallM: 0.0029 },
    base: { widthM: 1.2, leverM: 0.9 },
  } satisfies Partial<Mount>);
  return job;
};

test.each([
  ['lined up', linedUp],
  ['in the wind', inTheWind],
])('a good job that is %s has nothing but notes', (_, good) => {
  const { findings, outcome } = recordJob(good());
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  expect(outcome).toBe('conforms');
});

type Row = readonly [
  defect: string,
  good: () => Draft,
  change: (job: Draft) => void,
  severity: Severity,
  code: FindingCode,
];
const ROWS: readonly Row[] = [
  [
    'drive 5 dB too strong',
    linedUp,
    sent((carrier) => {
      carrier.linearDriveLevelDbm = -21;
    }),
    'does-not-conform',
    'transmit-drive-wrong',
  ],
  [
    'drive 5 dB too weak',
    linedUp,
    sent((carrier) => {
      carrier.linearDriveLevelDbm = -31;
    }),
    'undecided',
    'transmit-drive-wrong',
  ],
  [
    'amplifier that compresses 2 dB earlier than planned',
    linedUp,
    sent((carrier) => {
      carrier.measuredPairs = [
        { inputDbm: -40, outputDbm: 20 },
        { inputDbm: -30, outputDbm: 29.5 },
        { inputDbm: -27, outputDbm: 31.5 },
      ];
    }),
    'does-not-conform',
    'transmit-compressed',
  ],
  [
    'carrier with its power in a hundredth of the bandwidth, mask from memory',
    linedUp,
    sent((carrier) => {
      carrier.symbolRateMBd = 0.01;
      carrier.offAxisMaskNames = ['S.728-1-co'];
    }),
    'undecided',
    'transmit-mask-exceeded',
  ],
  [
    'the same against a mask that was read',
    linedUp,
    sent((carrier) => {
      carrier.symbolRateMBd = 0.01;
      carrier.offAxisMaskNames = ['47-CFR-25.218(c)(1)'];
    }),
    'does-not-conform',
    'transmit-mask-exceeded',
  ],
  [
    'mask that cannot be held against anything',
    linedUp,
    sent((carrier) => {
      delete carrier.symbolRateMBd;
    }),
    'incomplete',
    'transmit-mask-not-judged',
  ],
  [
    'upconverter of another band',
    linedUp,
    sent((carrier) => {
      carrier.upconverterLocalOscillatorGHz = 10;
    }),
    'does-not-conform',
    'intermediate-frequency-outside',
  ],
  [
    'network that allows no rise in a fade',
    linedUp,
    sent((carrier) => {
      carrier.allowedRiseDb = 0;
    }),
    'undecided',
    'uplink-fade-left',
  ],
  [
    'leak of the cross-polar test in the noise',
    linedUp,
    sent((carrier) => {
      carrier.crossPolarTest = { coPolarDbm: -72, crossPolarDbm: -83.9, noiseDbm: -84 };
    }),
    'undecided',
    'cross-polar-near-noise',
  ],
  [
    'isolation of 18 dB read near the noise',
    linedUp,
    sent((carrier) => {
      carrier.crossPolarTest = { coPolarDbm: -48.5, crossPolarDbm: -66.4, noiseDbm: -84 };
    }),
    'does-not-conform',
    'reading-outside-limit',
  ],
  [
    'thin and long mast',
    inTheWind,
    (job) => {
      only(job.wind).workingSpeedMPerS = 25;
      Object.assign(only(job.mounts?.[0]), {
        mast: { lengthM: 2.5, outsideDiameterM: 0.05, wallM: 0.002 },
      });
    },
    'undecided',
    'wind-costs-pointing',
  ],
  [
    'coefficient of a mesh, for which none is known',
    inTheWind,
    (job) => {
      only(job.wind).forceCoefficientRatio = 0.5;
    },
    'note',
    'wind-outside-stated-range',
  ],
  [
    '300 m above the ground',
    inTheWind,
    (job) => {
      only(job.wind).heightM = 300;
    },
    'note',
    'wind-outside-stated-range',
  ],
  [
    'reflector of 6 m',
    inTheWind,
    (job) => {
      const mount = only(job.mounts?.[0]);
      mount.reflector = { ...only(mount.reflector), diameterM: 6 };
    },
    'note',
    'wind-outside-stated-range',
  ],
  [
    'mast that the peak of the wind bends beyond the formula',
    inTheWind,
    (job) => {
      Object.assign(only(job.mounts?.[0]), {
        mast: { lengthM: 6, outsideDiameterM: 0.04, wallM: 0.002 },
      });
    },
    'note',
    'wind-outside-stated-range',
  ],
];

test.each(ROWS)('%s', (_, good, change, severity, code) => {
  const job = good();
  change(job);
  const record = recordJob(job);
  const found = record.findings.map((each) => `${each.severity} ${each.code}`);
  expect(found).toContainEqual(`${severity} ${code}`);
  for (const words of [englishWords, germanWords])
    for (const visit of ['before', 'after'] as const) {
      const text = jobSheet(record, { visit, words }).replace(/\s+/g, ' ');
      if (visit === 'after') expect(text).toContain(words.codes.findings[code].says.slice(1));
      expect(text).not.toMatch(/NaN|undefined|\[object/);
    }
});

describe('commissioning by hand', () => {
  const job = linedUp();
  const work = only(planJob(job).commissioning);
  const [carrier] = work.carriers;
  test('14.2 GHz by 12.8 GHz, 36.02 dBm less 2 dB, drive and gain', () => {
    expect(carrier).toMatchObject({ intermediateFrequencyMHz: 1400, inverted: false });
    expect(carrier?.plannedOutputDbm).toBeCloseTo(30 + 10 * Math.log10(4) - 2, 9);
    expect(carrier?.driveOutputDbm).toBe(34);
  });
  test('compression between the pairs that enclose 1 dB', () => {
    // 60 dB at first; 59.5 at -25 dBm, 58.5 at -23: half way.
    expect(carrier?.compression).toMatchObject({ kind: 'compressed', linearGainDb: 60 });
    expect(carrier?.compression?.outputDbm).toBeCloseTo(35, 9);
  });
  test('density between feed and reflector is four times power over area', () => {
    const powerW = 4 * 10 ** -0.24;
    expect(carrier?.reflectorWPerM2).toBeCloseTo((4 * powerW) / (Math.PI * 0.36), 6);
    expect(carrier?.feedWPerM2).toBeCloseTo((4 * powerW) / (Math.PI * 0.0009), 3);
    // ICNIRP 2020, table 6: 55 / 14.2^0.177 for the general public.
    expect(carrier?.exposureLimitWPerM2).toBeCloseTo(55 / 14.2 ** 0.177, 6);
  });
  test('nobody radiates before the control centre was asked', () => {
    const asked = work.steps.findIndex(({ step }) => step === 'ask-for-access');
    expect(work.steps.findIndex(({ radiates }) => radiates)).toBeGreaterThan(asked);
    for (const { radiates, leaveOf } of work.steps)
      if (radiates) expect(leaveOf).toBe('control-centre');
  });
  test('power control makes up for what amplifier and network leave, less its error', () => {
    const changed = linedUp();
    Object.assign(only(changed.transmit?.[0]), {
      saturatedPowerW: 40,
      outputBackOffDb: 12,
      minimumBackOffDb: 2,
      allowedRiseDb: 4,
    });
    const control = only(planJob(changed).commissioning?.carriers[0]?.powerControl);
    expect(control.madeUpDb).toBeCloseTo(Math.min(control.fadeDb, 3), 9);
    expect(control.leftDb).toBeCloseTo(control.fadeDb - control.madeUpDb, 9);
  });
  test('the sheet names who is asked, and a mask from memory', () => {
    only(job.transmit?.[0]).askBefore = { controlCentre: 'duty desk', siteOwner: 'warden' };
    const text = jobSheet(recordJob(job), { visit: 'before' }).replace(/\s+/g, ' ');
    expect(text).toContain('has said yes (duty desk)');
    expect(text).toContain('has (warden)');
    expect(text).toContain('S.524-9-14GHz ?');
  });
});

describe('the wind by hand', () => {
  const [wind] = planJob(inTheWind()).wind;
  if (wind?.kind !== 'load') throw new Error('no load');
  test('pressure, force, moment and ballast', () => {
    // EN 1991-1-4: terrain II at 10 m, 24 m/s: 847 Pa; times 1.3 and the area; half the base against the lever.
    expect(wind.pressurePa).toBeCloseTo(846.8, 0);
    const forceN = (1.3 * wind.pressurePa * Math.PI * 0.81) / 4;
    expect(wind.forceN).toBeCloseTo(forceN, 6);
    expect(wind.footMomentNm).toBeCloseTo(1.2 * forceN, 6);
    expect(wind.ballast?.slidingKg).toBeCloseTo((1.5 * forceN) / (0.4 * 9.80665), 6);
    expect(wind.ballast?.overturningKg).toBeCloseTo((1.5 * forceN * 0.9) / (0.6 * 9.80665), 6);
  });
  test('pointing at 15 m/s and its share of the year', () => {
    // 0.5 x 1.25 x 225 Pa; slope F L^2 / (2 E I) of a tube of 60.3 x 2.9 mm, I = 21.59 cm^4 (EN 10210 tables, from memory).
    const forceN = (1.3 * 140.625 * Math.PI * 0.81) / 4;
    const slopeDeg = ((forceN * 1.44) / (2 * 210e9 * 21.59e-8)) * (180 / Math.PI);
    expect(wind.pointing?.slopeDeg).toBeCloseTo(slopeDeg, 3);
    // Rayleigh: exp(-pi / 4 (15 / 5)^2).
    expect(wind.pointing?.exceededPercent).toBeCloseTo(100 * Math.exp((-Math.PI / 4) * 9), 6);
  });
  test('what is for an engineer is said, and nothing is called safe', () => {
    const job = inTheWind();
    for (const words of [englishWords, germanWords]) {
      const text = jobSheet(recordJob(job), { visit: 'before', words });
      const told = text.slice(text.indexOf(`\n${words.sections.wind}\n`));
      const section = told
        .slice(0, told.indexOf(`\n${words.sections.rain}\n`))
        .replace(/\s+/g, ' ');
      expect(section).toMatch(/structural engineer|Tragwerksplanung/);
      expect(section).not.toMatch(/\b(safe|conforms|sicher|konform)\b/);
    }
    only(job.wind).heightM = 300;
    expect(jobSheet(recordJob(job), { visit: 'before' }).replace(/\s+/g, ' ')).toContain(
      'so no load is told. Ask a structural engineer',
    );
  });
});

test.each<[string, () => Draft, (job: Draft) => void, string]>([
  [
    'pairs that do not rise',
    linedUp,
    sent((carrier) => {
      carrier.measuredPairs = [
        { inputDbm: -30, outputDbm: 30 },
        { inputDbm: -30, outputDbm: 30 },
      ];
    }),
    'transmit[0].measuredPairs[1].inputDbm',
  ],
  [
    'levels of the cross-polar test the wrong way round',
    linedUp,
    sent((carrier) => {
      carrier.crossPolarTest = { coPolarDbm: -84, crossPolarDbm: -48, noiseDbm: -84 };
    }),
    'transmit[0].crossPolarTest.coPolarDbm',
  ],
  [
    'wall of a tube in millimetres',
    inTheWind,
    (job) => {
      Object.assign(only(job.mounts?.[0]), {
        mast: { lengthM: 1, outsideDiameterM: 0.06, wallM: 0.29 },
      });
    },
    'mounts[0].mast.wallM',
  ],
])('%s are refused', (_, good, change, parameter) => {
  const job = good();
  change(job);
  expect(() => parseJob(job)).toThrow(expect.objectContaining({ parameter }));
});

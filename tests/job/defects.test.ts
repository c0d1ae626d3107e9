/** One defect planted in a job that is good otherwise: the headline of the sheet, and the finding that carries it. */

import { type FindingCode, type Outcome, planJob, recordJob } from 'slantpath/job';
import { afterAll, expect, test } from 'vitest';
import { FULL_RUNS } from '../support/runs.js';
import {
  type Draft,
  oneSlot,
  only,
  peaked,
  plannedReadings,
  polar,
  readings,
  separate,
  severalFree,
  severalRigid,
  tracking,
  twoWay,
  visited,
} from './support/goodJobs.js';

type Change = (job: Draft) => Draft | undefined;
type Row = readonly [
  defect: string,
  good: () => Draft,
  change: Change,
  headline: Outcome,
  code: FindingCode,
];

const reading = (job: Draft, testPoint: string, quantity: string, carrier = 'news') =>
  only(
    readings(job).find(
      (each) =>
        each.testPoint === testPoint && each.quantity === quantity && each.carrier === carrier,
    ),
  );
const shift =
  (testPoint: string, quantity: 'level' | 'carrier-to-noise', byDb: number): Change =>
  (job) => {
    const each = reading(job, testPoint, quantity);
    if (each.quantity === 'level') each.levelDbuv += byDb;
    if (each.quantity === 'carrier-to-noise') each.carrierToNoiseDb += byDb;
    return undefined;
  };
/** The plan changes, and the readings with it: only the defect itself is left. */
const replanned =
  (change: (job: Draft) => void): Change =>
  (job) => {
    change(job);
    return visited({ ...job, visits: [] }, 'middle');
  };
const axis =
  (which: 'azimuth' | 'elevation', how: { offDeg?: number; ratio?: number }): Change =>
  (job) => {
    const visit = only(job.visits?.[0]);
    const plan = planJob({ ...job, visits: [] });
    visit.peaking = only(visit.peaking).map((each) =>
      each.axis === which ? peaked(plan, which, { slot: each.slot, ...how }) : each,
    );
    return undefined;
  };
const skyline =
  (elevationDeg: number, distanceM?: number): Change =>
  (job) => {
    for (const sample of only(job.horizon).samples) {
      sample.elevationDeg = elevationDeg;
      if (distanceM === undefined) delete sample.distanceM;
      else sample.distanceM = distanceM;
    }
    return undefined;
  };
const amplified = (job: Draft, maximumOutputDbuv: number, gainDb = 20) => {
  const [tree] = only(job.distribution).trees;
  only(job.distribution).trees = [
    {
      kind: 'amplifier',
      name: 'launch amplifier',
      gainDb,
      noiseFigureDb: 6,
      maximumOutputDbuv,
      to: { kind: 'attenuator', lossDb: gainDb, to: only(tree) },
    },
  ];
};

const ROWS: readonly Row[] = [
  [
    'slot below the horizon',
    oneSlot,
    (job) => {
      only(job.slots[0]).orbitalLongitudeDeg = 110;
      return { ...job, visits: [] };
    },
    'does-not-conform',
    'slot-below-horizon',
  ],
  [
    'wall 36 degrees high before the reflector',
    oneSlot,
    skyline(40, 20),
    'does-not-conform',
    'view-blocked',
  ],
  [
    'wall that cuts the lower rim only',
    oneSlot,
    skyline(33.5, 4),
    'does-not-conform',
    'view-blocked',
  ],
  [
    'ridge as high as the beam, within the clinometer',
    oneSlot,
    skyline(35.6, 2000),
    'undecided',
    'view-doubtful',
  ],
  [
    'skyline without distances that matter',
    oneSlot,
    skyline(32),
    'undecided',
    'view-distance-needed',
  ],
  [
    'nothing sighted towards the slot',
    oneSlot,
    (job) => {
      only(job.horizon).samples = [{ azimuthDeg: 20, elevationDeg: 5 }];
      return undefined;
    },
    'incomplete',
    'view-not-sighted',
  ],
  [
    'horizon left out',
    oneSlot,
    ({ horizon: _gone, ...job }) => job,
    'incomplete',
    'view-not-sighted',
  ],
  [
    'feeds of two slots 2 degrees apart',
    severalFree,
    replanned((job) => {
      only(job.slots[1]).orbitalLongitudeDeg = 14.4;
    }),
    'does-not-conform',
    'feeds-collide',
  ],
  [
    'slots 33 degrees apart on one reflector',
    severalFree,
    replanned((job) => {
      only(job.slots[1]).orbitalLongitudeDeg = -17;
    }),
    'undecided',
    'loss-beyond-model',
  ],
  [
    'slots 70 degrees apart on one reflector',
    severalFree,
    (job) => {
      only(job.slots[1]).orbitalLongitudeDeg = -54;
      return { ...job, visits: [] };
    },
    'does-not-conform',
    'slots-too-far-apart',
  ],
  [
    'feeds of a bar twice as far apart as needed',
    severalRigid,
    (job) => {
      const mount = only(job.mounts?.[0]);
      if (mount.kind === 'fixed') mount.feeds = { kind: 'rigid', placesM: [0.055, -0.055] };
      return { ...job, visits: [] };
    },
    'undecided',
    'loss-beyond-model',
  ],
  [
    'motor that stops before the slot',
    polar,
    (job) => {
      const mount = only(job.mounts?.[0]);
      if (mount.kind === 'polar') mount.motor = { eastLimitDeg: 3, westLimitDeg: 3 };
      return undefined;
    },
    'does-not-conform',
    'motor-does-not-reach',
  ],
  [
    'schedule of four moves a day',
    tracking,
    replanned((job) => {
      const mount = only(job.mounts?.[0]);
      if (mount.kind === 'tracking') mount.movesPerDay = 4;
    }),
    'does-not-conform',
    'mount-error-too-large',
  ],
  [
    'azimuth left 0.5 degree off',
    oneSlot,
    axis('azimuth', { offDeg: 0.5 }),
    'does-not-conform',
    'pointing-loss',
  ],
  [
    'elevation left 0.5 degree off',
    oneSlot,
    axis('elevation', { offDeg: 0.5 }),
    'does-not-conform',
    'pointing-loss',
  ],
  [
    'both axes left off by what one alone may be',
    oneSlot,
    (job) => {
      axis('azimuth', { offDeg: 0.28 })(job);
      return axis('elevation', { offDeg: 0.28 })(job);
    },
    'does-not-conform',
    'pointing-loss-together',
  ],
  [
    'side lobe taken for the peak',
    oneSlot,
    axis('azimuth', { ratio: 0.45 }),
    'does-not-conform',
    'not-main-lobe',
  ],
  [
    'lobe three times too wide',
    oneSlot,
    axis('elevation', { ratio: 3.4 }),
    'does-not-conform',
    'not-main-lobe',
  ],
  [
    'samples on one flank only',
    oneSlot,
    (job) => {
      const [first] = only(only(job.visits?.[0]).peaking);
      only(first).samples = { positionDeg: [0, 0.2, 0.4, 0.6], levelDbm: [-36, -35, -34.2, -33.6] };
      return undefined;
    },
    'undecided',
    'peak-not-found',
  ],
  [
    'elevation not peaked',
    oneSlot,
    (job) => {
      const visit = only(job.visits?.[0]);
      visit.peaking = only(visit.peaking).filter((each) => each.axis === 'azimuth');
      return undefined;
    },
    'incomplete',
    'axis-not-peaked',
  ],
  [
    'second reflector not peaked',
    separate,
    (job) => {
      const visit = only(job.visits?.[0]);
      visit.peaking = only(visit.peaking).filter((each) => each.slot === 'middle');
      return undefined;
    },
    'incomplete',
    'axis-not-peaked',
  ],
  [
    'feed turned the wrong way round',
    oneSlot,
    (job) => {
      only(job.visits?.[0]).feedTurns = [{ slot: 'middle', turnDeg: 5.8 }];
      return undefined;
    },
    'does-not-conform',
    'feed-turned-off',
  ],
  [
    'local oscillator of another band',
    oneSlot,
    (job) => {
      only(only(job.slots[0]).carriers?.[0]).intermediateFrequencyMHz = 1300;
      return undefined;
    },
    'does-not-conform',
    'intermediate-frequency-wrong',
  ],
  [
    'unit for another band',
    oneSlot,
    (job) => {
      only(job.units?.[0]).bands = [
        { name: 'high', fromGHz: 11.7, toGHz: 12.75, localOscillatorGHz: 10.6 },
      ];
      return { ...job, visits: [] };
    },
    'does-not-conform',
    'no-unit-for-carrier',
  ],
  [
    'promise missed by the plan',
    oneSlot,
    replanned((job) => {
      for (const carrier of only(job.slots[0]).carriers ?? []) carrier.eirpDbw = 38;
      job.limits = only(job.limits).filter(({ quantity }) => quantity === 'level');
    }),
    'does-not-conform',
    'promise-missed',
  ],
  [
    'promise kept by the median only',
    oneSlot,
    replanned((job) => {
      for (const carrier of only(job.slots[0]).carriers ?? []) carrier.eirpDbw = 40.3;
      job.limits = only(job.limits).filter(({ quantity }) => quantity === 'level');
    }),
    'undecided',
    'promise-doubtful',
  ],
  [
    'no promise',
    oneSlot,
    (job) => {
      delete only(job.target).exceededPercent;
      return undefined;
    },
    'incomplete',
    'field-not-given',
  ],
  ['no limits', oneSlot, ({ limits: _gone, ...job }) => job, 'incomplete', 'field-not-given'],
  [
    'cable so long that the plan is too low',
    oneSlot,
    (job) => {
      const [tree] = only(job.distribution).trees;
      if (tree?.kind === 'cable') tree.lengthM = 220;
      return { ...job, visits: [] };
    },
    'does-not-conform',
    'planned-level-outside-limit',
  ],
  [
    'amplifier driven 18 dB too far',
    oneSlot,
    replanned((job) => amplified(job, 70)),
    'does-not-conform',
    'amplifier-overdriven',
  ],
  [
    'receiver that wants less than it gets',
    oneSlot,
    (job) => {
      const [tree] = only(job.distribution).trees;
      const outlet = tree?.kind === 'cable' ? tree.to : undefined;
      if (outlet?.kind === 'outlet')
        outlet.to = { kind: 'receiver', name: 'set', maximumLevelDbuv: 50 };
      return undefined;
    },
    'does-not-conform',
    'receiver-level-too-high',
  ],
  [
    'thin cable that starves the unit',
    oneSlot,
    replanned((job) => {
      const [tree] = only(job.distribution).trees;
      if (tree?.kind === 'cable') tree.cable = { ...tree.cable, loopResistanceOhmPer100m: 60 };
    }),
    'does-not-conform',
    'supply-too-low',
  ],
  [
    'voltage that arrives as the other polarization',
    oneSlot,
    replanned((job) => {
      const [tree] = only(job.distribution).trees;
      if (tree?.kind === 'cable') tree.cable = { ...tree.cable, loopResistanceOhmPer100m: 60 };
      only(job.units?.[0]).supply = { currentA: 0.15, minimumVoltageV: 5 };
    }),
    'does-not-conform',
    'supply-misread',
  ],
  [
    'part that lets no supply through',
    oneSlot,
    replanned((job) => {
      const [tree] = only(job.distribution).trees;
      only(job.distribution).trees = [
        { kind: 'attenuator', lossDb: 1, passesSupply: false, to: only(tree) },
      ];
    }),
    'does-not-conform',
    'supply-blocked',
  ],
  [
    'outlet 40 dB low',
    oneSlot,
    shift('desk', 'level', -40),
    'does-not-conform',
    'reading-outside-limit',
  ],
  [
    'outlet within the guard band of its limit',
    oneSlot,
    (job) => {
      const each = reading(job, 'desk', 'level');
      if (each.quantity === 'level') each.levelDbuv = 47.4;
      return undefined;
    },
    'undecided',
    'reading-undecided',
  ],
  [
    'ratio 5 dB under plan, still inside the limit',
    oneSlot,
    shift('desk', 'carrier-to-noise', -5),
    'undecided',
    'reading-below-plan',
  ],
  [
    'ratio 21.8 dB above plan',
    oneSlot,
    shift('antenna', 'carrier-to-noise', 21.8),
    'undecided',
    'reading-above-plan',
  ],
  [
    'every ratio lower by the same 1.3 dB',
    oneSlot,
    (job) => {
      for (const each of readings(job))
        if (each.quantity === 'carrier-to-noise') each.carrierToNoiseDb -= 1.3;
      return undefined;
    },
    'undecided',
    'readings-all-off-plan',
  ],
  [
    'low reading taken in rain',
    oneSlot,
    (job) => {
      only(job.visits?.[0]).weather = 'rain';
      const each = reading(job, 'antenna', 'carrier-to-noise');
      if (each.quantity === 'carrier-to-noise') each.carrierToNoiseDb = 4;
      return undefined;
    },
    'undecided',
    'reading-in-rain',
  ],
  [
    'one of eight places read',
    severalFree,
    (job) => {
      only(job.visits?.[0]).readings = readings(job).slice(0, 1);
      return undefined;
    },
    'incomplete',
    'reading-missing',
  ],
  [
    'one polarization not read at the outlet',
    oneSlot,
    (job) => {
      only(job.visits?.[0]).readings = readings(job).filter(
        (each) => !(each.testPoint === 'desk' && each.carrier === 'weather'),
      );
      return undefined;
    },
    'incomplete',
    'reading-missing',
  ],
  ['no visit yet', oneSlot, (job) => ({ ...job, visits: [] }), 'incomplete', 'reading-missing'],
  [
    'service call with every level 1.5 dB lower',
    severalFree,
    (job) => {
      const plan = planJob({ ...job, visits: [] });
      only(job.visits).push({
        kind: 'service',
        date: '2027-02-01',
        readings: plannedReadings(plan)
          .filter(({ quantity }) => quantity === 'level')
          .map((each) =>
            each.quantity === 'level' ? { ...each, levelDbuv: each.levelDbuv - 1.5 } : each,
          ),
      });
      return undefined;
    },
    'undecided',
    'changed-since-last-visit',
  ],
  [
    'cross-polar test of the return carrier not read',
    twoWay,
    (job) => {
      only(job.visits?.[0]).readings = readings(job).filter(({ carrier }) => carrier !== 'return');
      return undefined;
    },
    'incomplete',
    'transmit-test-missing',
  ],
  [
    'isolation of the return carrier 15 dB',
    twoWay,
    (job) => {
      const each = reading(job, 'antenna', 'cross-polar-isolation', 'return');
      if (each.quantity === 'cross-polar-isolation') each.isolationDb = 15;
      return undefined;
    },
    'does-not-conform',
    'reading-outside-limit',
  ],
  [
    'carrier with its power in a tenth of the bandwidth',
    twoWay,
    (job) => {
      only(job.transmit?.[0]).symbolRateMBd = 0.05;
      only(job.transmit?.[0]).offAxisMask = [{ offAxisDeg: 3, maximumDensityDbwPer40KHz: 10 }];
      return undefined;
    },
    'does-not-conform',
    'transmit-mask-exceeded',
  ],
  [
    'amplifier at saturation',
    twoWay,
    (job) => {
      only(job.transmit?.[0]).outputBackOffDb = 0;
      return undefined;
    },
    'does-not-conform',
    'transmit-back-off-too-small',
  ],
  [
    'amplifier of 40 W in the place of 4 W',
    twoWay,
    (job) => {
      only(job.transmit?.[0]).saturatedPowerW = 40;
      return undefined;
    },
    'does-not-conform',
    'transmit-eirp-too-high',
  ],
  [
    'off-axis mask not given',
    twoWay,
    (job) => {
      delete only(job.transmit?.[0]).offAxisMask;
      return undefined;
    },
    'incomplete',
    'field-not-given',
  ],
];

const seen: string[] = [];

// Where not everything is run, every second defect.
test.each(ROWS.filter((_, index) => FULL_RUNS || index % 2 === 0))(
  '%s',
  (defect, good, change, headline, code) => {
    const job = good();
    const record = recordJob(change(job) ?? job);
    const found = record.findings.map((each) => `${each.severity} ${each.code}`);
    expect(found, record.outcome).toContainEqual(`${headline} ${code}`);
    expect(record.outcome).toBe(headline);
    seen.push(`${defect} -> ${record.outcome} (${code})`);
  },
);

afterAll(() => {
  console.log(`planted defects\n${seen.join('\n')}`);
});

test('five readings of a perfect lobe: inside the target, but the interval is not assured', () => {
  const job = oneSlot();
  job.target = { ...job.target, pointingLossDb: 1 };
  for (const peaking of only(only(job.visits?.[0]).peaking)) {
    const { positionDeg, levelDbm } = only(peaking.samples);
    const step = (positionDeg.length - 1) / 4;
    const places = [0, 1, 2, 3, 4].map((i) => Math.round(i * step));
    peaking.samples = {
      positionDeg: places.map((at) => only(positionDeg[at])),
      levelDbm: places.map((at) => only(levelDbm[at])),
    };
  }
  const { findings, outcome } = recordJob(job);
  const told = findings.filter(({ code }) => code === 'peak-not-assured');
  expect(told.map(({ severity }) => severity)).toEqual(['undecided', 'undecided']);
  expect(outcome).toBe('undecided');
});

/** Defects on the way from the sky to the socket, one planted in a good job: the headline, and the finding that carries it. */

import { type FindingCode, type Outcome, recordJob } from 'slantpath/job';
import { englishWords, germanWords, jobSheet } from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';
import { type Draft, oneSlot, twoWay, visited } from './support/goodJobs.js';

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

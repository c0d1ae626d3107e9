/** What an instrument shows and what the verdict makes of it, where the job describes the instrument. */

import { type JobRecord, parseJob, recordJob } from 'slantpath/job';
import { englishWords, germanWords, jobSheet } from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';
import { type Draft, oneSlot } from './support/goodJobs.js';

function only<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('the good job has no such field');
  return value;
}
type Instrument = NonNullable<Draft['instruments']>[number];
type Reading = NonNullable<NonNullable<Draft['visits']>[number]['readings']>[number];

/** A good job with one reading changed, all taken with the instrument. */
function read(instrument: Partial<Instrument>, reading: Partial<Reading> & object): JobRecord {
  const job = oneSlot();
  job.instruments = [{ name: 'meter', ...instrument }];
  const visit = only(job.visits?.[0]);
  visit.instrument = 'meter';
  const same = only(visit.readings).find(
    (each) =>
      each.testPoint === 'desk' && each.carrier === 'news' && each.quantity === reading.quantity,
  );
  if (same) Object.assign(same, reading);
  else
    only(visit.readings).push({
      testPoint: 'desk',
      slot: 'middle',
      carrier: 'news',
      expandedUncertaintyDb: 1,
      ...reading,
    } as Reading);
  job.limits?.push({ testPoint: 'desk', quantity: 'modulation-error-ratio', minimumDb: 11 });
  job.limits?.push({ testPoint: 'desk', quantity: 'noise-level', maximumDbuv: 55 });
  return recordJob(job);
}
const verdictOf = (record: JobRecord, quantity: string) =>
  only(
    record.verdicts.find(
      (each) => each.quantity === quantity && each.testPoint === 'desk' && each.carrier === 'news',
    ),
  );

describe('ceilings', () => {
  test('an MER of 11.4 dB under a ceiling of 20 dB is an Es/N0 of 12.05 dB', () => {
    const record = read(
      { ceilingDb: 20 },
      { quantity: 'modulation-error-ratio', modulationErrorRatioDb: 11.4 },
    );
    // Error powers add: -10 log10(10^-1.14 - 10^-2).
    const verdict = verdictOf(record, 'modulation-error-ratio');
    expect(verdict.reading).toBeCloseTo(12.05, 2);
    expect(verdict.correctionDb).toBeCloseTo(0.65, 2);
    // The doubt of 0.5 dB grows by 1 / (1 - 10^-0.86).
    expect(verdict.standardUncertainty).toBeCloseTo(0.5 / (1 - 10 ** -0.86), 6);
  });
  test('what the ceiling hid decides: 11.4 dB against 11 dB is in doubt as shown, and conforms', () => {
    const shown = { quantity: 'modulation-error-ratio', modulationErrorRatioDb: 11.5 } as const;
    const as = (ceiling: Partial<Instrument>) =>
      verdictOf(read(ceiling, shown), 'modulation-error-ratio').decision?.verdict;
    expect(as({})).toBe('undecided');
    expect(as({ ceilingDb: 18 })).toBe('conforms');
  });
  test('at the ceiling only a least value is known', () => {
    const record = read(
      { ceilingDb: 20 },
      { quantity: 'modulation-error-ratio', modulationErrorRatioDb: 19.6 },
    );
    const verdict = verdictOf(record, 'modulation-error-ratio');
    expect(verdict.bound).toBe('at-least');
    expect(verdict.decision?.verdict).toBe('conforms');
    expect(verdict.difference).toBe(null);
  });
  test('above its own ceiling the instrument or its figure is wrong', () => {
    const record = read(
      { ceilingDb: 10 },
      { quantity: 'modulation-error-ratio', modulationErrorRatioDb: 14 },
    );
    expect(record.findings.map(({ severity, code }) => `${severity} ${code}`)).toContain(
      'undecided reading-above-ceiling',
    );
  });
});

describe('offsets', () => {
  test('come off the reading, and their doubt goes into its own', () => {
    const record = read(
      { levelOffsetDb: 2.5, levelOffsetStandardUncertaintyDb: 0.75 },
      { quantity: 'level', levelDbuv: 70, expandedUncertaintyDb: 2 },
    );
    const verdict = verdictOf(record, 'level');
    expect(verdict.reading).toBeCloseTo(67.5, 12);
    expect(verdict.correctionDb).toBe(-2.5);
    expect(verdict.standardUncertainty).toBeCloseTo(1.25, 12);
  });
  test('turn a verdict: 49 dBuV shown by an instrument 4 dB too high is 45 dBuV, under 47 dBuV', () => {
    const shown = { quantity: 'level', levelDbuv: 49.5, expandedUncertaintyDb: 1 } as const;
    const as = (offset: Partial<Instrument>) =>
      verdictOf(read(offset, shown), 'level').decision?.verdict;
    expect(as({})).toBe('conforms');
    expect(as({ levelOffsetDb: 4 })).toBe('does-not-conform');
    // The same offset known to 2 dB only decides nothing.
    expect(as({ levelOffsetDb: 4, levelOffsetStandardUncertaintyDb: 2 })).toBe('undecided');
  });
  test('another instrument keeps its readings', () => {
    const job = oneSlot();
    job.instruments = [{ name: 'meter', levelOffsetDb: 3 }];
    for (const { correctionDb } of recordJob(job).verdicts) expect(correctionDb).toBe(0);
  });
});

test('noise taken in 8 MHz beside a carrier of 27.5 MBd: the ratio is 5.36 dB lower', () => {
  const record = read(
    {},
    { quantity: 'carrier-to-noise', carrierToNoiseDb: 20, noiseBandwidthMHz: 8 },
  );
  expect(verdictOf(record, 'carrier-to-noise').reading).toBeCloseTo(20 - 5.362, 3);
});

describe('readings of which only an end is known', () => {
  const of = (reading: Partial<Reading> & object) => {
    const { decision, bound } = verdictOf(read({}, reading), only(reading.quantity));
    return [bound, decision?.verdict];
  };
  const level = { quantity: 'level', expandedUncertaintyDb: 1 } as const;
  test('at most: fails the lower limit, keeps only the upper one', () => {
    expect(of({ ...level, levelDbuv: 40, bound: 'at-most' })).toEqual([
      'at-most',
      'does-not-conform',
    ]);
    expect(of({ ...level, levelDbuv: 60, bound: 'at-most' })).toEqual(['at-most', 'undecided']);
    const noise = { quantity: 'noise-level', expandedUncertaintyDb: 1, bound: 'at-most' } as const;
    expect(of({ ...noise, noiseLevelDbuv: 30 })).toEqual(['at-most', 'conforms']);
    expect(of({ ...noise, noiseLevelDbuv: 60 })).toEqual(['at-most', 'undecided']);
  });
  test('at least: keeps the lower limit, fails the upper one', () => {
    const ratio = { quantity: 'carrier-to-noise', bound: 'at-least' } as const;
    expect(of({ ...ratio, carrierToNoiseDb: 16 })).toEqual(['at-least', 'conforms']);
    expect(of({ ...ratio, carrierToNoiseDb: 4 })).toEqual(['at-least', 'undecided']);
    expect(of({ ...level, levelDbuv: 90, bound: 'at-least' })).toEqual([
      'at-least',
      'does-not-conform',
    ]);
  });
});

test('the sheet tells what was corrected, and ends as ends', () => {
  const record = read(
    { levelOffsetDb: 2.5 },
    { quantity: 'noise-level', noiseLevelDbuv: 30, expandedUncertaintyDb: 1, bound: 'at-most' },
  );
  for (const words of [englishWords, germanWords]) {
    const text = jobSheet(record, { visit: 'after', words });
    expect(text.replace(/\s+/g, ' ')).toContain(words.corrected);
    expect(text).toMatch(words.language === 'de' ? /bis\s+27,5/ : /up to\s+27\.5/);
  }
});

test('two instruments of one name are refused', () => {
  const job = oneSlot();
  job.instruments = [{ name: 'meter' }, { name: 'meter' }];
  expect(() => parseJob(job)).toThrow(
    expect.objectContaining({ parameter: 'instruments[1].name' }),
  );
});

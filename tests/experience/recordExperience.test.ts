/** Records made from a truth that the test knows: does the experience find it again, within what it says of itself? */

import { type ExperienceRecord, recordExperience } from 'slantpath/experience';
import { type JobRecord, recordJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { oneSlot } from '../job/support/goodJobs.js';
import { runs } from '../support/runs.js';

const UNIT_DB = { 'unit A': 1.5, 'unit B': -0.5, 'unit C': -1 } as const;
const METER_DB = { 'meter 1': 0.8, 'meter 2': -0.8 } as const;
const units = Object.keys(UNIT_DB) as (keyof typeof UNIT_DB)[];
const meters = Object.keys(METER_DB) as (keyof typeof METER_DB)[];

/** Published EIRP is 1 dB too low in the south of the region and right in the north: a slope of 0.1 dB a degree. */
const excessDb = (latitudeDeg: number) => (50 - latitudeDeg) / 10;

function* many(count: number, seed = 7): Generator<ExperienceRecord> {
  const stream = randomStream(seed);
  for (let i = 0; i < count; i++) {
    const latitudeDeg = 40 + 10 * stream.uniform();
    const longitudeDeg = 5 + 12 * stream.uniform();
    const unit = units[i % 3] ?? 'unit A';
    const instrument = meters[stream.integer(2)] ?? 'meter 1';
    const common = { testPoint: 'antenna', slot: 'middle', carrier: 'news', bound: null };
    const ratio = excessDb(latitudeDeg) + 0.4 * stream.normal();
    const wet = i % 10 === 9;
    yield {
      job: {
        station: { name: `site ${i}`, latitudeDeg, longitudeDeg },
        visits: [2022, 2023, 2024, 2025].map((year) => ({
          date: `${year}-06-01`,
          weather: 'clear',
          instrument,
          readings: [
            {
              quantity: 'carrier-to-noise',
              testPoint: 'antenna',
              slot: 'middle',
              carrier: 'news',
              // Site 0 loses half a decibel a year, the others nothing.
              carrierToNoiseDb: 14 - (i === 0 ? 0.5 * (year - 2022) : 0) + 0.05 * stream.normal(),
            },
          ],
        })),
      },
      plan: { signals: [{ slot: 'middle', carrier: 'news', unit }] },
      verdicts: [
        {
          ...common,
          visit: 3,
          quantity: 'carrier-to-noise',
          difference: ratio + (wet ? -6 : 0),
          standardUncertainty: 0.4,
          wet,
        },
        {
          ...common,
          visit: 3,
          quantity: 'level',
          difference: ratio + UNIT_DB[unit] + METER_DB[instrument] + 0.2 * stream.normal(),
          standardUncertainty: 1,
          wet,
        },
      ],
    };
  }
}

describe('what was put in comes out', () => {
  const found = recordExperience(many(600));
  const [news] = found.carriers;
  test('the correction of the EIRP, with its doubt', () => {
    expect(news?.stations).toBe(540);
    for (const latitudeDeg of [41, 43, 45, 47, 49]) {
      const at = news?.correction.at({ latitudeDeg, longitudeDeg: 11 });
      expect(at?.beyondReadings).toBe(false);
      expect(Math.abs((at?.correctionDb ?? 9) - excessDb(latitudeDeg))).toBeLessThan(
        3 * (at?.standardUncertaintyDb ?? 0),
      );
      expect(at?.standardUncertaintyDb).toBeLessThan(0.25);
    }
    // Far away it knows nothing better than the spread of the region, and says so.
    const far = news?.correction.at({ latitudeDeg: -30, longitudeDeg: 11 });
    expect(far?.standardUncertaintyDb).toBeGreaterThan(0.25);
  });
  test('offsets of units and instruments', () => {
    if (found.offsets.kind !== 'offsets') throw new Error(found.offsets.kind);
    for (const { unit, offsetDb, standardUncertaintyDb } of found.offsets.units)
      expect(Math.abs(offsetDb - UNIT_DB[unit as keyof typeof UNIT_DB])).toBeLessThan(
        4 * standardUncertaintyDb,
      );
    for (const { site, departureDb } of found.offsets.sites)
      expect(departureDb).toBeCloseTo(METER_DB[site as keyof typeof METER_DB], 1);
  });
  test('the one site that drifts comes first', () => {
    expect(found.drifts).toHaveLength(600);
    const [first] = found.drifts;
    expect(first?.station).toBe('site 0');
    expect(first?.drift.kind).toBe('drift');
    expect(first?.drift.perYearDb).toBeCloseTo(-0.5, 0);
  });
  test('what was read in rain is left out and counted', () => {
    expect(found.leftOut).toEqual({ wet: 120, bounded: 0 });
  });
});

test('a record as the job writes it is one', () => {
  const record: JobRecord = recordJob(oneSlot());
  const found = recordExperience([record, record, record]);
  expect(found.carriers.map(({ carrier }) => carrier)).toEqual(['news', 'weather']);
  expect(found.offsets.kind).toBe('too-few-readings');
});

test('a record that lacks a field that is read is refused with its place', () => {
  const [good] = many(1);
  if (good === undefined) throw new Error('no record');
  const lacking = structuredClone(good) as unknown as {
    verdicts: Record<string, unknown>[];
    job: { station: Record<string, unknown> };
  };
  delete lacking.verdicts[1]?.['slot'];
  const refused = (record: unknown) => () => recordExperience([record as ExperienceRecord]);
  expect(refused(lacking)).toThrow(/records\[0\]\.verdicts\[1\]\.slot/);
  delete lacking.job.station['name'];
  expect(refused(lacking)).toThrow(/records\[0\]\.job\.station\.name/);
  expect(refused({ ...good, plan: {} })).toThrow(/records\[0\]\.plan\.signals/);
});

test(`${runs(10_000)} records`, () => {
  const start = performance.now();
  const { records, carriers } = recordExperience(many(runs(10_000)));
  console.log(
    `experience from ${records} records: ${((performance.now() - start) / 1000).toFixed(1)} s with making them, ${carriers[0]?.correction.cells} cells`,
  );
  expect(records).toBe(runs(10_000));
});

test.each<[string, unknown, string]>([
  ['nothing', undefined, 'records'],
  ['an empty folder', [], 'records'],
  ['a job file', [{ format: 'slantpath-job' }], 'records[0]'],
])('%s is refused', (_, records, parameter) => {
  expect(() => recordExperience(records as never)).toThrow(expect.objectContaining({ parameter }));
});

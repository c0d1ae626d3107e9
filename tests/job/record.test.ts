import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DomainError } from 'slantpath';
import {
  checkedRecord,
  compareRecords,
  type JobFile1,
  type JobRecord,
  planJob,
  recheckRecord,
  recordJob,
} from 'slantpath/job';
import { jobSheet } from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { runs } from '../support/runs.js';
import { separate } from './support/goodJobs.js';

const text = readFileSync(
  fileURLToPath(new URL('./data/job-version-1.json', import.meta.url)),
  'utf8',
);
const job = JSON.parse(text) as JobFile1;
const record = recordJob(job);
const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** Every leaf of a JSON document with its path. */
function leaves(value: unknown, path = ''): { readonly path: string; readonly value: unknown }[] {
  if (typeof value !== 'object' || value === null) return [{ path, value }];
  return Object.entries(value).flatMap(([key, inner]) =>
    leaves(inner, Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`),
  );
}

/** A copy with one leaf replaced; only what lies on the way to it is copied. */
function tampered(document: unknown, path: string, value: unknown): unknown {
  const replaced = (at: unknown, keys: readonly string[]): unknown => {
    const [key, ...rest] = keys;
    if (key === undefined) return value;
    if (Array.isArray(at)) {
      const list = [...at];
      list[Number(key)] = replaced(at[Number(key)], rest);
      return list;
    }
    const tree = at as Record<string, unknown>;
    return { ...tree, [key]: replaced(tree[key], rest) };
  };
  return replaced(
    document,
    path.split(/[.[\]]+/).filter((key) => key !== ''),
  );
}

describe('the record of the demo hut', () => {
  test('is plain JSON without NaN, Infinity or -0', () => {
    expect(copy(record)).toEqual(record);
    for (const { path, value } of leaves(record))
      if (typeof value === 'number')
        expect(Number.isFinite(value) && !Object.is(value, -0), path).toBe(true);
  });

  test('rechecks, as a value and as text', () => {
    expect(recheckRecord(copy(record)).kind).toBe('agrees');
    expect(recheckRecord(JSON.stringify(record)).kind).toBe('agrees');
  });

  test('a tampered figure is named by its path', () => {
    const figures = leaves(record).filter(
      ({ path, value }) =>
        typeof value === 'number' && !path.startsWith('job.') && path !== 'version',
    );
    expect(figures.length).toBeGreaterThan(300);
    const stream = randomStream(7);
    for (let i = 0; i < runs(12, 4); i++) {
      const figure = figures[stream.integer(figures.length)];
      if (!figure) continue;
      const check = recheckRecord(tampered(record, figure.path, (figure.value as number) + 0.01));
      expect(check).toMatchObject({ kind: 'differs', differences: [{ path: figure.path }] });
    }
  });

  test('a tampered verdict is named, and so is a field taken away', () => {
    const verdict = recheckRecord(tampered(record, 'outcome', 'conforms'));
    expect(verdict).toMatchObject({
      kind: 'differs',
      differences: [{ path: 'outcome', before: 'conforms', after: 'does-not-conform' }],
    });
    const { firstLook: _gone, ...without } = copy(record);
    expect(recheckRecord(without)).toMatchObject({
      differences: [{ path: 'firstLook', before: null }],
    });
  });

  test('a tampered input shows in everything that follows from it', () => {
    const check = recheckRecord(tampered(record, 'job.station.latitudeDeg', 45));
    if (check.kind !== 'differs') throw new Error(check.kind);
    expect(check.differences.map(({ path }) => path)).toContain('plan.directions[0].elevationDeg');
  });

  test.each([
    ['nonsense', 'record'],
    ['[]', 'record'],
    [JSON.stringify(job), 'format'],
    [{ format: 'slantpath-record', version: 9 }, 'version'],
    [{ format: 'slantpath-record', version: 2 }, 'job.job'],
    [
      tampered(record, 'job.mounts[0].reflector.diameterM', -1),
      'job.mounts[0].reflector.diameterM',
    ],
  ])('refuses %#', (input, parameter) => {
    expect(() => recheckRecord(input)).toThrow(expect.objectContaining({ parameter }));
  });

  test('a record from before it said what no reading bears on agrees, and has a sheet', () => {
    const older = copy(record);
    if (!older.firstLook) throw new Error('nothing to look at first');
    const { unseen, ...look } = older.firstLook;
    expect(unseen).toContainEqual({ cause: 'supply-low', location: 'splitter in the hall' });
    const without = { ...older, firstLook: look };
    expect(recheckRecord(without).kind).toBe('agrees');
    expect(recheckRecord(tampered(record, 'firstLook.unseen[0].cause', 'rain')).kind).toBe(
      'differs',
    );
    expect(jobSheet(checkedRecord(without), { visit: 'after' })).toBe(
      jobSheet(record, { visit: 'after' }),
    );
  });

  test('a record from before the plan spoke of a wet feed agrees, and has a sheet', () => {
    if (!record.plan.rain) throw new Error('no rain');
    const { wetFeed, ...rain } = record.plan.rain;
    expect(wetFeed?.frequencyGHz).toBe(20.155);
    const without = { ...record, plan: { ...record.plan, rain } };
    expect(recheckRecord(without).kind).toBe('agrees');
    expect(recheckRecord(tampered(record, 'plan.rain.wetFeed.mostDb', 0.1)).kind).toBe('differs');
    expect(jobSheet(checkedRecord(without), { visit: 'after' })).toContain('cover of the feed');
  });

  test('finds the bunk room at fault and asks for the measurement that decides', () => {
    expect(record.outcome).toBe('does-not-conform');
    expect(record.firstLook?.causes[0]?.location).toBe('bunk room');
    expect(record.firstLook?.next).not.toBeNull();
    const flagged = record.verdicts.filter(({ finding }) => finding === 'below');
    expect(new Set(flagged.map(({ testPoint }) => testPoint))).toEqual(new Set(['bunk room']));
    const worst = record.findings.filter(({ severity }) => severity === 'does-not-conform');
    expect(new Set(worst.map(({ where }) => where.testPoint))).toEqual(new Set(['bunk room']));
  });
});

describe('records from elsewhere', () => {
  test('one of version 1 follows other rules, with both values, and never differs', () => {
    const old = {
      format: 'slantpath-record',
      version: 1,
      job,
      plan: { directions: copy(record.plan.directions) },
      outcome: 'conforms',
    };
    const check = recheckRecord(old);
    expect(check).toMatchObject({ kind: 'other-rules', recordVersion: 1, sinceVersion: 2 });
    expect(check.kind === 'other-rules' && check.differences).toContainEqual({
      path: 'outcome',
      before: 'conforms',
      after: 'does-not-conform',
    });
    // What needs a record of now takes an old one by its inputs.
    expect(checkedRecord(old)).toEqual(record);
    expect(compareRecords(old as never, record).meaning).toBe('unchanged');
  });

  test('a record with a field missing, of another kind or too much is refused by its path', () => {
    // A job whose mounts are found without a search: each line below plans it three times.
    const other = recordJob(separate());
    const { findings: _gone, ...without } = other;
    for (const [document, parameter] of [
      [without, 'findings'],
      [
        tampered(other, 'plan.directions[1].elevationDeg', 'high'),
        'plan.directions[1].elevationDeg',
      ],
      [tampered(other, 'plan.rain', null), 'plan.rain'],
      [tampered(other, 'verdicts', []), 'verdicts[0]'],
      [{ ...other, more: 1 }, 'more'],
      [tampered(other, 'findings[0].code', 'all-well'), 'findings[0].code'],
    ] as const) {
      expect(() => checkedRecord(document)).toThrow(expect.objectContaining({ parameter }));
      expect(() => compareRecords(other, document as never)).toThrow(
        expect.objectContaining({ parameter: `later.${parameter}` }),
      );
    }
    for (const nothing of [null, undefined, 3, 'x', [], {}])
      expect(() => checkedRecord(nothing)).toThrow(DomainError);
  });

  test('planJob and recordJob check what they are given', () => {
    for (const nothing of [
      null,
      undefined,
      3,
      'x',
      [],
      {},
      { format: 'slantpath-job', version: 2 },
    ]) {
      expect(() => planJob(nothing as never)).toThrow(DomainError);
      expect(() => recordJob(nothing as never)).toThrow(DomainError);
    }
  });
});

describe('peaking in the job', () => {
  const [first] = job.peaking;
  if (!first) throw new Error('no peaking');
  /** The hut's axis read on a lobe of another width: 12 (offset / width)^2 dB, tenths. */
  const onLobe = (widthDeg: number) =>
    recordJob({
      ...job,
      peaking: [
        {
          ...first,
          restDeg: 0,
          samples: {
            positionDeg: [-0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6],
            levelDbm: [-0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6].map(
              (at) => Math.round(10 * (-40 - 12 * (at / widthDeg) ** 2)) / 10,
            ),
          },
        },
      ],
    });

  test('a side lobe, half as wide as the main lobe of 0.9 m at 12.5 GHz, is not left', () => {
    const side = onLobe(0.93);
    expect(side.peaking[0]).toMatchObject({
      fit: { kind: 'not-main-lobe', reason: 'too-narrow' },
      moveTurns: null,
      verdict: 'not-known',
    });
  });

  test('the main lobe itself is', () => {
    expect(onLobe(1.86).peaking[0]).toMatchObject({
      fit: { kind: 'peak' },
      verdict: 'within-target',
    });
  });
});

describe('jobs of other shapes', () => {
  const before: JobFile1 = { ...job, readings: [], peaking: [] };
  test('before the visit there are no readings, and the plan alone is judged', () => {
    expect(recordJob(before)).toMatchObject({
      // One promise of the plan is kept with too little probability.
      outcome: 'undecided',
      firstLook: null,
      peaking: [],
      verdicts: [],
    });
  });
  test('a slot below the horizon is told, not computed', () => {
    const [slot] = job.slots;
    if (!slot) throw new Error('no slot');
    const far = recordJob({ ...before, slots: [{ ...slot, orbitalLongitudeDeg: -120 }] });
    expect(far.plan).toMatchObject({ mounts: [{ kind: 'no-slot' }], signals: [], outlets: [] });
  });
  test('on the equator under the satellite azimuth has no meaning', () => {
    const [slot] = job.slots;
    if (!slot) throw new Error('no slot');
    const under = recordJob({
      ...before,
      station: { ...job.station, latitudeDeg: 0, longitudeDeg: 7.2 },
      antenna: { ...job.antenna, offsetAngleDeg: 0 },
      slots: [slot],
    });
    expect(under.plan.directions[0]).toMatchObject({ kind: 'overhead', azimuthDeg: null });
  });
  test('an unknown mode is refused at its path', () => {
    const [slot] = job.slots;
    const [carrier] = slot?.carriers ?? [];
    if (!slot || !carrier) throw new Error('no carrier');
    const odd = { ...before, slots: [{ ...slot, carriers: [{ ...carrier, mode: '64QAM 7/8' }] }] };
    expect(() => recordJob(odd)).toThrow(
      expect.objectContaining({ parameter: expect.stringMatching(/^slots\[0\]\.carriers\[0\]\./) }),
    );
  });
});

describe('a later visit', () => {
  const shifted = (by: (index: number) => number): JobRecord =>
    recordJob({
      ...job,
      readings: job.readings.map((reading, index) =>
        reading.quantity === 'level'
          ? { ...reading, levelDbuv: reading.levelDbuv + by(index) }
          : reading,
      ),
    });
  const levels = { ...job, readings: job.readings.filter(({ quantity }) => quantity === 'level') };
  const first = recordJob(levels);
  const later = (by: (testPoint: string, slot: string) => number) =>
    recordJob({
      ...levels,
      readings: levels.readings.map((reading) =>
        reading.quantity === 'level'
          ? { ...reading, levelDbuv: reading.levelDbuv + by(reading.testPoint, reading.slot) }
          : reading,
      ),
    });

  test.each([
    ['unchanged', () => 0.3],
    ['all-lower-alike', () => -4],
    ['all-higher-alike', () => 5],
    ['one-slot-lower', (_: string, slot: string) => (slot === 'East slot' ? -6 : 0)],
    ['one-test-point-lower', (point: string) => (point === 'dining room' ? -6 : 0)],
    ['mixed', (point: string) => (point === 'dining room' ? 6 : -6)],
  ] as const)('%s', (meaning, by) => {
    const comparison = compareRecords(first, later(by));
    expect(comparison.meaning).toBe(meaning);
    expect(comparison.inputs).toEqual([]);
    expect(comparison.notRepeated).toEqual([]);
  });

  test('names changed inputs and readings that were not taken again', () => {
    const again = recordJob({
      ...levels,
      antenna: { ...job.antenna, diameterM: 1.2 },
      readings: levels.readings.slice(1),
    });
    const comparison = compareRecords(first, again);
    expect(comparison.inputs).toEqual([
      { path: 'mounts[0].reflector.diameterM', before: 0.9, after: 1.2 },
    ]);
    expect(comparison.notRepeated.length).toBe(1);
    expect(compareRecords(first, recordJob({ ...levels, readings: [] })).meaning).toBe(
      'no-common-readings',
    );
  });

  test('the uncertainty of a change is that of both readings', () => {
    const change = compareRecords(
      record,
      shifted(() => -1),
    ).readings.find(({ quantity }) => quantity === 'level');
    // Expanded uncertainty 2 dB, so 1 dB standard at each visit.
    expect(change?.standardUncertainty).toBeCloseTo(Math.SQRT2, 12);
  });
});

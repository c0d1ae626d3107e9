/** Jobs in and out: files of all kinds, links, worked examples and what they hand back. */

import { readFileSync } from 'node:fs';
import { recordJobWith } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { newBeside } from '../../../site/src/desk/state/beside.js';
import { type Draft, emptyDraft } from '../../../site/src/desk/state/draft.js';
import { fileName, fileOf, takenFrom } from '../../../site/src/desk/state/exchange.js';
import { FROM_JOB, RETURNING } from '../../../site/src/desk/state/fromJob.js';
import {
  examplesFor,
  withExample as withExampleOf,
} from '../../../site/src/desk/state/handOver.js';
import {
  fragmentOf,
  LONGEST_LINK_BYTES,
  takenFromFragment,
  withoutPrivate,
} from '../../../site/src/desk/state/link.js';
import { STAGES } from '../../../site/src/desk/state/stages.js';
import { chosenIn, chosenOf, TIES, tiedQuery } from '../../../site/src/desk/state/ties.js';
import { readEntry } from '../../../site/src/desk/store/entry.js';

import type { Example } from '../../../site/src/lib/example.js';
import { defaultsOf, readValues } from '../../../site/src/lib/inputs/state.js';

const definitions = import.meta.glob<{ default: Example }>('../../../site/src/examples/*.ts');

const textOf = (name: string) =>
  readFileSync(new URL(`../../../examples/job/${name}.json`, import.meta.url), 'utf8');

function draftOf(name: string): Draft {
  const taken = takenFrom(textOf(name));
  if (taken.kind !== 'job') throw new Error(taken.kind);
  return taken.draft;
}

const clinic = draftOf('riverine-clinic');

describe('files', () => {
  test('of another kind are told apart and change nothing', () => {
    expect(takenFrom('\u00ff\u00d8 no text').kind).toBe('not-json');
    expect(takenFrom('null').kind).toBe('other');
    expect(takenFrom('{"format":"geojson"}').kind).toBe('other');
    expect(takenFrom(' '.repeat(5_000_001)).kind).toBe('too-large');
    expect(takenFrom(`\ufeff${textOf('station-school')}`).kind).toBe('job');
  });

  test('with an unknown field are refused by it', () => {
    const job = { ...JSON.parse(textOf('station-school')), colour: 'red' };
    const taken = takenFrom(JSON.stringify(job));
    expect(taken).toMatchObject({ kind: 'faults', faults: [{ path: 'colour' }] });
  });

  test('saved half-filled, or with a value out of range, are opened as they were left', () => {
    const empty = emptyDraft('Begun', '2026-07-14');
    expect(takenFrom(fileOf(empty))).toEqual({ kind: 'job', draft: empty, from: 'job' });
    const wrong = { ...clinic, station: { ...clinic.station, latitudeDeg: 98 } };
    expect(takenFrom(fileOf(wrong))).toMatchObject({ kind: 'job', draft: wrong });
  });

  test('a record brings its job', () => {
    const record = recordJobWith(textOf('station-school'), { climate: null });
    expect(takenFrom(JSON.stringify(record))).toMatchObject({ kind: 'job', from: 'record' });
  });

  test('have names that every system takes', () => {
    expect(fileName('Hütte „am See“ / 2', 'job.json')).toBe('hutte-am-see-2.job.json');
    expect(fileName('…', 'job.json')).toBe('job.job.json');
  });

  test('a kept job that is none any more is set aside with what is left of it', () => {
    for (const rest of [undefined, null, 7, 'text', {}, { draft: { slots: 'gone' } }])
      expect(readEntry('a', rest)).toEqual({ damaged: { id: 'a', rest } });
  });
});

describe('links', () => {
  test('carry the job without persons, address and notes', async () => {
    const fragment = await fragmentOf(clinic);
    expect(fragment?.length).toBeLessThan(LONGEST_LINK_BYTES);
    const taken = await takenFromFragment(fragment ?? '');
    const draft = taken?.kind === 'job' ? taken.draft : undefined;
    const text = JSON.stringify(draft);
    expect(text).not.toMatch(/Engineer|Clinic at the bend|Riverine|Access code|Lightning/);
    expect(draft?.visits).toEqual(withoutPrivate(clinic).visits);
    expect(draft?.slots).toEqual(clinic.slots);
  });

  test('cut or foreign ones hold no job', async () => {
    expect(await takenFromFragment('#overview')).toBeUndefined();
    expect(await takenFromFragment('#job=abc')).toEqual({ kind: 'not-json' });
  });
});

describe('worked examples', () => {
  const record = recordJobWith(textOf('riverine-clinic'), { climate: null });
  test('open with the values of the job, by the names of their inputs', () => {
    const [[name, href] = ['', '']] = examplesFor('rain', record);
    const query = new URL(href, 'https://slantpath.example').searchParams;
    expect(name).toBe('how-much-rain-margin');
    expect(Object.fromEntries(query)).toEqual({
      latitudeDeg: '-0.4',
      longitudeDeg: '102.3',
      heightM: '35',
      orbitalLongitudeDeg: '74.5',
      frequencyGHz: '11.1',
      diameterM: '1.8',
      exceededPercent: '0.3',
    });
  });

  const first = { defaults: {}, chosen: chosenIn('') };

  test('hand back sightings, the promise and a bracketing', () => {
    const held = { draft: clinic, beside: { ...newBeside, visit: 0 } };
    const withExample = (of: typeof held, name: string, values: unknown) =>
      withExampleOf(of, name, values, first);
    const sighted = withExample(held, 'is-the-view-clear', {
      bearings: 'true',
      sightings: [{ bearingDeg: 250, elevationDeg: 9 }],
    });
    expect(sighted?.horizon).toMatchObject({
      north: 'true',
      samples: [{ azimuthDeg: 250, elevationDeg: 9 }],
    });
    const promised = withExample(held, 'how-much-rain-margin', { exceededPercent: 0.05 });
    expect(promised?.target).toEqual({ ...clinic.target, exceededPercent: 0.05 });
    expect(promised?.rain).toEqual(clinic.rain);
    const turns = { peakLevelDbm: -47, referenceLevelDbm: -51, turnsOut: 3, turnsBack: 5 };
    const peaked = withExample(held, 'half-way-back', { ...turns, levelStepDb: 1 });
    expect(peaked?.visits?.[0]?.peaking?.at(-1)).toMatchObject({
      bracketing: { turnsOut: 3, turnsBack: 5, dropDb: 4, resolutionDb: 1 },
    });
    expect(withExample(held, 'typed-coordinates', {})).toBeUndefined();
  });

  test.each(RETURNING)(
    '%s opens with the values of the job and hands them back unchanged',
    async (name) => {
      const stages = STAGES.flatMap((stage) => examplesFor(stage, record));
      const href = stages.find(([one]) => one === name)?.[1] ?? '';
      const { searchParams, hash } = new URL(href, 'https://slantpath.example');
      const { inputs } = (await definitions[`../../../site/src/examples/${name}.ts`]?.())
        ?.default ?? {
        inputs: {},
      };
      const defaults = defaultsOf(inputs);
      expect(Object.keys(defaults)).toEqual(expect.arrayContaining([...searchParams.keys()]));
      expect(Object.keys(defaults)).toEqual(expect.arrayContaining(Object.keys(TIES[name] ?? {})));
      const chosen = chosenIn(hash.slice(FROM_JOB.length + 1));
      expect(chosen).toEqual(chosenOf(record));
      if (!(name in TIES)) return;
      const values = readValues(inputs, { ...defaults, ...Object.fromEntries(searchParams) });
      const held = { draft: clinic, beside: { ...newBeside, visit: 0 } };
      expect(withExampleOf(held, name, values, { defaults, chosen })).toEqual(clinic);
      // Every input that the job has is taken back where it came from.
      for (const [input, text] of searchParams) {
        if (!(input in (TIES[name] ?? {}))) continue;
        // As the page reads them from the address: a place has a group of its own.
        const typed = { [input]: String(Number(text) + 0.125) };
        const raw = { ...defaults, ...Object.fromEntries(searchParams), ...typed };
        const changed = readValues(inputs, raw);
        const draft = withExampleOf(held, name, changed, { defaults, chosen });
        expect(draft).not.toEqual(clinic);
        const again = tiedQuery(name, draft, chosen);
        expect(again[input]).toBe(String(Number(text) + 0.125));
      }
    },
  );

  test('an example’s own figure does not become one of the job, nor a group that the job lacks', () => {
    const bare = { draft: emptyDraft('', '2026-11-28'), beside: newBeside };
    const of = { defaults: { heightM: '1200', latitudeDeg: '46.4' }, chosen: chosenIn('0.0.0.0') };
    const values = { heightM: 1200, latitudeDeg: -3, basicSpeedMPerS: 30 };
    expect(withExampleOf(bare, 'where-is-the-satellite', values, of)?.station).toEqual({
      latitudeDeg: -3,
    });
    expect(withExampleOf(bare, 'how-much-ballast-does-a-flat-roof-need', values, of)).toEqual(
      bare.draft,
    );
  });

  test('new rows of longitudes become slots, and none is taken away', () => {
    const held = { draft: clinic, beside: newBeside };
    const rows = [{ orbitalLongitudeDeg: 75 }, { orbitalLongitudeDeg: 80 }];
    const draft = withExampleOf(
      held,
      'how-is-a-polar-mount-set',
      { orbitalLongitudesDeg: rows },
      first,
    );
    expect(draft?.slots?.slice(0, 2).map((slot) => slot.orbitalLongitudeDeg)).toEqual([75, 80]);
    const fewer = withExampleOf(
      held,
      'how-is-a-polar-mount-set',
      { orbitalLongitudesDeg: [] },
      first,
    );
    expect(fewer).toEqual(clinic);
  });
});

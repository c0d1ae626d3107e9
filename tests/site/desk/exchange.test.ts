/** Jobs in and out: files of all kinds, links, worked examples and what they hand back. */

import { readFileSync } from 'node:fs';
import { recordJobWith } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { newBeside } from '../../../site/src/desk/state/beside.js';
import { type Draft, emptyDraft } from '../../../site/src/desk/state/draft.js';
import { fileName, fileOf, takenFrom } from '../../../site/src/desk/state/exchange.js';
import { examplesFor, withExample } from '../../../site/src/desk/state/handOver.js';
import {
  fragmentOf,
  LONGEST_LINK_BYTES,
  takenFromFragment,
  withoutPrivate,
} from '../../../site/src/desk/state/link.js';
import { readEntry } from '../../../site/src/desk/store/entry.js';

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
  test('open with the values of the job, by the names of their inputs', () => {
    const record = recordJobWith(textOf('riverine-clinic'), { climate: null });
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

  test('hand back sightings, the promise and a bracketing', () => {
    const held = { draft: clinic, beside: { ...newBeside, visit: 0 } };
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
    expect(withExample(held, 'sun-outages', {})).toBeUndefined();
  });
});

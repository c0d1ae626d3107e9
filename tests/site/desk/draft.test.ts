/** A job that is being done: rows that wait, names that are taken over, parts that come and go. */

import { parseJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { type Draft, emptyDraft } from '../../../site/src/desk/state/draft.js';
import { withoutRow, withRow, withSameRow } from '../../../site/src/desk/state/lists.js';
import { renamed, takenNames } from '../../../site/src/desk/state/names.js';
import { withNewPart } from '../../../site/src/desk/state/newParts.js';
import { valueAt, withValue } from '../../../site/src/desk/state/paths.js';
import { prepared } from '../../../site/src/desk/state/prepared.js';
import {
  outletNames,
  partRows,
  withoutPart,
  withPartMoved,
} from '../../../site/src/desk/state/tree.js';
import { typedInto } from '../../../site/src/desk/state/typedFields.js';

const words = {
  slot: 'slot',
  carrier: 'carrier',
  mount: 'mount',
  unit: 'LNB',
  band: 'band',
  instrument: 'instrument',
  sent: 'return',
};
const parts = { outlet: 'outlet', kinds: { cable: 'cable', splitter: 'splitter' } };

const put = (draft: Draft, ...fields: readonly (readonly [string, unknown])[]) =>
  fields.reduce((made, [path, value]) => withValue(made, path, value), draft);

/** A place, a slot with a carrier, a unit, an outlet and a reading. */
function smallJob(): Draft {
  const placed = put(
    emptyDraft('Job', '2026-07-14'),
    ['station.latitudeDeg', 46.6],
    ['station.longitudeDeg', 10.3],
  );
  const slotted = put(withRow(placed, 'slots', words), ['slots[0].orbitalLongitudeDeg', 16.4]);
  const carried = put(withRow(slotted, 'slots[0].carriers', words), [
    'slots[0].carriers[0].frequencyGHz',
    11.5,
  ]);
  return put(withNewPart(withRow(carried, 'units', words), '', 'cable', parts), [
    'visits',
    [
      {
        kind: 'installation',
        date: '2026-07-14',
        readings: [
          {
            quantity: 'level',
            testPoint: 'outlet',
            slot: 'slot',
            carrier: 'carrier',
            levelDbuv: 60,
            expandedUncertaintyDb: 2,
          },
        ],
      },
    ],
  ]);
}

describe('what is begun and not whole', () => {
  test('waits outside the job, with the first field that it lacks', () => {
    const empty = prepared(emptyDraft('Job', '2026-07-14'));
    expect(empty).toMatchObject({ job: null, faults: [], waiting: [] });
    const begun = withRow(smallJob(), 'slots', words);
    const { job, waiting } = prepared(begun);
    expect(waiting).toEqual([{ path: 'slots[1]', lacks: 'slots[1].orbitalLongitudeDeg' }]);
    expect(job?.slots.map(({ name }) => name)).toEqual(['slot']);
    expect(job?.mounts[0]?.slots).toEqual(['slot']);
  });

  test('takes along what refers to it', () => {
    const draft = put(smallJob(), ['slots[0].carriers[0].frequencyGHz', undefined]);
    const { job, waiting } = prepared(draft);
    expect(waiting.map(({ lacks }) => lacks)).toEqual([
      'slots[0].carriers[0].frequencyGHz',
      'visits[0].readings[0].carrier',
    ]);
    expect(job?.visits[0]?.readings).toEqual([]);
  });

  test('a fault is told by the path of the draft, not of the job without what waits', () => {
    const two = withRow(
      withRow(smallJob(), 'slots[0].carriers', words),
      'slots[0].carriers',
      words,
    );
    const draft = put(two, ['slots[0].carriers[2].frequencyGHz', 900]);
    const { job, faults } = prepared(draft);
    expect(job).toBeNull();
    expect(faults.map(({ path }) => path)).toEqual(['slots[0].carriers[2].frequencyGHz']);
  });

  test('a text that is no number stays, and is refused by its field', () => {
    const { draft } = typedInto(smallJob(), 'slots[0].carriers[0].eirpDbw', 'number', '5o');
    expect(valueAt(draft, 'slots[0].carriers[0].eirpDbw')).toBe('5o');
    expect(prepared(draft).faults).toEqual([
      { path: 'slots[0].carriers[0].eirpDbw', allowed: 'a finite number', slip: '' },
    ]);
  });
});

describe('what is typed', () => {
  test('a pair of coordinates fills both, a side of the sky is understood', () => {
    const station = (text: string) =>
      typedInto(smallJob(), 'station.latitudeDeg', 'angle', text).draft.station;
    expect(station('46°24 N')).toMatchObject({ latitudeDeg: 46.4, longitudeDeg: 10.3 });
    expect(station('46.4, 9.6')).toMatchObject({ latitudeDeg: 46.4, longitudeDeg: 9.6 });
    const slot = typedInto(smallJob(), 'slots[0].orbitalLongitudeDeg', 'angle', '30W').draft;
    expect(slot.slots?.[0]?.orbitalLongitudeDeg).toBe(-30);
  });

  test('an empty field is no field, an empty group no group', () => {
    const draft = put(smallJob(), ['mounts[0].reflector.diameterM', 0.9]);
    const { mounts } = typedInto(draft, 'mounts[0].reflector.diameterM', 'number', '').draft;
    expect(mounts?.[0]).toEqual({ kind: 'fixed', name: 'mount', slots: ['slot'] });
  });

  test('a path cannot reach what all objects share', () => {
    const draft = withValue(smallJob(), '__proto__.polluted', 'yes');
    expect(({} as { polluted?: string }).polluted).toBeUndefined();
    expect(Object.getPrototypeOf(draft)).toBe(Object.prototype);
  });
});

describe('names', () => {
  test('a new name is taken over by everything that refers to it', () => {
    const slot = renamed(smallJob(), 'slots[0].name', 'south');
    const all = renamed(slot, 'slots[0].carriers[0].name', 'news');
    const part = partRows(all).find((row) => row.part.kind === 'outlet');
    const draft = renamed(all, `${part?.path}.name`, 'kitchen');
    expect(draft.mounts?.[0]?.slots).toEqual(['south']);
    expect(draft.visits?.[0]?.readings?.[0]).toMatchObject({
      slot: 'south',
      carrier: 'news',
      testPoint: 'kitchen',
    });
    expect(prepared(draft).faults).toEqual([]);
  });

  test('a name that another has is refused, and an empty one', () => {
    const draft = withRow(smallJob(), 'slots', words);
    expect(takenNames(draft, 'slots[1].name')).toEqual(['slot']);
    expect(typedInto(draft, 'slots[1].name', 'name', ' slot ').refused).toBe('taken');
    expect(typedInto(draft, 'slots[1].name', 'name', '  ').refused).toBe('empty');
  });
});

describe('rows', () => {
  test('the same as above has a name of its own', () => {
    const draft = withSameRow(smallJob(), 'slots[0].carriers');
    expect(draft.slots?.[0]?.carriers).toEqual([
      { name: 'carrier', polarization: 'horizontal', frequencyGHz: 11.5 },
      { name: 'carrier 2', polarization: 'horizontal', frequencyGHz: 11.5 },
    ]);
  });

  test('what refers to a removed row goes with it', () => {
    const draft = withoutRow(smallJob(), 'slots[0].carriers', 0);
    expect(draft.visits?.[0]?.readings).toEqual([]);
    const bare = withoutRow(smallJob(), 'slots', 0);
    expect(bare.mounts?.[0]?.slots).toEqual([]);
    expect(prepared(bare).job).toBeNull();
  });
});

describe('parts', () => {
  const withSplitter = () => {
    const first = smallJob();
    return withNewPart(first, 'distribution.trees[0]', 'splitter', parts);
  };

  test('a splitter put between a cable and its outlet keeps the outlet', () => {
    const draft = withSplitter();
    expect(partRows(draft).map(({ part }) => part.name)).toEqual([
      'cable',
      'splitter',
      'outlet',
      'outlet 2',
    ]);
    expect(prepared(draft).faults).toEqual([]);
  });

  test('a part that is removed leaves what followed it; a way does not end in nothing', () => {
    const draft = withSplitter();
    const without = withoutPart(draft, 'distribution.trees[0].to.outputs[1]');
    expect(outletNames(without)).toEqual(['outlet']);
    const direct = withoutPart(without, 'distribution.trees[0].to');
    expect(partRows(direct).map(({ part }) => part.kind)).toEqual(['cable', 'outlet']);
    expect(withoutPart(direct, 'distribution.trees[0].to').distribution).toBeUndefined();
  });

  test('a branch is moved behind another splitter', () => {
    const two = withNewPart(withSplitter(), '', 'splitter', parts);
    const moved = withPartMoved(two, 'distribution.trees[1]', 'distribution.trees[0].to');
    expect(moved.distribution?.trees).toHaveLength(1);
    expect(outletNames(moved)).toEqual(['outlet', 'outlet 2', 'outlet 3']);
    // Four ways lose more than two: the library says so, and the field of the loss shows it.
    const loss = 'distribution.trees[0].to.lossDb';
    expect(prepared(moved).faults.map(({ path }) => path)).toEqual([loss]);
    expect(prepared(put(moved, [loss, 8])).faults).toEqual([]);
  });
});

test('fields that the page does not show stay in the job', () => {
  const draft = put(
    smallJob(),
    ['slots[0].inclinationDeg', 1.5],
    ['units[0].localOscillatorStabilityMHz', 2],
    ['distribution.stacking', { kind: 'fixed-bands' }],
  );
  const edited = typedInto(draft, 'units[0].gainDb', 'number', '55').draft;
  const job = parseJob(prepared(edited).job);
  expect(job.units?.[0]?.localOscillatorStabilityMHz).toBe(2);
  expect(job.distribution?.stacking).toEqual({ kind: 'fixed-bands' });
  expect(job.slots[0]?.inclinationDeg).toBe(1.5);
});

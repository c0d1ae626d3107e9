/** Fields of the page that are no field of the job file: each says what it changes. */

import { dbuvToDbm } from 'slantpath/distribution';
import type { JobRecord } from 'slantpath/job';
import { linesOf } from '../../lib/inputs/pasted.js';
import { typed } from '../../lib/language/text.js';
import { type Beside, visitOf } from './beside.js';
import type { Draft, LoosePeaking } from './draft.js';
import { mounted } from './lists.js';
import { withCable } from './newParts.js';
import { valueAt, withValue } from './paths.js';
import { withPartMoved } from './tree.js';
import { numberOrText } from './typedFields.js';
import { wantedAt, wantedName, withReading } from './wanted.js';

/** What the page holds of a job. */
export interface Held {
  readonly draft: Draft;
  readonly beside: Beside;
  readonly record: JobRecord | null;
}

/** What a field has changed; `undefined` where it only waits for a button. */
export type OwnEdit =
  | { readonly draft?: Draft; readonly beside?: Beside; readonly reshaped?: boolean }
  | undefined;

/** Lines of a text as a list of notes, the empty ones left out. */
const notesOf = (text: string) =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** A list of names in one choice: none of them means all. */
const listOf = (value: string) => (value === '' ? undefined : value.split(', '));

/** What the field `name` changes when `text` is put into it. */
export function ownInto(held: Held, name: string, text: string): OwnEdit {
  const { draft, beside } = held;
  const [kind = '', ...rest] = name.split(':');
  const at = rest.join(':');
  const visit = visitOf(held);
  const display = (of: Partial<Beside['display']>): OwnEdit => ({
    beside: { ...beside, display: { ...beside.display, ...of } },
    reshaped: true,
  });
  switch (kind) {
    case 'notes': {
      const notes = notesOf(text);
      return { draft: withValue(draft, 'notes', notes.length > 0 ? notes : undefined) };
    }
    case 'visit-notes': {
      const notes = notesOf(text);
      const path = `visits[${visit}].notes`;
      return { draft: withValue(draft, path, notes.length > 0 ? notes : undefined) };
    }
    case 'visit':
      return { beside: { ...beside, visit: Number(text) }, reshaped: true };
    case 'mount-of':
      return { draft: mounted(draft, at, Number(text)), reshaped: true };
    case 'few':
      return { draft: withValue(draft, at, listOf(text)), reshaped: true };
    case 'cable':
      return { draft: withCable(draft, at, text), reshaped: true };
    case 'behind':
      return { draft: withPartMoved(draft, at, text), reshaped: true };
    case 'display-unit':
      return display({ unit: text === 'dBm' ? 'dBm' : 'dBuV' });
    case 'display-flicker':
      return typed(text) > 0 ? display({ standardDeviationDb: typed(text) }) : undefined;
    case 'display-step':
      return typed(text) >= 0 ? display({ levelStepDb: typed(text) }) : undefined;
    case 'read': {
      const wanted = wantedAt(draft, visit, held.record).find((each) => wantedName(each) === name);
      return wanted && { draft: withReading(draft, visit, wanted, numberOrText('', text)) };
    }
    case 'uncertainty':
      return { draft: withUncertainty(draft, visit, at, text) };
    default:
      return undefined;
  }
}

/** All readings of a quantity at a visit with another uncertainty. */
function withUncertainty(draft: Draft, visit: number, quantity: string, text: string): Draft {
  const readings = draft.visits?.[visit]?.readings ?? [];
  return withValue(
    draft,
    `visits[${visit}].readings`,
    readings.map((reading) =>
      reading.quantity === quantity
        ? { ...reading, expandedUncertaintyDb: numberOrText('', text) }
        : reading,
    ),
  );
}

/** Rows of numbers in a pasted text; `undefined` where a line holds something else. */
function numbersOf(text: string, least: number): readonly (readonly number[])[] | undefined {
  // Columns by blanks too, as they stand in a mail.
  const lines = linesOf(text).map((cells) =>
    cells.length < least ? (cells[0] ?? '').trim().split(/\s+/) : cells,
  );
  const rows = lines
    .map((cells) => cells.map(typed))
    .filter((_, index) => index > 0 || !lines[0]?.every((cell) => Number.isNaN(typed(cell))));
  const sound = rows.every(
    (row) => row.length >= least && row.slice(0, least).every((value) => Number.isFinite(value)),
  );
  return sound && rows.length > 0 ? rows : undefined;
}

/** The draft with a pasted skyline in place of its sightings. */
export function withSkyline(draft: Draft, text: string): Draft | undefined {
  const rows = numbersOf(text, 2);
  if (!rows) return undefined;
  const samples = rows.map(([azimuthDeg, elevationDeg, distanceM]) => ({
    azimuthDeg,
    elevationDeg,
    ...(distanceM === undefined || Number.isNaN(distanceM) ? {} : { distanceM }),
  }));
  return withValue(draft, 'horizon', { north: 'magnetic', ...draft.horizon, samples });
}

/** The draft with pasted positions and levels in place of an axis's readings. */
export function withSamples(
  draft: Draft,
  path: string,
  text: string,
  unit: Beside['display']['unit'],
): Draft | undefined {
  const rows = numbersOf(text, 2);
  const last = rows?.at(-1)?.[0];
  if (!rows || last === undefined) return undefined;
  const entry = valueAt(draft, path) as LoosePeaking;
  return withValue(draft, path, {
    ...entry,
    restDeg: last,
    samples: {
      positionDeg: rows.map(([position]) => position),
      levelDbm: rows.map(([, level = 0]) => levelDbm(level, unit)),
    },
  });
}

/** A level as the job file holds it. */
export const levelDbm = (level: number, unit: Beside['display']['unit']): number =>
  unit === 'dBm' ? level : Number(dbuvToDbm(level).toFixed(2));

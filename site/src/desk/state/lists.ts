/** Rows that come and go: what a new one begins with, 'same as above', and what goes with a row that is removed. */

import { offAxisMasks } from 'slantpath/transmit';
import type { Draft, LooseSlot } from './draft.js';
import { freshName } from './names.js';
import { listAt, valueAt, withValue } from './paths.js';
import { outletNames } from './tree.js';

const namesIn = (draft: Draft, path: string): readonly string[] =>
  listAt(draft, path).flatMap((row) => {
    const name = valueAt(row, 'name');
    return typeof name === 'string' ? [name] : [];
  });

/** Words that a new row's name begins with; in the language of the page. */
export interface RowNames {
  readonly slot: string;
  readonly carrier: string;
  readonly mount: string;
  readonly unit: string;
  readonly band: string;
  readonly sent: string;
  readonly instrument: string;
}

/** The first slot, and the first carrier of it, as a new reading or axis refers to them. */
function firstCarrier(draft: Draft): { slot?: string; carrier?: string } {
  const slot = draft.slots?.find(({ carriers }) => (carriers ?? []).length > 0) ?? draft.slots?.[0];
  const carrier = slot?.carriers?.[0]?.name;
  return {
    ...(slot?.name === undefined ? {} : { slot: slot.name }),
    ...(carrier === undefined ? {} : { carrier }),
  };
}

/** What a new row of a list begins with. */
function fresh(draft: Draft, list: string, words: RowNames): unknown {
  const kind = list.replace(/\[\d+\]/g, '[]');
  switch (kind) {
    case 'slots':
      return { name: freshName(words.slot, namesIn(draft, list)), carriers: [] };
    case 'slots[].carriers':
      return { name: freshName(words.carrier, namesIn(draft, list)), polarization: 'horizontal' };
    case 'mounts':
      return { kind: 'fixed', name: freshName(words.mount, namesIn(draft, list)), slots: [] };
    case 'units':
      return { name: freshName(words.unit, namesIn(draft, list)), bands: [] };
    case 'units[].bands':
      return { name: freshName(words.band, namesIn(draft, list)) };
    case 'transmit':
      return {
        name: freshName(words.sent, namesIn(draft, list)),
        slot: firstCarrier(draft).slot,
        polarization: 'vertical',
      };
    case 'limits':
      return {
        testPoint: outletNames(draft).length > 0 ? 'outlets' : 'antenna',
        quantity: 'level',
      };
    case 'visits[].readings':
      return { quantity: 'level', testPoint: 'antenna', ...firstCarrier(draft) };
    case 'visits[].peaking':
      return { axis: 'azimuth', ...firstCarrier(draft), restDeg: 0 };
    case 'visits[].feedTurns':
      return { slot: firstCarrier(draft).slot };
    case 'transmit[].offAxisMaskNames':
      return offAxisMasks.find((mask) => !listAt(draft, list).includes(mask.name))?.name ?? '';
    case 'instruments':
      return { name: freshName(words.instrument, namesIn(draft, list)) };
    case 'distribution.lines':
      return { unit: draft.units?.[0]?.name };
    default:
      return {};
  }
}

/** The draft with a new row at the end of a list. */
export function withRow(draft: Draft, list: string, words: RowNames): Draft {
  const begun =
    list === 'horizon.samples' && draft.horizon === undefined
      ? withValue(draft, 'horizon', { north: 'magnetic', samples: [] })
      : draft;
  const row = fresh(begun, list, words);
  const made = withValue(begun, `${list}[${listAt(begun, list).length}]`, row);
  // A new slot stands on the first mount until it is given another.
  const name = valueAt(row, 'name');
  return list === 'slots' && typeof name === 'string' ? mounted(made, name, 0) : made;
}

/** The draft with a copy of the last row, under a name of its own. */
export function withSameRow(draft: Draft, list: string): Draft {
  const rows = listAt(draft, list);
  const last = structuredClone(rows.at(-1)) as Record<string, unknown> | undefined;
  if (!last) return draft;
  const name = last['name'];
  if (typeof name === 'string')
    last['name'] = freshName(name.replace(/ \d+$/, ''), namesIn(draft, list));
  const made = withValue(draft, `${list}[${rows.length}]`, last);
  return list === 'slots' ? mounted(made, String(last['name']), 0) : made;
}

/** The draft with a slot on the mount of this index, and on no other. */
export function mounted(draft: Draft, slot: string, index: number): Draft {
  const mounts = draft.mounts ?? [];
  return {
    ...draft,
    mounts: mounts.map((mount, at) => {
      const others = (mount.slots ?? []).filter((name) => name !== slot);
      return { ...mount, slots: at === index ? [...others, slot] : others };
    }),
  };
}

/** The draft without a row, and without what refers to it. */
export function withoutRow(draft: Draft, list: string, index: number): Draft {
  const gone = listAt(draft, list)[index];
  const rows = listAt(draft, list).filter((_, at) => at !== index);
  const optional =
    /^(units|transmit|instruments)$|\.(bands|peaking|feedTurns|offAxisMask|offAxisMaskNames|measuredPairs|userBands|inputs)$|^distribution\.lines$/;
  const left = withValue(draft, list, rows.length === 0 && optional.test(list) ? undefined : rows);
  const name = valueAt(gone, 'name');
  if (list === 'slots') return withoutReferences(unmounted(left, name), { slot: name });
  if (/\.carriers$/.test(list)) {
    const slot = valueAt(draft, list.replace(/\.carriers$/, '.name'));
    return withoutReferences(left, { slot, carrier: name });
  }
  if (list === 'transmit')
    return withoutReferences(left, { slot: valueAt(gone, 'slot'), carrier: name });
  if (list === 'units') return withoutUnit(left, name);
  if (list === 'mounts') return remounted(left);
  return left;
}

function unmounted(draft: Draft, slot: unknown): Draft {
  const others = (names: readonly string[] | undefined) => names?.filter((name) => name !== slot);
  return {
    ...draft,
    mounts: (draft.mounts ?? []).map((mount) => ({ ...mount, slots: others(mount.slots) ?? [] })),
    ...(draft.units
      ? {
          units: draft.units.map(({ slots, ...unit }) => {
            const rest = others(slots);
            return rest && rest.length > 0 ? { ...unit, slots: rest } : unit;
          }),
        }
      : {}),
  };
}

/** Slots whose mount is gone stand on the first. */
function remounted(draft: Draft): Draft {
  const taken = new Set((draft.mounts ?? []).flatMap(({ slots }) => slots ?? []));
  return (draft.slots ?? [])
    .map(({ name }: LooseSlot) => name)
    .filter((name): name is string => name !== undefined && !taken.has(name))
    .reduce((made, name) => mounted(made, name, 0), draft);
}

function withoutUnit(draft: Draft, unit: unknown): Draft {
  const lines = draft.distribution?.lines?.filter((line) => line.unit !== unit);
  return withValue(
    {
      ...draft,
      slots: (draft.slots ?? []).map((slot) => ({
        ...slot,
        carriers: (slot.carriers ?? []).map((carrier) =>
          carrier.unit === unit ? withValue(carrier, 'unit', undefined) : carrier,
        ),
      })),
    },
    'distribution.lines',
    lines && lines.length > 0 ? lines : undefined,
  );
}

/** What a removed thing was called: every field that is given must agree. */
interface Gone {
  readonly slot?: unknown;
  readonly carrier?: unknown;
  readonly testPoint?: unknown;
}

/** The draft without readings, limits, axes and feed turns that refer to what is gone. */
export function withoutReferences(draft: Draft, gone: Gone): Draft {
  const refers = (row: unknown) =>
    Object.entries(gone).every(([field, name]) => valueAt(row, field) === name);
  const kept = <T>(rows: readonly T[] | undefined) => rows?.filter((row) => !refers(row));
  const list = <T>(field: string, rows: readonly T[] | undefined) =>
    rows === undefined ? {} : { [field]: kept(rows) };
  return {
    ...draft,
    ...list('limits', draft.limits),
    ...list('transmit', draft.transmit),
    ...(draft.visits
      ? {
          visits: draft.visits.map((visit) => ({
            ...visit,
            ...list('readings', visit.readings),
            ...list('peaking', visit.peaking),
            ...list('feedTurns', visit.feedTurns),
          })),
        }
      : {}),
  } as Draft;
}

/** What is typed into a field, put into the draft. A text that is no number stays as it is, and is refused by its field. */

import { isAngleField, typedAngle, typedPair } from '../../lib/inputs/angles.js';
import { typed } from '../../lib/language/text.js';
import type { Draft, LooseMount } from './draft.js';
import { ofKind, rainOf } from './kinds.js';
import { namedAt, renamed, takenNames } from './names.js';
import { valueAt, withValue } from './paths.js';
import { VALUE_FIELD } from './required.js';

/** How a field is read: `number` and `angle` as numbers; a `name` is taken over where it is left; `yes` is a box to tick. */
export type ReadAs = 'number' | 'angle' | 'text' | 'name' | 'choice' | 'day' | 'clock' | 'yes';

/** The draft after a field was changed, and whether the form has another shape now. */
export interface Edited {
  readonly draft: Draft;
  readonly reshaped: boolean;
  /** A name that was refused: it is taken by another, or empty. */
  readonly refused?: 'taken' | 'empty';
}

/** The number in a text; the text itself where it is none. */
export function numberOrText(path: string, text: string): number | string {
  const line = text.trim();
  if (line === '') return '';
  const value = isAngleField(path) ? typedAngle(line) : typed(line);
  return Number.isNaN(value) ? line : value;
}

/** The draft with what stands in a field now. */
export function typedInto(draft: Draft, path: string, as: ReadAs, text: string): Edited {
  const plain = (value: unknown): Edited => ({
    draft: withValue(draft, path, value === '' ? undefined : value),
    reshaped: false,
  });
  switch (as) {
    case 'number':
    case 'angle':
      return numberInto(draft, path, text);
    case 'name': {
      const name = text.trim();
      if (name === '') return { draft, reshaped: false, refused: 'empty' };
      if (takenNames(draft, path).includes(name))
        return { draft, reshaped: false, refused: 'taken' };
      return { draft: renamed(draft, path, name), reshaped: namedAt(path) !== undefined };
    }
    case 'choice':
      return chosen(draft, path, text);
    case 'yes':
      return plain(text === 'yes' ? true : undefined);
    default:
      return plain(text.trim());
  }
}

/** A pair of coordinates in one field fills both. */
function numberInto(draft: Draft, path: string, text: string): Edited {
  const pair = /^station\.l/.test(path) ? typedPair(text) : undefined;
  if (pair)
    return {
      draft: { ...draft, station: { ...draft.station, ...pair } } as Draft,
      reshaped: true,
    };
  const value = numberOrText(path, text);
  // A list of numbers keeps its length.
  const inList = /\]$/.test(path);
  return {
    draft: withValue(draft, path, value === '' && !inList ? undefined : value),
    reshaped: false,
  };
}

/** A choice may change what else is asked. */
function chosen(draft: Draft, path: string, value: string): Edited {
  const reshaped = (made: Draft): Edited => ({ draft: made, reshaped: true });
  if (path === 'rain.source') return reshaped(rainOf(draft, value));
  if (/^mounts\[\d+\]\.kind$/.test(path)) {
    const at = path.replace(/\.kind$/, '');
    return reshaped(withValue(draft, at, ofKind(valueAt(draft, at) as LooseMount, value)));
  }
  if (path === 'distribution.stacking.kind') return reshaped(stackedAs(draft, value));
  if (/feeds\.kind$/.test(path)) return reshaped(feedsOf(draft, path, value));
  if (/readings\[\d+\]\.quantity$/.test(path)) return reshaped(readingOf(draft, path, value));
  if (/limits\[\d+\]\.quantity$/.test(path)) {
    const at = path.replace(/\.quantity$/, '');
    const limit = valueAt(draft, at) as Record<string, unknown>;
    const { testPoint, slot } = limit;
    return reshaped(
      withValue(draft, at, {
        testPoint,
        ...(slot === undefined ? {} : { slot }),
        quantity: value,
      }),
    );
  }
  if (/\.(tone|passesSupply|tapsPassSupply)$/.test(path))
    return {
      draft: withValue(draft, path, value === '' ? undefined : value === 'true'),
      reshaped: false,
    };
  const made = withValue(draft, path, value === '' ? undefined : value);
  // Another slot has other carriers.
  if (/(readings|peaking)\[\d+\]\.slot$/.test(path)) {
    const slot = draft.slots?.find(({ name }) => name === value);
    return reshaped(withValue(made, path.replace(/slot$/, 'carrier'), slot?.carriers?.[0]?.name));
  }
  return { draft: made, reshaped: /\.(slot|standard|axis|unit|into|kind)$/.test(path) };
}

/** Stacking of another kind keeps its bands; none has none. */
const stackedAs = (draft: Draft, kind: string): Draft =>
  kind === ''
    ? withValue(draft, 'distribution.stacking', undefined)
    : withValue(draft, 'distribution.stacking.kind', kind);

/** Feeds on a bar have a place each; free ones none. */
function feedsOf(draft: Draft, path: string, kind: string): Draft {
  const at = path.replace(/\.feeds\.kind$/, '');
  const mount = valueAt(draft, at) as LooseMount;
  const before = mount.kind === 'fixed' ? mount.feeds : undefined;
  const feedDiameterM = before?.feedDiameterM;
  const kept = feedDiameterM === undefined ? {} : { feedDiameterM };
  const made =
    kind === 'rigid'
      ? { kind, placesM: (mount.slots ?? []).map(() => 0), ...kept }
      : kind === 'free'
        ? { kind, ...kept }
        : undefined;
  return withValue(draft, `${at}.feeds`, made);
}

/** A reading of another quantity keeps its place and who read it; its value is another one's. */
function readingOf(draft: Draft, path: string, quantity: string): Draft {
  const at = path.replace(/\.quantity$/, '');
  const before = valueAt(draft, at) as Record<string, unknown>;
  const values = new Set([
    ...Object.values(VALUE_FIELD),
    'expandedUncertaintyDb',
    'expandedUncertaintyV',
  ]);
  const kept = Object.fromEntries(Object.entries(before).filter(([key]) => !values.has(key)));
  const uncertainty =
    quantity === 'supply-voltage' ? { expandedUncertaintyV: 0.2 } : { expandedUncertaintyDb: 2 };
  return withValue(draft, at, { ...kept, quantity, ...uncertainty });
}

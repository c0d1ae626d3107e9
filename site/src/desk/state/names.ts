/** Names that other rows refer to: a new one is taken over everywhere, and one that is taken is refused. */

import type { Draft } from './draft.js';
import { keysOf, listAt, pathOf, valueAt, withValue } from './paths.js';
import { partRows } from './tree.js';

/** A kind of thing that others refer to by its name. */
type Named = 'slot' | 'carrier' | 'mount' | 'unit' | 'part' | 'band' | 'instrument';

const KINDS: readonly (readonly [RegExp, Named])[] = [
  [/^slots\[\d+\]\.name$/, 'slot'],
  [/^slots\[\d+\]\.carriers\[\d+\]\.name$/, 'carrier'],
  [/^transmit\[\d+\]\.name$/, 'carrier'],
  [/^mounts\[\d+\]\.name$/, 'mount'],
  [/^units\[\d+\]\.name$/, 'unit'],
  [/^units\[\d+\]\.bands\[\d+\]\.name$/, 'band'],
  [/^instruments\[\d+\]\.name$/, 'instrument'],
  [/^distribution\.trees.*\.name$/, 'part'],
];

/** The kind of name that stands at a path; `undefined` for a text that nothing refers to. */
export const namedAt = (path: string): Named | undefined =>
  /\.cable\.name$/.test(path) ? undefined : KINDS.find(([of]) => of.test(path))?.[1];

/** Names of that kind which stand elsewhere. */
export function takenNames(draft: Draft, path: string): readonly string[] {
  const kind = namedAt(path);
  const [list, index] = [path.replace(/\[\d+\]\.name$/, ''), keysOf(path).at(-2)];
  if (kind === 'part')
    return partRows(draft)
      .filter((row) => `${row.path}.name` !== path)
      .flatMap(({ part }) => (part.name === undefined ? [] : [part.name]))
      .concat('antenna', 'outlets');
  return listAt(draft, list).flatMap((row, at) => {
    const name = valueAt(row, 'name');
    return at !== index && typeof name === 'string' ? [name] : [];
  });
}

/** A name that no other of a kind has: `slot`, `slot 2`, `slot 3`. */
export function freshName(base: string, taken: readonly string[]): string {
  if (!taken.includes(base)) return base;
  let number = 2;
  while (taken.includes(`${base} ${number}`)) number += 1;
  return `${base} ${number}`;
}

/** The draft with a new name at a path, taken over by everything that refers to it. */
export function renamed(draft: Draft, path: string, name: string): Draft {
  const before = valueAt(draft, path);
  const made = withValue(draft, path, name);
  const kind = namedAt(path);
  if (typeof before !== 'string' || kind === undefined || before === name) return made;
  const slot = kind === 'carrier' ? slotOf(draft, path) : undefined;
  return mapped(made, (value, at, home) => {
    if (value !== before) return value;
    const last = keysOf(at)
      .filter((key) => typeof key === 'string')
      .at(-1);
    const list = typeof keysOf(at).at(-1) === 'number';
    if (kind === 'slot' && (last === 'slot' || (last === 'slots' && list))) return name;
    if (kind === 'carrier' && last === 'carrier' && valueAt(home, 'slot') === slot) return name;
    if (kind === 'unit' && last === 'unit') return name;
    if (kind === 'part' && (last === 'testPoint' || last === 'into' || last === 'receiver'))
      return name;
    if (kind === 'band' && last === 'band' && valueAt(home, 'unit') === unitOf(draft, path))
      return name;
    if (kind === 'instrument' && last === 'instrument') return name;
    return value;
  });
}

/** The slot that a carrier at this path belongs to. */
function slotOf(draft: Draft, path: string): unknown {
  const keys = keysOf(path);
  return keys[0] === 'transmit'
    ? valueAt(draft, `${pathOf(keys.slice(0, 2))}.slot`)
    : valueAt(draft, `${pathOf(keys.slice(0, 2))}.name`);
}

/** The unit that a band at this path belongs to. */
const unitOf = (draft: Draft, path: string): unknown =>
  valueAt(draft, `${pathOf(keysOf(path).slice(0, 2))}.name`);

/** A copy of the draft with every text looked at. */
function mapped(
  draft: Draft,
  change: (value: string, path: string, home: unknown) => string,
): Draft {
  const walk = (value: unknown, path: string, home: unknown): unknown => {
    if (typeof value === 'string') return change(value, path, home);
    if (Array.isArray(value)) return value.map((row, at) => walk(row, `${path}[${at}]`, value));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [
        key,
        walk(inner, path === '' ? key : `${path}.${key}`, value),
      ]),
    );
  };
  return walk(draft, '', draft) as Draft;
}

/** Values in a draft by their path, written as in the job file: `slots[0].carriers[1].name`. */

type Key = string | number;
type Branch = Record<Key, unknown>;

/** The keys of a path. */
export function keysOf(path: string): readonly Key[] {
  return path
    .split('.')
    .flatMap((step) => step.split('['))
    .filter((step) => step !== '')
    .map((step) => (step.endsWith(']') ? Number(step.slice(0, -1)) : step));
}

/** A path from its keys. */
export function pathOf(keys: readonly Key[]): string {
  return keys.reduce<string>(
    (path, key) =>
      typeof key === 'number' ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`,
    '',
  );
}

/** What stands at a path; `undefined` where nothing does. */
export function valueAt(from: unknown, path: string): unknown {
  return keysOf(path).reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null && Object.hasOwn(at, key)
        ? (at as Branch)[key]
        : undefined,
    from,
  );
}

/** The list at a path; empty where there is none. */
export function listAt(from: unknown, path: string): readonly unknown[] {
  const found = valueAt(from, path);
  return Array.isArray(found) ? found : [];
}

/** A copy with a value at a path; `undefined` takes the field away, and the groups that become empty by it. */
export function withValue<T>(draft: T, path: string, value: unknown): T {
  return replaced(draft, keysOf(path), value) as T;
}

function replaced(from: unknown, [key, ...rest]: readonly Key[], value: unknown): unknown {
  if (key === undefined) return value;
  const copy: Branch = Array.isArray(from)
    ? ([...from] as unknown as Branch)
    : typeof from === 'object' && from !== null
      ? { ...(from as Branch) }
      : ((typeof key === 'number' ? [] : {}) as Branch);
  // A copy of the object alone, so that no path leads to what all objects share.
  const below = Object.hasOwn(copy, key) ? copy[key] : undefined;
  const made = replaced(below, rest, value);
  const empty = made === undefined || (value === undefined && isEmptyGroup(made));
  if (!empty)
    Object.defineProperty(copy, key, {
      value: made,
      writable: true,
      enumerable: true,
      configurable: true,
    });
  else if (Array.isArray(copy)) (copy as unknown as unknown[]).splice(Number(key), 1);
  else delete copy[key];
  return copy;
}

/** An object that has lost its last field; a list may be empty. */
const isEmptyGroup = (value: unknown) =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  Object.keys(value).length === 0;

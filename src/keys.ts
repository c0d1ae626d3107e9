/** The guard for objects: refuses fields that it does not know, so that nothing misspelt passes. */

import { DomainError, listed, object } from './errors.js';

type KeyOf<T> = T extends unknown ? keyof T : never;

/**
 * The fields of an object type, of every case where it is a union. A list is written
 * `const STATION_KEYS = { latitudeDeg: true, ... } satisfies Keys<Station>`, and the type-checker holds it complete.
 */
export type Keys<T> = { readonly [K in KeyOf<T>]-?: true };

/**
 * Returns an object that users may extend, such as a station with a name of their own or a result of another function:
 * an unknown field passes unless it is near a known one.
 *
 * @param name  Where the object stands: its fields are told as `name.field`, those of `input` by their own names.
 * @throws {@link DomainError} `unknown-field` naming the near one; `missing` or `malformed` for anything but an object.
 */
export function known<T extends object>(name: string, value: T, keys: Keys<T>): T {
  object(name, value);
  const list: Readonly<Record<string, unknown>> = keys;
  for (const key in value)
    if (list[key] !== true && !keepsClear(key, list)) refuseKey(name, value, key, list);
  return value;
}

/** Whether an object has more fields than `count`: the cheap question before {@link known} where nanoseconds count. */
export function hasMoreKeys(value: object, count: number): boolean {
  let found = 0;
  for (const _ in value) found++;
  return found > count;
}

/** Unknown fields found to be near no known one, list by list: a station with a name is asked about it once. */
const CLEAR = new WeakMap<object, Set<string>>();

/** Most names remembered for a list. */
const MOST_REMEMBERED = 256;

function keepsClear(key: string, keys: Readonly<Record<string, unknown>>): boolean {
  const clear = CLEAR.get(keys);
  if (clear?.has(key)) return true;
  if (nearest(key, keys, true) !== undefined) return false;
  if (clear === undefined) CLEAR.set(keys, new Set([key]));
  else if (clear.size < MOST_REMEMBERED) clear.add(key);
  return true;
}

/**
 * Returns an object of named arguments or options: every unknown field is refused.
 *
 * @throws {@link DomainError} `unknown-field` naming the nearest known one; `missing` or `malformed` for anything but an object.
 */
export function knownOnly<T extends object>(name: string, value: T, keys: Keys<T>): T {
  object(name, value);
  const list: Readonly<Record<string, unknown>> = keys;
  for (const key in value) if (list[key] !== true) refuseKey(name, value, key, list);
  return value;
}

function refuseKey(
  name: string,
  value: object,
  key: string,
  keys: Readonly<Record<string, unknown>>,
): never {
  const meant = nearest(key, keys, false);
  throw new DomainError({
    code: 'unknown-field',
    parameter: name === 'input' ? shortKey(key) : `${name}.${shortKey(key)}`,
    received: (value as Record<string, unknown>)[key],
    allowed: `left out (fields known here: ${listed(Object.keys(keys))})`,
    slip: meant && `is ${meant} meant?`,
  });
}

const shortKey = (key: string): string => (key.length > 40 ? `${key.slice(0, 40)}…` : key);

/** Longest name that is compared: what is longer was not typed for a field. */
const LONGEST_KEY = 60;

/** What a unit looks like at the end of a field's name, in lower case. */
const UNIT =
  /(?:deg(?:rees?|perturn)?|rad(?:ians?)?|ratio|percent|pct|k?m|mm|cm|(?:milli|centi|kilo)?met(?:er|re)s?|[kmg]?hz|[km]?bd|db(?:[imwkc]|uv|perk|perkm|permhz)?|mmperh|hpa|k|kelvin|c|celsius|ms|s|min|w|mw|kw|v|ma)$/;

/** A name without the things that slips change: case, separators, British spelling; and that without its unit. */
function plain(key: string): readonly [word: string, stem: string] {
  const word = key
    .replace(/[^a-zA-Z0-9]/g, '')
    .toLowerCase()
    .replace(/is(ation|e$|ed$|ing$)/, 'iz$1')
    .replace('centre', 'center');
  return [word, word.replace(UNIT, '')];
}

/** The known field that a wrong one stands for: of equal letters, of another or no unit, a letter away, or one in the other. */
function nearest(
  key: string,
  keys: Readonly<Record<string, unknown>>,
  onlyNear: boolean,
): string | undefined {
  if (key.length > LONGEST_KEY) return undefined;
  const named = plain(key);
  let best: string | undefined;
  let least = onlyNear ? NEAR : FAR;
  for (const candidate of Object.keys(keys)) {
    const distance = distanceOf(named, plain(candidate));
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

/** Distances below this are slips; above, words that contain each other. */
const NEAR = 10;
const FAR = 20;

type Plain = ReturnType<typeof plain>;

function distanceOf([word, stem]: Plain, [other, otherStem]: Plain): number {
  if (word === other) return 0;
  // Some words end like a unit: diameter, loss, gas.
  if ((stem === otherStem && stem.length > 1) || word === otherStem || stem === other) return 1;
  // Letters count between names of the same unit, or where one has none; short names differ by a letter rightfully.
  const unitless = stem === word || otherStem === other;
  const whole = slips(word, other);
  const letters = unitless ? Math.min(slips(stem, otherStem), whole) : whole;
  const length = Math.min(stem.length, otherStem.length);
  const enough = unitless && letters < whole ? length : Math.min(word.length, other.length) - 1;
  if ((letters === 1 && enough > 3) || (letters === 2 && length > 8)) return 1 + letters;
  const inside = length > 2 && (otherStem.includes(stem) || stem.includes(otherStem));
  return inside ? NEAR + Math.abs(stem.length - otherStem.length) / LONGEST_KEY : FAR;
}

/** Letters that must be changed, left out, put in or swapped with the next to make one word of another; more than `most` in short. */
function slips(a: string, b: string, most = 2): number {
  if (a === b) return 0;
  if (most === 0 || Math.abs(a.length - b.length) > most) return most + 1;
  if (a[0] === b[0]) return slips(a.slice(1), b.slice(1), most);
  const rest = (skipA: number, skipB: number) => slips(a.slice(skipA), b.slice(skipB), most - 1);
  const swapped = a[0] === b[1] && a[1] === b[0] ? rest(2, 2) : most;
  return 1 + Math.min(rest(1, 1), rest(1, 0), rest(0, 1), swapped);
}

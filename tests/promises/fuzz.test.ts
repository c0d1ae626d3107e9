/**
 * The promises that every public function makes of odd input: the arguments of each doc example with one value
 * replaced. It answers with finite numbers, or throws a `DomainError` whose message a person can read; it changes no argument.
 */

import { isDomainError } from 'slantpath';
import { expect, test } from 'vitest';
import { cloned, isPlain, type Path, recordedCalls } from '../support/recordedCalls.js';
import { FULL_RUNS } from '../support/runs.js';

/** Functions that take another function's result as it is; what comes from elsewhere passes a reader first, which is fuzzed. */
const GIVEN_RECORDS = new Set([
  'jobSheet',
  'jobSheetHtml',
  'recheckRecord',
  'worksheetCsv',
  'worksheetQti',
  'worksheetHtml',
  'worksheetGift',
  'worksheetMoodle',
  'handInCode',
  'readHandIn',
  'classReport',
  'findingSentences',
]);

/** Functions whose columns hold NaN where a row was refused, as their comments say. */
const MARKS_WITH_NAN = new Set(['markBadRows', 'sunOutagesBatch']);

const ABSENT = Symbol('left out');
const LONGEST_MESSAGE = 600;

const NUMBERS = [
  0,
  -0,
  1e308,
  -1e308,
  5e-324,
  1e-300,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
];
const OTHERS: readonly unknown[] = [
  ABSENT,
  null,
  '',
  '12',
  true,
  [],
  {},
  [undefined],
  { length: 2e8 },
  Symbol('x'),
];
/** In the short form each of a sixty-first of the calls: a prime, so that every kind of value meets every function in time. */
const SHARE = FULL_RUNS ? 1 : 151;

/** All places of a value, of a list the first two. */
function* places(value: unknown, path: Path): Generator<Path> {
  yield path;
  if (Array.isArray(value))
    for (let i = 0; i < Math.min(2, value.length); i++) yield* places(value[i], [...path, i]);
  else if (isPlain(value))
    for (const [key, inner] of Object.entries(value)) yield* places(inner, [...path, key]);
}

const get = (root: unknown, path: Path): unknown =>
  path.reduce((inner, key) => (inner as Record<string | number, unknown>)[key], root);

function put(args: unknown[], path: Path, value: unknown): void {
  const last = path.at(-1) as string | number;
  const target = get(args, path.slice(0, -1)) as Record<string | number, unknown>;
  if (value === ABSENT && Array.isArray(target)) target.splice(Number(last), 1);
  else if (value === ABSENT) delete target[last];
  else target[last] = value;
}

function variants(value: unknown): readonly unknown[] {
  const own =
    typeof value === 'number'
      ? [-value, value * 1000, value / 1000, value * 1e6]
      : typeof value === 'string'
        ? ['__proto__', 'constructor', `${value} `, 'x'.repeat(5000)]
        : Array.isArray(value)
          ? [value.slice(0, 1), [...value, null]]
          : [];
  return [...own, ...NUMBERS, ...OTHERS];
}

type Given = { readonly name: string; readonly value: unknown };

/**
 * What is wrong with a result: a number that is not finite, or a negative zero. A value that comes back under the name under which
 * it was given is the caller's own.
 */
function fault(value: unknown, given: Given, path = ''): string | undefined {
  if (path.endsWith(`.${given.name}`) || path === given.name)
    if (Object.is(value, given.value)) return undefined;
  if (typeof value === 'number')
    return Number.isFinite(value)
      ? Object.is(value, -0)
        ? `${path} is -0`
        : undefined
      : `${path} is ${value}`;
  if (typeof value !== 'object' || value === null) return undefined;
  if (value instanceof Date)
    return Number.isNaN(value.getTime()) ? `${path} is no date` : undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = fault(inner, given, path === '' ? key : `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

const shown = (value: unknown): string =>
  value === ABSENT
    ? 'left out'
    : typeof value === 'string'
      ? JSON.stringify(value.slice(0, 20))
      : Object.is(value, -0)
        ? '-0'
        : Array.isArray(value)
          ? `[${value.length}]`
          : typeof value === 'object' && value !== null
            ? JSON.stringify(value).slice(0, 30)
            : String(value);

function frozen<T>(value: T): T {
  if (Array.isArray(value) || isPlain(value)) {
    for (const inner of Object.values(value)) frozen(inner);
    Object.freeze(value);
  }
  return value;
}

test('every function answers odd input in finite numbers, or refuses it in words', async () => {
  const calls = await recordedCalls();
  const broken = new Map<string, string>();
  let count = 0;
  let made = 0;
  let refused = 0;
  for (const { name, call, args, own } of calls) {
    const given = GIVEN_RECORDS.has(name) ? [...own].map((path) => `${path}.`) : [];
    for (const path of places(args, [])) {
      if (path.length === 0) continue;
      if (given.some((one) => `${path.join('.')}.`.startsWith(one))) continue;
      for (const value of variants(get(args, path))) {
        if (count++ % SHARE !== 0) continue;
        const changed = cloned(args) as unknown[];
        put(changed, path, value);
        frozen(changed);
        const where = `${name} ${path.join('.')} ${shown(value)}`;
        made++;
        try {
          const result = call(...changed);
          const found =
            typeof result === 'function'
              ? undefined
              : fault(result, { name: String(path.at(-1)), value });
          const marked = MARKS_WITH_NAN.has(name) && found?.endsWith('is NaN');
          if (found !== undefined && !marked) broken.set(where, found);
        } catch (error) {
          refused++;
          if (!isDomainError(error)) broken.set(where, String(error).slice(0, 120));
          else if (error.message.length > LONGEST_MESSAGE)
            broken.set(where, `${error.message.length} characters`);
        }
      }
    }
  }
  console.log(`${made} calls, ${refused} refused, ${broken.size} broken promises`);
  expect([...broken]).toEqual([]);
  expect(made).toBeGreaterThan(FULL_RUNS ? 30_000 : 180);
});

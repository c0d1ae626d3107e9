/**
 * Walks the doc comments of every function's inputs: 'a to b' and 'default x' are what the code does. Each `@example`
 * is run with its calls recorded; each recorded call is made again with one field set to the ends that its comment
 * names, one step beyond them, to what is no number, or left out.
 */

import { describe, expect, test } from 'vitest';
import { DomainError } from '../src/index.js';
import { DEAR, KNOWN, SKIPPED, SLOW } from './support/docBounds.js';
import { DocTypes } from './support/docComments.js';
import { answeredCalls, type Call, changed, type Place, placesOf } from './support/docPlaces.js';
import { FULL_RUNS } from './support/runs.js';

const NUMBER = String.raw`-?\d+(?: \d{3})*(?:\.\d+)?(?:e-?\d+)?`;
/** `-90 to 90`; not times something else, not behind words that say something else than what is taken. */
const RANGE = new RegExp(
  String.raw`(above )?(?<![\w.%])(${NUMBER}) to (${NUMBER})(?!\w|\.\d|,\d| \d{3}| (?:of|times|diameters|degrees apart))`,
);
/** `default 0.1`, `20 by default`; not a factor (`default 70 wavelengths over the diameter`). */
const DEFAULT = new RegExp(
  String.raw`default (?:is )?(${NUMBER})(?: ?[a-zA-Z%]+)?(?=[;.,)]|$| \()|(${NUMBER})(?: ?[a-zA-Z%]+)? (?:by default|where not given|when left out)`,
);
const numberOf = (text = ''): number => Number(text.replaceAll(' ', ''));

const DECIMAL = /-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/g;

/** Share of an end by which rounding may put a value beyond it; such a value counts as the end (`src/errors.ts`). */
const GRACE = 8e-16;

/** The neighbour of a number among the doubles, upwards or downwards. */
function next(value: number, up: boolean): number {
  if (value === 0) return up ? Number.MIN_VALUE : -Number.MIN_VALUE;
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + (value > 0 === up ? 1n : -1n));
  return bits.getFloat64(0);
}

/** The first double that is beyond an end by more than rounding. */
function beyond(end: number, up: boolean): number {
  const grace = GRACE * Math.abs(end);
  let value = end;
  do value = next(value, up);
  while (Math.abs(value - end) <= grace);
  return value;
}

/** The outcome of a call: JSON of the result, or the error. */
function outcome({ call, args }: Call, index: number, arg: unknown): string | DomainError {
  const list = [...args];
  list[index] = arg;
  try {
    return JSON.stringify(call(...list)) ?? '';
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
}

type Outcome = string | DomainError;
const names = (error: Outcome, field: string): error is DomainError =>
  error instanceof DomainError && error.parameter.split(/[.[\]]+/).includes(field);
/** Whether two results are the same but for the rounding of what went in. */
const nearlySame = (a: Outcome, b: Outcome): boolean => {
  const skeleton = (text: Outcome) => String(text).replaceAll(DECIMAL, '#');
  const figures = (text: Outcome) => (String(text).match(DECIMAL) ?? []).map(Number);
  const [ours, theirs] = [figures(a), figures(b)];
  return (
    skeleton(a) === skeleton(b) &&
    ours.every(
      (value, at) => Math.abs(value - (theirs[at] ?? 0)) <= 1e-9 * Math.max(1, Math.abs(value)),
    )
  );
};
const same = (a: Outcome, b: Outcome): boolean =>
  a instanceof DomainError || b instanceof DomainError ? String(a) === String(b) : a === b;
/** Whether the error tells the end that was passed, as a number of its own or in its words. */
const tells = (error: DomainError, end: number): boolean =>
  error.minimum === end ||
  error.maximum === end ||
  (error.allowed.match(DECIMAL) ?? []).map(Number).includes(end);

/** What is wrong with a field whose comment says a range. */
function boundFaults(
  told: RegExpExecArray,
  field: string,
  at: (by: number) => Outcome,
): readonly string[] {
  const wrong: string[] = [];
  const [low = 0, high = 0] = told.slice(2).map(numberOf);
  const open = told[1] !== undefined;
  const refused = (by: number, end?: number) => {
    const got = at(by);
    const shown = Object.is(by, -0) ? '-0' : by;
    if (!names(got, field)) wrong.push(`${shown} is taken`);
    else if (end !== undefined && !tells(got, end))
      wrong.push(`${shown} is refused without a word of ${end}: ${got.message}`);
  };
  for (const [end, up] of [[low, false] as const, [high, true] as const]) {
    if (open && !up) {
      refused(end, end);
      continue;
    }
    const got = at(end);
    if (names(got, field) && got.code === 'out-of-range')
      wrong.push(`${end} is refused: ${got.message}`);
    refused(beyond(end, up), end);
    const near = next(end, up);
    const nearly = at(near);
    if (!names(nearly, field) && !nearlySame(nearly, got))
      wrong.push(`${near} is taken for something else than ${end}`);
  }
  if (low > 0 || (open && low === 0)) refused(-0);
  else if (high >= 0 && !same(at(-0), at(0))) wrong.push('-0 is not taken for 0');
  for (const none of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
    refused(none);
  return wrong.map((fault) => `"${told[0]}": ${fault}`);
}

/** What is wrong with a field whose comment says a default; nothing to say where it cannot be left out. */
function defaultFaults(
  told: RegExpExecArray,
  field: string,
  at: (by: unknown) => Outcome,
): readonly string[] | undefined {
  const standard = told[1] ?? told[2];
  const without = at(undefined);
  if (names(without, field)) return undefined;
  return same(without, at(numberOf(standard))) ? [] : [`"${told[0]}": left out is not ${standard}`];
}

const types = new DocTypes();
/** Whether all but the slow functions are walked, as where faults are planted (`.ci/mutate.ts`). */
const ALL = FULL_RUNS || process.env['WALK_ALL_BOUNDS'] === '1';
const slow = new RegExp(`\\b(?:${SLOW.join('|')})\\(`);
const calls = (
  await answeredCalls((code, index) => FULL_RUNS || ((ALL || index % 10 === 0) && !slow.test(code)))
).filter(({ name }) => !(name in SKIPPED));

/** What the walk of a function's calls found wrong, and how much it walked. */
function walked(ofOne: readonly Call[]) {
  const seen = new Set<string>();
  const wrong: string[] = [];
  const count = { bounds: 0, defaults: 0 };

  function walk(one: Call, index: number, { path, comment, value }: Place, parameter = ''): void {
    const fields = path.filter((key) => !/^\d+$/.test(key));
    const field = fields.at(-1) ?? parameter;
    const id = `${one.name}: ${fields.join('.') || parameter}`;
    if (seen.has(id) || id in KNOWN) return;
    const words = comment.replace(/stated range[^;.]*|usually[^;.]*/gi, '');
    const withValue = (by: unknown) => changed(one.args[index], path, by);
    const last = DEAR[one.name];
    const range = RANGE.exec(words);
    if (range && (typeof value === 'number' || value === undefined)) {
      seen.add(id);
      count.bounds++;
      const faults = boundFaults(range, field, (by) => {
        const given = withValue(by);
        return outcome(one, index, last === undefined ? given : changed(given, [last], Number.NaN));
      });
      wrong.push(...faults.map((fault) => `${id} ${fault}`));
    }
    const standard = DEFAULT.exec(words);
    if (standard) {
      seen.add(id);
      const faults = defaultFaults(standard, field, (by) => outcome(one, index, withValue(by)));
      if (faults) count.defaults++;
      wrong.push(...(faults ?? []).map((fault) => `${id} ${fault}`));
    }
  }

  for (const one of ofOne)
    types.parameters(one.name).forEach(({ name, comment, type }, index) => {
      if (type?.getText() === 'number')
        walk(one, index, { path: [], comment, value: one.args[index] }, name);
      for (const place of placesOf(types, type, one.args[index])) walk(one, index, place);
    });
  return { wrong, ...count };
}

const sum = { bounds: 0, defaults: 0 };
describe('bounds and defaults of inputs are what their comments say', () => {
  test.each([...new Set(calls.map(({ name }) => name))])('%s', (name) => {
    const { wrong, bounds, defaults } = walked(calls.filter((one) => one.name === name));
    sum.bounds += bounds;
    sum.defaults += defaults;
    expect(wrong).toEqual([]);
  });
});

test('none of them is passed over', () => {
  console.log(`doc comments: ${sum.bounds} bounds and ${sum.defaults} defaults walked`);
  expect(sum.bounds).toBeGreaterThan(FULL_RUNS ? 450 : 15);
  expect(sum.defaults).toBeGreaterThan(FULL_RUNS ? 350 : 10);
});

/** Valid input with one value replaced by junk, for tests that nothing but a clear error or a right answer comes out. */

import type { RandomStream } from '../../src/numeric/random.js';

const JUNK: readonly unknown[] = [
  undefined,
  null,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1e308,
  1e308,
  -1,
  0,
  1e-300,
  '12',
  '',
  'no such name',
  true,
  [],
  {},
  [null],
  () => 0,
];

/** A deep copy of `value` with one leaf or branch replaced. */
export function mutated(value: unknown, random: RandomStream): unknown {
  if (typeof value !== 'object' || value === null || random.uniform() < 0.12)
    return JUNK[random.integer(JUNK.length)];
  const keys = Object.keys(value);
  if (keys.length === 0) return JUNK[random.integer(JUNK.length)];
  const chosen = keys[random.integer(keys.length)] as string;
  const inner = (value as Record<string, unknown>)[chosen];
  const changed = mutated(inner, random);
  if (Array.isArray(value))
    return value.map((entry, i) => (String(i) === chosen ? changed : entry));
  return { ...value, [chosen]: changed };
}

/** Path of the first number in a result that is not finite, or minus zero left aside; `undefined` where all are. */
export function notFinite(value: unknown, path = ''): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path || 'the result';
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = notFinite(inner, `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Records hold on every engine: the functions of `Math` may be off by one unit in the last place, and a record still agrees. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { recheckRecord, recordJob } from 'slantpath/job';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const text = readFileSync(
  fileURLToPath(new URL('./data/job-version-1.json', import.meta.url)),
  'utf8',
);

/** Functions of `Math` whose last digit the language leaves to the engine. */
const FREE = [
  'acos',
  'acosh',
  'asin',
  'asinh',
  'atan',
  'atan2',
  'atanh',
  'cbrt',
  'cos',
  'cosh',
  'exp',
  'expm1',
  'hypot',
  'log',
  'log10',
  'log1p',
  'log2',
  'pow',
  'sin',
  'sinh',
  'tan',
  'tanh',
] as const;

const bits = new DataView(new ArrayBuffer(8));

/** The double next to a value, up or down. */
function neighbour(value: number, up: boolean): number {
  if (!Number.isFinite(value) || value === 0) return value;
  bits.setFloat64(0, value);
  const step = value > 0 === up ? 1n : -1n;
  bits.setBigInt64(0, bits.getBigInt64(0) + step);
  return bits.getFloat64(0);
}

/** Runs with every function of `Math` off by up to one unit in the last place, the way of an engine of its own. */
function onOtherEngine<T>(seed: number, run: () => T): T {
  const kept = Math as unknown as Record<string, (...values: number[]) => number>;
  const originals = FREE.map((name) => [name, kept[name]] as const);
  for (const [name, original] of originals)
    kept[name] = (...values) => {
      const value = (original as (...values: number[]) => number)(...values);
      // The same argument gives the same digit, as on a real engine; exact values stay exact.
      if (Number.isInteger(value)) return value;
      bits.setFloat64(0, value);
      const mixed = Math.imul(bits.getInt32(4) ^ seed, 0x9e3779b1) >>> 29;
      return mixed < 3 ? neighbour(value, true) : mixed < 6 ? neighbour(value, false) : value;
    };
  try {
    return run();
  } finally {
    for (const [name, original] of originals) kept[name] = original as never;
  }
}

test('the wobble reaches the figures', () => {
  const here = JSON.stringify(recordJob(text));
  expect(onOtherEngine(1, () => JSON.stringify(recordJob(text)))).not.toBe(here);
});

test.each([1, 2, 3, 4, 5].slice(0, runs(5, 2)))('a record of engine %i agrees here', (seed) => {
  const record = onOtherEngine(seed, () => JSON.stringify(recordJob(text)));
  const check = recheckRecord(record);
  expect(check.kind === 'differs' ? check.differences : []).toEqual([]);
});

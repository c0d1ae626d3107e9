/** The figures of the fault models stand in one table, each with its origin; the models hold none of their own. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const source = (name: string): string =>
  readFileSync(new URL(`../../src/acceptance/causes/${name}.ts`, import.meta.url), 'utf8');

/** Text without comments and texts in quotes. */
const bare = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '').replace(/'[^']*'/g, "''");

test('every figure says its origin', () => {
  let origin = false;
  const without: string[] = [];
  let rows = 0;
  for (const line of source('faultFigures').split('\n')) {
    const comment = /^\s*\/\*\* (.*)/.exec(line)?.[1];
    if (comment !== undefined) origin = /^(practice|derivation|search): /.test(comment);
    const row = /^ {2}(\w+): (?=[[\d-])/.exec(line)?.[1];
    if (row === undefined) continue;
    rows++;
    if (!origin) without.push(row);
  }
  expect(rows).toBeGreaterThan(60);
  expect(without).toEqual([]);
});

test.each(['chainFaults', 'pathFaults', 'pointingFaults'])(
  '%s has no figure of its own',
  (name) => {
    const numbers = bare(source(name)).match(/(?<![\w.])\d+(?:\.\d+)?(?![\w.])/g) ?? [];
    // What arithmetic needs: counts and signs, 10 log, 90 degrees for overhead, 1000 MHz in a GHz.
    const plain = new Set(['0', '1', '2', '10', '90', '1000']);
    expect(numbers.filter((number) => !plain.has(number))).toEqual([]);
  },
);

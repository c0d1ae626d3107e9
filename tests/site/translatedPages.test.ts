/** A translated page says the same numbers as the English one, in the same sections, and shows the same example. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const docs = new URL('../../docs/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, docs), 'utf8');
const languages = readdirSync(docs, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name.length === 2)
  .map(({ name }) => name);
const pages = languages.flatMap((code) =>
  readdirSync(new URL(`${code}/examples/`, docs)).map((name) => ({ code, name })),
);

/** Text without addresses and the gaps within long numbers, all with decimal points. */
const plain = (text: string) =>
  text
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/\{,\}/g, '.')
    .replace(/(?<=\d)(?:\\,|[\u00a0\u202f]|\{\\,\})(?=\d)/g, '')
    .replace(/(?<=\d) (?=\d{3}(?!\d))/g, '')
    .replace(/(?<=\d),(?=\d)/g, '.');

/** How often each number stands in a text. */
function numbersIn(text: string): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const [number] of plain(text).matchAll(/(?<![\w.])\d+(?:\.\d+)?/g))
    counts[number] = (counts[number] ?? 0) + 1;
  return counts;
}

/** The numbers that one text has more often than the other. */
const more = (a: Record<string, number>, b: Record<string, number>) =>
  Object.keys(a).filter((number) => (a[number] ?? 0) > (b[number] ?? 0));

const count = (text: string, what: RegExp) => [...text.matchAll(what)].length;

describe.each(pages)('$code: $name', ({ code, name }) => {
  const english = read(`examples/${name}`);
  const other = read(`${code}/examples/${name}`);

  test('the same numbers', () => {
    const [a, b] = [numbersIn(english), numbersIn(other)];
    expect({ missing: more(a, b), added: more(b, a) }).toEqual({ missing: [], added: [] });
  });

  test('the same shape', () => {
    expect(/order: \d+/.exec(other)?.[0]).toBe(/order: \d+/.exec(english)?.[0]);
    for (const part of [/^## /gm, /^\$\$$/gm, /^\| /gm, /^- /gm, /^<\w+ name="[\w-]+" \/>$/gm])
      expect(count(other, part)).toBe(count(english, part));
  });
});

test('there are translated pages', () => {
  expect(pages.length).toBeGreaterThan(10);
});

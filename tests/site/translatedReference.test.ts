/** Translated pages outside the examples: the same formulas and numbers, links that lead to pages, terms that are there. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const docs = new URL('../../docs/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, docs), 'utf8');
const codes = readdirSync(docs, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name.length === 2)
  .map(({ name }) => name);
const pages = codes.flatMap((code) =>
  ['guides', 'reference', 'start'].flatMap((folder) =>
    existsSync(new URL(`${code}/${folder}/`, docs))
      ? readdirSync(new URL(`${code}/${folder}/`, docs)).map((file) => ({
          code,
          page: `${folder}/${file}`,
        }))
      : [],
  ),
);

/** Numbers of a page with decimal points, as TeX and text write them. */
const numbers = (text: string) =>
  [
    ...text
      .replace(/\{,\}/g, '.')
      .replace(/(?<=\d),(?=\d)/g, '.')
      .matchAll(/(?<![\w.])\d+\.\d+/g),
  ]
    .map(([number]) => number)
    .sort();

describe.each(pages)('$code: $page', ({ code, page }) => {
  const text = read(`${code}/${page}`);

  test('has an English page, at the same place of the list', () => {
    expect(/order: \d+/.exec(text)?.[0]).toBe(/order: \d+/.exec(read(page))?.[0]);
  });

  test('leads to pages that are there', () => {
    const links = [...text.matchAll(/(?:\]\(|href=")(\/(?!schemas|api)[a-z0-9/-]+\/)/g)].map(
      ([, link = '']) => link,
    );
    for (const link of links) {
      const path = link.replace(/^\/|\/$/g, '');
      const there = [`${path}.mdx`, `${path}/index.mdx`].some((file) =>
        existsSync(new URL(file, docs)),
      );
      expect(there, link).toBe(true);
    }
  });
});

test.each(codes)(
  '%s: the formula sheet has the numbers and the formulas of the English one',
  (code) => {
    const [english, other] = [
      'reference/formula-sheet.mdx',
      `${code}/reference/formula-sheet.mdx`,
    ].map(read) as [string, string];
    expect(numbers(other)).toEqual(numbers(english));
    const count = (text: string) => text.match(/\$\$/g)?.length;
    expect(count(other)).toBe(count(english));
  },
);

test.each(codes)(
  '%s: the glossary has the anchors of the English one, or words of its own',
  (code) => {
    const ids = (text: string) => [...text.matchAll(/<dt id="([^"]+)"/g)].map(([, id = '']) => id);
    const own = ids(read(`${code}/reference/glossary.mdx`));
    const english = new Set(ids(read('reference/glossary.mdx')));
    expect(own.length).toBeGreaterThan(70);
    expect(new Set(own).size).toBe(own.length);
    expect(own.filter((id) => !english.has(id)).length).toBeLessThan(5);
    const text = read(`${code}/reference/glossary.mdx`);
    for (const [, id = ''] of text.matchAll(/href="#([^"]+)"/g)) expect(own).toContain(id);
  },
);

/** The public names, entry by entry, against the literal lists in `names/`: a change is a decision. */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const source = fileURLToPath(new URL('../../src/', import.meta.url));
const lists = fileURLToPath(new URL('./names/', import.meta.url));
const parts = readdirSync(source, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(source + entry.name).includes('index.ts'))
  .map((entry) => entry.name);

test.each(parts)('%s exports the listed values', async (part) => {
  const listed = JSON.parse(readFileSync(`${lists}${part}.json`, 'utf8')) as string[];
  const exported = Object.keys((await import(`../../src/${part}/index.ts`)) as object);
  expect(exported.sort()).toEqual([...listed].sort());
});

test('each list belongs to a part', () => {
  expect(
    readdirSync(lists)
      .map((file) => file.replace('.json', ''))
      .sort(),
  ).toEqual(parts.sort());
});

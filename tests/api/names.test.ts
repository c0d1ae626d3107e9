/** The public names, entry by entry, against the literal lists: values in `names/`, types in `types/`. A change is a decision. */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { importsOf, listedNames } from '../support/imports.js';

const source = fileURLToPath(new URL('../../src/', import.meta.url));
const lists = fileURLToPath(new URL('./', import.meta.url));
const parts = readdirSync(source, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(source + entry.name).includes('index.ts'))
  .map((entry) => entry.name);
const listed = (kind: 'names' | 'types', part: string): readonly string[] =>
  (JSON.parse(readFileSync(`${lists}${kind}/${part}.json`, 'utf8')) as string[]).sort();

test.each(parts)('%s exports the listed values', async (part) => {
  const exported = Object.keys((await import(`../../src/${part}/index.ts`)) as object);
  expect(exported.sort()).toEqual(listed('names', part));
});

test.each(parts)('%s exports the listed types', (part) => {
  const { values, types } = listedNames(`src/${part}/index.ts`);
  expect(types).toEqual(listed('types', part));
  // What the text names and what the module holds are the same, so the types are read rightly too.
  expect(values).toEqual(listed('names', part));
});

/** What the root exports besides the parts. */
const own = {
  values: [
    'DomainError',
    'fieldsOutside',
    'isDomainError',
    'markBadRows',
    'outsideStatedFields',
    'rowOutcomes',
    'sumPowerDbm',
  ],
  types: ['DomainErrorCode', 'DomainErrorDetails', 'DomainErrorJson', 'MarkedRows'],
};

test('the root exports all names of the parts that it takes, and the errors', async () => {
  const taken = importsOf('src/index.ts')
    .filter(({ names }) => names.includes('*'))
    .map(({ to }) => to.split('/')[1] ?? '');
  expect(taken.length).toBeGreaterThan(7);
  const exported = Object.keys((await import('../../src/index.js')) as object);
  const values = taken.flatMap((part) => listed('names', part));
  expect(exported.sort()).toEqual([...new Set([...values, ...own.values])].sort());
  const types = taken.flatMap((part) => listed('types', part));
  expect([...new Set(listedNames('src/index.ts').types)]).toEqual(
    [...new Set([...types, ...own.types])].sort(),
  );
});

test.each(['names', 'types'] as const)('each list of %s belongs to a part', (kind) => {
  expect(
    readdirSync(lists + kind)
      .map((file) => file.replace('.json', ''))
      .sort(),
  ).toEqual(parts.sort());
});

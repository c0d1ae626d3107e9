/** What the home page says of the package's weight is the ceiling that the package checks hold. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Ceiling {
  readonly name: string;
  readonly limit: string;
}

test('the home page tells the ceiling of the look angles', () => {
  const ceilings = JSON.parse(readFileSync('.size-limit.json', 'utf8')) as Ceiling[];
  const limit = ceilings.find(({ name }) => name === 'lookAngles alone')?.limit;
  expect(limit).toMatch(/^\d\.\d kB$/);
  expect(readFileSync('docs/index.mdx', 'utf8')).toContain(`weigh at most ${limit}`);
});

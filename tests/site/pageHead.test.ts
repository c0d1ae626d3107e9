/** Kinds of page, and descriptions of generated pages. */

import { expect, test } from 'vitest';
import { firstParagraph, pageKind } from '../../site/src/lib/pageHead.js';

test('kinds by id, in every language', () => {
  expect(
    [
      '',
      'index',
      'de',
      'start/one-job',
      'de/start/one-job',
      'examples/sun-outages',
      'de/examples/sun-outages',
      'guides/node',
      'start/learn',
      'reference/errors',
      'reference/validation',
      'validation/sun',
      'api/pointing/lookangles',
    ].map(pageKind),
  ).toEqual([
    'home',
    'home',
    'home',
    'job',
    'job',
    'example',
    'example',
    'guide',
    'guide',
    'reference',
    'validation',
    'validation',
    'api',
  ]);
});

test('the first paragraph of a generated page, without its heading, its signature and its marks', () => {
  const page = `[**slantpath**](../../overview.md)

***

# Function: lookAngles()

> **lookAngles**(\`station\`): [\`LookAngles\`](../overview.md#lookangles)

Look angles from a \`station\` to a [satellite](../overview.md), on the
WGS 84 ellipsoid.

More.`;
  expect(firstParagraph(page)).toBe(
    'Look angles from a station to a satellite, on the WGS 84 ellipsoid.',
  );
  const long = firstParagraph(`A ${'word '.repeat(60)}`);
  expect(long.length).toBeLessThanOrEqual(162);
  expect(long).toMatch(/word …$/);
  expect(firstParagraph('# Nothing')).toBe('');
});

/**
 * Values that no document was read for: each says so in its doc comment and wherever it is shown. A value whose document is
 * read at last leaves this list, and its words.
 */

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dvbModes } from 'slantpath/link';
import { describe, expect, test } from 'vitest';

const text = (file: string) => readFileSync(file, 'utf8').replace(/\s*\n\s*\*?\s*/g, ' ');

/** What, and the files in which it stands with the words that say where it is from. */
const VALUES: readonly (readonly [string, readonly (readonly [string, RegExp])[]])[] = [
  [
    'thresholds of the modes for very low signal-to-noise ratios',
    [
      [
        'src/link/modes/modesVeryLowSnr.ts',
        /the others are from memory and marked so in the result/,
      ],
      ['src/link/modes/dvbModes.ts', /VL-SNR, thresholds from memory but one: see `status`/],
    ],
  ],
  [
    'frequency range of ITU-R S.1428',
    [
      ['src/antenna/patterns/s1428.ts', /10\.7 to 30 GHz is from memory/],
      ['src/antenna/patterns/pattern.ts', /range of S\.1428-1, 10\.7 to 30 GHz, is from memory/],
      ['docs/examples/do-the-neighbours-disturb.mdx', /S\.1428-1.{0,40}from memory.{0,40}not read/],
      [
        'docs/de/examples/do-the-neighbours-disturb.mdx',
        /S\.1428-1.{0,60}Gedächtnis.{0,60}nicht gelesen/,
      ],
    ],
  ],
  [
    'generic cables of series 59, 7 and 11',
    [
      ['src/distribution/cable/genericCable.ts', /from memory.{0,10}no standard was read/],
      [
        'docs/examples/levels-at-every-outlet.mdx',
        /series 59, 7 and 11 to a table recalled from memory/,
      ],
      ['docs/de/examples/levels-at-every-outlet.mdx', /Serie 59, 7 und 11.{0,40}Gedächtnis/],
    ],
  ],
  [
    'deep fades at low elevation (ITU-R P.618, section 2.4.2)',
    [['src/propagation/p618-14/lowElevation.ts', /from memory; .{0,20}not read for them/]],
  ],
];

describe.each(VALUES)('%s', (_, places) => {
  test.each(places)('%s says so', (file, words) => {
    expect(text(file)).toMatch(words);
  });
});

function filesOf(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = `${folder}/${name}`;
    if (statSync(path).isDirectory()) return filesOf(path);
    return /\.(ts|mdx)$/.test(name) ? [path] : [];
  });
}

test('who names EN 61319-1 says that it was not read', () => {
  const naming = ['src', 'docs', 'site/src']
    .flatMap(filesOf)
    .filter((file) => readFileSync(file, 'utf8').includes('61319'));
  expect(naming.length).toBeGreaterThan(3);
  for (const file of naming)
    expect(text(file), file).toMatch(/61319.{0,80}(not read|nicht gelesen)/);
});

test('all but one threshold for very low ratios is marked, and no job or page takes one', () => {
  const modes = dvbModes('DVB-S2X VL-SNR');
  expect(modes.filter(({ status }) => status === 'published')).toHaveLength(1);
  expect(modes.filter(({ status }) => status === 'from-memory')).toHaveLength(modes.length - 1);
  for (const file of [...filesOf('src/job'), ...filesOf('site/src/examples')])
    expect(readFileSync(file, 'utf8'), file).not.toContain('VL-SNR');
});

test('no page shows the fades at low elevation', () => {
  for (const file of [...filesOf('src/job'), ...filesOf('site/src/examples')])
    expect(readFileSync(file, 'utf8'), file).not.toContain('lowElevationFade');
});

/** The plan of the source, held: order of the parts, no circles, doors, rooms. The order is read from the developers' guide. */

import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path/posix';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { circles, filesBelow, type Import, importsOf, listedNames } from '../support/imports.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
/** About twenty: a room that grows past this is cut. */
const MOST_FILES = 22;

const guide = readFileSync(`${root}DEVELOPERS.md`, 'utf8');
const sentence = /A part imports only parts above it: ([^.]+)\./.exec(guide)?.[1] ?? '';
/** Floors from the ground up, each with its parts. */
const floors = sentence.split('<').map((floor) => floor.split(',').map((part) => part.trim()));
const ranks = new Map(floors.flatMap((parts, rank) => parts.map((part) => [part, rank] as const)));

/** The part a file of `src` belongs to: `src/link/fade.ts` to link, `src/errors.ts` to errors. */
const partOf = (file: string): string => file.split('/')[1]?.replace('.ts', '') ?? '';
const files = filesBelow('src').filter((file) => file !== 'src/index.ts');
const imports = files.flatMap(importsOf);
const between = imports.filter(({ from, to }) => partOf(from) !== partOf(to));

/** Edges between whatever `place` makes of the files; nothing where it makes nothing of one. */
function edgesOf(list: readonly Import[], place: (file: string) => string | undefined) {
  const edges = new Map<string, Set<string>>();
  for (const { from, to } of list) {
    const [a, b] = [place(from), place(to)];
    if (a === undefined || b === undefined || (a === b && from !== to)) continue;
    edges.set(a, (edges.get(a) ?? new Set()).add(b));
  }
  return edges;
}

describe('the order of the parts', () => {
  test('the guide names every part, and no other', () => {
    const parts = readdirSync(`${root}src`).map((name) => name.replace('.ts', ''));
    expect([...ranks.keys()].sort()).toEqual(parts.filter((part) => part !== 'index').sort());
  });

  test('a part imports only parts above it', () => {
    const wrong = between.filter(({ from, to }) => {
      const [here, there] = [ranks.get(partOf(from)), ranks.get(partOf(to))];
      const ground = here === 0 && there === 0;
      return here === undefined || there === undefined || (there >= here && !ground);
    });
    expect(between.length).toBeGreaterThan(500);
    expect(wrong.map(({ from, to }) => `${from} imports ${to}`)).toEqual([]);
  });
});

describe('circles', () => {
  test('no file of the library imports itself by way of others, types included', () => {
    expect(circles(edgesOf(imports, (file) => file))).toEqual([]);
  });

  test('no two rooms of a part import each other', () => {
    const room = (file: string) => (file.split('/').length > 3 ? dirname(file) : undefined);
    expect(circles(edgesOf(imports, room))).toEqual([]);
  });

  test('no file of the site does', () => {
    const site = filesBelow('site/src').flatMap(importsOf);
    expect(site.length).toBeGreaterThan(200);
    expect(circles(edgesOf(site, (file) => file))).toEqual([]);
  });

  test('a circle would be found', () => {
    const edges = new Map([
      ['a', new Set(['b'])],
      ['b', new Set(['c'])],
      ['c', new Set(['a', 'd'])],
      ['d', new Set<string>()],
    ]);
    expect(circles(edges)).toEqual([['a', 'b', 'c']]);
  });
});

describe('doors', () => {
  const doors = (part: string, door: string): readonly string[] => {
    const file = `src/${part}/${door}.ts`;
    if (!files.includes(file)) return [];
    const { values, types } = listedNames(file);
    return [...values, ...types];
  };
  // The ground floor has no entry of its own: all of it is for the parts above.
  const entered = between.filter(({ to }) => ranks.get(partOf(to)) !== 0);

  test('a part takes from another its public names, and others only through internal.ts', () => {
    const publicNames = new Map([...ranks.keys()].map((part) => [part, doors(part, 'index')]));
    const past = entered
      .filter(({ to }) => !to.endsWith('/internal.ts'))
      .flatMap(({ from, to, names }) =>
        names
          .filter((name) => !publicNames.get(partOf(to))?.includes(name))
          .map((name) => `${from} takes ${name} from ${to}`),
      );
    expect(entered.length).toBeGreaterThan(150);
    expect(past).toEqual([]);
  });

  test('internal.ts repeats no public name, and keeps none that nobody takes', () => {
    const idle = [...ranks.keys()].flatMap((part) => {
      const taken = new Set(
        entered.filter(({ to }) => to === `src/${part}/internal.ts`).flatMap(({ names }) => names),
      );
      const published = doors(part, 'index');
      return doors(part, 'internal')
        .filter((name) => published.includes(name) || !taken.has(name))
        .map((name) => `${part}: ${name}`);
    });
    expect(idle).toEqual([]);
  });
});

test(`no room has more than ${MOST_FILES} files`, () => {
  const count = new Map<string, number>();
  for (const file of [...files, ...filesBelow('site/src/lib')])
    count.set(dirname(file), (count.get(dirname(file)) ?? 0) + 1);
  expect([...count].filter(([, number]) => number > MOST_FILES)).toEqual([]);
});

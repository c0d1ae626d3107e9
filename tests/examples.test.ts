/** Runs every file of `examples/` and compares what it prints with the text kept beside it. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test, vi } from 'vitest';

const folder = fileURLToPath(new URL('../examples/', import.meta.url));
const files = readdirSync(folder).filter((file) => file.endsWith('.ts'));

test('there are examples, and each has its printed output beside it', () => {
  expect(files.length).toBeGreaterThan(3);
  expect(files.filter((file) => !existsSync(folder + file.replace(/\.ts$/, '.txt')))).toEqual([]);
});

test.each(files)('%s prints what stands beside it', async (file) => {
  const printed: string[] = [];
  const log = vi.spyOn(console, 'log').mockImplementation((...parts: unknown[]) => {
    printed.push(parts.map(String).join(' '));
  });
  try {
    await import(`../examples/${file}`);
  } finally {
    log.mockRestore();
  }
  const wanted = readFileSync(folder + file.replace(/\.ts$/, '.txt'), 'utf8');
  expect(`${printed.join('\n')}\n`).toBe(wanted);
});

/** Texts in which the invented places of the demo stand. */
const texts = [
  'README.md',
  ...['examples', 'docs', 'src', 'site/src'].flatMap((root) =>
    readdirSync(`${folder}../${root}`, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|json|mdx|md|astro)$/.test(file))
      .map((file) => `${root}/${file}`),
  ),
];

test('invented places have one decimal, about 10 km, so that they point at no real roof', () => {
  const finer = texts.flatMap((file) =>
    [
      ...readFileSync(`${folder}../${file}`, 'utf8').matchAll(
        /\b(?:latitudeDeg|longitudeDeg)['"]?: \[?(?:-?[\d.]+, )*-?\d+\.\d{2,}/g,
      ),
    ].map(([text]) => `${file}: ${text}`),
  );
  expect(finer).toEqual([]);
});

test('no page or program reads typed text by parseFloat, which stops at the first letter: 58 W became 58 E', () => {
  const sloppy = texts.filter((file) =>
    /\bparseFloat\(/.test(readFileSync(`${folder}../${file}`, 'utf8')),
  );
  expect(sloppy).toEqual([]);
});

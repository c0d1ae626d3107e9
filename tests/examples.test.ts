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

/** Runs every `@example` of the sources: `expression; // => value` must hold. */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { runSnippet, snippetChecks } from './support/snippet.js';

const source = fileURLToPath(new URL('../src/', import.meta.url));
const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);

/** Code of each fenced block below an `@example` tag of the file, with its line. */
function examples(path: string): { readonly line: number; readonly code: string }[] {
  const text = readFileSync(path, 'utf8');
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((comment) =>
    [...comment[0].matchAll(/@example[^\n]*\n([\s\S]*?)```ts\n([\s\S]*?)```/g)].map((match) => ({
      line: text.slice(0, comment.index).split('\n').length,
      code: (match[2] ?? '').replace(/^[ \t]*\*[ \t]?/gm, ''),
    })),
  );
}

for (const file of files) {
  const found = examples(source + file);
  if (found.length === 0) continue;
  describe(file, () => {
    test.each(found)('example of the comment at line $line', async ({ code }) => {
      expect(
        snippetChecks(code),
        'an example without `// => value` checks nothing',
      ).toBeGreaterThan(0);
      expect(code, 'the type of a function can never fail').not.toMatch(/typeof \w+; \/\/ =>/);
      await runSnippet(code);
    });
  });
}

test('the runner sees a wrong value', async () => {
  await expect(runSnippet('1 + 1; // => 3')).rejects.toThrow();
  expect(ts.version).toMatch(/^5\./);
});

/** Whether a top-level function or class statement of a part's own files carries an `@example`. */
test('every public function has an example that runs', async () => {
  const missing: string[] = [];
  for (const file of files) {
    if (!/^[a-z]+[\\/]/.test(file) || file.startsWith('numeric')) continue;
    const text = readFileSync(source + file, 'utf8');
    for (const match of text.matchAll(
      /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n(?:\/\/[^\n]*\n)*export (?:async )?function (\w+)/g,
    ))
      if (publicNames.has(match[2] ?? '') && !match[1]?.includes('@example'))
        missing.push(`${file}: ${match[2]}`);
  }
  expect(missing).toEqual([]);
});

const lists = fileURLToPath(new URL('./api/names/', import.meta.url));
const publicNames = new Set(
  readdirSync(lists).flatMap(
    (list) => JSON.parse(readFileSync(lists + list, 'utf8')) as readonly string[],
  ),
);

/** The first example of the README: the code is a file of `examples/`, its output as printed there. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const read = (path: string) =>
  readFileSync(fileURLToPath(new URL(`../${path}`, import.meta.url)), 'utf8');

test('the README shows an example that runs, with what it prints', () => {
  const readme = read('README.md');
  const name =
    /<!-- example: ([\w-]+) -->\n```ts\n([\s\S]*?)```[\s\S]*?```text\n([\s\S]*?)```/.exec(readme);
  expect(name).not.toBeNull();
  expect(name?.[2]).toBe(read(`examples/${name?.[1]}.ts`));
  expect(name?.[3]).toBe(read(`examples/${name?.[1]}.txt`));
});

test('the README shows the two commands of a fresh clone', () => {
  const readme = read('README.md');
  for (const command of ['npm start', 'npm test']) expect(readme).toContain(command);
});

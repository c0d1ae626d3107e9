/** Writes site/dist/sw.js, which keeps the whole site working without a network. */

import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const template = fileURLToPath(new URL('../sw.template.js', import.meta.url));

/** Not needed offline: fonts in old formats, parts of the search that the site does not use. */
const LEFT_OUT = [
  /^404\.html$/,
  /^sw\.js$/,
  /^robots\.txt$/,
  /^sitemap/,
  /\.(woff|ttf|map)$/,
  /^pagefind\/pagefind-(ui|component-ui|modular-ui|highlight)\./,
];

const hashOf = (data: string | Uint8Array) =>
  createHash('sha256').update(data).digest('hex').slice(0, 12);

const files: [string, string][] = [];
let size = 0;
for (const entry of await readdir(dist, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile()) continue;
  const file = join(entry.parentPath, entry.name);
  const path = relative(dist, file).split(sep).join('/');
  if (LEFT_OUT.some((pattern) => pattern.test(path))) continue;
  const body = await readFile(file);
  files.push([`/${path}`, hashOf(body)]);
  size += body.length;
}
files.sort(([a], [b]) => (a < b ? -1 : 1));
const list = JSON.stringify(Object.fromEntries(files));
const source = await readFile(template, 'utf8');
const made = source.replace('__FILES__', list).replace('__VERSION__', hashOf(list));
await writeFile(join(dist, 'sw.js'), made);
console.log(`offline: ${files.length} files, ${(size / 1024 / 1024).toFixed(1)} MB`);

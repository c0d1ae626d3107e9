/** Writes site/dist/sw.js, which keeps the whole site working without a network. */

import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const template = fileURLToPath(new URL('../sw.template.js', import.meta.url));

/** Not needed offline: fonts in old formats, parts of the search that the site does not use. */
const LEFT_OUT = [
  /^404\.html$/,
  /^sw\.js$/,
  /^offline\.json$/,
  /^robots\.txt$/,
  /^sitemap/,
  /^og\//,
  /\.(woff|ttf|map)$/,
  /^pagefind\/pagefind-(ui|component-ui|modular-ui|highlight)\./,
];

const hashOf = (data: string | Uint8Array) =>
  createHash('sha256').update(data).digest('hex').slice(0, 12);

/** Kept only where the reader asks for everything. */
const ON_DEMAND = /^(api|validation)\/|^reference\/validation\/|^pagefind\/|overview.*\.(js|css)$/;
/** Bytes on the way, as a server with brotli sends them. */
const sent = (body: Uint8Array) =>
  brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }).length;

const files: [string, string][] = [];
const later: [string, string][] = [];
const sizes = { core: 0, rest: 0 };
let size = 0;
for (const entry of await readdir(dist, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile()) continue;
  const file = join(entry.parentPath, entry.name);
  const path = relative(dist, file).split(sep).join('/');
  if (LEFT_OUT.some((pattern) => pattern.test(path))) continue;
  const body = await readFile(file);
  const rest = ON_DEMAND.test(path);
  (rest ? later : files).push([`/${path}`, hashOf(body)]);
  sizes[rest ? 'rest' : 'core'] += sent(body);
  size += body.length;
}
files.sort(([a], [b]) => (a < b ? -1 : 1));
later.sort(([a], [b]) => (a < b ? -1 : 1));

/** The guide tells the sizes that were found; a few letters more do not change them. */
const guide = join(dist, 'guides/offline/index.html');
const MB = { core: sizes.core / 1e6, rest: sizes.rest / 1e6, device: size / 1e6 };
const told = (await readFile(guide, 'utf8')).replace(
  /(<span data-kept-size="(core|rest|device)">)[^<]*/g,
  (_, span: string, of: keyof typeof MB) => `${span}${MB[of].toFixed(1)}`,
);
await writeFile(guide, told);
for (const file of files) if (file[0] === '/guides/offline/index.html') file[1] = hashOf(told);

const list = JSON.stringify(Object.fromEntries(files));
const rest = JSON.stringify(Object.fromEntries(later));
const source = await readFile(template, 'utf8');
const made = source
  .replace('__FILES__', list)
  .replace('__REST__', rest)
  .replaceAll('__VERSION__', hashOf(list + rest));
await writeFile(join(dist, 'sw.js'), made);
await writeFile(join(dist, 'offline.json'), JSON.stringify(sizes));
console.log(
  `offline: ${files.length} + ${later.length} files, ${(sizes.core / 1e6).toFixed(1)} + ${(sizes.rest / 1e6).toFixed(1)} MB sent, ${(size / 1024 / 1024).toFixed(1)} MB`,
);

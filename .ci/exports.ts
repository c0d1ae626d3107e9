/**
 * Keeps the export map of package.json equal to the folders of src: `tsx .ci/exports.ts` rewrites it,
 * with `--check` it fails where they differ.
 */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const target = (name: string) => ({
  import: { types: `./dist/${name}.d.ts`, default: `./dist/${name}.js` },
  require: { types: `./dist/${name}.d.cts`, default: `./dist/${name}.cjs` },
});
const parts = readdirSync('src', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(`src/${entry.name}`).includes('index.ts'))
  .map((entry) => entry.name)
  .sort();
const wanted = {
  '.': target('index'),
  ...Object.fromEntries(parts.map((part) => [`./${part}`, target(`${part}/index`)])),
  './single/*.js': './dist/single/*.js',
  './vectors/*.json': './dist/vectors/*.json',
  './schemas/*.json': './docs/schemas/*.json',
  './package.json': './package.json',
};
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as Record<string, unknown>;
if (JSON.stringify(manifest['exports']) !== JSON.stringify(wanted)) {
  if (process.argv.includes('--check')) {
    console.error('The export map differs from the folders of src: run `npm run exports`.');
    process.exitCode = 1;
  } else {
    manifest['exports'] = wanted;
    writeFileSync('package.json', `${JSON.stringify(manifest, null, 2)}\n`);
  }
}

import { readdirSync } from 'node:fs';
import { defineConfig } from 'tsup';

/** Every folder of src with an index.ts is an entry point of the package, besides the root. */
const parts = readdirSync('src', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(`src/${entry.name}`).includes('index.ts'))
  .map((entry) => `${entry.name}/index`);

export default defineConfig({
  entry: Object.fromEntries(['index', ...parts].map((name) => [name, `src/${name}.ts`])),
  tsconfig: 'tsconfig.build.json',
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  dts: true,
  splitting: true,
  treeshake: false,
  sourcemap: true,
  clean: true,
});

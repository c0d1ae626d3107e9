import { readdirSync } from 'node:fs';
import { defineConfig } from 'tsup';
import { BUNDLED } from './.ci/bundled.js';

/** Every folder of src with an index.ts is an entry point of the package, besides the root. */
const parts = readdirSync('src', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(`src/${entry.name}`).includes('index.ts'))
  .map((entry) => `${entry.name}/index`);

/** What src imports from outside goes into the package itself. */
const bundled = BUNDLED.map(({ name }) => name);

const entries = Object.fromEntries(['index', ...parts].map((name) => [name, `src/${name}.ts`]));

export default defineConfig({
  entry: {
    ...entries,
    'command/slantpath': 'src/command/slantpath.ts',
    'command/columnsWorker': 'src/command/columns/worker.ts',
  },
  tsconfig: 'tsconfig.build.json',
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  noExternal: bundled,
  // The command alone runs in Node.
  external: [/^node:/],
  // Without this a neutral platform reads `main` alone, and would take the CommonJS form where there is an ES module.
  esbuildOptions: (options) => {
    options.mainFields = ['module', 'main'];
  },
  dts: { entry: entries, resolve: bundled },
  splitting: true,
  treeshake: false,
  clean: true,
});

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { nativeSources } from './tests/support/nativeSources.js';

const source = (path: string) => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

const folder = (path: string) => fileURLToPath(new URL(path, import.meta.url));
// Coverage counts, and watching follows, the sources themselves.
const native = process.argv.includes('run') && !process.argv.includes('--coverage');

export default defineConfig({
  // `.ci/mutate.ts` puts a tree with planted faults in its place.
  plugins: native
    ? [nativeSources(folder('src'), process.env['NATIVE_TREE'] ?? folder('node_modules/.native'))]
    : [],
  resolve: {
    alias: [
      { find: /^slantpath$/, replacement: source('index.ts') },
      { find: /^slantpath\/(.+)$/, replacement: source('$1/index.ts') },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    // Test files share the modules they import: loading them anew for each file took most of the time.
    pool: 'threads',
    isolate: false,
    maxWorkers: 2,
    experimental: { fsModuleCache: true },
    // No limit that a busy machine could break; a test that hangs is seen by hand.
    testTimeout: 0,
    hookTimeout: 0,
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const source = (path: string) => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^slantpath$/, replacement: source('index.ts') },
      { find: /^slantpath\/(.+)$/, replacement: source('$1/index.ts') },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    typecheck: { include: ['tests/**/*.test-d.ts'], tsconfig: './tsconfig.json' },
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});

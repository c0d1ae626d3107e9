/**
 * Builds one file without modules for each group, for engines that load nothing else: `tsx .ci/single.ts`, into `dist/single/`.
 *
 * A file sets one global, `slantpath`, with the group in it; several files share it. ECMAScript 2020, no `import`, no clock.
 */

import { mkdirSync } from 'node:fs';
import { buildSync } from 'esbuild';

/** Groups and the parts that each holds. */
const GROUPS = {
  pointing: ['earth', 'pointing'],
  magnetic: ['magnetic'],
  propagation: ['propagation', 'climate'],
} as const;

mkdirSync('dist/single', { recursive: true });
for (const [group, parts] of Object.entries(GROUPS))
  buildSync({
    stdin: {
      contents: [
        ...parts.map((part) => `export * from './src/${part}/index.ts';`),
        "export { isDomainError } from './src/errors.ts';",
        "export { markBadRows, rowOutcomes } from './src/numeric/rows/markBadRows.ts';",
        "export { fieldsOutside, outsideStatedFields } from './src/numeric/rows/outsideFields.ts';",
      ].join('\n'),
      resolveDir: '.',
    },
    outfile: `dist/single/${group}.js`,
    bundle: true,
    format: 'iife',
    globalName: `slantpath.${group}`,
    target: 'es2020',
    minify: true,
    legalComments: 'none',
    logLevel: 'warning',
  });

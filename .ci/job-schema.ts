/**
 * Writes the JSON Schemas (draft 2020-12) of the job file from the definition in `src/job`:
 * and the list of error codes from the page that explains them: `tsx .ci/job-schema.ts` rewrites `docs/schemas/`, with
 * `--check` it fails where they differ.
 */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { JOB_VERSIONS, jobJsonSchema } from './jobJsonSchema.js';

/** Rows of the table of codes: word, when, example. */
const codes = [
  ...readFileSync('docs/reference/errors.mdx', 'utf8').matchAll(
    /^\| `([a-z-]+)` \| ([^|]+) \| ([^|]+) \|$/gm,
  ),
].map(([, code, when, example]) => ({ code, when, example }));

const files = [
  ...JOB_VERSIONS.map((version) => [`job-${version}.schema.json`, jobJsonSchema(version)] as const),
  ['error-codes.json', codes] as const,
];
for (const [name, content] of files) {
  const path = `docs/schemas/${name}`;
  const wanted = `${JSON.stringify(content, null, 2)}\n`;
  if (existsSync(path) && readFileSync(path, 'utf8') === wanted) continue;
  if (process.argv.includes('--check')) {
    console.error(`${path} differs from the definition: run \`npm run schema\`.`);
    process.exitCode = 1;
  } else {
    mkdirSync('docs/schemas', { recursive: true });
    writeFileSync(path, wanted);
  }
}

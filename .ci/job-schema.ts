/**
 * Writes the JSON Schemas (draft 2020-12) of the job file from the definition in `src/job`:
 * `tsx .ci/job-schema.ts` rewrites `docs/schemas/`, with `--check` it fails where they differ.
 */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { JOB_VERSIONS, jobJsonSchema } from './jobJsonSchema.js';

for (const version of JOB_VERSIONS) {
  const path = `docs/schemas/job-${version}.schema.json`;
  const wanted = `${JSON.stringify(jobJsonSchema(version), null, 2)}\n`;
  if (existsSync(path) && readFileSync(path, 'utf8') === wanted) continue;
  if (process.argv.includes('--check')) {
    console.error(`${path} differs from the definition: run \`npm run schema\`.`);
    process.exitCode = 1;
  } else {
    mkdirSync('docs/schemas', { recursive: true });
    writeFileSync(path, wanted);
  }
}

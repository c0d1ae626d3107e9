/** The JSON Schema of the job file, converted from the schema that `parseJob` uses. */

import { toJsonSchema } from '@valibot/to-json-schema';
import { distributionSchema } from '../src/job/file/distributionSchema.js';
import { jobSchema1 } from '../src/job/file/jobSchema1.js';
import { jobSchema2 } from '../src/job/file/jobSchema2.js';

/** Versions of the job file. */
export const JOB_VERSIONS = [1, 2] as const;

/** Schema as draft 2020-12, with its identifier and title. */
export function jobJsonSchema(version: (typeof JOB_VERSIONS)[number]): object {
  const { $schema: _draft, ...schema } = toJsonSchema(version === 1 ? jobSchema1 : jobSchema2, {
    target: 'draft-2020-12',
    definitions: { distributionPart: distributionSchema },
    errorMode: 'throw',
    // What a text or list may not exceed needs no words of its own; `finite` is implied in JSON.
    ignoreActions: ['finite', 'check'],
  });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `https://slantpath.example/schemas/job-${version}.schema.json`,
    title: `slantpath job file, version ${version}`,
    ...schema,
  };
}

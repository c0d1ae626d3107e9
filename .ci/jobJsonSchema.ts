/** The JSON Schema of the job file, converted from the schema that `parseJob` uses. */

import { toJsonSchema } from '@valibot/to-json-schema';
import { distributionSchema } from '../src/job/distributionSchema.js';
import { jobSchema } from '../src/job/jobSchema.js';

/** Schema as draft 2020-12, with its identifier and title. */
export function jobJsonSchema(): object {
  const { $schema: _draft, ...schema } = toJsonSchema(jobSchema, {
    target: 'draft-2020-12',
    definitions: { distributionPart: distributionSchema },
    errorMode: 'throw',
    // What a text or list may not exceed needs no words of its own; `finite` is implied in JSON.
    ignoreActions: ['finite'],
  });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'https://slantpath.example/schemas/job-1.schema.json',
    title: 'slantpath job file, version 1',
    ...schema,
  };
}

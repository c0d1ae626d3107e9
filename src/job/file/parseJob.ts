/** Reads a job file: JSON text or a value to a checked job of version 2, or one error that lists every fault. */

import * as v from 'valibot';
import { DomainError } from '../../errors.js';
import { allFaults, schemaFaults } from './faults.js';
import type { JobFile, JobFile1, JobFile2 } from './jobFile.js';
import { jobSchema1 } from './jobSchema1.js';
import { jobSchema2 } from './jobSchema2.js';
import { namedJob } from './named.js';
import { referenceFaults } from './references.js';
import { pathInVersion1, upgraded } from './upgrade.js';

/** Largest text that is read, in characters, and deepest nesting of parts. */
const LARGEST_TEXT = 5_000_000;
const DEEPEST = 200;

/** Refuses nesting so deep that walking it could exhaust the stack; itself walks without recursion. */
function refuseDepth(value: unknown): void {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > DEEPEST)
      throw new DomainError({
        code: 'malformed',
        parameter: 'job',
        received: value,
        allowed: `nested at most ${DEEPEST} deep`,
      });
    level = level.flatMap((item) =>
      typeof item === 'object' && item !== null ? Object.values(item) : [],
    );
  }
}

/** The value that a text holds, or the value itself. */
function jsonOf(input: unknown): unknown {
  if (typeof input !== 'string') return input;
  if (input.length > LARGEST_TEXT)
    throw new DomainError({
      code: 'malformed',
      parameter: 'job',
      received: `${input.length} characters`,
      allowed: `at most ${LARGEST_TEXT} characters`,
    });
  try {
    return JSON.parse(input);
  } catch (error) {
    throw new DomainError({
      code: 'malformed',
      parameter: 'job',
      received: input.trim(),
      allowed: 'JSON',
      slip: error instanceof Error ? error.message : undefined,
    });
  }
}

/**
 * A checked job from JSON text or from an already parsed value; a file of version 1 comes out in the terms of version 2.
 *
 * @param input  The text of the file, or what `JSON.parse` gave.
 * @returns The job: every field inside its interval, every name known, slots, mounts and station with their names.
 * @throws {@link DomainError} naming the first wrong field by its path, the value and what was expected; where there are
 *   several faults its message has a line for each. `malformed` at `job` where the text is not JSON.
 *
 * Source: the JSON Schemas `job-1.schema.json` and `job-2.schema.json`, which are written from the same definitions.
 * @example
 * ```ts
 * import { DomainError } from 'slantpath';
 * import { parseJob } from 'slantpath/job';
 * const job = parseJob({
 *   format: 'slantpath-job', version: 2,
 *   station: { latitudeDeg: 46.6, longitudeDeg: 10.3 },
 *   slots: [{ orbitalLongitudeDeg: 16.4 }],
 * });
 * job.slots[0]?.name; // => '16.4 E'
 * let message = '';
 * try {
 *   parseJob({ ...job, station: { latitudeDeg: 98, longitudeDeg: 10.3 }, date: 'soon' });
 * } catch (error) {
 *   if (error instanceof DomainError) message = error.message;
 * }
 * message.split('\n').length; // => 2
 * ```
 */
export function parseJob(input: unknown): JobFile {
  const value = jsonOf(input);
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new DomainError({
      code: value === undefined || value === null ? 'missing' : 'malformed',
      parameter: 'job',
      received: value,
      allowed: 'an object',
    });
  refuseDepth(value);
  const version = (value as { readonly version?: unknown }).version;
  if (version !== 1 && version !== 2)
    throw new DomainError({
      code: version === undefined ? 'missing' : 'not-an-option',
      parameter: 'version',
      received: version,
      allowed: '1 or 2',
    });
  const schema: v.GenericSchema = version === 1 ? jobSchema1 : jobSchema2;
  const result = v.safeParse(schema, value);
  const faults = [...schemaFaults(result.issues ?? [], value, schema)];
  let job: JobFile | undefined;
  try {
    const output = (result.success ? result.output : value) as JobFile1 | JobFile2;
    job = namedJob(output.version === 1 ? upgraded(output) : output);
    const told = new Set(faults.map(({ parameter }) => parameter));
    for (const fault of referenceFaults(job, result.success)) {
      const parameter = version === 1 ? pathInVersion1(fault.parameter) : fault.parameter;
      if (told.has(parameter)) continue;
      told.add(parameter);
      const { code, received, allowed, slip } = fault;
      faults.push(new DomainError({ code, parameter, received, allowed, slip }));
    }
  } catch (error) {
    // What is half wrong cannot be put into order; the faults of the schema say why.
    if (faults.length === 0) throw error;
  }
  const error = allFaults(faults);
  if (error) throw error;
  if (!job)
    throw new DomainError({
      code: 'malformed',
      parameter: 'job',
      received: value,
      allowed: 'a job',
    });
  return job;
}

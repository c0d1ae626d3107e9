/** Reads a job file: JSON text or a value to a checked {@link JobFile}, or one clear error. */

import * as v from 'valibot';
import { DomainError } from '../errors.js';
import { instantToEpochMs } from '../numeric/instant.js';
import type { JobFile } from './jobFile.js';
import { jobSchema } from './jobSchema.js';
import { outletNames } from './outletNames.js';
import { toDomainError } from './schemaError.js';

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

function refer(parameter: string, received: unknown, allowed: string): never {
  throw new DomainError({ code: 'inconsistent', parameter, received, allowed });
}

/** Names that point at each other: readings and peaking at slots, carriers and outlets, lists at equal lengths. */
function checkedReferences(job: JobFile): JobFile {
  instantToEpochMs('date', job.date);
  const carriers = new Map<string, readonly string[]>();
  job.slots.forEach((slot, index) => {
    if (carriers.has(slot.name)) refer(`slots[${index}].name`, slot.name, 'a name of its own');
    carriers.set(
      slot.name,
      slot.carriers.map((carrier) => carrier.name),
    );
  });
  const check = (path: string, { slot, carrier }: { slot: string; carrier: string }) => {
    const known = carriers.get(slot);
    if (!known)
      return refer(`${path}.slot`, slot, `the name of a slot (${[...carriers.keys()].join(', ')})`);
    if (!known.includes(carrier))
      refer(`${path}.carrier`, carrier, `a carrier of ${slot} (${known.join(', ')})`);
  };
  const outlets = outletNames(job.distribution);
  const testPoint = (path: string, name: string, others: readonly string[]) => {
    if (!others.includes(name) && !outlets.includes(name))
      refer(`${path}.testPoint`, name, `one of ${[...others, ...outlets].join(', ')}`);
  };
  job.readings.forEach((reading, index) => {
    check(`readings[${index}]`, reading);
    testPoint(`readings[${index}]`, reading.testPoint, ['antenna']);
  });
  job.peaking.forEach((peaking, index) => {
    const path = `peaking[${index}]`;
    check(path, peaking);
    const { positionDeg, levelDbm } = peaking.samples;
    if (positionDeg.length !== levelDbm.length)
      throw new DomainError({
        code: 'length-mismatch',
        parameter: `${path}.samples.levelDbm`,
        received: levelDbm,
        allowed: `as many levels as positions (${positionDeg.length})`,
      });
  });
  job.limits.forEach((limit, index) => {
    testPoint(`limits[${index}]`, limit.testPoint, ['antenna', 'outlets']);
    if (limit.quantity === 'level' && limit.minimumDbuv >= limit.maximumDbuv)
      refer(
        `limits[${index}].minimumDbuv`,
        limit.minimumDbuv,
        `below maximumDbuv (${limit.maximumDbuv})`,
      );
  });
  return job;
}

/**
 * A checked job from JSON text or from an already parsed value.
 *
 * @param input  The text of the file, or what `JSON.parse` gave.
 * @returns The job, every field inside its interval and every name known.
 * @throws {@link DomainError} naming the first wrong field by its path, the value and what was expected;
 *   `malformed` at `job` where the text is not JSON.
 *
 * Source: the JSON Schema `job-1.schema.json`, which is written from the same definition.
 * @example
 * ```ts
 * import { DomainError } from 'slantpath';
 * import { parseJob } from 'slantpath/job';
 * let message = '';
 * try {
 *   parseJob('{ "format": "slantpath-job", "version": 1 ');
 * } catch (error) {
 *   if (error instanceof DomainError) message = error.message;
 * }
 * message.startsWith('job must be JSON'); // => true
 * ```
 */
export function parseJob(input: unknown): JobFile {
  let value = input;
  if (typeof input === 'string') {
    if (input.length > LARGEST_TEXT)
      throw new DomainError({
        code: 'malformed',
        parameter: 'job',
        received: `${input.length} characters`,
        allowed: `at most ${LARGEST_TEXT} characters`,
      });
    try {
      value = JSON.parse(input);
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
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new DomainError({
      code: value === undefined || value === null ? 'missing' : 'malformed',
      parameter: 'job',
      received: value,
      allowed: 'an object',
    });
  refuseDepth(value);
  const result = v.safeParse(jobSchema, value, { abortEarly: true });
  if (!result.success) throw toDomainError(result.issues[0], value);
  return checkedReferences(result.output);
}

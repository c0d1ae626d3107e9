/** Faults of a job file: what the schema says, told by path, value, what was expected and the likely slip. */

import * as v from 'valibot';
import { DomainError } from '../../errors.js';

/** Path of an issue as it would be written in code: `slots[1].carriers[0].frequencyGHz`. */
function pathOf(issue: v.BaseIssue<unknown>): string {
  let path = '';
  for (const item of issue.path ?? [])
    path += typeof item.key === 'number' ? `[${item.key}]` : `${path === '' ? '' : '.'}${item.key}`;
  return path === '' ? 'job' : path;
}

/** What would have been right, in words. */
function allowedBy(issue: v.BaseIssue<unknown>): string {
  if (issue.type === 'strict_object' && issue.expected === 'never')
    return 'left out: no such field is known here';
  const rule = issue as v.BaseIssue<unknown> & { readonly requirement?: unknown };
  switch (issue.type) {
    case 'number':
    case 'finite':
      return 'a finite number';
    case 'string':
      return 'a text';
    case 'boolean':
      return 'true or false';
    case 'array':
      return 'a list';
    case 'strict_object':
    case 'variant':
      return issue.expected === 'Object'
        ? 'an object'
        : (issue.expected ?? 'given').replace(/"/g, '');
    case 'min_value':
      return `${rule.requirement} or more`;
    case 'max_value':
      return `${rule.requirement} or less`;
    case 'min_length':
      return `of length ${rule.requirement} or more`;
    case 'max_length':
      return `of length ${rule.requirement} or less`;
    case 'length':
      return `of length ${rule.requirement}`;
    case 'iso_date':
      return 'a day as YYYY-MM-DD';
    case 'check':
      return 'printable text without control characters';
    case 'regex':
      return issue.message === 'HH:MM' ? 'a time of day as HH:MM' : 'more than blanks';
    default:
      return `${issue.expected ?? 'as the schema says'}`.replace(/"/g, '');
  }
}

/** The likely slip, where the value gives it away. */
function slipOf(path: string, value: unknown): string | undefined {
  if (typeof value === 'string' && value.trim() !== '' && Number.isFinite(Number(value)))
    return 'is the number in quotes?';
  if (typeof value !== 'number') return undefined;
  if (path.endsWith('latitudeDeg')) return 'were latitude and longitude swapped?';
  if (path.endsWith('GHz') && value > 60) return 'was it given in MHz?';
  if (path.endsWith('MHz') && value > 0 && value < 5) return 'was it given in GHz?';
  if (path.endsWith('diameterM') && value > 15) return 'was it given in centimetres?';
  if (path.endsWith('symbolRateMBd') && value > 500) return 'was it given in kilobaud?';
  if (path.endsWith('Ratio') && value > 1) return 'was it given in per cent?';
  return undefined;
}

type Keys = readonly (string | number)[];

/** A copy of the value with something that fits nowhere put at a path, so that the schema says what it wants there. */
function withMisfit(value: unknown, [key, ...rest]: Keys): unknown {
  if (key === undefined) return Symbol('misfit');
  const copy: Record<string | number, unknown> = Array.isArray(value)
    ? ([...value] as unknown as Record<number, unknown>)
    : { ...(value as Record<string, unknown>) };
  copy[key] = withMisfit(copy[key], rest);
  return copy;
}

/** What a missing field should have held, in words. */
function allowedWhenMissing(
  issue: v.BaseIssue<unknown>,
  whole: unknown,
  schema: v.GenericSchema,
): string {
  const keys = (issue.path ?? []).map((item) => item.key as string | number);
  const result = v.safeParse(schema, withMisfit(whole, keys));
  const said = result.issues?.find((other) => pathOf(other) === pathOf(issue));
  return said ? allowedBy(deepest(said)) : 'given';
}

const CODES: Readonly<Record<string, DomainError['code']>> = {
  number: 'not-a-number',
  finite: 'not-finite',
  min_value: 'out-of-range',
  max_value: 'out-of-range',
  min_length: 'too-few',
  max_length: 'too-many',
  length: 'too-few',
  picklist: 'not-an-option',
  literal: 'not-an-option',
  variant: 'not-an-option',
};

/** An issue of the schema as an error; a missing field is told from a wrong one. */
function faultOf(
  outer: v.BaseIssue<unknown>,
  whole: unknown,
  schema: v.GenericSchema,
): DomainError {
  const issue = deepest(outer);
  const parameter = pathOf(issue);
  const missing = issue.expected !== 'never' && (issue.input === undefined || issue.input === null);
  return new DomainError({
    code: missing
      ? 'missing'
      : issue.expected === 'never'
        ? 'unknown-field'
        : (CODES[issue.type] ?? 'malformed'),
    parameter,
    received: issue.input,
    allowed: missing ? allowedWhenMissing(issue, whole, schema) : allowedBy(issue),
    slip: slipOf(parameter, issue.input),
  });
}

/** Faults beyond this many are only counted. */
const MOST_FAULTS = 30;

/** All faults that the schema finds, one per field. */
export function schemaFaults(
  issues: readonly v.BaseIssue<unknown>[],
  whole: unknown,
  schema: v.GenericSchema,
): readonly DomainError[] {
  const seen = new Set<string>();
  const faults: DomainError[] = [];
  for (const issue of issues) {
    const path = pathOf(deepest(issue));
    if (seen.has(path)) continue;
    seen.add(path);
    faults.push(
      faults.length < MOST_FAULTS
        ? faultOf(issue, whole, schema)
        : new DomainError({
            code: 'malformed',
            parameter: path,
            received: issue.input,
            allowed: allowedBy(deepest(issue)),
          }),
    );
  }
  return faults;
}

/** The first issue worth naming: inside a union, that of the branch that comes nearest. */
function deepest(issue: v.BaseIssue<unknown>): v.BaseIssue<unknown> {
  if (issue.type !== 'union') return issue;
  const inner =
    issue.issues?.find(({ type }) => type !== 'number' && type !== 'array') ?? issue.issues?.[0];
  if (!inner) return issue;
  return { ...inner, path: [...(issue.path ?? []), ...(inner.path ?? [])] } as v.BaseIssue<unknown>;
}

/** One error that lists all faults: it names the first field, and its message has a line for each. */
export function allFaults(faults: readonly DomainError[]): DomainError | undefined {
  const [first, ...others] = faults;
  if (!first || others.length === 0) return first;
  const { code, parameter, received, allowed, slip, index } = first;
  const error = new DomainError({ code, parameter, received, allowed, slip, index });
  const shown = others.slice(0, MOST_FAULTS - 1).map(({ message }) => message);
  const left = others.length - shown.length;
  error.message = [first.message, ...shown, ...(left > 0 ? [`and ${left} more faults`] : [])].join(
    '\n',
  );
  return error;
}

/** An issue of the schema as one clear error: path, value, what was expected, the likely slip. */

import * as v from 'valibot';
import { DomainError } from '../errors.js';
import { jobSchema } from './jobSchema.js';

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
  if (path.endsWith('frequencyGHz') && value > 60) return 'was it given in MHz?';
  if (path.endsWith('MHz') && value < 5) return 'was it given in GHz?';
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
function allowedWhenMissing(issue: v.BaseIssue<unknown>, whole: unknown): string {
  const keys = (issue.path ?? []).map((item) => item.key as string | number);
  const result = v.safeParse(jobSchema, withMisfit(whole, keys), { abortEarly: true });
  const said = result.issues?.[0];
  return said && pathOf(said) === pathOf(issue) ? allowedBy(said) : 'given';
}

/** A missing field is told from a wrong one. */
export function toDomainError(outer: v.BaseIssue<unknown>, whole: unknown): DomainError {
  const issue = deepest(outer);
  const parameter = pathOf(issue);
  const code =
    issue.expected === 'never'
      ? 'malformed'
      : issue.input === undefined || issue.input === null
        ? 'missing'
        : issue.type === 'number'
          ? 'not-a-number'
          : issue.type === 'finite'
            ? 'not-finite'
            : issue.type === 'min_value' || issue.type === 'max_value'
              ? 'out-of-range'
              : issue.type.endsWith('length')
                ? 'too-few'
                : issue.type === 'picklist' || issue.type === 'literal' || issue.type === 'variant'
                  ? 'not-an-option'
                  : 'malformed';
  return new DomainError({
    code,
    parameter,
    received: issue.input,
    allowed: code === 'missing' ? allowedWhenMissing(issue, whole) : allowedBy(issue),
    slip: slipOf(parameter, issue.input),
  });
}

/** The first issue worth naming: inside a union, that of the branch. */
function deepest(issue: v.BaseIssue<unknown>): v.BaseIssue<unknown> {
  const inner = issue.type === 'union' ? issue.issues?.[0] : undefined;
  return inner ? ({ ...inner, path: issue.path } as v.BaseIssue<unknown>) : issue;
}

/** The calls that doc examples make, and the commented fields of their arguments. */

import { type DocTypes, examplesOf, sourceFiles } from './docComments.js';
import { runSnippet } from './snippet.js';

type Fn = (...args: readonly unknown[]) => unknown;
export interface Call {
  readonly name: string;
  readonly call: Fn;
  readonly args: readonly unknown[];
}

/** The calls of the examples of which `taken` is true, as answered; by the place of the example among all. */
export async function answeredCalls(
  taken: (code: string, index: number) => boolean,
): Promise<readonly Call[]> {
  const calls: Call[] = [];
  const wrap = (exported: Readonly<Record<string, unknown>>) =>
    new Proxy(exported, {
      get(target, key) {
        const value = target[String(key)];
        if (typeof value !== 'function' || /^[A-Z]/.test(String(key))) return value;
        return (...args: unknown[]) => {
          const result = (value as Fn)(...args);
          // Only a call that was answered can tell what one changed field does.
          calls.push({ name: String(key), call: value as Fn, args });
          return result;
        };
      },
    });
  const codes = sourceFiles.flatMap((file) => examplesOf(file).map(({ code }) => code));
  for (const code of codes.filter(taken)) await runSnippet(code, wrap);
  return calls;
}

/** A copy with the value at a path replaced or, for `undefined`, taken away. */
export function changed(value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value))
    return value.map((item, index) => (index === Number(key) ? changed(item, rest, by) : item));
  const { [key]: old, ...others } = value as Record<string, unknown>;
  const next = changed(old, rest, by);
  return next === undefined ? others : { ...others, [key]: next };
}

export interface Place {
  readonly path: readonly string[];
  readonly comment: string;
  readonly value: unknown;
}

/** Every commented field of an argument, the optional ones that the example leaves out included. */
export function* placesOf(
  types: DocTypes,
  type: Parameters<DocTypes['fields']>[0],
  value: unknown,
  path: readonly string[] = [],
): Generator<Place> {
  if (Array.isArray(value)) {
    if (value.length > 0) yield* placesOf(types, type, value[0], [...path, '0']);
    return;
  }
  if (typeof value !== 'object' || value === null || path.length > 5) return;
  for (const [name, field] of types.fields(type, (value as { readonly kind?: unknown }).kind)) {
    const inner = (value as Record<string, unknown>)[name];
    yield { path: [...path, name], comment: field.comment, value: inner };
    if (typeof inner === 'object') yield* placesOf(types, field.type, inner, [...path, name]);
  }
}

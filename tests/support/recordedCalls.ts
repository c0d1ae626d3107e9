/** What the doc examples call: every public function with the arguments of at most two of its calls, for tests that change them. */

import { examplesOf, sourceFiles } from './docComments.js';
import { runSnippet } from './snippet.js';

type Callable = (...args: unknown[]) => unknown;
export type Path = readonly (string | number)[];

/** A call as an example makes it. */
export type Call = {
  readonly name: string;
  readonly call: Callable;
  readonly args: unknown[];
  /** Paths of objects that the library itself returned before. */
  readonly own: ReadonlySet<string>;
};

export const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

export function cloned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(cloned);
  if (!isPlain(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, cloned(inner)]));
}

/** Paths of all plain objects in a value; of a list only the first two entries. */
export function* objects(value: unknown, path: Path, entries = 2): Generator<Path> {
  if (Array.isArray(value))
    for (let i = 0; i < Math.min(entries, value.length); i++)
      yield* objects(value[i], [...path, i], entries);
  if (!isPlain(value)) return;
  yield path;
  for (const [key, inner] of Object.entries(value)) yield* objects(inner, [...path, key], entries);
}

export const at = (value: unknown, path: Path): Record<string, unknown> =>
  path.reduce((inner, key) => (inner as Record<string | number, unknown>)[key], value) as Record<
    string,
    unknown
  >;

/** The calls of all doc examples, two of each function at most. */
export async function recordedCalls(): Promise<readonly Call[]> {
  const calls: Call[] = [];
  const returned = new WeakSet<object>();
  const watched = (module: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(
      Object.entries(module).map(([name, value]) => {
        if (typeof value !== 'function' || /^class\b/.test(String(value))) return [name, value];
        const call = value as Callable;
        return [
          name,
          (...args: unknown[]) => {
            if (calls.filter((known) => known.call === call).length < 2)
              calls.push({
                name,
                call,
                args: cloned(args) as unknown[],
                own: new Set(
                  [...objects(args, [])]
                    .filter((path) => returned.has(at(args, path)))
                    .map((path) => path.join('.')),
                ),
              });
            const result = call(...args);
            for (const path of objects(result, [], Number.POSITIVE_INFINITY))
              returned.add(at(result, path));
            return result;
          },
        ];
      }),
    );
  for (const file of sourceFiles)
    for (const { code } of examplesOf(file)) await runSnippet(code, watched).catch(() => undefined);
  return calls;
}

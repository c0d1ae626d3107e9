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
export function* objects(value: unknown, path: Path): Generator<Path> {
  if (Array.isArray(value))
    for (let i = 0; i < Math.min(2, value.length); i++) yield* objects(value[i], [...path, i]);
  if (!isPlain(value)) return;
  yield path;
  for (const [key, inner] of Object.entries(value)) yield* objects(inner, [...path, key]);
}

export const at = (value: unknown, path: Path): Record<string, unknown> =>
  path.reduce((inner, key) => (inner as Record<string | number, unknown>)[key], value) as Record<
    string,
    unknown
  >;

let recorded: Promise<readonly Call[]> | undefined;

/** The calls of all doc examples, two of each function at most; they are made once for all tests of a worker. */
export function recordedCalls(): Promise<readonly Call[]> {
  recorded ??= record();
  return recorded;
}

async function record(): Promise<readonly Call[]> {
  const calls: Call[] = [];
  const returned = new WeakSet<object>();
  /** A function that notes its first two calls, and what it returned. */
  const watched = (name: string, call: Callable): Callable => {
    let noted = 0;
    return (...args) => {
      if (noted++ < 2)
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
      remember(result, returned);
      return result;
    };
  };
  // The root entry exports what the parts do: a function is watched once, whichever way an example imports it.
  const functions = new Map<unknown, Callable>();
  const parts = new Map<object, Record<string, unknown>>();
  const watchedPart = (part: Readonly<Record<string, unknown>>) => {
    const known = parts.get(part);
    if (known) return known;
    const made = Object.fromEntries(
      Object.entries(part).map(([name, value]) => {
        if (typeof value !== 'function' || /^class\b/.test(String(value))) return [name, value];
        const known = functions.get(value) ?? watched(name, value as Callable);
        functions.set(value, known);
        return [name, known];
      }),
    );
    parts.set(part, made);
    return made;
  };
  for (const file of sourceFiles)
    for (const { code } of examplesOf(file))
      await runSnippet(code, watchedPart).catch(() => undefined);
  return calls;
}

/** Notes every plain object of a result as the library's own. */
function remember(value: unknown, returned: WeakSet<object>): void {
  if (Array.isArray(value)) for (const inner of value) remember(inner, returned);
  if (!isPlain(value)) return;
  returned.add(value);
  for (const inner of Object.values(value)) remember(inner, returned);
}

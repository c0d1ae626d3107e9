/** Every example answers what its page begins with, each of its sets and each of its buttons. */

import { transformSync } from 'esbuild';
import { expect, test } from 'vitest';
import type { Example } from '../../site/src/lib/example.js';
import { renderHand, stepsOf } from '../../site/src/lib/hand.js';
import type { Inputs, Values } from '../../site/src/lib/inputs/inputs.js';
import { defaultsOf, rawOfValues, readValues } from '../../site/src/lib/inputs/state.js';
import { solutionsOf } from '../../site/src/lib/working.js';
import { workedSolution } from '../../src/teaching/index.js';

const definitions = import.meta.glob<{ default: Example }>('../../site/src/examples/*.ts');

const parts = import.meta.glob<Record<string, unknown>>('../../src/*/index.ts');

/** Runs a program that a page offers to copy; what it prints. */
async function printedBy(program: string): Promise<unknown[][]> {
  const loaded = new Map<string, unknown>();
  for (const [, name = '', part] of program.matchAll(/from '(slantpath(?:\/(\w+))?)'/g))
    loaded.set(
      name,
      part ? await parts[`../../src/${part}/index.ts`]?.() : await import('../../src/index.js'),
    );
  const lines: unknown[][] = [];
  const { code } = transformSync(program, { loader: 'ts', format: 'cjs', target: 'es2022' });
  new Function('require', 'module', 'exports', 'console', code)(
    (name: string) => loaded.get(name),
    { exports: {} },
    {},
    { log: (...line: unknown[]) => lines.push(line) },
  );
  return lines;
}

test.each(Object.entries(definitions))('%s', async (path, load) => {
  const example = (await load()).default;
  const defaults = defaultsOf(example.inputs);
  const values = readValues(example.inputs, defaults);
  const states: Partial<Values<Inputs>>[] = [
    {},
    ...(example.presets?.sets ?? []).map((set) => set.values),
    ...(example.actions ?? []).map(({ change }) => change(values)),
  ];
  for (const state of states) {
    const raw = { ...defaults, ...rawOfValues(example.inputs, state) };
    const read = readValues(example.inputs, raw);
    const result = example.compute(read);
    // It comes from a worker.
    expect(structuredClone(result)).toEqual(result);
    expect(example.view(result, read).says).not.toBe('');
    expect(await printedBy(example.code(read, result))).not.toEqual([]);
  }
  // Who has steps by hand shows them for the values that the page begins with.
  const result = example.compute(values);
  const steps = [
    ...stepsOf(solutionsOf(workedSolution, example.working?.(values, result) ?? [])),
    ...(example.hand?.(values, result) ?? []),
  ];
  // The bench shows its steps only when the lobe is shown.
  if (!path.endsWith('find-the-peak.ts') && (example.working ?? example.hand)) {
    expect(steps.length).toBeGreaterThan(0);
    expect(renderHand(steps)).not.toMatch(/<m[io]>\\|NaN|Infinity|undefined/);
  }
  for (const name of example.usual ?? []) expect(Object.keys(example.inputs)).toContain(name);
  expect(example.usual?.length ?? 0).toBeLessThanOrEqual(6);
});

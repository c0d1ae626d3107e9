/**
 * Runs each test as it stands, then once more for each mutant that it met and nobody has found yet: a test that fails then has
 * found it. Everything stays in one process, and a mutant costs one test, not one test file.
 */

import { appendFileSync, readFileSync } from 'node:fs';
import type { RunnerTestCase } from 'vitest';
import { VitestTestRunner } from 'vitest/runners';
import { getFn } from 'vitest/suite';

/** What the script asks of a pass. */
export interface Plan {
  /** Where the outcome of each test goes. */
  readonly record: string;
  /** Mutants to try that are not found yet, each with the number of its file. */
  readonly open: readonly (readonly [id: number, file: number])[];
  /** Files that hold nothing but constants: any test may read them. */
  readonly constants: readonly number[];
  /** File of each mutant. */
  readonly files: readonly number[];
  /** Tests to try by the processor time that they take, in ms; in the first pass that is measured, later it is known. */
  readonly fromMs: number;
  readonly toMs: number;
  readonly known: Readonly<Record<string, number>>;
  /** Most processor time for the mutants of one test, in ms. */
  readonly budgetMs: number;
}

/** The outcome of a test. */
export interface Outcome {
  readonly test: string;
  readonly ms: number;
  readonly met: readonly number[];
  readonly found: readonly number[];
  readonly tried: readonly number[];
  /** Whether the test fails without a mutant after the others: one of them left something behind. */
  readonly spoilt: boolean;
}

const shared = globalThis as unknown as {
  __mutant: (id: number) => boolean;
  __again: (init: () => void) => void;
  __inits?: (() => void)[];
  __found?: Set<number>;
};
shared.__inits ??= [];
const inits = shared.__inits;
const found = new Set<number>();
let alive = -1;
let calls = 0;
let mostCalls = Number.POSITIVE_INFINITY;
const met = new Set<number>();

shared.__again = (init) => inits.push(init);
shared.__mutant = (id) => {
  if (++calls > mostCalls) throw new Error('the mutant does not come to an end');
  if (alive < 0) met.add(id);
  return id === alive;
};

/** Switches a mutant on, or all off; constants and caches of modules are made anew. */
function switchTo(mutant: number): void {
  alive = mutant;
  calls = 0;
  for (const init of inits) init();
}

const cpuMs = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

export default class MutantRunner extends VitestTestRunner {
  private readonly plan = JSON.parse(
    readFileSync(process.env['MUTATE_PLAN'] ?? '', 'utf8'),
  ) as Plan;

  async runTask(test: RunnerTestCase): Promise<void> {
    const { plan } = this;
    const name = `${test.file.name} ${test.suite?.name ?? ''} ${test.name}`;
    const run = getFn(test);
    const before = plan.known[name];
    if (before !== undefined && !(before >= plan.fromMs && before < plan.toMs)) return;

    mostCalls = Number.POSITIVE_INFINITY;
    met.clear();
    switchTo(-1);
    const atLoad = new Set(met);
    met.clear();
    calls = 0;
    const begin = cpuMs();
    await run();
    const ms = cpuMs() - begin;
    const limit = 20 * calls + 100_000;

    const touched = new Set([...met].map((id) => plan.files[id] ?? -1));
    for (const file of plan.constants) touched.add(file);
    const candidates = plan.open.filter(
      ([id, file]) => !found.has(id) && (met.has(id) || (atLoad.has(id) && touched.has(file))),
    );
    const reached = candidates.map(([id]) => id);
    const outcome = { test: name, ms, met: reached, found: [] as number[], tried: [] as number[] };
    let spoilt = false;
    if (ms >= plan.fromMs && ms < plan.toMs) {
      mostCalls = limit;
      for (const [id] of candidates) {
        if (cpuMs() - begin > plan.budgetMs) break;
        outcome.tried.push(id);
        try {
          switchTo(id);
          await run();
        } catch {
          outcome.found.push(id);
        }
      }
      mostCalls = Number.POSITIVE_INFINITY;
      switchTo(-1);
      try {
        await run();
      } catch {
        spoilt = true;
      }
      if (!spoilt) for (const id of outcome.found) found.add(id);
    }
    appendFileSync(plan.record, `${JSON.stringify({ ...outcome, spoilt } satisfies Outcome)}\n`);
  }
}

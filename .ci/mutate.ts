/**
 * Plants small faults in a part and counts which of them its tests find: `npm run mutate -- src/pointing [tests/pointing ...] [each=5]`.
 *
 * All mutants of a file are compiled into it at once and one is switched on at a time. Each test runs once as it stands, which says
 * what it meets, then once for each mutant that it met and no test has found: quick tests first, in one process (`mutate/runner.ts`).
 * The doc examples and the walk of documented bounds are always among the tests. `each=5` takes every fifth mutant. A mutant that
 * nothing meets, and one that lives, are printed; `.ci/mutate/neutral.txt` lists those that change nothing, with the reason.
 * The last line is the score.
 */

import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { createVitest } from 'vitest/node';
import { nativeSources } from '../tests/support/nativeSources.js';
import { type Mutant, mutated } from './mutate/mutants.js';
import type { Outcome, Plan } from './mutate/runner.js';

const places = process.argv.slice(2).filter((word) => word.startsWith('src/'));
const named = process.argv.slice(2).filter((word) => word.startsWith('tests/'));
if (places.length === 0 || !places.every((place) => existsSync(place)))
  throw new Error('usage: npm run mutate -- src/PART [tests/PART ...] [each=N]');
const each = Number(process.argv.find((word) => word.startsWith('each='))?.slice(5) ?? 1);
const own = places.map((place) => `tests/${place.split('/')[1]?.replace('.ts', '')}/`);
const tests = [
  ...(named.length > 0 ? named : own),
  'tests/doc-examples.test.ts',
  'tests/doc-bounds.test.ts',
];

const sources = places.flatMap((place) =>
  statSync(place).isFile()
    ? [place]
    : readdirSync(place, { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts') && !/(index|internal)\.ts$/.test(file))
        .map((file) => join(place, file)),
);
// The sources as the test run loads them, in a tree of their own, with the mutants in them.
const tree = resolve(`node_modules/.mutate-${process.pid}`);
if (existsSync('node_modules/.native'))
  cpSync('node_modules/.native', tree, { recursive: true, preserveTimestamps: true });
nativeSources(resolve('src'), tree);
process.env['NATIVE_TREE'] = tree;
process.argv.push('run');

const all: Mutant[] = [];
const files: number[] = [];
const constants: number[] = [];
for (const [index, file] of sources.sort().entries()) {
  const { text, mutants, constantsOnly } = mutated(file, readFileSync(file, 'utf8'), all.length);
  const { outputText } = ts.transpileModule(text, {
    compilerOptions: {
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ES2022,
      verbatimModuleSyntax: true,
    },
  });
  const target = join(tree, file.replace(/^src\//, '').replace(/ts$/, 'js'));
  writeFileSync(target, outputText);
  // As new as the source, so that it is not written again.
  const { mtimeMs } = statSync(file);
  utimesSync(target, mtimeMs / 1000, mtimeMs / 1000);
  all.push(...mutants);
  files.push(...mutants.map(() => index));
  if (constantsOnly) constants.push(index);
}

const folder = mkdtempSync(join(tmpdir(), 'slantpath-mutate-'));
const planFile = join(folder, 'plan.json');
process.env['MUTATE_PLAN'] = planFile;
process.env['WALK_ALL_BOUNDS'] = '1';

/** Passes: tests by the processor time they take, and the most that the mutants of one test may take, in ms. */
const PASSES = [
  { fromMs: 0, toMs: 150, budgetMs: 20_000 },
  { fromMs: 150, toMs: 3000, budgetMs: 40_000 },
];
const chosen = all.filter((_, index) => index % each === 0);
const found = new Set<number>();
const met = new Set<number>();
const tried = new Set<number>();
const known: Record<string, number> = {};
/** Files of tests that a later pass has something to do in. */
let meeting: readonly string[] = tests;

async function pass(limits: (typeof PASSES)[number]): Promise<void> {
  const record = join(folder, 'record');
  rmSync(record, { force: true });
  const plan: Plan = {
    record,
    open: chosen.filter(({ id }) => !found.has(id)).map(({ id }) => [id, files[id] ?? -1]),
    constants,
    files,
    known,
    ...limits,
  };
  writeFileSync(planFile, JSON.stringify(plan));
  const vitest = await createVitest('test', {
    watch: false,
    reporters: [{}],
    silent: true,
    runner: './.ci/mutate/runner.ts',
    maxWorkers: 1,
    // It would keep where the tree of another run was.
    experimental: { fsModuleCache: false },
    include: ['tests/**/*.test.ts'],
  });
  const specifications = (await vitest.globTestSpecifications([...tests])).filter(({ moduleId }) =>
    meeting.some((test) => moduleId.startsWith(resolve(test))),
  );
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specifications);
  for (const module of testModules)
    for (const test of module.children.allTests('failed'))
      console.log(
        `fails as it stands: ${module.relativeModuleId} ${test.fullName}: ${test.result().errors?.[0]?.message.slice(0, 200)}`,
      );
  for (const error of unhandledErrors) console.log(String((error as Error).stack ?? error));
  await vitest.close();
  const slow = new Map<string, readonly number[]>();
  for (const line of existsSync(record) ? readFileSync(record, 'utf8').trim().split('\n') : []) {
    const outcome = JSON.parse(line) as Outcome;
    known[outcome.test] ??= outcome.ms;
    if (outcome.spoilt)
      console.log(`left out, since a mutant leaves traces in it: ${outcome.test}`);
    for (const id of outcome.met) met.add(id);
    if (outcome.ms >= limits.toMs) slow.set(outcome.test, outcome.met);
    for (const id of outcome.tried) tried.add(id);
    if (!outcome.spoilt) for (const id of outcome.found) found.add(id);
  }
  meeting = [...slow].flatMap(([test, reached]) =>
    reached.some((id) => !found.has(id)) ? [test.split(' ')[0] ?? ''] : [],
  );
}

const started = Date.now();
for (const limits of PASSES) {
  if (meeting.length === 0) break;
  await pass(limits);
  console.log(
    `tests of ${limits.fromMs} to ${limits.toMs} ms: ${found.size} of ${met.size} found after ${Math.round((Date.now() - started) / 1000)} s`,
  );
}
rmSync(folder, { recursive: true, force: true });
rmSync(tree, { recursive: true, force: true });

const neutralFile = new URL('./mutate/neutral.txt', import.meta.url);
/** Mutants that change nothing, as `file  was  ->  is`, without the line, which moves. */
const neutral = new Set(
  readFileSync(neutralFile, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.trim()),
);
let harmless = 0;
for (const { id, file, line, was, is } of chosen.filter(({ id }) => !found.has(id))) {
  const change = `${file}  ${was}  ->  ${is}`;
  if (neutral.has(change) && met.has(id)) harmless++;
  else {
    const what = !met.has(id) ? 'unmet' : tried.has(id) ? 'lives' : 'untried';
    console.log(`${what}  ${file}:${line}  ${was}  ->  ${is}`);
  }
}
const decided = met.size - harmless;
console.log(
  `${places.join(' ')}: ${found.size} of ${decided} mutants found, ${((100 * found.size) / decided).toFixed(1)} %; ${harmless} neutral, ${chosen.length - met.size} met by no test${each > 1 ? `; every ${each}th of ${all.length}` : ''}`,
);

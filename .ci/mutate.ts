/**
 * Plants small faults in a part and counts which of them its tests find: `npm run mutate -- src/pointing [tests/pointing] [each=5]`.
 *
 * All mutants of a file are compiled into it at once and one is switched on at a time. A first run says which test file meets
 * which mutant; then the test files that meet it run, the quickest first, until one fails. `each=5` takes every fifth mutant.
 * A mutant that nothing meets, and one that lives, are printed; the last line is the score.
 */

import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createVitest } from 'vitest/node';
import { type Mutant, mutated } from './mutate/mutants.js';

const [place = '', ...rest] = process.argv.slice(2);
if (!existsSync(place))
  throw new Error('usage: npm run mutate -- src/PART [tests/PART ...] [each=N]');
const each = Number(rest.find((word) => word.startsWith('each='))?.slice(5) ?? 1);
const named = rest.filter((word) => !word.includes('='));
const tests = named.length > 0 ? named : [`tests/${place.split('/')[1]?.replace('.ts', '')}/`];
/** Test files that take longer than this in seconds are run for no mutant. */
const LONGEST_S = 10;

const files = statSync(place).isFile()
  ? [place]
  : readdirSync(place, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !/(index|internal)\.ts$/.test(file))
      .map((file) => join(place, file));
const texts = new Map<string, string>();
const all: Mutant[] = [];
for (const file of files.sort()) {
  const { text, mutants } = mutated(file, readFileSync(file, 'utf8'), all.length);
  texts.set(resolve(file), text);
  all.push(...mutants);
}

const folder = mkdtempSync(join(tmpdir(), 'slantpath-mutate-'));
const record = join(folder, 'met');
const vitest = await createVitest(
  'test',
  {
    watch: false,
    bail: 1,
    reporters: [{}],
    setupFiles: ['.ci/mutate/setup.ts'],
    silent: true,
    maxWorkers: 1,
    include: ['tests/**/*.test.ts'],
  },
  {
    plugins: [{ name: 'mutants', enforce: 'pre', load: (id) => texts.get(id.split('?')[0] ?? '') }],
  },
);
const project = vitest.getRootProject();
project.provide('record', record);
const specifications = (await vitest.globTestSpecifications([...tests])).filter(({ moduleId }) =>
  tests.some((test) => moduleId.startsWith(resolve(test))),
);

/** Whether all tests of some files pass with a mutant alive; and how long each file took, in seconds. */
async function run(mutant: number, chosen: typeof specifications) {
  project.provide('mutant', mutant);
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(chosen);
  const passed = testModules.every((module) => module.ok()) && unhandledErrors.length === 0;
  const why = [
    ...testModules.flatMap((module) => [
      ...module.errors(),
      ...[...module.children.allTests('failed')].flatMap((test) => test.result().errors ?? []),
    ]),
    ...unhandledErrors,
  ].map((error) => String((error as Error).stack ?? error));
  return {
    passed,
    why,
    seconds: testModules.map(
      (module) => [module.moduleId, module.diagnostic().duration / 1000] as const,
    ),
  };
}

const clean: { file: string; seconds: number; met: ReadonlySet<number> }[] = [];
for (const specification of specifications) {
  rmSync(record, { force: true });
  const { passed, seconds, why } = await run(-1, [specification]);
  const file = specification.moduleId;
  if (!passed) throw new Error(`fails without a mutant: ${file}\n${why.join('\n')}`);
  const lines = existsSync(record) ? readFileSync(record, 'utf8').trim().split('\n') : [];
  const met = new Set(lines.flatMap((line) => (JSON.parse(line) as { met: number[] }).met));
  clean.push({ file, seconds: seconds[0]?.[1] ?? 0, met });
  console.log(
    `${file.replace(`${resolve('.')}/`, '')}: ${seconds[0]?.[1].toFixed(1)} s, meets ${met.size} of ${all.length}`,
  );
}
clean.sort((a, b) => a.seconds - b.seconds);

let [killed, alive, unmet] = [0, 0, 0];
const said = ({ file, line, was, is }: Mutant) => `${file}:${line}  ${was}  ->  ${is}`;
for (const mutant of all.filter((_, index) => index % each === 0)) {
  const meeting = clean.filter(({ met, seconds }) => met.has(mutant.id) && seconds <= LONGEST_S);
  if (meeting.length === 0) {
    unmet++;
    console.log(`unmet  ${said(mutant)}`);
    continue;
  }
  let found = false;
  for (const { file } of meeting) {
    const chosen = specifications.filter(({ moduleId }) => moduleId === file);
    found = !(await run(mutant.id, chosen)).passed;
    if (found) break;
  }
  if (found) killed++;
  else {
    alive++;
    console.log(`lives  ${said(mutant)}`);
  }
}
await vitest.close();
rmSync(folder, { recursive: true, force: true });
const met = killed + alive;
console.log(
  `${place}: ${killed} of ${met} mutants found, ${((100 * killed) / met).toFixed(1)} %; ${unmet} met by no test${each > 1 ? `; every ${each}th of ${all.length}` : ''}`,
);

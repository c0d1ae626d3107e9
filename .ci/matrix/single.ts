/** Engines that load one file: workerd, and Hermes, which knows neither classes nor `\p{...}` in regular expressions. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import ts from 'typescript';

type Run = (program: string, words: readonly string[]) => string;

/** What the entries answer inside workerd, as a module of a worker. */
export function workerd(folder: string, run: Run): string {
  const program = join(folder, 'node_modules/@cloudflare/workerd-linux-64/bin/workerd');
  writeFileSync(join(folder, 'worker.mjs'), "import './use.mjs';\nexport default { test() {} };\n");
  buildSync({
    entryPoints: [join(folder, 'worker.mjs')],
    outfile: join(folder, 'worker-out.mjs'),
    bundle: true,
    format: 'esm',
    logLevel: 'error',
  });
  writeFileSync(
    join(folder, 'worker.capnp'),
    `using Workerd = import "/workerd/workerd.capnp";
const config :Workerd.Config = ( services = [ (name = "main", worker = .w) ] );
const w :Workerd.Worker = (
  modules = [ (name = "worker", esModule = embed "worker-out.mjs") ],
  compatibilityDate = "2024-09-01"
);
`,
  );
  const text = run(program, ['test', '--verbose', 'worker.capnp']);
  return text.split('\n').find((line) => line.startsWith('DIGITS')) ?? text;
}

/** Entries with `\p{...}` in a regular expression, which this Hermes refuses when it reads the file. */
const NOT_FOR_HERMES = ['job', 'sheet', 'teaching'];

/**
 * The same inside Hermes, in the language of 2009 as the bundlers of phones make it, without three entries; their answers, the last
 * two, are `rest`.
 */
export function hermes(folder: string, run: Run, rest: readonly unknown[]): string {
  const names = NOT_FOR_HERMES.join('|');
  const use = readFileSync(join(folder, 'use.mjs'), 'utf8')
    .replace(new RegExp(`^import \\* as (${names}) from .*\\n`, 'gm'), '')
    .replace(new RegExp(`^ {2}(${names}),\\n`, 'gm'), '')
    .replace(/^const record = [\s\S]*?^\);\n/m, '')
    .replace(/^ {2}(teaching\.tryFormula|record\.plan).*\n/gm, '');
  writeFileSync(join(folder, 'use-hermes.mjs'), use);
  const { outputFiles } = buildSync({
    entryPoints: [join(folder, 'use-hermes.mjs')],
    write: false,
    bundle: true,
    format: 'iife',
    target: 'es2022',
    logLevel: 'error',
  });
  const { outputText } = ts.transpileModule(outputFiles[0]?.text ?? '', {
    compilerOptions: { target: ts.ScriptTarget.ES5, downlevelIteration: true },
  });
  writeFileSync(join(folder, 'hermes.js'), `var console = { log: print };\n${outputText}`);
  const place = join(folder, 'node_modules/hermes-engine-cli');
  const { version } = JSON.parse(readFileSync(join(place, 'package.json'), 'utf8')) as {
    readonly version: string;
  };
  const text = run(join(place, 'linux64-bin/hermes'), ['-O', '-w', 'hermes.js']);
  const digits: unknown[] = JSON.parse(text.slice(text.indexOf('DIGITS') + 7));
  return `${version} DIGITS ${JSON.stringify([...digits, ...rest])}`;
}

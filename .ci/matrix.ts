/**
 * The packed tarball on every engine and through every bundler, with the digits of all compared: `tsx .ci/matrix.ts [FOLDER] [NAME ...]`,
 * after a build. Engines and bundlers come from the registry into FOLDER, a temporary one where none is given.
 */

import { execFileSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { hermes, workerd } from './matrix/single.js';

/** Versions of Node: the lowest that `engines` allows, the last one before modules could be required, each even line's newest. */
const NODES = ['20.0.0', '20.9.0', '20.18.0', '20', '22.0.0', '22', '24', 'latest'];
const OTHERS = [
  'deno',
  'bun',
  'esbuild',
  'rollup',
  '@rollup/plugin-node-resolve',
  'webpack',
  'vite',
  'workerd',
  'hermes-engine-cli',
];

const folder = resolve(process.argv[2] ?? mkdtempSync(join(tmpdir(), 'slantpath-matrix-')));
const run = (program: string, words: readonly string[], cwd = folder) =>
  execFileSync(program, words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
const bin = (name: string) => join(folder, 'node_modules', '.bin', name);

writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }');
const aliases = NODES.map((version) => `node-${version.replaceAll('.', '-')}@npm:node@${version}`);
if (!existsSync(join(folder, 'node_modules', 'webpack')))
  run('npm', ['install', '--no-audit', '--no-fund', ...OTHERS]);
const packed = JSON.parse(
  run('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], resolve('.')),
) as Readonly<Record<string, { readonly filename: string }>>;
const home = join(folder, 'node_modules', 'slantpath');
mkdirSync(home, { recursive: true });
run('tar', [
  '-xzf',
  join(folder, Object.values(packed)[0]?.filename ?? ''),
  '-C',
  home,
  '--strip-components=1',
]);
copyFileSync('.ci/matrix/use.mjs', join(folder, 'use.mjs'));
const commonjs = readFileSync('.ci/matrix/use.mjs', 'utf8')
  .replace(/^import \* as (\w+) from '([^']+)';/gm, "const $1 = require('$2');")
  .replace(/^import (\{[^}]+\}) from '([^']+)';/gm, "const $1 = require('$2');");
writeFileSync(join(folder, 'use.cjs'), commonjs);

type Run = readonly [what: string, version: string, output: () => string];
const node = process.execPath;
const nodeRuns: readonly Run[] = aliases.flatMap((alias) => {
  const [name = '', version = ''] = alias.split('@npm:node@');
  const program = () => {
    const place = join(folder, name);
    if (!existsSync(place)) {
      mkdirSync(place);
      writeFileSync(join(place, 'package.json'), '{ "private": true }');
      run('npm', ['install', '--no-audit', '--no-fund', `node@${version}`], place);
    }
    return join(place, 'node_modules', '.bin', 'node');
  };
  return [
    [
      `Node ${version}, import`,
      'node',
      () => `${run(program(), ['--version'])} ${run(program(), ['use.mjs'])}`,
    ],
    [`Node ${version}, require`, '', () => run(program(), ['use.cjs'])],
  ];
});
const bundled = (file: string, make: () => void) => () => {
  make();
  return run(node, [file]);
};
writeFileSync(
  join(folder, 'rollup.config.mjs'),
  "import resolve from '@rollup/plugin-node-resolve';\nexport default { input: 'use.mjs', output: { file: 'rollup.mjs' }, plugins: [resolve()], onwarn() {} };\n",
);
writeFileSync(
  join(folder, 'webpack.mjs'),
  "import webpack from 'webpack';\nwebpack({ mode: 'production', target: 'web', entry: './use.mjs', output: { path: process.cwd(), filename: 'webpack-out.cjs' } }, (error, stats) => { if (error || stats.hasErrors()) { console.error(error ?? stats.toString()); process.exit(1); } });\n",
);
writeFileSync(
  join(folder, 'vite.mjs'),
  "import { build } from 'vite';\nawait build({ logLevel: 'error', configFile: false, build: { outDir: 'vite', lib: { entry: 'use.mjs', formats: ['es'], fileName: () => 'out.mjs' } } });\n",
);
const runs: readonly Run[] = [
  ['Node, this one', '', () => `${process.version} ${run(node, ['use.mjs'])}`],
  ...nodeRuns,
  [
    'Deno',
    'deno',
    () =>
      `${run(bin('deno'), ['--version']).split('\n')[0]} ${run(bin('deno'), ['run', '--node-modules-dir=manual', '--allow-read', 'use.mjs'])}`,
  ],
  ['Bun', 'bun', () => `${run(bin('bun'), ['--version'])} ${run(bin('bun'), ['use.mjs'])}`],
  [
    'esbuild',
    'esbuild',
    bundled('esbuild-out.mjs', () =>
      run(bin('esbuild'), [
        'use.mjs',
        '--bundle',
        '--minify',
        '--format=esm',
        '--outfile=esbuild-out.mjs',
        '--log-level=error',
      ]),
    ),
  ],
  [
    'rollup',
    'rollup',
    bundled('rollup.mjs', () => run(bin('rollup'), ['-c', 'rollup.config.mjs', '--silent'])),
  ],
  ['webpack', 'webpack', bundled('webpack-out.cjs', () => run(node, ['webpack.mjs']))],
  ['vite', 'vite', bundled('vite/out.mjs', () => run(node, ['vite.mjs']))],
  ['workerd', 'workerd', () => workerd(folder, run)],
  [
    'Hermes, without 3 entries',
    '',
    () => hermes(folder, run, (first as readonly unknown[]).slice(-2)),
  ],
];

/** Largest relative difference of two results, place by place; infinite where anything but a number differs. */
function difference(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number')
    return a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-9);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null)
    return a === b ? 0 : Number.POSITIVE_INFINITY;
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return Math.max(
    0,
    ...keys.map((key) =>
      difference((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
    ),
  );
}

/** Engines have sines of their own: what they may differ by, relative. */
const ALLOWED = 1e-9;
let first: unknown;
/** Those that are asked for by the beginning of their name, or all; the first one is what the others are compared with. */
const only = process.argv.slice(3);
const asked = ([what]: Run, index: number) =>
  index === 0 || only.length === 0 || only.some((word) => what.startsWith(word));
for (const [what, packageName, output] of runs.filter(asked)) {
  let line: string;
  try {
    const text = output();
    const version =
      /(\d+\.\d+\.\d+)/.exec(text.split('DIGITS')[0] ?? '')?.[1] ?? versionOf(packageName);
    const digits: unknown = JSON.parse(text.slice(text.indexOf('DIGITS') + 7));
    first ??= digits;
    const apart = difference(first, digits);
    line = `${version.padEnd(9)} ${apart === 0 ? 'the same digits' : `digits differ by ${apart.toExponential(1)} at most`}`;
    if (!(apart <= ALLOWED)) process.exitCode = 1;
  } catch (error) {
    process.exitCode = 1;
    const { stderr = '', message = '' } = error as { stderr?: string; message?: string };
    line = `FAILS: ${(/\w*Error.*/.exec(stderr)?.[0] ?? message).slice(0, 160)}`;
  }
  console.log(`${what.padEnd(26)} ${line}`);
}

function versionOf(name: string): string {
  const manifest = join(folder, 'node_modules', name, 'package.json');
  return existsSync(manifest)
    ? (JSON.parse(readFileSync(manifest, 'utf8')) as { version: string }).version
    : '';
}

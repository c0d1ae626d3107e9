/**
 * Installs the packed tarball into three blank projects and uses every entry there: an ESM project, a
 * CommonJS project, and a TypeScript project under each module resolution that can see an export map.
 */

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { compiled, fetchTypeScript, LOWEST_TYPESCRIPT, typedProject } from './matrix/typescript.js';

interface Manifest {
  readonly exports: Readonly<Record<string, unknown>>;
}

const root = resolve('.');
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;
const entries = Object.keys(manifest.exports)
  .filter((key) => !key.endsWith('.json') && !key.includes('*'))
  .map((key) => key.replace(/^\./, 'slantpath'));
const folder = mkdtempSync(join(tmpdir(), 'slantpath-consumers-'));
const run = (command: string, args: readonly string[], cwd: string) =>
  execFileSync(command, args, { cwd, stdio: ['ignore', 'pipe', 'inherit'], encoding: 'utf8' });

/** A blank project with the package unpacked from its tarball and nothing beside it. */
function project(name: string, type: 'module' | 'commonjs', tarball: string): string {
  const home = join(folder, name);
  const modules = join(home, 'node_modules');
  mkdirSync(join(modules, 'slantpath'), { recursive: true });
  run('tar', ['-xzf', tarball, '-C', join(modules, 'slantpath'), '--strip-components=1'], home);
  writeFileSync(join(home, 'package.json'), JSON.stringify({ name, private: true, type }));
  return home;
}

try {
  const packed = JSON.parse(
    run('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], root),
  ) as { readonly filename: string }[] | Record<string, { readonly filename: string }>;
  const tarball = join(folder, Object.values(packed)[0]?.filename ?? '');

  const esm = project('esm', 'module', tarball);
  const imports = entries.map((name, index) => `import * as m${index} from '${name}';`);
  const check = entries.map(
    (name, index) =>
      `if (Object.keys(m${index}).length === 0) throw new Error('${name} is empty');`,
  );
  const use = `const look = m0.lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 }, 16.4);
if (Math.abs(look.elevationDeg - 36.237) > 0.001) throw new Error('look angle ' + look.elevationDeg);`;
  writeFileSync(join(esm, 'use.js'), [...imports, ...check, use].join('\n'));
  run('node', ['use.js'], esm);

  const cjs = project('cjs', 'commonjs', tarball);
  const requires = entries.map((name, index) => `const m${index} = require('${name}');`);
  writeFileSync(join(cjs, 'use.js'), [...requires, ...check, use].join('\n'));
  run('node', ['use.js'], cjs);

  const typed = project('typed', 'module', tarball);
  writeFileSync(
    join(typed, 'use.ts'),
    [
      ...imports,
      "import type { LookAngles, Station } from 'slantpath/pointing';",
      'const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };',
      'const look: LookAngles = m0.lookAngles(station, 16.4);',
      "export const azimuthDeg: number | undefined = look.kind === 'overhead' ? undefined : look.azimuthDeg;",
      '// @ts-expect-error a missing field does not compile',
      'm0.lookAngles({ latitudeDeg: 46.4 }, 16.4);',
      `export const all = [${entries.map((_, index) => `m${index}`).join(', ')}] as const;`,
    ]
      .join('\n')
      .replace('LookAngles, Station', 'LookAngles'),
  );
  for (const [module, moduleResolution] of [
    ['NodeNext', 'NodeNext'],
    ['Node16', 'Node16'],
    ['ESNext', 'Bundler'],
  ] as const) {
    const compilerOptions = {
      module,
      moduleResolution,
      noEmit: true,
      strict: true,
      target: 'ES2022',
      lib: ['ES2022'],
      types: [],
    };
    writeFileSync(
      join(typed, 'tsconfig.json'),
      JSON.stringify({ compilerOptions, files: ['use.ts'] }),
    );
    run('node', [join(root, 'node_modules/typescript/bin/tsc')], typed);
  }
  // The lowest compiler of the README; where it cannot be fetched, that is said.
  const lowest = project('lowest', 'module', tarball);
  typedProject(lowest, entries);
  const place = join(tmpdir(), `slantpath-typescript-${LOWEST_TYPESCRIPT}`);
  const absent = fetchTypeScript(place, LOWEST_TYPESCRIPT);
  if (absent !== undefined) console.log(`LEFT OUT: TypeScript ${LOWEST_TYPESCRIPT}, ${absent}`);
  else {
    const { version, wrong } = compiled(place, lowest);
    if (wrong.length > 0) throw new Error(`TypeScript ${version}: ${wrong.slice(0, 5).join('\n')}`);
    console.log(`consumers: TypeScript ${version} reads every entry`);
  }
  console.log(
    `consumers: ${entries.length} entries in ESM, CommonJS and TypeScript (3 resolutions)`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}

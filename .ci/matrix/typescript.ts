/**
 * The declarations read by older and newer compilers: `tsx .ci/matrix/typescript.ts [FOLDER]`, after a build; the lowest alone is tried by
 * the consumers' script. Compilers come from the registry into FOLDER, a temporary one where none is given.
 */

import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** The lowest version that reads the declarations, as README says, and the others that are tried. */
export const LOWEST_TYPESCRIPT = '5.0';
const VERSIONS = ['4.9', LOWEST_TYPESCRIPT, '5.4', '5.8', '5.9', 'latest'];

/** Puts a compiler into a folder; why it cannot be done, or nothing. */
export function fetchTypeScript(folder: string, version: string): string | undefined {
  mkdirSync(folder, { recursive: true });
  if (existsSync(join(folder, 'node_modules/typescript'))) return undefined;
  writeFileSync(join(folder, 'package.json'), '{ "private": true }');
  try {
    execFileSync('npm', ['install', '--no-audit', '--no-fund', `typescript@${version}`], {
      cwd: folder,
      stdio: ['ignore', 'ignore', 'pipe'],
      timeout: 180_000,
    });
    return undefined;
  } catch (error) {
    return String((error as { readonly stderr?: Buffer }).stderr ?? error).split('\n')[0] ?? '';
  }
}

/** Version of the compiler in a folder, and what it finds wrong in a project, line by line. */
export function compiled(folder: string, project: string) {
  const home = join(folder, 'node_modules/typescript');
  const { version } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')) as {
    readonly version: string;
  };
  try {
    execFileSync(process.execPath, [join(home, 'bin/tsc'), '-p', project], { encoding: 'utf8' });
    return { version, wrong: [] };
  } catch (error) {
    const { stdout = '' } = error as { readonly stdout?: string };
    return { version, wrong: stdout.split('\n').filter((line) => line !== '') };
  }
}

/** Writes the project of a user: every entry imported, checked without `skipLibCheck`. */
export function typedProject(home: string, entries: readonly string[]): void {
  const imports = entries.map((name, index) => `import * as m${index} from '${name}';`);
  const all = `export const all = [${entries.map((_, index) => `m${index}`).join(', ')}] as const;`;
  writeFileSync(join(home, 'use.ts'), [...imports, all].join('\n'));
  const compilerOptions = {
    module: 'NodeNext',
    moduleResolution: 'NodeNext',
    noEmit: true,
    strict: true,
    target: 'ES2022',
    lib: ['ES2022'],
    types: [],
  };
  writeFileSync(
    join(home, 'tsconfig.json'),
    JSON.stringify({ compilerOptions, files: ['use.ts'] }),
  );
}

if (process.argv[1]?.endsWith('typescript.ts')) {
  const folder = resolve(process.argv[2] ?? mkdtempSync(join(tmpdir(), 'slantpath-typescript-')));
  const project = join(folder, 'project');
  const home = join(project, 'node_modules/slantpath');
  mkdirSync(home, { recursive: true });
  execFileSync('cp', ['-r', 'dist', 'package.json', home]);
  writeFileSync(join(project, 'package.json'), '{ "private": true, "type": "module" }');
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: object };
  const entries = Object.keys(exports).filter((key) => !/\.json$|\*/.test(key));
  typedProject(
    project,
    entries.map((key) => key.replace(/^\./, 'slantpath')),
  );
  for (const asked of VERSIONS) {
    const place = join(folder, asked);
    const absent = fetchTypeScript(place, asked);
    const { version, wrong } = absent
      ? { version: asked, wrong: [absent] }
      : compiled(place, project);
    const told = wrong.length === 0 ? 'reads all' : `${wrong.length} lines: ${wrong[0]}`;
    console.log(`TypeScript ${version.padEnd(8)} ${told.slice(0, 160)}`);
    if (wrong.length > 0 && Number(asked.replace('latest', '9')) >= Number(LOWEST_TYPESCRIPT))
      process.exitCode = 1;
  }
}

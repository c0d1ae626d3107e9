/**
 * A dry run of publishing: prints what the tarball holds, by folder, and refuses one that lacks a paper, whose README points
 * at something outside it, or that asks for other packages. `tsx .ci/tarball.ts`, after a build.
 */

import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

interface Packed {
  readonly size: number;
  readonly unpackedSize: number;
  readonly files: readonly { readonly path: string; readonly size: number }[];
}

const answer = JSON.parse(
  execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  }),
) as readonly Packed[] | Readonly<Record<string, Packed>>;
const packed = Object.values(answer)[0] as Packed;

const kind = (path: string) => {
  const ending = /(\.d\.c?ts|\.[a-z]+)$/.exec(path)?.[1] ?? '';
  const folder = path.startsWith('dist/single') || path.startsWith('dist/vectors');
  return path.includes('/')
    ? `${path
        .split('/')
        .slice(0, folder ? 2 : 1)
        .join('/')} *${ending}`
    : path;
};
const sums = new Map<string, { files: number; bytes: number }>();
for (const { path, size } of packed.files) {
  const sum = sums.get(kind(path)) ?? { files: 0, bytes: 0 };
  sums.set(kind(path), { files: sum.files + 1, bytes: sum.bytes + size });
}
for (const [name, { files, bytes }] of [...sums].sort((a, b) => b[1].bytes - a[1].bytes))
  console.log(
    `${name.padEnd(24)} ${String(files).padStart(4)} ${(bytes / 1000).toFixed(1).padStart(8)} kB`,
  );
console.log(
  `tarball ${(packed.size / 1e6).toFixed(2)} MB, unpacked ${(packed.unpackedSize / 1e6).toFixed(2)} MB, ${packed.files.length} files`,
);

const paths = new Set(packed.files.map(({ path }) => path));
const faults: string[] = [];
const papers = [
  'README.md',
  'LICENSE',
  'CHANGELOG.md',
  'SECURITY.md',
  'NOTICES.md',
  'sbom.cdx.json',
];
for (const paper of papers)
  if (!paths.has(paper)) faults.push(`${paper} is not in the tarball: run \`npm run build\``);
for (const [, link] of readFileSync('README.md', 'utf8').matchAll(/\]\(([^)#]+)\)/g))
  if (link !== undefined && !link.includes(':') && !paths.has(link))
    faults.push(`README.md points at ${link}, which is not in the tarball`);
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as Record<string, unknown>;
for (const field of ['dependencies', 'optionalDependencies'])
  if (manifest[field] !== undefined) faults.push(`package.json has ${field}`);
// What the command alone asks for, when it is asked to read a file: nothing is installed for it.
const optional = manifest['peerDependenciesMeta'] as Record<string, { optional?: boolean }>;
for (const peer of Object.keys((manifest['peerDependencies'] as object | undefined) ?? {}))
  if (peer !== '@duckdb/node-api' || optional[peer]?.optional !== true)
    faults.push(`package.json has the peer ${peer}`);
for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;

/**
 * Publishes the package: `npm run release` checks and packs without sending anything, `npm run release -- --send` sends, after a
 * build. Sending asks for a clean tree whose commit has the tag `v<version>`; it carries provenance, which npm can make only where
 * the runner proves who it is (`id-token: write` or its like). Where the package goes, npm's own settings say; none stand here.
 */

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { page } from './notices.js';

const send = process.argv.includes('--send');
const git = (...words: string[]) => execFileSync('git', words, { encoding: 'utf8' }).trim();
const json = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;

const manifest = json('package.json');
const version = String(manifest['version']);
const faults: string[] = [];
/** What only sending asks for; a dry run says it. */
const open: string[] = [];

if (!/^\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?$/.test(version))
  faults.push(`package.json: ${version} is no version`);
const lock = json('package-lock.json');
if (lock['version'] !== version)
  faults.push(`package-lock.json has version ${lock['version']}, package.json ${version}`);
const entries = page('docs/reference/changes.mdx').split(/^## /m).slice(1);
const entry = entries.find((text) => text.split('\n')[0]?.trim() === version);
if (entry === undefined) faults.push(`docs/reference/changes.mdx has no entry ${version}`);
else {
  if (entry !== entries[0]) faults.push(`the newest entry of the changes is not ${version}`);
  if (!entry.includes('### Results changed'))
    faults.push(`the entry ${version} does not say which results changed`);
}
for (const file of ['dist/index.js', 'dist/index.d.ts', 'NOTICES.md', 'sbom.cdx.json'])
  if (!existsSync(file)) faults.push(`${file} is missing: run \`npm run build\``);
if (existsSync('sbom.cdx.json')) {
  const { component } = json('sbom.cdx.json')['metadata'] as { component: { version: string } };
  if (component.version !== version)
    faults.push(`sbom.cdx.json is of version ${component.version}`);
}
// A place named here would send a fork's package to ours, or ours to somebody's mirror.
const publishing = manifest['publishConfig'] as Record<string, unknown> | undefined;
if (publishing?.['registry'] !== undefined) faults.push('package.json names where to publish');
if (existsSync('.npmrc') && /^\s*(@[^:]+:)?registry\s*=/m.test(readFileSync('.npmrc', 'utf8')))
  faults.push('.npmrc names where to publish');

const changed = git('status', '--porcelain');
if (changed !== '') open.push(`the tree is not clean:\n${changed}`);
const tags = git('tag', '--points-at', 'HEAD').split('\n');
if (!tags.includes(`v${version}`)) open.push(`the commit has no tag v${version}`);

for (const fault of faults) console.error(fault);
for (const missing of open) console.error(`${send ? '' : 'before sending: '}${missing}`);
if (faults.length > 0 || (send && open.length > 0)) process.exit(1);

const words = ['publish', '--ignore-scripts', '--access', 'public'];
execFileSync('npm', [...words, ...(send ? ['--provenance'] : ['--dry-run'])], { stdio: 'inherit' });

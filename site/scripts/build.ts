/**
 * Builds the whole site: validation figures if there are none or the library has changed since, pages, search,
 * service worker, checks. `npm run site:build`; `--fresh` makes the validation figures anew in any case.
 */

import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const figures = `${root}tests/.validation`;

function run(what: string, ...args: string[]): void {
  const { status } = spawnSync('npx', ['--no-install', what, ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
}

/** When each file of a folder was last written, in ms. */
function written(folder: string): number[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => statSync(`${folder}/${name}`))
    .filter((entry) => entry.isFile())
    .map(({ mtimeMs }) => mtimeMs);
}

const oldest = Math.min(...written(figures));
const stale = !Number.isFinite(oldest) || written(`${root}src`).some((time) => time > oldest);
if (stale || process.argv.includes('--fresh')) {
  console.log('The Validation page is made from a test run; running the tests.');
  rmSync(figures, { recursive: true, force: true });
  run('vitest', 'run');
}
rmSync(`${root}site/src/content/docs/api`, { recursive: true, force: true });
run('astro', 'build', '--root', 'site');
run('tsx', 'site/scripts/policy.ts');
run('tsx', 'site/scripts/serviceWorker.ts');
run('tsx', 'site/scripts/check.ts');

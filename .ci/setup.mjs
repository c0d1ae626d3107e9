// Installs the locked dependencies when they are missing or older than the lock file.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';

const lock = 'package-lock.json';
const installed = 'node_modules/.package-lock.json';
if (!existsSync(installed) || statSync(installed).mtimeMs < statSync(lock).mtimeMs) {
  // The npm output goes to standard error, so that a record printed by `npm start` stays clean.
  const { status } = spawnSync('npm', ['ci', '--no-audit'], {
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
}

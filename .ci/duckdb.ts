/** DuckDB for scripts that try it: fetched into a folder outside the repository, because no other gate needs its hundred megabytes. */

import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Puts packages into a folder, unless DuckDB is there already.
 *
 * @returns Why it cannot be done, or nothing.
 */
export function fetchInto(folder: string, packages: readonly string[]): string | undefined {
  mkdirSync(folder, { recursive: true });
  if (existsSync(join(folder, 'node_modules', '@duckdb'))) return undefined;
  writeFileSync(join(folder, 'package.json'), '{ "private": true }');
  try {
    execFileSync('npm', ['install', '--no-audit', '--no-fund', '--fetch-retries=1', ...packages], {
      cwd: folder,
      stdio: ['ignore', 'inherit', 'pipe'],
      timeout: 180_000,
    });
    return undefined;
  } catch (error) {
    const { stderr } = error as { readonly stderr?: Buffer };
    const [first] = String(stderr ?? '')
      .split('\n')
      .filter(Boolean);
    return first ?? String(error);
  }
}

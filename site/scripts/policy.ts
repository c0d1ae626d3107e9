/**
 * Gives each built page a Content-Security-Policy: scripts from this site and the page's own inline ones, by their hash;
 * nothing from anywhere else, since no page fetches anything from another host.
 */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { withPolicy } from '../src/lib/policy.js';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
let pages = 0;
for (const entry of readdirSync(dist, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile() || !entry.name.endsWith('.html')) continue;
  const file = join(entry.parentPath, entry.name);
  writeFileSync(file, withPolicy(readFileSync(file, 'utf8')));
  pages += 1;
}
console.log(`policy: ${pages} pages`);

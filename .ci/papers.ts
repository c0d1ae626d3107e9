/**
 * Writes the papers that a user looks for beside package.json: `tsx .ci/papers.ts` puts CHANGELOG.md, SECURITY.md,
 * NOTICES.md and the bill of materials into the root for the tarball. Their text stands elsewhere (the pages of the site, the libraries' own folders),
 * so git leaves them out.
 */

import { readdirSync, writeFileSync } from 'node:fs';
import { billOfMaterials } from './billOfMaterials.js';
import { BUNDLED } from './bundled.js';
import { notices, page, read } from './notices.js';

/** Every import of src from outside, so that none goes into the package without its licence. */
function imported(): ReadonlySet<string> {
  const names = new Set<string>();
  for (const file of readdirSync('src', { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts')) continue;
    for (const [, name] of read(`src/${file}`).matchAll(
      /^(?:import|export) [^;]*?from '([^.'][^']*)';/gm,
    ))
      if (name !== undefined && !name.startsWith('node:')) names.add(name);
  }
  return names;
}

const outside = [...imported()].sort();
const listed = BUNDLED.map(({ name }) => name as string).sort();
if (JSON.stringify(outside) !== JSON.stringify(listed))
  throw new Error(`.ci/bundled.ts lists ${listed.join(', ')}; src imports ${outside.join(', ')}`);

writeFileSync('CHANGELOG.md', page('docs/reference/changes.mdx'));
writeFileSync('SECURITY.md', page('docs/reference/security.mdx'));
writeFileSync('NOTICES.md', notices());
writeFileSync('sbom.cdx.json', `${JSON.stringify(billOfMaterials(), null, 2)}\n`);

/**
 * Writes the papers that a user looks for beside package.json: `tsx .ci/papers.ts` puts CHANGELOG.md, SECURITY.md and
 * NOTICES.md into the root for the tarball. Their text stands elsewhere (the pages of the site, the libraries' own folders),
 * so git leaves them out.
 */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { BUNDLED } from './bundled.js';

const read = (path: string) => readFileSync(path, 'utf8');

/** A page of the site as plain Markdown: title for front matter, links into the site as words. */
function page(path: string): string {
  const [, head, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(read(path)) ?? [];
  const title = /^title: (.*)$/m.exec(head ?? '')?.[1];
  if (title === undefined || body === undefined) throw new Error(`no front matter: ${path}`);
  return `# ${title}\n${body.replace(/\[([^\]]+)\]\(\/[^)]*\)/g, '$1')}`;
}

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

/** Licence of a library as its authors ship it. */
function licence(library: (typeof BUNDLED)[number]): string {
  const home = `node_modules/${library.name}`;
  const { version } = JSON.parse(read(`${home}/package.json`)) as { readonly version: string };
  const text =
    'file' in library
      ? read(`${home}/${library.file}`)
      : (/\/\*\*([\s\S]*?)\*\//.exec(read(`${home}/${library.head}`))?.[1] ?? '').replace(
          '@preserve',
          '',
        );
  if (!/copyright|license/i.test(text)) throw new Error(`no licence text: ${library.name}`);
  return `## ${library.name} ${version} (${library.license})\n\n\`\`\`text\n${text.trim()}\n\`\`\`\n`;
}

const outside = [...imported()].sort();
const listed = BUNDLED.map(({ name }) => name as string).sort();
if (JSON.stringify(outside) !== JSON.stringify(listed))
  throw new Error(`.ci/bundled.ts lists ${listed.join(', ')}; src imports ${outside.join(', ')}`);

writeFileSync('CHANGELOG.md', page('docs/reference/changes.mdx'));
writeFileSync('SECURITY.md', page('docs/reference/security.mdx'));
writeFileSync(
  'NOTICES.md',
  `# Notices\n\n${page('docs/reference/data-licences.mdx').replace(/^# /, '## ')}\n## Libraries inside the package\n\n${BUNDLED.map(licence).join('\n').replace(/^## /gm, '### ')}`,
);

/** NOTICES.md: the licences of the data and of the libraries that the package carries. */

import { readFileSync } from 'node:fs';
import { BUNDLED } from './bundled.js';

export const read = (path: string) => readFileSync(path, 'utf8');

/** A page of the site as plain Markdown: title for front matter, links into the site as words. */
export function page(path: string): string {
  const [, head, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(read(path)) ?? [];
  const title = /^title: (.*)$/m.exec(head ?? '')?.[1];
  if (title === undefined || body === undefined) throw new Error(`no front matter: ${path}`);
  return `# ${title}\n${body.replace(/\[([^\]]+)\]\(\/[^)]*\)/g, '$1')}`;
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

/** The text of NOTICES.md. */
export function notices(): string {
  const data = page('docs/reference/data-licences.mdx').replace(/^# /, '## ');
  const libraries = BUNDLED.map(licence).join('\n').replace(/^## /gm, '### ');
  return `# Notices\n\n${data}\n## Libraries inside the package\n\n${libraries}`;
}

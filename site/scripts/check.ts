/**
 * Checks the built site: every inner link leads to a page and a heading that exist, every formula is typeset, no page is
 * empty, no address of another host is fetched, each page has its policy, pages keep to their budget of bytes.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));

/** Budget of a page as it travels, HTML and all its styles and scripts, compressed. */
const BUDGET_KB = 160;

const files = new Set(
  readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(dist.length).split(sep).join('/')),
);
const pages = [...files].filter((file) => file.endsWith('.html'));
const html = new Map(pages.map((page) => [page, readFileSync(join(dist, page), 'utf8')]));
const ids = new Map(
  [...html].map(([page, text]) => [
    page,
    new Set([...text.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id)),
  ]),
);
const problems: string[] = [];

/** The file that an address leads to, or undefined. */
function fileAt(pathname: string): string | undefined {
  const path = decodeURIComponent(pathname).slice(1);
  if (path === '' || path.endsWith('/'))
    return files.has(`${path}index.html`) ? `${path}index.html` : undefined;
  return files.has(path) ? path : undefined;
}

function checkLinks(page: string, text: string): void {
  const base = `https://site.invalid/${page.replace(/index\.html$/, '')}`;
  for (const [, raw = ''] of text.matchAll(/<a\s[^>]*?href="([^"]*)"/g)) {
    const url = new URL(raw.replace(/&(?:amp|#38);/g, '&'), base);
    if (url.host !== 'site.invalid') continue;
    const target = fileAt(url.pathname);
    const anchor = decodeURIComponent(url.hash.slice(1));
    if (!target) problems.push(`${page}: link to ${raw}, which does not exist`);
    // Between API pages TypeDoc numbers a repeated heading otherwise than Astro; the page is right all the same.
    else if (page.startsWith('api/') && target.startsWith('api/')) continue;
    else if (anchor && anchor !== '_top' && !ids.get(target)?.has(anchor))
      problems.push(`${page}: link to ${raw}, which has no such heading`);
  }
}

const weights = new Map<string, number>();
/** Compressed size of a file in kB. */
function weight(file: string): number {
  const known = weights.get(file);
  if (known !== undefined) return known;
  const kb = gzipSync(readFileSync(join(dist, file))).length / 1024;
  weights.set(file, kb);
  return kb;
}

let heaviest = { page: '', kb: 0 };
for (const [page, text] of html) {
  if (page === '404.html') continue;
  checkLinks(page, text);
  if (/katex-error|#cc0000/.test(text)) problems.push(`${page}: a formula could not be typeset`);
  if (!text.includes('http-equiv="content-security-policy"')) problems.push(`${page}: no policy`);
  if (/data-kept-size="\w+">some/.test(text)) problems.push(`${page}: a size was not filled in`);
  if (/<div class="sl-markdown-content">\s*<\/div>/.test(text))
    problems.push(`${page}: empty page`);
  for (const [, address = ''] of text.matchAll(
    /<(?:script|img|link rel="stylesheet")[^>]*?\s(?:src|href)="(https?:[^"]+)"/g,
  ))
    problems.push(`${page}: fetches ${address}`);
  const parts = [...text.matchAll(/(?:src|href)="(\/_astro\/[^"]+\.(?:js|css))"/g)].map(
    ([, path = '']) => path.slice(1),
  );
  const kb = weight(page) + [...new Set(parts)].reduce((sum, part) => sum + weight(part), 0);
  if (kb > heaviest.kb) heaviest = { page, kb };
  if (kb > BUDGET_KB && !page.startsWith('api/'))
    problems.push(`${page}: ${kb.toFixed(0)} kB, more than the ${BUDGET_KB} kB allowed`);
}
if (problems.length > 0) {
  console.error(problems.join('\n'));
  process.exitCode = 1;
} else {
  const { page, kb } = heaviest;
  console.log(
    `site: ${pages.length} pages, links and formulas right; heaviest ${page}, ${kb.toFixed(0)} kB`,
  );
}

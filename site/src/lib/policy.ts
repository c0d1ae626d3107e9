/** The Content-Security-Policy of a page, from the page itself. Runs when the site is built. */

import { createHash } from 'node:crypto';

/** Kinds of script that a browser runs; any other is data. */
const RUNS = /^(|text\/javascript|module|importmap)$/;

/** Hashes of the scripts that stand in the page itself, each once. */
export function scriptHashes(html: string): readonly string[] {
  const found = [...html.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)].flatMap(
    ([, attributes = '', text = '']) => {
      const type = /\btype="([^"]*)"/.exec(attributes)?.[1] ?? '';
      if (/\bsrc=/.test(attributes) || !RUNS.test(type)) return [];
      return [`'sha256-${createHash('sha256').update(text).digest('base64')}'`];
    },
  );
  return [...new Set(found)];
}

/**
 * What a page may do. Styles stand in attributes too (formulas, code), which no hash can name; the search compiles
 * WebAssembly; pictures and small fonts may stand in the styles as data; the job page prints a document of its own.
 */
function policyOf(html: string): string {
  return [
    "default-src 'none'",
    ["script-src 'self' 'wasm-unsafe-eval'", ...scriptHashes(html)].join(' '),
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "frame-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "object-src 'none'",
  ].join('; ');
}

/** The page with its policy, before anything that it bears on; a page that has one gets it anew. */
export function withPolicy(html: string): string {
  const bare = html.replace(/<meta http-equiv="content-security-policy"[^>]*>/, '');
  const meta = `<meta http-equiv="content-security-policy" content="${policyOf(bare)}">`;
  const charset = /<meta charset="[^"]*"\s*\/?>/i.exec(bare);
  return charset
    ? bare.replace(charset[0], `${charset[0]}${meta}`)
    : bare.replace(/<head[^>]*>/, (head) => `${head}${meta}`);
}

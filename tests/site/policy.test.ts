/** What the policy of a page lets run: its own scripts and those of the site, and nothing that was put in later. */

import { expect, test } from 'vitest';
import { scriptHashes, withPolicy } from '../../site/src/lib/policy.js';

const page = (head: string, body = '') =>
  `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"/>${head}</head><body>${body}</body></html>`;

test('an inline script is named by its hash, in the form of the specification', () => {
  // CSP Level 3, section 2.3.1 gives alert('Hello, world.'); with this hash.
  const html = page("<script>alert('Hello, world.');</script>");
  expect(scriptHashes(html)).toEqual(["'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='"]);
});

test('scripts of the site and data need no hash', () => {
  const html = page(
    '<script src="/reach.js" defer></script><script type="application/json">{}</script>',
  );
  expect(scriptHashes(html)).toEqual([]);
});

test('the policy stands before all scripts, once, and names no other host', () => {
  const html = page('<script>a()</script>', '<script type="module">b()</script>');
  const made = withPolicy(withPolicy(html));
  const metas = [
    ...made.matchAll(/<meta http-equiv="content-security-policy" content="([^"]*)">/g),
  ];
  expect(metas).toHaveLength(1);
  expect(made.indexOf('content-security-policy')).toBeLessThan(made.indexOf('<script'));
  const policy = metas[0]?.[1] ?? '';
  for (const hash of scriptHashes(html)) expect(policy).toContain(hash);
  expect(policy).not.toMatch(/https?:|\*|'unsafe-eval'|script-src[^;]*'unsafe-inline'/);
});

test('a script that is put in afterwards has no hash', () => {
  const made = withPolicy(page('<script>a()</script>'));
  const [own] = scriptHashes(page('<script>a()</script>'));
  const [other] = scriptHashes(page('<script>evil()</script>'));
  expect(made).toContain(own);
  expect(made).not.toContain(other);
});

/** A page without a bundler: the built modules served as they are, every entry named in an import map, one answer as in Node. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';

const root = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(fileURLToPath(new URL(path, root)), 'utf8');

const { exports } = JSON.parse(read('package.json')) as {
  readonly exports: Readonly<Record<string, { readonly import?: { readonly default: string } }>>;
};
/** `slantpath/pointing` at `/dist/pointing/index.js`, and so on for every entry. */
const imports = Object.fromEntries(
  Object.entries(exports).flatMap(([key, { import: target }]) =>
    target ? [[key.replace(/^\./, 'slantpath'), target.default.replace(/^\./, '')]] : [],
  ),
);
const HOST = 'http://modules.example';

test('every entry loads through an import map', async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.route(`${HOST}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname.startsWith('/dist/') && pathname.endsWith('.js'))
      await route.fulfill({ contentType: 'text/javascript', body: read(`.${pathname}`) });
    else if (pathname === '/')
      await route.fulfill({
        contentType: 'text/html',
        body: `<!doctype html><title>entries</title><script type="importmap">${JSON.stringify({ imports })}</script>`,
      });
    else await route.fulfill({ status: 404 });
  });
  await page.goto(`${HOST}/`);
  const names = Object.keys(imports);
  const loaded = await page.evaluate(async (entries) => {
    const sizes: Record<string, number> = {};
    for (const name of entries) sizes[name] = Object.keys(await import(name)).length;
    const { lookAngles } = await import(entries.find((name) => name.endsWith('/pointing')) ?? '');
    const look = lookAngles({ latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 }, 16.4);
    return { sizes, look: [look.azimuthDeg.toFixed(2), look.elevationDeg.toFixed(2)] };
  }, names);
  expect(names.length).toBeGreaterThan(20);
  for (const name of names) expect(loaded.sizes[name], name).toBeGreaterThan(0);
  // The numbers that README prints.
  expect(loaded.look).toEqual(['171.63', '36.10']);
  expect(errors).toEqual([]);
});

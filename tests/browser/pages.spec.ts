/**
 * Every hand-written page: no noise, axe-clean in both themes, nothing sticks out, one heading of the first order, and
 * within the budget of bytes that travel at a first visit (examples, fonts and climate grid included).
 */

import { readdirSync } from 'node:fs';
import { axe, expect, fitsWindow, test } from './fixtures.js';

const docs = new URL('../../docs/', import.meta.url);
const pages = readdirSync(docs, { recursive: true, encoding: 'utf8' })
  .filter((path) => /^(?!decisions|schemas)[^_]*\.mdx?$/.test(path))
  .map((path) => path.replace(/\/?(index)?\.mdx?$/, '').toLowerCase())
  .sort();

/** Budget of a first visit; the climate grid alone is 150 kB of it on the pages that use it. */
const BUDGET_KB = 420;

/** Kinds of page that are not written by hand. */
const made = ['api/overview', 'api/pointing/functions/lookangles', 'api/pointing/overview'];

for (const path of [...pages, ...made]) {
  test(`/${path} reads well`, async ({ page }) => {
    let bytes = 0;
    page.on('requestfinished', async (request) => {
      const { responseBodySize, responseHeadersSize } = await request.sizes();
      bytes += responseBodySize + responseHeadersSize;
    });
    await page.goto(path === '' ? '/' : `/${path}/`);
    await expect(page.locator('h1')).toHaveCount(1);
    for (const example of await page.locator('worked-example').all())
      await expect(example).toHaveAttribute('data-ready');
    await page.waitForLoadState('networkidle');
    console.log(`/${path}: ${Math.round(bytes / 1024)} kB`);
    expect(bytes / 1024).toBeLessThan(BUDGET_KB);
    await fitsWindow(page);
    expect(await axe(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axe(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light', media: 'print' });
    await expect(page.locator('h1')).toBeVisible();
  });
}

test('there are pages', () => {
  expect(pages.length).toBeGreaterThan(10);
});

/** Every translated page; on the phone only, where words have least room: the layout is that of the English pages. */

import { expect, handWritten, readsWell, test } from './fixtures.js';

const pages = handWritten.filter((path) => /^[a-z]{2}(\/|$)/.test(path));

for (const path of pages)
  test(`/${path} reads well`, async ({ page }) => {
    await readsWell(page, path);
    await expect(page.locator('html')).toHaveAttribute('lang', path.slice(0, 2));
  });

test('there are translated pages', () => {
  expect(pages.length).toBeGreaterThan(10);
});

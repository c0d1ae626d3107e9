/** Every hand-written page in English, and the kinds of page that are made. */

import { expect, handWritten, readsWell, test } from './fixtures.js';

const pages = handWritten.filter((path) => !/^[a-z]{2}(\/|$)/.test(path));

/** Kinds of page that are not written by hand. */
const made = ['api/overview', 'api/pointing/functions/lookangles', 'api/pointing/overview'];

for (const path of [...pages, ...made])
  test(`/${path} reads well`, async ({ page }) => readsWell(page, path));

test('there are pages', () => {
  expect(pages.length).toBeGreaterThan(10);
});

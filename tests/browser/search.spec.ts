/** The search: pages for functions by their name, and for the trade's words and misspellings the page that answers. */

import { expect, test } from './fixtures.js';
import { ENGLISH, GERMAN } from './queries.js';

for (const [words, heading] of [
  ['skew', /skew|polarization|feed/i],
  ['half way back', /bracketing/i],
  ['lookAngles', /lookAngles/],
] as const)
  test(`search for ${words}`, async ({ page }) => {
    await page.goto('/reference/safety/');
    await page.getByRole('button', { name: 'Search' }).click();
    await page.getByPlaceholder('Search').fill(words);
    const hit = page.locator('.pagefind-ui__result-link').filter({ hasText: heading }).first();
    await expect(hit).toBeVisible();
    await hit.click();
    await expect(page.locator('h1')).toBeVisible();
  });

interface Found {
  search(words: string): Promise<{ results: { data(): Promise<{ url: string }> }[] }>;
}

for (const [language, start, queries] of [
  ['English', '/reference/safety/', ENGLISH],
  ['German', '/de/', GERMAN],
] as const)
  test(`what people type finds its page among the first three: ${language}`, async ({ page }) => {
    await page.goto(start);
    const found = await page.evaluate(
      async (list) => {
        const index = '/pagefind/pagefind.js';
        const { search } = (await import(index)) as Found;
        const urls: string[][] = [];
        for (const words of list) {
          const { results } = await search(words);
          const first = await Promise.all(results.slice(0, 3).map((result) => result.data()));
          urls.push(first.map(({ url }) => url));
        }
        return urls;
      },
      queries.map(([words]) => words),
    );
    const missed = queries.flatMap(([words, wanted], index) =>
      found[index]?.includes(`/${wanted}/`) ? [] : [`${words}: ${found[index]?.join(' ')}`],
    );
    expect(missed).toEqual([]);
  });

/** The search: pages for functions by their name, and for the trade's words and misspellings the page that answers. */

import { expect, test } from './fixtures.js';
import { ENGLISH, GERMAN, NAMED_BY_FUNCTIONS } from './queries.js';

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
  options(of: { ranking: Readonly<Record<string, number>> }): Promise<void>;
}

/** The ranking that the search field of the site asks for: Starlight's own, and what `astro.config.mjs` sets. */
const RANKING = { pageLength: 0.1, termFrequency: 0.1, termSaturation: 2, termSimilarity: 3 };

for (const [language, start, queries, first] of [
  ['English', '/reference/safety/', ENGLISH, 3],
  ['German', '/de/', GERMAN, 3],
  ['words that functions are named by', '/reference/safety/', NAMED_BY_FUNCTIONS, 5],
] as const)
  test(`what people type finds its page among the first: ${language}`, async ({ page }) => {
    await page.goto(start);
    const found = await page.evaluate(
      async ({ list, first, ranking }) => {
        const index = '/pagefind/pagefind.js';
        const { search, options } = (await import(index)) as Found;
        await options({ ranking });
        const urls: string[][] = [];
        for (const words of list) {
          const { results } = await search(words);
          const some = await Promise.all(results.slice(0, first).map((result) => result.data()));
          urls.push(some.map(({ url }) => url));
        }
        return urls;
      },
      { list: queries.map(([words]) => words), first, ranking: RANKING },
    );
    queries.forEach(([words], index) => {
      console.log(`${words}: ${found[index]?.slice(0, 3).join(' ')}`);
    });
    const missed = queries.flatMap(([words, wanted], index) =>
      found[index]?.includes(`/${wanted}/`) ? [] : [`${words}: ${found[index]?.join(' ')}`],
    );
    expect(missed).toEqual([]);
  });

import { expect, test } from './fixtures.js';

for (const [words, heading] of [
  ['skew', /skew|polarization/i],
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

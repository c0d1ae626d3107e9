/** The answer comes first: on a phone the live part of every example begins within 1.2 screens. */

import { expect, handWritten, test } from './fixtures.js';

const SCREENS = 1.2;
const pages = handWritten.filter((path) => /^(\w\w\/)?examples\/./.test(path));

for (const path of pages)
  test(`/${path}: sentence and first field`, async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(`/${path}/`);
    const example = page.locator('worked-example').first();
    const bottom = async (what: string) => {
      const box = await example.locator(what).first().boundingBox();
      return box ? box.y + box.height : Number.POSITIVE_INFINITY;
    };
    expect(await bottom('.ex-says')).toBeLessThan(SCREENS * 844);
    const field = await bottom('.ex-form :is(input, select, textarea)');
    console.log(`/${path}: first field ends at ${Math.round(field)} px`);
    expect(field).toBeLessThan(SCREENS * 844);
  });

test('home: the whole answer is on the first screen of a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/');
  const box = await page.locator('.home-answer').boundingBox();
  console.log(`home: the answer ends at ${Math.round((box?.y ?? 0) + (box?.height ?? 0))} px`);
  expect((box?.y ?? 0) + (box?.height ?? Number.POSITIVE_INFINITY)).toBeLessThan(844);
});

test('there are examples', () => {
  expect(pages.length).toBeGreaterThan(40);
});

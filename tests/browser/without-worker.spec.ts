/** Where no worker comes to life, the page answers by itself. */

import { expect, test } from './fixtures.js';

for (const [how, spoil] of [
  ['a browser without workers', () => Reflect.deleteProperty(globalThis, 'Worker')],
  [
    'a page that may start none',
    () => {
      globalThis.Worker = class {
        constructor() {
          throw new Error('refused');
        }
      } as unknown as typeof Worker;
    },
  ],
] as const)
  test(`an example answers in ${how}`, async ({ page }) => {
    await page.addInitScript(spoil);
    await page.goto('/examples/half-way-back/');
    const example = page.locator('worked-example');
    await expect(example).toHaveAttribute('data-ready');
    await expect(example).toContainText('Turn back 2.50 turns');
    await example.locator('input[name]').nth(1).fill('7');
    // Half of 7 turns by the rule of coming back half way.
    await expect(example).toContainText('Turn back 3.50 turns');
  });

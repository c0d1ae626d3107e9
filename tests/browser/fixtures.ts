/** What every browser test shares: a page that tolerates no noise, axe, and a worked example by name. */

import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test as base, expect, type Locator, type Page } from '@playwright/test';

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);

interface AxeViolation {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly target: readonly string[] }[];
}

/** Runs axe in the page and returns its violations as short strings. */
export async function axe(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: AxeViolation[] }> };
    };
    return (await axe.run()).violations;
  });
  return violations.map(
    (v) => `${v.id} (${v.impact}): ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`,
  );
}

/** Opens what is folded among the inputs of an example. */
const openFolds = (example: Locator): Promise<void> =>
  example.locator('.ex-more').evaluateAll((folds) => {
    for (const fold of folds) (fold as HTMLDetailsElement).open = true;
  });

/** Opens the page of a worked example and waits until it answers. */
export async function openExample(page: Page, name: string, query = ''): Promise<Locator> {
  await page.goto(`/examples/${name}/${query}`);
  const example = page.getByTestId(name);
  await expect(example).toHaveAttribute('data-ready');
  await openFolds(example);
  return example;
}

/** The number or text field whose label begins with these words. */
export function field(example: Locator, label: string): Locator {
  return example.getByRole('textbox', { name: new RegExp(`^${label}`) });
}

/** The figure that an answer shows under a label. */
export function output(example: Locator, label: string): Locator {
  return example
    .locator('.ex-outputs > div')
    .filter({ has: example.page().locator('dt', { hasText: new RegExp(`^${label}$`) }) })
    .locator('output');
}

/** Nothing on the page is wider than the window. */
export async function fitsWindow(page: Page): Promise<void> {
  const [wide, window] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    innerWidth,
  ]);
  expect(wide).toBeLessThanOrEqual(window ?? 0);
}

const docs = new URL('../../docs/', import.meta.url);

/** The addresses of all hand-written pages. */
export const handWritten = readdirSync(docs, { recursive: true, encoding: 'utf8' })
  .filter((path) => /^(?!decisions|schemas)[^_]*\.mdx?$/.test(path))
  .map((path) => path.replace(/\/?(index)?\.mdx?$/, '').toLowerCase())
  .sort();

/** Budget of a first visit; the climate grid alone is 150 kB of it on the pages that use it. */
const BUDGET_KB = 420;

/**
 * Axe-clean in both themes, nothing sticks out, one heading of the first order, and within the budget of bytes that
 * travel at a first visit (examples, fonts and climate grid included).
 */
export async function readsWell(page: Page, path: string): Promise<void> {
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
  const window = page.viewportSize();
  if (window && window.width > 820) {
    // Between phone and desktop, as a tablet held upright.
    await page.setViewportSize({ width: 820, height: 900 });
    await fitsWindow(page);
    await page.setViewportSize(window);
  }
  expect(await axe(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axe(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light', media: 'print' });
  await expect(page.locator('h1')).toBeVisible();
}

/** `page` that fails the test on console errors, page errors and failed or foreign requests. */
export const test = base.extend<{ problems: string[] }>({
  problems: [
    async ({ page, baseURL }, use) => {
      const problems: string[] = [];
      page.on('console', (message) => {
        if (message.text() === 'Service Worker registration blocked by Playwright') return;
        if (message.type() === 'error' || message.type() === 'warning')
          problems.push(`console ${message.type()}: ${message.text()}`);
      });
      page.on('pageerror', (error) => problems.push(`page error: ${error.message}`));
      page.on('requestfailed', (request) => {
        const why = request.failure()?.errorText;
        // What a page still fetches when it is left is given up by the browser: no failure of the site.
        if (why !== 'net::ERR_ABORTED') problems.push(`failed: ${request.url()} ${why}`);
      });
      page.on('request', (request) => {
        const url = request.url();
        if (!/^(data|blob):/.test(url) && !url.startsWith(baseURL ?? ''))
          problems.push(`foreign request: ${url}`);
      });
      await use(problems);
      expect(problems).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

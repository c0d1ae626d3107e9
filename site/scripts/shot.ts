/**
 * Takes a picture of a page: `npx tsx site/scripts/shot.ts URL OUT.png [width] [light|dark] [selector]`.
 * The picture shows the whole page, or the first element that fits the selector (`.ex-figure`, `worked-example`);
 * console errors and warnings are printed.
 */
import { chromium } from '@playwright/test';

const [url, out, width = '390', scheme = 'light', selector] = process.argv.slice(2);
if (!url || !out) throw new Error('usage: shot.ts URL OUT.png [width] [light|dark] [selector]');

const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  args: ['--disable-gpu'],
});
const page = await browser.newPage({
  viewport: { width: Number(width), height: selector ? 4000 : 900 },
  colorScheme: scheme === 'dark' ? 'dark' : 'light',
});
page.on('console', (message) => {
  if (message.type() === 'error' || message.type() === 'warning') console.log(message.text());
});
page.on('pageerror', (error) => console.log(error.message));
await page.goto(url, { waitUntil: 'networkidle' });
const live = await page.locator('worked-example').count();
if (live > 0) await page.waitForSelector('worked-example[data-ready]', { timeout: 10_000 });
const wide = await page.evaluate(() => document.documentElement.scrollWidth);
if (wide > Number(width)) console.log(`the page is ${wide} px wide: something sticks out`);
if (selector) await page.locator(selector).first().screenshot({ path: out });
else await page.screenshot({ path: out, fullPage: true });
await browser.close();

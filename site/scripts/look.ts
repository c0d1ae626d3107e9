/**
 * Looks at every page: `npx tsx site/scripts/look.ts BASE OUT [--pages=REGEX] [--combos=390:light,820:measure] [--high=3000]`.
 *
 * Pictures of all pages go into contact sheets (OUT/390-light-1.png ...), strips of a page beside one another. Each page is measured
 * meanwhile (`look/measure.ts`; `820:measure` does only that): what sticks out, is cut, too small to touch or lies over something
 * else is printed and kept in OUT/findings.json. BASE is a dev server or the built site (`serve.ts`).
 */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import { type Finding, measure } from './look/measure.js';
import { ContactSheets } from './look/sheets.js';

const [base, out] = process.argv.slice(2).filter((word) => !word.startsWith('--'));
if (!base || !out)
  throw new Error('usage: look.ts BASE OUT [--pages=REGEX] [--combos=390:light,...]');
const option = (name: string, otherwise: string) =>
  process.argv.find((word) => word.startsWith(`--${name}=`))?.slice(name.length + 3) ?? otherwise;
const wanted = new RegExp(option('pages', '.'));
const high = Number(option('high', '3000'));
const combos = option('combos', '390:light,390:dark,820:light,820:dark,1280:light,1280:dark')
  .split(',')
  .map((combo) => {
    const [width = '390', scheme = 'light'] = combo.split(':');
    return {
      width: Number(width),
      scheme: scheme === 'dark' ? ('dark' as const) : ('light' as const),
      shot: scheme !== 'measure',
    };
  });

const pages = readdirSync('docs', { recursive: true, encoding: 'utf8' })
  .filter((path) => /^(?!decisions|schemas)[^_]*\.mdx?$/.test(path))
  .map((path) => path.replace(/\/?(index)?\.mdx?$/, '').toLowerCase())
  .concat('validation/pointing', 'no-such-page')
  .filter((path) => wanted.test(`/${path}`))
  .sort();

/** Waits until the live parts of a page answer. */
async function settle(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      [...document.querySelectorAll('worked-example, home-live')].every(
        (one) => 'ready' in (one as HTMLElement).dataset,
      ),
    undefined,
    { timeout: 60_000 },
  );
  await page.evaluate(() => document.fonts.ready);
}

mkdirSync(out, { recursive: true });
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  args: ['--disable-gpu'],
});
const sheets = new Map(
  combos.map(({ width, scheme }) => [
    `${width}-${scheme}`,
    new ContactSheets(`${out}/${width}-${scheme}`, width),
  ]),
);
const findings: Finding[] = [];
const tell = (found: readonly Finding[]) => {
  findings.push(...found);
  for (const { path, width, kind, what } of found)
    console.log(`/${path} ${width} ${kind}: ${what}`);
};
for (const path of pages) {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  // The loader names functions through a helper that the page does not have.
  await page.addInitScript('globalThis.__name = (one) => one');
  page.on('pageerror', (error) => tell([{ path, width: 0, kind: 'error', what: error.message }]));
  try {
    await page.goto(`${base.replace(/\/$/, '')}/${path}${path ? '/' : ''}`, {
      waitUntil: 'load',
      timeout: 120_000,
    });
    await settle(page);
    let measured = 0;
    for (const { width, scheme, shot } of combos) {
      await page.emulateMedia({ colorScheme: scheme });
      await page.setViewportSize({ width, height: width === 390 ? 844 : 900 });
      await page.waitForTimeout(80);
      if (measured !== width)
        tell((await page.evaluate(measure)).map((one) => ({ path, width, ...one })));
      measured = width;
      if (!shot) continue;
      const tall = await page.evaluate(() => document.documentElement.scrollHeight);
      const picture = await page.screenshot({
        fullPage: true,
        clip: { x: 0, y: 0, width, height: Math.min(tall, high) },
      });
      await sheets.get(`${width}-${scheme}`)?.add(`/${path}`, picture);
    }
  } catch (error) {
    tell([{ path, width: 0, kind: 'error', what: String(error).slice(0, 200) }]);
  }
  await page.close();
}
for (const sheet of sheets.values()) await sheet.finish();
await browser.close();
writeFileSync(`${out}/findings.json`, JSON.stringify(findings, null, 1));
for (const { path, width, kind, what } of findings)
  console.log(`/${path} ${width} ${kind}: ${what}`);
console.log(`${pages.length} pages, ${findings.length} findings`);

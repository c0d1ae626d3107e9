/** The site with its server stopped: pages never visited, an example, formulas, towns, search; and a newer version. */

import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { serve } from '../../site/scripts/serve.js';
import { keep, originOf, stop } from './server.js';

test.use({ serviceWorkers: 'allow' });
test.setTimeout(180_000);

test('works with the server stopped', async ({ page }) => {
  const server = await serve('site/dist', 0);
  const origin = originOf(server);
  await keep(page, origin);
  await stop(server);
  await expect
    .poll(() =>
      fetch(origin).then(
        () => 'up',
        () => 'down',
      ),
    )
    .toBe('down');

  await page.reload();
  await expect(page.locator('h1')).toBeVisible();
  await page.goto(`${origin}/examples/where-is-the-satellite/?orbitalLongitudeDeg=7.2`);
  const example = page.getByTestId('where-is-the-satellite');
  await expect(example).toHaveAttribute('data-ready');
  await expect(example.locator('.ex-says')).toContainText('7.2° E');
  await example.getByRole('button', { name: 'Find a town' }).click();
  await example.getByRole('combobox', { name: 'Town' }).fill('alice spr');
  await example.getByRole('option', { name: /^Alice Springs, Australia/ }).click();
  await expect(example.getByRole('textbox', { name: /^Latitude/ })).toHaveValue('-23.7');
  // Formulas that stand open load their letters from what was kept.
  await page.goto(`${origin}/reference/formula-sheet/`);
  await page.evaluate(() => document.fonts.ready);
  expect(await page.evaluate(() => document.fonts.check('16px KaTeX_Main'))).toBe(true);
  await page.goto(`${origin}/api/pointing/functions/lookangles/`);
  // The API is kept only on demand; its pages say so.
  await expect(page.locator('h1')).toHaveText('This page is not kept on this device');
});

test('says when a newer version is there, and shows it when asked', async ({ page }) => {
  const folder = join(tmpdir(), `slantpath-site-${process.pid}`);
  cpSync('site/dist', folder, { recursive: true });
  const server = await serve(folder, 0);
  const origin = originOf(server);
  await keep(page, origin);
  const glossary = join(folder, 'reference/glossary/index.html');
  writeFileSync(glossary, readFileSync(glossary, 'utf8').replaceAll('Glossary', 'Word list'));
  const worker = join(folder, 'sw.js');
  const text = readFileSync(worker, 'utf8');
  writeFileSync(
    worker,
    text
      .replace(/("\/reference\/glossary\/index\.html":")[0-9a-f]+/, '$1newer')
      .replace(/'slantpath-[0-9a-f]+'/, "'slantpath-newer'"),
  );
  await page.goto(`${origin}/reference/glossary/`);
  await expect(page.locator('h1')).toHaveText('Glossary');
  await page.getByRole('button', { name: 'Show it' }).click();
  await expect(page.locator('h1')).toHaveText('Word list');
  await stop(server);
  rmSync(folder, { recursive: true });
});

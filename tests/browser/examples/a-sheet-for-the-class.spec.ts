/** A sheet for the class: the same sheet for the same link, answers checked as the library does. */

import { readFileSync } from 'node:fs';
import {
  checkAnswer,
  worksheet,
  worksheetCsv,
  worksheetHtml,
  worksheetQti,
} from '../../../src/teaching/index.js';
import { axe, expect, field, fitsWindow, openExample, test } from '../fixtures.js';

const name = 'a-sheet-for-the-class';
const query = '?seed=31&count=2&level=3&kinds=free-space-loss*pointing-loss';
const sheet = worksheet({
  seed: 31,
  count: 2,
  level: 3,
  plans: ['free-space-loss', 'pointing-loss'],
});

test('the link gives the sheet; answers are checked and slips named', async ({ page }) => {
  await openExample(page, name, query);
  const list = page.locator('.sheet-list > li');
  await expect(list).toHaveCount(2);
  for (const [index, exercise] of sheet.exercises.entries()) {
    const item = list.nth(index);
    await expect(item.locator('h3')).toHaveText(exercise.solution.title);
    for (const { value } of exercise.solution.givens)
      await expect(item.locator('ul')).toContainText(String(value));
    const answer = item.locator('[data-own-answer]');
    const verdict = item.locator('.sheet-verdict');
    await answer.fill(exercise.answer.toFixed(exercise.decimals).replace('.', ','));
    await answer.press('Enter');
    await expect(verdict).toHaveText('✓ Right.');
    await answer.fill('no idea');
    await item.getByRole('button', { name: 'Check' }).click();
    await expect(verdict).toContainText('not a number');
  }
  const loss = sheet.exercises.findIndex(({ plan }) => plan === 'free-space-loss');
  const exercise = sheet.exercises[loss];
  if (!exercise) throw new Error('there must be a free-space loss');
  // 1000 times the frequency or the distance adds 60 dB: the library names both, and so does the page.
  const wrong = (exercise.answer + 60).toFixed(2);
  const check = checkAnswer(exercise, wrong);
  if (check.kind !== 'wrong') throw new Error('60 dB too much must be wrong');
  expect(check.slips.length).toBe(2);
  await list.nth(loss).locator('[data-own-answer]').fill(wrong);
  await list.nth(loss).locator('[data-own-answer]').press('Enter');
  for (const { explanation } of check.slips)
    await expect(list.nth(loss).locator('.sheet-verdict')).toContainText(explanation);
  await expect(page.locator('.sheet-count')).toHaveText('0 of 2 right');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('hints come one by one, in order, and end', async ({ page }) => {
  await openExample(page, name, query);
  const item = page.locator('.sheet-list > li').first();
  const hints = sheet.exercises[0]?.hints ?? [];
  const button = item.locator('[data-hint]');
  for (const index of hints.keys()) {
    await expect(button).toHaveText(`Hint ${index + 1} of ${hints.length}`);
    await button.click();
    await expect(item.locator('.sheet-hints li')).toHaveCount(index + 1);
  }
  await expect(button).toBeDisabled();
  await fitsWindow(page);
});

test('settings change the sheet and the address', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Seed').fill('12');
  await example.getByText('Antenna', { exact: true }).click();
  await example.getByLabel('How wide is the beam?').check();
  await example.getByRole('button', { name: 'Next sheet' }).click();
  await expect(page).toHaveURL(/seed=13&kinds=.*beamwidth/);
  const titles = async () => page.locator('.sheet-list h3').allTextContents();
  const plans = [
    'azimuth',
    'elevation',
    'magnetic-bearing',
    'beamwidth',
    'free-space-loss',
    'bracketing',
  ];
  const asked = worksheet({ seed: 13, count: 5, level: 2, plans });
  expect(await titles()).toEqual(asked.exercises.map(({ solution }) => solution.title));
  await page.reload();
  await expect(page.locator('class-sheet')).toHaveAttribute('data-ready');
  expect(await titles()).toEqual(asked.exercises.map(({ solution }) => solution.title));
  await field(example, 'Exercises').fill('1000');
  await expect(example.locator('.ex-error:visible')).toContainText('from 1 to 100');
  await expect(page.locator('class-sheet')).toBeHidden();
  await field(example, 'Exercises').fill('1');
  await expect(page.locator('.sheet-list > li')).toHaveCount(1);
});

test('prints sheet and key, hands out CSV and a QTI package', async ({ page }) => {
  await openExample(page, name, query);
  await expect(page.locator('class-sheet')).toHaveAttribute('data-ready');
  const taken = async (button: string) => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    const file = await download;
    return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
  };
  const csv = await taken('Download CSV');
  expect(csv.name).toBe('worksheet-31.csv');
  expect(csv.bytes.toString('utf8')).toBe(worksheetCsv(sheet));
  const qti = await taken('Download QTI package');
  expect(qti.name).toBe('worksheet-31-qti.zip');
  for (const { path, content } of worksheetQti(sheet)) {
    expect(qti.bytes.includes(path)).toBe(true);
    expect(qti.bytes.includes(content)).toBe(true);
  }
  for (const [button, key] of [
    ['Print the sheet', false],
    ['Print the key', true],
  ] as const) {
    await page.getByRole('button', { name: button }).click();
    await expect(page.locator('iframe.sheet-print')).toHaveAttribute(
      'srcdoc',
      worksheetHtml(sheet, { key }),
    );
  }
});

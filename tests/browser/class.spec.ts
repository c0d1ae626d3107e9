/** A class from link to marks: the learner's page without a key, kept over a reload, and the trainer's page that reads the codes. */

import { handInCode, readHandIn, worksheet } from '../../src/teaching/index.js';
import { axe, expect, fitsWindow, openExample, test } from './fixtures.js';

const plans = ['free-space-loss', 'azimuth', 'bracketing'];
const sheet = worksheet({ seed: 7, count: 3, plans });
const learner = (use: string) =>
  `/start/your-sheet/?${new URLSearchParams({ sheet: sheet.code, for: use })}`;
const loss = sheet.exercises.findIndex(({ plan }) => plan === 'free-space-loss');
const { frequencyGHz = 0, slantRangeKm = 0 } = sheet.exercises[loss]?.inputs ?? {};
const tenLog = (92.448 + 10 * Math.log10(frequencyGHz * slantRangeKm)).toFixed(2);

test('the learner’s page holds no answer, keeps what is typed and makes the line to hand in', async ({
  page,
  request,
}) => {
  const html = await (await request.get('/start/your-sheet/')).text();
  expect(html).not.toMatch(/data-exercise|Print the key/);
  await page.goto(learner('practice'));
  const item = page.locator('.sheet-list > li').nth(loss);
  await page.getByLabel('Your name').fill('Mara');
  await item.locator('[data-own-answer]').fill(tenLog);
  await item.locator('[data-own-answer]').press('Enter');
  await expect(item.locator('.sheet-verdict')).toContainText('20 log, not 10 log');
  await item.getByText('Steps before the answer').click();
  await item.locator('[data-own-step]').first().fill('1');
  const line = (await page.locator('.sheet-hand-in').textContent()) ?? '';
  await page.reload();
  await expect(page.locator('.sheet-hand-in')).toHaveText(line);
  const read = readHandIn(line, [sheet]);
  expect(read.kind === 'read' && [read.name, read.answers[loss]?.answer]).toEqual(['Mara', tenLog]);
  await expect(page.getByRole('button', { name: 'Print the key' })).toHaveCount(0);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('a link for a test neither checks nor hints', async ({ page }) => {
  await page.goto(learner('test'));
  await expect(page.locator('.sheet-list > li')).toHaveCount(3);
  await expect(page.getByRole('button', { name: 'Check' })).toHaveCount(0);
  await expect(page.locator('[data-hint]')).toHaveCount(0);
});

test('a code that is none is refused in words', async ({ page }) => {
  await page.goto('/start/your-sheet/?sheet=nonsense');
  await expect(page.locator('.sheet-open .ex-error')).toContainText('not a code');
});

test('the trainer’s page reads the codes of a class', async ({ page }) => {
  await openExample(
    page,
    'a-sheet-for-the-class',
    '?seed=7&count=3&kinds=free-space-loss*azimuth*bracketing',
  );
  await expect(page.locator('.sheet-code')).toHaveText(sheet.code);
  const answers = sheet.exercises.map((_, at) => ({ answer: at === loss ? tenLog : '' }));
  const code = handInCode(sheet, answers);
  const lines = [
    ...Array.from({ length: 19 }, (_, at) => `Learner ${at + 1}: ${code}`),
    `Damaged: ${code.slice(0, -1)}${code.endsWith('0') ? '1' : '0'}`,
    'I was ill',
  ];
  await page.getByLabel('Lines that the learners handed in').fill(lines.join('\n'));
  const report = page.locator('.class-report');
  await expect(report).toContainText('19 learners read');
  await expect(report).toContainText('a character of this code is wrong or missing');
  await expect(report).toContainText('there is no code in this line');
  await expect(report.getByRole('row').filter({ hasText: '20 log, not 10 log' })).toContainText(
    '19',
  );
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

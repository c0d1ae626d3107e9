/** Does your formula hold: type a formula, read the verdict, compare it with the library's. */

import { brief } from '../../../site/src/lib/pictures/errorMap.js';
import { RULES_OF_THUMB, tryFormula } from '../../../src/teaching/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const name = 'does-your-formula-hold';

test('a typed formula: verdict, worst place, areas and map as the library has them', async ({
  page,
}) => {
  const example = await openExample(page, name);
  const formula = '90 - abs(lat) - abs(dlon) / 3';
  await example.getByLabel('What the formula gives').selectOption('elevation');
  await field(example, 'The formula').fill(formula);
  await field(example, 'Latitude from').fill('-50');
  await field(example, 'Latitude to').fill('60');
  await field(example, 'Tolerance').fill('8');
  const verdict = tryFormula({
    subject: 'elevation',
    formula,
    region: { latitudeDeg: [-50, 60] },
    tolerance: 8,
  });
  if (!verdict.worst) throw new Error('there must be a worst place');
  expect(verdict.kind).toBe('holds-in-part');
  await expect(example.locator('.ex-says')).toContainText('It holds in part');
  await expect(output(example, 'Largest error')).toHaveText(`${brief(verdict.worst.error)}°`);
  await expect(output(example, 'Within tolerance')).toHaveText(
    `${brief(100 * verdict.withinToleranceRatio)} %`,
  );
  for (const { area, largestError } of verdict.areas) {
    const row = example.getByRole('row').filter({ hasText: area });
    await expect(row.getByRole('cell').last()).toHaveText(brief(largestError));
  }
  await expect(example.locator('.ex-figure svg pattern').first()).toBeAttached();
  await expect(page).toHaveURL(/subject=elevation&formula=90.*latitudeDegFrom=-50/);
  await page.reload();
  await expect(output(example, 'Largest error')).toHaveText(`${brief(verdict.worst.error)}°`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('a rule of thumb from the list brings its subject and its formula', async ({ page }) => {
  const example = await openExample(page, name, '?latitudeDegFrom=10');
  await example
    .getByLabel('Rules of thumb in use')
    .selectOption('noise temperature: seventy kelvin a decibel');
  await expect(field(example, 'The formula')).toHaveValue('70 * nf');
  await expect(field(example, 'Latitude from')).toBeHidden();
  await expect(field(example, 'Noise figure from')).toBeVisible();
  const rule = RULES_OF_THUMB.find((each) => each.name === 'seventy-kelvin-a-decibel');
  const verdict = rule && tryFormula(rule);
  await expect(output(example, 'Largest error')).toHaveText(
    `${brief(verdict?.worst?.error ?? Number.NaN)} K`,
  );
  await expect(example.locator('.ex-note').first()).toContainText('Common practice');
  await field(example, 'The formula').fill('71 * nf');
  await expect(example.getByLabel('Rules of thumb in use')).toHaveValue('');
  await expect(example.locator('.ex-note').first()).not.toContainText('Common practice');
});

test('refuses what is not arithmetic, beside the field, and recovers', async ({ page }) => {
  const example = await openExample(page, name);
  const formula = field(example, 'The formula');
  for (const [typed, says] of [
    ['lat.constructor("return 1")()', 'must be'],
    ['alert(1)', 'is no function that is known here'],
    ['2 3 lat', 'an operator is expected'],
    ['heading', 'say what it stands for'],
    ['', 'an arithmetic expression'],
    ['('.repeat(300), 'must be'],
  ] as const) {
    await formula.fill(typed);
    await expect(formula).toHaveAttribute('aria-invalid', 'true');
    await expect(example.locator('.ex-field .ex-error:visible')).toContainText(says);
  }
  expect(await axe(page)).toEqual([]);
  await formula.fill('mod(atan2(tan(dlon), 0 - sin(lat)), 360)');
  await expect(example.locator('.ex-says')).toContainText('It holds: within 0.1° everywhere');
  await field(example, 'Latitude to').fill('95');
  await expect(example.locator('.ex-field .ex-error:visible')).toContainText('from -90 to 90');
  await field(example, 'Latitude to').fill('-80');
  await expect(example.locator('.ex-field .ex-error:visible')).toContainText('ends swapped?');
});

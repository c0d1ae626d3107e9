/** The pages behind the antenna and at the end: levels, verdicts, causes. */

import { shown } from '../../../site/src/lib/language/text.js';
import { decideRepeated } from '../../../src/acceptance/index.js';
import { genericCable, outletLevels } from '../../../src/distribution/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

test('levels at every outlet: an outline typed, a button, a refused line', async ({ page }) => {
  const example = await openExample(page, 'levels-at-every-outlet');
  await expect(output(example, 'Outlets inside the window')).toHaveText('1 of 3');
  await example.getByRole('button', { name: 'Put an amplifier before it all' }).click();
  await expect(output(example, 'Outlets inside the window')).toHaveText('3 of 3');
  const parts = field(example, 'Parts');
  await parts.fill('run: series-6 40\n  hut: outlet 2');
  const [hut] = outletLevels(
    {
      source: { levelDbuv: 75 },
      tree: {
        kind: 'cable',
        cable: genericCable('series-6'),
        lengthM: 40,
        to: { kind: 'outlet', name: 'hut', lossDb: 2 },
      },
    },
    [950, 2150],
  );
  await expect(output(example, 'Lowest level')).toContainText(shown(hut?.lowestDbuv ?? 0, 1));
  await parts.fill('run: hose 40');
  await expect(parts).toHaveAttribute('aria-invalid', 'true');
  await expect(example.locator('.ex-error:visible')).toContainText('one of series-6');
  await parts.fill('run: series-6 -3\n  hut: outlet 2');
  await expect(example.locator('.ex-error:visible')).toContainText('from 0 to');
  await parts.fill('run: series-6 40\n  hut: outlet 2');
  await expect(example.locator('.ex-error:visible')).toHaveCount(0);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('accept or not: verdict and next step as the library gives them', async ({ page }) => {
  const example = await openExample(page, 'accept-or-not');
  await expect(output(example, 'Verdict')).toContainText('conforms');
  await field(example, 'Lower limit').fill('50');
  const { decision, next } = decideRepeated({
    readings: [47.9, 48.6, 48.4],
    instrumentStandardUncertainty: 0.6,
    lowerLimit: 50,
    upperLimit: 77,
  });
  expect(next).toBe('refuse');
  await expect(output(example, 'Verdict')).toContainText('does not conform');
  await expect(output(example, 'Guard band')).toHaveText(`${shown(decision.guardBand)} dB`);
  await field(example, 'Upper limit').fill('40');
  await expect(example.locator('.ex-error:visible')).toContainText('were the limits swapped?');
  await field(example, 'Upper limit').fill('');
  await expect(example.locator('.ex-error:visible')).toHaveCount(0);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('what is wrong here: asks for the mast, then tells; cases and a hidden answer', async ({
  page,
}) => {
  const example = await openExample(page, 'what-is-wrong-here');
  await expect(output(example, 'Next measurement')).toContainText('hold a level to the mast');
  await field(example, 'Lean of the mast').fill('1.1');
  await expect(output(example, 'First')).toContainText('the mast leans');
  await field(example, 'Lean of the mast').fill('0.2');
  await expect(output(example, 'First')).toContainText('mispointed');
  await example.getByRole('button', { name: 'Case D' }).click();
  await expect(output(example, 'First')).toContainText('supply of the unit is too low');
  await field(example, 'C/N').first().fill('often');
  await expect(example.locator('.ex-error:visible')).toContainText('a ratio in dB');
  await example.getByRole('button', { name: 'Case E' }).click();
  await expect(output(example, 'First')).toContainText('overloaded');
  await example.getByRole('checkbox', { name: 'Hide the answer' }).check();
  await expect(output(example, 'First')).toBeHidden();
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

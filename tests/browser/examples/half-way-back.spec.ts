import { shown } from '../../../site/src/lib/language/text.js';
import { bracketPeak } from '../../../src/peaking/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

test('half way back: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'half-way-back');
  await field(example, 'Highest level read').fill('-51.5');
  await field(example, 'Level after turning out').fill('-56');
  await field(example, 'Turns back through the peak').fill('5.5');
  await field(example, 'Step of the display').fill('0.5');
  await field(example, 'Turns lost').fill('0.3');
  await field(example, 'Sky for one turn').fill('0.8');
  const bracket = bracketPeak({
    peakLevelDbm: -51.5,
    referenceLevelDbm: -56,
    turnsOut: 3,
    turnsBack: 5.5,
    levelStepDb: 0.5,
    backlashTurns: 0.3,
    degPerTurn: 0.8,
  });
  await expect(output(example, 'Turn back')).toHaveText(`${shown(bracket.moveBackTurns)} turns`);
  await expect(output(example, 'Largest error')).toHaveText(
    `${shown(bracket.worstErrorTurns ?? Number.NaN)} turns`,
  );
  await expect(output(example, 'Move back on the sky')).toHaveText(
    `${shown(bracket.moveBackDeg ?? Number.NaN, 3)}°`,
  );
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('half way back: says when it is blind, and when the levels are swapped', async ({ page }) => {
  const example = await openExample(page, 'half-way-back', '?referenceLevelDbm=-48');
  await expect(example.locator('.ex-says')).toContainText('Blind');
  await field(example, 'Highest level read').fill('-50');
  await expect(example.locator('.ex-error:visible')).toContainText(
    'were peak and reference swapped?',
  );
});

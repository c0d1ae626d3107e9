import { shown } from '../../../site/src/lib/language/text.js';
import { bracketNull, fitCoupledPeak, sideLobeTest } from '../../../src/peaking/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

test('bench: notes, next moves, and the lobe at the end', async ({ page }) => {
  const example = await openExample(page, 'find-the-peak');
  const press = (name: string) => example.getByRole('button', { name, exact: true }).click();
  await expect(example.locator('.ex-says')).toContainText('at 3.00 turns');
  await press('One turn down');
  await expect(example.locator('.ex-says')).toContainText('at 2.00 turns');
  await expect(output(example, 'Notes')).toHaveText('2');
  await press('Note this level');
  await expect(output(example, 'Notes')).toHaveText('3');
  await press('Next bench');
  await expect(output(example, 'Notes')).toHaveText('0');
  for (let count = 0; count < 12; count++) await press('Make the next move');
  await example.getByLabel('I stand on the peak').check();
  await expect(example.locator('.ex-says')).toContainText('within the 0.1 dB wanted');
  await expect(example.getByText('a lobe of the known width')).toBeVisible();
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('main lobe or side lobe: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'main-lobe-or-side-lobe');
  await expect(example.locator('.ex-says')).toContainText('This is a side lobe');
  await field(example, 'Diameter').fill('1.2');
  await field(example, 'Frequency').fill('19.9');
  await field(example, 'Width of the peak found').fill('0.78');
  await field(example, 'Uncertainty of the width').fill('0.05');
  const found = sideLobeTest({
    aperture: { diameterM: 1.2, frequencyGHz: 19.9, illumination: { edgeTaperDb: 10 } },
    beamwidthDeg: 0.78,
    beamwidthStandardUncertaintyDeg: 0.05,
  });
  expect(found.kind).toBe('main-lobe');
  await expect(example.locator('.ex-says')).toContainText('This is the main lobe');
  await expect(output(example, 'The move that decides')).toHaveText(
    `${shown(found.decidingMoveDeg)}°`,
  );
  await field(example, 'Frequency').fill('11700');
  await expect(example.locator('.ex-error:visible')).toContainText('is the frequency in GHz?');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('both axes: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'both-axes-in-turn');
  await field(example, 'Azimuth now').fill('0.4');
  const fit = fitCoupledPeak({
    firstDeg: [-0.8, 0, 0.8, -0.8, 0, 0.8, -0.8, 0, 0.8],
    secondDeg: [-0.8, -0.8, -0.8, 0, 0, 0, 0.8, 0.8, 0.8],
    levelDbm: [-48.5, -42.1, -41.4, -44.7, -40.2, -41.5, -45.1, -42.3, -45.3],
    currentDeg: [0.4, 0.8],
  });
  if (fit.kind !== 'peak') throw new Error(fit.kind);
  await expect(output(example, 'Peak in azimuth')).toHaveText(`${shown(fit.positionDeg[0])}°`);
  await expect(output(example, 'Loss now')).toHaveText(`${shown(fit.lossNowDb)} dB`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('null: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'where-is-the-null');
  await field(example, 'Rotation at the second place').fill('20');
  await field(example, 'Step of the display').fill('0.5');
  const bracket = bracketNull({ firstDeg: -18, secondDeg: 20, levelStepDb: 0.5 });
  await expect(output(example, 'Null, bracketed')).toHaveText(`${shown(bracket.nullDeg, 1)}°`);
  await expect(output(example, 'Largest error')).toHaveText(
    `${shown(bracket.worstErrorDeg ?? Number.NaN)}°`,
  );
  await expect(output(example, 'Null, fitted to the readings')).toHaveText('2.94°');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

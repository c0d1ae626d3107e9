import { coordinatesToText, textToCoordinates } from '../../../src/earth/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const name = 'typed-coordinates';

test('reads as the library does and writes every notation', async ({ page }) => {
  const example = await openExample(page, name);
  for (const text of ['33,8688 S; 151,2093 E', 'JN46TJ', '-0 24 102 3']) {
    await field(example, 'Coordinates').fill(text);
    const place = textToCoordinates(text);
    await expect(output(example, 'Latitude')).toHaveText(
      `${place.latitudeDeg.toFixed(6).replace('-', '−')}°`,
    );
    const { latitudeDeg, longitudeDeg } = place;
    await expect(example.locator('table').first()).toContainText(
      coordinatesToText({ latitudeDeg, longitudeDeg, notation: 'degrees-minutes-seconds' }),
    );
  }
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('refuses a text with two readings, with the likely slip', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Coordinates').fill('46,9');
  await expect(example.locator('.ex-error:visible')).toContainText('is the comma a decimal mark');
  await field(example, 'Coordinates').fill('46.9 N 9.6 E');
  await expect(example.locator('.ex-error:visible')).toHaveCount(0);
});

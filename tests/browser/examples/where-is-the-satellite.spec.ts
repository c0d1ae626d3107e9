/** The pattern for tests of a worked example: type, read the answer, compare it with the library's. */

import { shown } from '../../../site/src/lib/language/text.js';
import { lookAngles } from '../../../src/pointing/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const name = 'where-is-the-satellite';

test('answers as the library does, keeps its state in the address', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Latitude').fill('-33,5');
  await field(example, 'Longitude').fill('18.4');
  await field(example, 'Height').fill('120');
  await field(example, 'Orbital longitude').fill('21.8');
  const look = lookAngles({ latitudeDeg: -33.5, longitudeDeg: 18.4, heightM: 120 }, 21.8);
  if (look.kind !== 'visible') throw new Error('the slot must be visible');
  await expect(output(example, 'Azimuth')).toHaveText(`${shown(look.azimuthDeg)}°`);
  await expect(output(example, 'Elevation')).toHaveText(`${shown(look.elevationDeg)}°`);
  await expect(output(example, 'Slant range')).toHaveText(`${shown(look.slantRangeKm, 1)} km`);
  await expect(page).toHaveURL(/latitudeDeg=-33\.5&longitudeDeg=18\.4&heightM=120&orbital.*=21\.8/);
  await page.reload();
  await expect(output(example, 'Azimuth')).toHaveText(`${shown(look.azimuthDeg)}°`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('refuses beside the field, in words, and recovers', async ({ page }) => {
  const example = await openExample(page, name);
  const latitude = field(example, 'Latitude');
  await latitude.fill('116.2');
  await expect(latitude).toHaveAttribute('aria-invalid', 'true');
  await expect(example.locator('.ex-error:visible')).toHaveText(
    'Latitude must be from -90 to 90, got 116.2; were latitude and longitude swapped?',
  );
  await expect(output(example, 'Azimuth')).toBeHidden();
  expect(await axe(page)).toEqual([]);
  await latitude.fill('north');
  await expect(example.locator('.ex-error:visible')).toHaveText(
    'Latitude must be a number, got "north"',
  );
  await latitude.fill('46.4');
  await expect(output(example, 'Azimuth')).toHaveText('170.64°');
  await expect(example.locator('.ex-error:visible')).toHaveCount(0);
});

test('works from the keyboard', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Orbital longitude').focus();
  await page.keyboard.press('ArrowUp');
  await expect(field(example, 'Orbital longitude')).toHaveValue('16.5');
  await page.keyboard.press('PageDown');
  await expect(field(example, 'Orbital longitude')).toHaveValue('15.5');
  const look = lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 }, 15.5);
  await expect(output(example, 'Elevation')).toHaveText(`${shown(look.elevationDeg)}°`);
  // The slot's mark in the picture comes before the picture's numbers.
  await page.keyboard.press('Tab');
  await expect(example.getByRole('slider')).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(example.getByText('Numbers in this picture').first()).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(example.locator('details').first()).toHaveAttribute('open');
});

test('offers places, tells of slots that are hidden or overhead', async ({ page }) => {
  const example = await openExample(page, name);
  await example.getByLabel('Place', { exact: true }).selectOption('Riverine clinics, Long Bend');
  await expect(field(example, 'Latitude')).toHaveValue('-0.4');
  await field(example, 'Orbital longitude').fill('16.4');
  await expect(example.locator('.ex-says')).toContainText('hidden by the Earth');
  await field(example, 'Latitude').fill('0');
  await field(example, 'Orbital longitude').fill('102');
  await expect(example.locator('.ex-says')).toContainText('straight overhead');
  await expect(output(example, 'Azimuth')).toHaveText('any');
});

test('copies link, code and JSON', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const example = await openExample(page, name, '?orbitalLongitudeDeg=7.2');
  const copied = async (button: string) => {
    await example.getByRole('button', { name: button }).click();
    await expect(example.getByRole('button', { name: 'Copied' })).toBeVisible();
    await expect(example.getByRole('button', { name: button })).toBeVisible();
    return page.evaluate(() => navigator.clipboard.readText());
  };
  expect(await copied('Copy link')).toMatch(/where-is-the-satellite\/\?orbitalLongitudeDeg=7.2$/);
  expect(await copied('Copy code')).toContain("from 'slantpath/pointing'");
  const json = JSON.parse(await copied('Copy JSON'));
  expect(json.result).toEqual(
    lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 }, 7.2),
  );
});

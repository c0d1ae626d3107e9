/** A worked example in German: the same numbers, its own words, a decimal comma, links between the languages. */

import { shown } from '../../../site/src/lib/language/text.js';
import { lookAngles } from '../../../src/pointing/index.js';
import { axe, expect, field, fitsWindow, output, test } from '../fixtures.js';

const name = 'where-is-the-satellite';

test('answers as the library does, with a decimal comma; a link says the same in both languages', async ({
  page,
}) => {
  await page.goto(`/de/examples/${name}/?latitudeDeg=-33.5`);
  const example = page.getByTestId(name);
  await expect(example).toHaveAttribute('data-ready');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(field(example, 'Breite')).toHaveValue('-33,5');
  await field(example, 'Länge').fill('18,4');
  await field(example, 'Höhe').fill('120');
  await field(example, 'Orbitposition').fill('21.8');
  const look = lookAngles({ latitudeDeg: -33.5, longitudeDeg: 18.4, heightM: 120 }, 21.8);
  if (look.kind !== 'visible') throw new Error('the slot must be visible');
  const comma = (value: number, digits?: number) => shown(value, digits).replace('.', ',');
  await expect(output(example, 'Azimut')).toHaveText(`${comma(look.azimuthDeg)}°`);
  await expect(output(example, 'Elevation')).toHaveText(`${comma(look.elevationDeg)}°`);
  await expect(output(example, 'Entfernung')).toHaveText(`${comma(look.slantRangeKm, 1)} km`);
  await expect(example.locator('.ex-says')).toContainText('über dem Horizont');
  await expect(page).toHaveURL(/latitudeDeg=-33\.5&longitudeDeg=18\.4&heightM=120&orbital.*=21\.8/);
  await field(example, 'Orbitposition').press('ArrowUp');
  await expect(field(example, 'Orbitposition')).toHaveValue('21,9');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('refuses in German, and shows the working in German', async ({ page }) => {
  await page.goto(`/de/examples/${name}/`);
  const example = page.getByTestId(name);
  await expect(example).toHaveAttribute('data-ready');
  await field(example, 'Breite').fill('116,2');
  await expect(example.locator('.ex-error:visible')).toHaveText(
    'Breite: verlangt ist ein Wert von -90 bis 90, nicht 116,2; sind Breite und Länge vertauscht?',
  );
  await field(example, 'Breite').fill('46,4');
  await expect(output(example, 'Azimut')).toHaveText('170,64°');
  const hand = page.locator(`[data-hand="${name}"]`);
  await hand.scrollIntoViewIfNeeded();
  await expect(hand).toContainText('Azimut');
  await expect(hand).not.toContainText('latitude');
});

test('leads from each language to the other, and lists all its examples', async ({ page }) => {
  // On a phone the languages are in the menu.
  const to = async (language: string) => {
    const menu = page.getByRole('button', { name: /^Men/ });
    if (await menu.isVisible()) await menu.click();
    await page.getByRole('link', { name: language }).locator('visible=true').click();
  };
  await page.goto(`/examples/${name}/`);
  await to('Deutsch');
  await expect(page).toHaveURL(`/de/examples/${name}/`);
  await to('English');
  await expect(page).toHaveURL(`/examples/${name}/`);
  await page.goto('/de/');
  await page.locator('main').getByRole('link', { name: 'Wo steht der Satellit?' }).first().click();
  await expect(page).toHaveURL(`/de/examples/${name}/`);
});

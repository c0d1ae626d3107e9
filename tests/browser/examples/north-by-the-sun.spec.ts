import { lookAngles } from '../../../src/pointing/index.js';
import { shadowInstants } from '../../../src/sun/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const name = 'north-by-the-sun';
const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

test('answers as the library does and warns of the Sun', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Date at the station').fill('2026-03-20');
  const look = lookAngles(station, 16.4);
  if (look.kind !== 'visible') throw new Error('the slot must be visible');
  const [first] = shadowInstants({ station, azimuthDeg: look.azimuthDeg, day: '2026-03-20' });
  await expect(output(example, 'Instant')).toHaveText(`${first?.instantUtc.slice(11, 19)} UTC`);
  await expect(example.locator('.ex-notes, .ex-note').first()).toContainText(
    'Never look at the Sun',
  );
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('refuses a date that is none; says when no bearing helps', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Date at the station').fill('2026-02-30');
  await expect(example.locator('.ex-error:visible')).toHaveCount(1);
  await field(example, 'Date at the station').fill('2026-02-28');
  await expect(example.locator('.ex-error:visible')).toHaveCount(0);
  await field(example, 'Orbital longitude').fill('150');
  await expect(example.locator('.ex-says')).toContainText('hidden by the Earth');
});

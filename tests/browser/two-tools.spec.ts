import { shown } from '../../site/src/lib/language/text.js';
import { lookAngles, sphericalLookAngles } from '../../src/pointing/index.js';
import { expect, field, test } from './fixtures.js';

test('why two tools disagree: the round Earth line is the library’s', async ({ page }) => {
  await page.goto('/reference/why-two-tools-disagree/');
  const example = page.getByTestId('two-tools');
  await expect(example).toHaveAttribute('data-ready');
  await field(example, 'Latitude').fill('-29.6');
  await field(example, 'Longitude').fill('141.2');
  await field(example, 'Height').fill('120');
  await field(example, 'Orbital longitude').fill('150');
  const station = { latitudeDeg: -29.6, longitudeDeg: 141.2, heightM: 120 };
  const exact = lookAngles(station, 150).elevationDeg;
  // A round Earth has no use for the height.
  const { heightM: _, ...place } = station;
  const round = sphericalLookAngles({ ...place, orbitalLongitudeDeg: 150 }).elevationDeg;
  const row = example.locator('tr', { hasText: 'takes the Earth for a ball' }).first();
  await expect(row).toContainText(shown(round, 3));
  await expect(row).toContainText(shown(round - exact, 3));
  await field(example, 'Day').fill('2026-02-30');
  await expect(example.locator('.ex-error:visible')).toHaveCount(1);
  await expect(field(example, 'Day')).toHaveAttribute('aria-invalid', 'true');
});

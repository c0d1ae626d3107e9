import { shown } from '../../../site/src/lib/language/text.js';
import { magneticField } from '../../../src/magnetic/index.js';
import { horizonProfile, slotViews } from '../../../src/survey/index.js';
import { axe, expect, field, fitsWindow, openExample, test } from '../fixtures.js';

const name = 'is-the-view-clear';
const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

test('answers as the library does', async ({ page }) => {
  const example = await openExample(page, name);
  await example.locator('[data-cell="sightings[2].elevationDeg"]').fill('34');
  const sightings = [
    [125, 24],
    [150, 37],
    [160, 34],
    [168, 15],
    [195, 14],
    [230, 21],
  ].map(([magneticBearingDeg = 0, elevationDeg = 0]) => ({ magneticBearingDeg, elevationDeg }));
  const { declinationDeg } = magneticField(station, 2026.4);
  const views = slotViews({
    station,
    profile: horizonProfile({ sightings, declinationDeg }),
    orbitalLongitudesDeg: [7.2, 16.4, 21.8],
    requiredClearanceDeg: 2,
  });
  const table = example.locator('table', { hasText: 'Each slot over the skyline' });
  for (const [index, view] of views.entries())
    await expect(table.locator('tbody tr').nth(index)).toContainText(
      'clearanceDeg' in view ? shown(view.clearanceDeg, 1) : 'none',
    );
  await expect(example.locator('.ex-says')).toContainText('21.8° E: clear by less than wanted');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('refuses beside the table and recovers', async ({ page }) => {
  const example = await openExample(page, name);
  const cell = example.locator('[data-cell="sightings[1].elevationDeg"]');
  await cell.fill('95');
  await expect(example.locator('.ex-error:visible')).toContainText('from -89 to 89');
  await cell.fill('37');
  await expect(example.locator('.ex-error:visible')).toHaveCount(0);
  await field(example, 'Year of the sighting').fill('26');
  await expect(example.locator('.ex-error:visible')).toContainText('decimal year');
});

import { shown } from '../../../site/src/lib/language/text.js';
import { sunOutages } from '../../../src/sun/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const name = 'sun-outages';

test('answers as the library does, year by year', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Year').fill('2027');
  await field(example, 'Diameter of the reflector').fill('1.2');
  const outages = sunOutages({
    station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
    orbitalLongitudeDeg: 16.4,
    diameterM: 1.2,
    frequencyGHz: 11.7,
    systemNoiseK: 120,
    thresholdLossDb: 3,
    from: '2027-01-01',
    to: '2027-12-31T23:59:59Z',
  });
  if (outages.kind !== 'outages') throw new Error('there must be outages');
  await expect(output(example, 'Days')).toHaveText(String(outages.events.length));
  const deepest = Math.max(...outages.events.map((event) => event.lossDb));
  await expect(output(example, 'Deepest loss')).toHaveText(`${shown(deepest, 1)} dB`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('none, hidden, and megahertz where gigahertz are meant', async ({ page }) => {
  const example = await openExample(page, name);
  await field(example, 'Loss that counts').fill('20');
  await expect(example.locator('.ex-says')).toContainText('never costs that much');
  await field(example, 'Orbital longitude').fill('150');
  await expect(example.locator('.ex-says')).toContainText('hidden by the Earth');
  await field(example, 'Frequency').fill('11700');
  await expect(example.locator('.ex-error:visible')).toContainText('GHz');
});

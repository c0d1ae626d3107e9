import { shown } from '../../../site/src/lib/language/text.js';
import { attenuationAt, climateAt } from '../../../src/climate/index.js';
import { lookAngles } from '../../../src/pointing/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

test('how much rain margin: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'how-much-rain-margin');
  await field(example, 'Latitude').fill('-0.4');
  await field(example, 'Longitude').fill('102');
  await field(example, 'Height').fill('35');
  await field(example, 'Orbital longitude').fill('104.5');
  await field(example, 'Frequency').fill('14.2');
  await field(example, 'Tilt').fill('0');
  await field(example, 'Antenna diameter').fill('1.8');
  await field(example, 'Outage allowed').fill('0.1');
  const station = { latitudeDeg: -0.4, longitudeDeg: 102, heightM: 35 };
  const faded = attenuationAt(climateAt(station), {
    frequencyGHz: 14.2,
    elevationDeg: lookAngles(station, 104.5).elevationDeg,
    tiltDeg: 0,
    diameterM: 1.8,
    exceededPercent: 0.1,
  });
  await expect(output(example, 'Margin needed')).toHaveText(`${shown(faded.attenuationDb)} dB`);
  await expect(output(example, 'Rain')).toHaveText(`${shown(faded.rainDb)} dB`);
  await expect(output(example, 'Gases')).toHaveText(`${shown(faded.gasDb)} dB`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('how much rain margin: a measured rain rate goes first, a margin tells its outage', async ({
  page,
}) => {
  const example = await openExample(
    page,
    'how-much-rain-margin',
    '?rainRate001MmPerH=40&marginDb=8',
  );
  await expect(example).toContainText('40.0 mm/h');
  await expect(example).toContainText('measured');
  await expect(output(example, 'Outage with the margin given')).toContainText('%');
});

test('how much rain margin: says when the slot is hidden', async ({ page }) => {
  const example = await openExample(page, 'how-much-rain-margin', '?orbitalLongitudeDeg=150');
  await expect(example).toContainText('below the horizon');
});

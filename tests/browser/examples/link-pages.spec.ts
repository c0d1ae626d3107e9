/** The pages on links and on exposure: type, read the answer, compare it with the library's. */

import { shown } from '../../../site/src/lib/language/text.js';
import { antennaGain, safeDistance } from '../../../src/antenna/index.js';
import { adjacentSatellites, dvbMode, linkBudget } from '../../../src/link/index.js';
import { lookAngles, slotSeparation } from '../../../src/pointing/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

test('does the link close: the margin of the budget, and its lines', async ({ page }) => {
  const example = await openExample(page, 'does-the-link-close');
  await field(example, 'Diameter of the reflector').fill('0,6');
  await field(example, 'Rain').fill('2.5');
  await field(example, 'Carrier over interference').fill('');
  await example.getByLabel('Mode').selectOption('QPSK 3/4');
  const budget = linkBudget({
    carrier: {
      symbolRateMBd: 27.5,
      mode: dvbMode('DVB-S2', 'QPSK 3/4'),
      implementationLossDb: 0.8,
    },
    downlink: {
      eirpDbw: 50,
      frequencyGHz: 11.7,
      slantRangeKm: lookAngles(station, 16.4).slantRangeKm,
      clearAttenuationDb: 0.2,
      rainDb: 2.5,
    },
    receiver: {
      diameterM: 0.6,
      noiseFigureDb: 0.7,
      pointingOffsetDeg: 0.1,
      polarizationLossDb: 0.05,
      feedLossDb: 0.1,
    },
  });
  await expect(output(example, 'Margin')).toHaveText(`${shown(budget.marginDb)} dB`);
  await expect(output(example, 'G/T')).toHaveText(`${shown(budget.figureOfMeritDbPerK)} dB/K`);
  await expect(example.getByRole('row', { name: /rain attenuation/ }).first()).toContainText(
    '−2.50',
  );
  await field(example, 'Diameter of the reflector').fill('90');
  await field(example, 'Frequency').fill('11700');
  await expect(example.locator('.ex-error:visible')).toContainText('GHz, not MHz');
  await field(example, 'Frequency').fill('11.7');
  await field(example, 'Diameter of the reflector').fill('0.6');
  await expect(output(example, 'Margin')).toHaveText(`${shown(budget.marginDb)} dB`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('which reflector: a rarer outage asks for a larger one', async ({ page }) => {
  const example = await openExample(page, 'which-reflector');
  await expect(output(example, 'Smallest reflector')).toHaveText('1.2 m');
  await field(example, 'Time of the year').fill('0.5');
  await expect(output(example, 'Smallest reflector')).toHaveText('0.6 m');
  await field(example, 'Margin left').fill('30');
  await expect(output(example, 'Smallest reflector')).toHaveText('none');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('do the neighbours disturb: as the pattern says, or nothing', async ({ page }) => {
  const example = await openExample(page, 'do-the-neighbours-disturb');
  await field(example, 'Diameter of the reflector').fill('1.2');
  const separation = (toLongitudeDeg: number) =>
    slotSeparation({ station, fromLongitudeDeg: 16.4, toLongitudeDeg }).topocentricDeg;
  const result = adjacentSatellites({
    pattern: { kind: 'RR-AP8', diameterM: 1.2, frequencyGHz: 11.7 },
    wantedGainDbi: antennaGain({ diameterM: 1.2, frequencyGHz: 11.7 }).gainDbi,
    eirpDensityDbwPerMHz: 35.6,
    neighbours: [
      { separationDeg: separation(13.4), eirpDensityDbwPerMHz: 36 },
      { separationDeg: separation(19.4), eirpDensityDbwPerMHz: 35 },
    ],
  });
  if (result.kind !== 'interference') throw new Error('the pattern must reach');
  await expect(output(example, 'Carrier over interference')).toHaveText(
    `${shown(result.carrierToInterferenceDb)} dB`,
  );
  await example.getByLabel('Pattern of the antenna').selectOption('ITU-R S.465-6');
  await field(example, 'Orbital longitude').fill('14.5');
  await expect(example.locator('.ex-says')).toContainText('says nothing that close');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('which mode when: shares of the year and the mean', async ({ page }) => {
  const example = await openExample(page, 'which-mode-when');
  await expect(output(example, 'Mean throughput')).toHaveText('114.40 Mbit/s');
  await field(example, 'Rain rate').fill('0');
  await expect(output(example, 'Out altogether')).toHaveText('0.0000 %');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('how far is safe: the distance, and the cautions in any case', async ({ page }) => {
  const example = await openExample(page, 'how-far-is-safe');
  await field(example, 'Mean power').fill('80');
  const safe = safeDistance(
    { diameterM: 2.4, frequencyGHz: 14.25, powerW: 80 },
    { standard: 'ICNIRP 2020 whole body', group: 'public' },
  );
  if (safe.kind !== 'distance') throw new Error('the limit must be exceeded');
  await expect(output(example, 'Distance in front of the reflector')).toHaveText(
    `${shown(safe.distanceM, 1)} m`,
  );
  await field(example, 'Mean power').fill('0.1');
  await expect(output(example, 'Distance in front of the reflector')).toHaveText('none');
  await expect(example).toContainText('licensed practitioner');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

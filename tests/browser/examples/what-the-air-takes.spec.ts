import { shown } from '../../../site/src/lib/language/text.js';
import {
  approximateGasAttenuation,
  cloudAttenuation,
  referenceAtmosphere,
  scintillationFade,
} from '../../../src/propagation/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

test('what the air takes: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'what-the-air-takes');
  await field(example, 'Frequency').fill('29.5');
  await field(example, 'Elevation').fill('20');
  await field(example, 'Height of the station').fill('300');
  await field(example, 'Water vapour at').fill('21');
  await field(example, 'Liquid water').fill('1.1');
  await field(example, 'Antenna diameter').fill('1.8');
  await field(example, 'Wet refractivity').fill('120');
  await field(example, 'Scintillation exceeded').fill('0.1');
  const path = { frequencyGHz: 29.5, elevationDeg: 20 };
  const { pressureHpa, temperatureK } = referenceAtmosphere(0.3);
  const gas = approximateGasAttenuation({
    ...path,
    pressureHpa,
    temperatureK,
    waterVapourDensityGPerM3: 21,
  });
  const cloud = cloudAttenuation({ ...path, liquidWaterKgPerM2: 1.1 });
  const flicker = scintillationFade({
    ...path,
    diameterM: 1.8,
    wetRefractivityNUnits: 120,
    exceededPercent: 0.1,
  });
  await expect(output(example, 'Oxygen')).toHaveText(`${shown(gas.oxygenDb, 3)} dB`);
  await expect(output(example, 'Water vapour')).toHaveText(`${shown(gas.waterVapourDb, 3)} dB`);
  await expect(output(example, 'Cloud')).toHaveText(`${shown(cloud.attenuationDb, 3)} dB`);
  await expect(output(example, 'Scintillation')).toHaveText(
    `${shown(flicker.attenuationDb, 3)} dB`,
  );
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
});

test('what the air takes: asks about a frequency in MHz', async ({ page }) => {
  const example = await openExample(page, 'what-the-air-takes', '?frequencyGHz=11700');
  await expect(example.locator('.ex-error:visible')).toContainText('MHz');
});

import { longitudeText, shown } from '../../../site/src/lib/language/text.js';
import {
  dailyFigure,
  fixedAntennaLoss,
  lookAngles,
  mastLeanError,
  polarizationSkew,
  polarMount,
  severalSlots,
} from '../../../src/pointing/index.js';
import { axe, expect, field, fitsWindow, openExample, output, test } from '../fixtures.js';

const karhut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

test('leaning mast: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'what-does-a-leaning-mast-do');
  await field(example, 'Lean of the mast').fill('2.5');
  await field(example, 'Azimuth towards which').fill('80');
  const look = lookAngles(karhut, 16.4);
  if (look.kind !== 'visible') throw new Error('the slot must be visible');
  const error = mastLeanError({
    leanDeg: 2.5,
    leanAzimuthDeg: 80,
    azimuthDeg: look.azimuthDeg,
    elevationDeg: look.elevationDeg,
  });
  await expect(output(example, 'Beam beside the slot')).toHaveText(`${shown(error.offsetDeg)}°`);
  await expect(output(example, 'Roll after peaking')).toHaveText(`${shown(error.skewErrorDeg)}°`);
  await expect(output(example, 'Error across')).toHaveText(`${shown(error.acrossErrorDeg)}°`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
  await field(example, 'Orbital longitude').fill('170');
  await expect(example.locator('.ex-says')).toContainText('hidden by the Earth');
  await field(example, 'Lean of the mast').fill('40');
  await field(example, 'Orbital longitude').fill('16.4');
  await expect(example.locator('.ex-error:visible')).toContainText('must be from 0 to 20');
});

test('polar mount: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'how-is-a-polar-mount-set', '?fit=least-worst');
  await field(example, 'Latitude').fill('-33.5');
  const mount = polarMount({
    station: { ...karhut, latitudeDeg: -33.5 },
    minimumElevationDeg: 10,
    fit: 'least-worst',
  });
  if (mount.kind !== 'mount') throw new Error('there must be an arc');
  await expect(output(example, 'Elevation of the axis')).toHaveText(
    `${shown(mount.axisElevationDeg)}°`,
  );
  await expect(output(example, 'Declination')).toHaveText(`${shown(mount.mountDeclinationDeg)}°`);
  await expect(output(example, 'Largest error')).toHaveText(`${shown(mount.largestErrorDeg, 4)}°`);
  await expect(example.locator('.ex-says')).toContainText('true south');
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
  await field(example, 'Latitude').fill('85');
  await expect(example.locator('.ex-says')).toContainText('nothing to follow');
});

test('several slots: answers as the library does, free and rigid', async ({ page }) => {
  const name = 'can-one-reflector-take-them-all';
  const example = await openExample(page, name, '?diameterM=1.2&focalLengthM=0.72');
  const slots = [7.2, 16.4, 21.8].map((slot, index) => ({
    orbitalLongitudeDeg: slot,
    frequenciesGHz: [index === 1 ? 19.7 : 11.7],
  }));
  const reflector = { diameterM: 1.2, focalLengthM: 0.72, offsetAngleDeg: 24 };
  const free = severalSlots({ station: karhut, slots, reflector });
  if (free.kind !== 'placed') throw new Error('the slots must be visible');
  await expect(output(example, 'Largest loss times weight')).toHaveText(
    `${shown(free.worstWeightedLossDb)} dB`,
  );
  await expect(output(example, 'Azimuth of the boresight')).toHaveText(
    `${shown(free.boresight.azimuthDeg)}°`,
  );
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
  await example.getByLabel('Feeds', { exact: true }).selectOption('On a rigid bar');
  await field(example, 'Places on a rigid bar').fill('-150 0 95');
  const rigid = severalSlots({
    station: karhut,
    slots,
    reflector,
    feeds: { kind: 'rigid', placesM: [-0.15, 0, 0.095] },
  });
  if (rigid.kind !== 'placed') throw new Error('the slots must be visible');
  await expect(output(example, 'Largest loss times weight')).toHaveText(
    `${shown(rigid.worstWeightedLossDb)} dB`,
  );
  await field(example, 'Places on a rigid bar').fill('-150 0');
  await expect(example.locator('.ex-error:visible')).toContainText(
    'one place for each of the 3 slots',
  );
});

test('turn of the feed: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'how-far-to-turn-the-feed');
  await field(example, 'Orbital longitude').fill('-20');
  await field(example, 'The satellite’s own tilt').fill('3.5');
  const skew = polarizationSkew({
    station: karhut,
    orbitalLongitudeDeg: -20,
    polarization: { kind: 'linear', tiltDeg: 3.5 },
  });
  if (skew.kind !== 'visible') throw new Error('the slot must be visible');
  await expect(output(example, 'Skew')).toHaveText(`${shown(skew.skewDeg)}°`);
  await expect(example.locator('.ex-says')).toContainText(`${longitudeText(-20)} turn the feed`);
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
  await example.getByLabel('Polarization', { exact: true }).selectOption('Circular');
  await expect(example.locator('.ex-says')).toContainText('any turn of the feed serves');
});

test('moving satellite: answers as the library does', async ({ page }) => {
  const example = await openExample(page, 'when-to-peak-on-a-moving-satellite');
  await field(example, 'Inclination').fill('2');
  const day = dailyFigure({
    station: karhut,
    orbitalLongitudeDeg: 16.4,
    inclinationDeg: 2,
    eccentricityRatio: 0.0003,
    argumentOfPerigeeDeg: 90,
  });
  const fixed = fixedAntennaLoss({ track: day, beamwidthDeg: 1.94 });
  await expect(output(example, 'Largest loss, peaked at the best moment')).toHaveText(
    `${shown(fixed.worstLossIfPeakedThereDb[fixed.bestIndex] ?? Number.NaN)} dB`,
  );
  await expect(output(example, 'Largest loss of the best aim')).toHaveText(
    `${shown(fixed.worstLossDb)} dB`,
  );
  await fitsWindow(page);
  expect(await axe(page)).toEqual([]);
  await field(example, 'Inclination').fill('40');
  await expect(example.locator('.ex-error:visible')).toContainText('must be from 0 to 20');
});

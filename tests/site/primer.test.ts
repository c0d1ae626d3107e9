/** The primer's numbers are the library's. */

import { readFileSync } from 'node:fs';
import { halfPowerBeamwidth, pointingLoss } from 'slantpath/antenna';
import { dbmToDbuv } from 'slantpath/distribution';
import { lookAngles, polarizationSkew } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { lobeOf, skyOf } from '../../site/src/pictures/primer.js';

const station = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
const look = lookAngles(station, 16.4);
const skew = polarizationSkew({ station, orbitalLongitudeDeg: 16.4 });
const beamwidthDeg = halfPowerBeamwidth({ diameterM: 0.9, frequencyGHz: 12 });
const loss = (offsetDeg: number) => pointingLoss({ offsetDeg, beamwidthDeg }).toFixed(1);
const decibels = (ratio: number) => Math.abs(10 * Math.log10(ratio)).toFixed(1);

test.each(['docs/start/primer.mdx', 'docs/de/start/primer.mdx'])('%s', (path) => {
  const page = readFileSync(path, 'utf8').replaceAll(/(\d),(\d)/g, '$1.$2');
  if (look.kind !== 'visible' || skew.kind !== 'visible') throw new Error('the slot is in view');
  for (const said of [
    `${look.elevationDeg.toFixed(1)}°`,
    `${look.azimuthDeg.toFixed(1)}°`,
    `−${Math.abs(skew.skewDeg).toFixed(1)}°`,
    `${beamwidthDeg.toFixed(1)}°`,
    `${loss(0.5)} dB`,
    `${loss(1)} dB`,
    `+${decibels(2)} dB`,
    `+${decibels(10)} dB`,
    `−${decibels(0.5)} dB`,
    `−${decibels(0.001)} dB`,
    `${(dbmToDbuv(-50)).toFixed(2)} dBµV`,
    dbmToDbuv(0).toFixed(2),
  ])
    expect(page).toContain(said);
});

test('its pictures show the slot on its arc and the lobe at half power', () => {
  const { objects, arc } = skyOf();
  expect(objects.length).toBe(1);
  expect(arc?.length).toBeGreaterThan(25);
  const [level] = lobeOf().series;
  const half = level?.points.find(({ x }) => x === 1);
  expect(half?.y).toBeCloseTo(-Number(loss(1)), 1);
});

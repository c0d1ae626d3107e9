/** Places and slots as they are typed and pasted. */

import { describe, expect, test } from 'vitest';
import { isAngleField, typedAngle, typedPair } from '../../site/src/lib/inputs/angles.js';

describe('one angle', () => {
  test.each([
    ['46.4', 46.4],
    ['46,4', 46.4],
    ['−33.5', -33.5],
    ['46°', 46],
    ['46°24', 46.4],
    ["46°24'", 46.4],
    ['46° 24′ 36″', 46.41],
    ['46 24', 46.4],
    ['46 24 36 N', 46.41],
    ['46°24′S', -46.4],
    ['S46°24', -46.4],
    ['30W', -30],
    ['30 w', -30],
    ['W 30', -30],
    ['16.4° E', 16.4],
    ['16,4 O', 16.4],
    ['-30', -30],
  ])('%s', (text, deg) => expect(typedAngle(text)).toBeCloseTo(deg, 10));

  test.each(['', 'west', '46°60', '46 24 61', '-30 W', 'E 30 W', '46.4, 9.6', '4x'])(
    '%s is none',
    (text) => expect(typedAngle(text)).toBeNaN(),
  );
});

describe('both in one text', () => {
  test.each([
    ['46.4, 9.6', 46.4, 9.6],
    ['46.4,9.6', 46.4, 9.6],
    ['46,4; 9,6', 46.4, 9.6],
    ['46,4 9,6', 46.4, 9.6],
    ['46.4 9.6', 46.4, 9.6],
    ['-33.5, 18.4', -33.5, 18.4],
    ["46°24'N 9°36'E", 46.4, 9.6],
    ["46°24'N, 9°36'W", 46.4, -9.6],
    ['9.6 E, 46.4 N', 46.4, 9.6],
    ['geo:46.4,9.6', 46.4, 9.6],
    ['geo:46.4,9.6,1900', 46.4, 9.6],
    ['geo:-33.5,18.4?z=15', -33.5, 18.4],
  ])('%s', (text, latitudeDeg, longitudeDeg) => {
    const pair = typedPair(text);
    expect(pair?.latitudeDeg).toBeCloseTo(latitudeDeg, 10);
    expect(pair?.longitudeDeg).toBeCloseTo(longitudeDeg, 10);
  });

  test.each([
    '',
    '46.4',
    '46,4',
    '-33,5',
    "46°24,5'",
    '46 24',
    '46°24',
    '30W',
    'Bern',
    '46.4, north',
  ])('%s is no pair', (text) => expect(typedPair(text)).toBeUndefined());
});

test('which fields take angles', () => {
  for (const field of ['latitudeDeg', 'stationLongitudeDeg', 'orbitalLongitudeDeg'])
    expect(isAngleField(field)).toBe(true);
  for (const field of ['azimuthDeg', 'heightM']) expect(isAngleField(field)).toBe(false);
});

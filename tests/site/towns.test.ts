/** The list of towns and the search in it. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { findTowns, plainText, readTowns } from '../../site/src/lib/inputs/towns.js';

const towns = readTowns(
  readFileSync(new URL('../../site/public/towns.txt', import.meta.url), 'utf8'),
);

test('the list is whole: coordinates in range, names not empty', () => {
  expect(towns.length).toBeGreaterThan(20_000);
  const wrong = towns.filter(
    ({ name, country, latitudeDeg, longitudeDeg }) =>
      name === '' ||
      !/^[A-Z]{2}$/.test(country) ||
      !(Math.abs(latitudeDeg) < 90 && Math.abs(longitudeDeg) <= 180),
  );
  expect(wrong).toEqual([]);
});

// Positions to the hundredth of a degree from general knowledge (atlas), within 0.1.
test.each([
  ['Innsbruck', 'AT', 47.27, 11.39],
  ['são pau', 'BR', -23.55, -46.64],
  ['Alice Springs', 'AU', -23.7, 133.88],
  ['new york', 'US', 40.71, -74.01],
])('%s is found first', (typed, country, latitudeDeg, longitudeDeg) => {
  const [first] = findTowns(towns, typed);
  expect(first?.country).toBe(country);
  expect(Math.abs((first?.latitudeDeg ?? 0) - latitudeDeg)).toBeLessThan(0.1);
  expect(Math.abs((first?.longitudeDeg ?? 0) - longitudeDeg)).toBeLessThan(0.1);
});

test('accents and capitals do not matter; a later word is found; one letter finds nothing', () => {
  expect(plainText("  Saint-Étienne d'Ø ")).toBe('saint etienne d ø');
  expect(findTowns(towns, 'springs').map(({ name }) => name)).toContain('Colorado Springs');
  expect(findTowns(towns, 'a')).toEqual([]);
  expect(findTowns(towns, 'zzzz')).toEqual([]);
});

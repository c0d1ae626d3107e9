/** Pages that ask for a fade take the climate of the place that is chosen: the same as the page on rain. */

import { expect, test } from 'vitest';
import rain from '../../site/src/examples/how-much-rain-margin.js';
import mode from '../../site/src/examples/which-mode-when.js';
import reflector from '../../site/src/examples/which-reflector.js';
import { defaultsOf, readValues } from '../../site/src/lib/inputs/state.js';

const wet = { latitudeDeg: '1.35', longitudeDeg: '103.8', heightM: '20' };
const path = { orbitalLongitudeDeg: '110', frequencyGHz: '19.7', exceededPercent: '0.05' };

test('the fade of Which reflector? is that of How much rain margin?', () => {
  const typed = { ...wet, ...path };
  const a = reflector.compute(
    readValues(reflector.inputs, { ...defaultsOf(reflector.inputs), ...typed }),
  );
  const b = rain.compute(
    // The page on reflectors counts scintillation for one metre.
    readValues(rain.inputs, { ...defaultsOf(rain.inputs), ...typed, diameterM: '1' }),
  );
  if (b.kind !== 'visible') throw new Error('the slot must be visible');
  expect(a.fadeDb).toBeCloseTo(b.needed.attenuationDb, 9);
  expect(a.fadeDb).toBeGreaterThan(20);
});

test('Which mode when? is out for longer under wet skies', () => {
  const at = (typed: Record<string, string>) =>
    mode.compute(readValues(mode.inputs, { ...defaultsOf(mode.inputs), ...typed }));
  const tropics = at({ ...wet, orbitalLongitudeDeg: '110' });
  expect(tropics.air.rainRate001MmPerH).toBeGreaterThan(80);
  expect(tropics.year.outagePercent).toBeGreaterThan(10 * at({}).year.outagePercent);
});

test('a figure that is put in goes first', () => {
  const typed = { rainRate001MmPerH: '12', gasDb: '0.5' };
  const { air } = reflector.compute(
    readValues(reflector.inputs, { ...defaultsOf(reflector.inputs), ...typed }),
  );
  expect(air).toMatchObject({ rainRate001MmPerH: 12, gasDb: 0.5 });
});

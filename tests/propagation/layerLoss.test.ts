/** Water and ice on covers and reflectors against textbook slabs and published measurements. */

import { filmThicknessMm, layerLoss, type SurfaceLayer } from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';

const lossDb = (surface: SurfaceLayer): number => {
  const found = layerLoss(surface);
  return found.kind === 'loss' ? found.lossDb : Number.NaN;
};
const ice = { layer: 'dry-ice', frequencyGHz: 12 } as const;
/** A quarter and a half of a wavelength in ice of index 1.7804. */
const quarterMm = 299.792458 / 12 / 1.7804 / 4;

describe('slabs of a textbook', () => {
  test('a quarter of a wavelength reflects most, a half next to nothing', () => {
    // T = 4 n^2 / (1 + n^2)^2 at n^2 = 3.17; the small loss of the ice adds some thousandths.
    const quarter = -10 * Math.log10((4 * 3.17) / 4.17 ** 2);
    expect(lossDb({ ...ice, on: 'cover', thicknessMm: quarterMm })).toBeCloseTo(quarter, 1);
    expect(lossDb({ ...ice, on: 'cover', thicknessMm: 2 * quarterMm })).toBeLessThan(0.05);
  });
  test('metal under ice reflects everything but what the ice takes', () => {
    for (const thicknessMm of [0, 1, 5, 20])
      expect(lossDb({ ...ice, on: 'reflector', thicknessMm })).toBeLessThan(0.3);
  });
  test('nothing there takes nothing, and deep water all', () => {
    const water = { layer: 'water', frequencyGHz: 12, on: 'cover' } as const;
    expect(lossDb({ ...water, thicknessMm: 0 })).toBe(0);
    expect(lossDb({ ...water, thicknessMm: 50 })).toBeGreaterThan(100);
  });
});

describe('what was measured', () => {
  test('a film of 0.15 mm takes over 5 dB at 12 GHz (maker of a coating, public page)', () => {
    const film = { layer: 'water', frequencyGHz: 12, thicknessMm: 0.15 } as const;
    expect(lossDb({ ...film, on: 'cover' })).toBeGreaterThan(5);
    // On the metal the same film lies where the field is weak.
    expect(lossDb({ ...film, on: 'reflector' })).toBeLessThan(0.3);
  });
  test('dirty C-band radome of 6.7 m at 15.1 mm/h: 3 dB there and back (Kurri and Huuskonen 2008)', () => {
    const thicknessMm = filmThicknessMm({
      rainRateMmPerH: 15.1,
      radiusM: 3.35,
      temperatureK: 293.15,
    });
    const found = layerLoss({ layer: 'water', frequencyGHz: 5.6, on: 'cover', thicknessMm });
    if (found.kind !== 'loss') throw new Error('water has a loss');
    // Half of 3 dB for one way, less the 0.35 dB of the dry panel.
    const measuredDb = 1.5 - 0.35;
    expect(found.leastDb).toBeLessThan(measuredDb);
    expect(found.mostDb).toBeGreaterThan(measuredDb);
    expect(found.lossDb / measuredDb).toBeLessThan(2.2);
  });
});

test('wet snow is not known, and nobody is told a figure', () => {
  expect(
    layerLoss({ layer: 'wet-snow', frequencyGHz: 12, on: 'reflector', thicknessMm: 20 }),
  ).toEqual({ kind: 'not-known' });
});

test('the film grows with the third root of rain and radius', () => {
  const film = (rainRateMmPerH: number, radiusM: number) =>
    filmThicknessMm({ rainRateMmPerH, radiusM });
  expect(film(80, 1) / film(10, 1)).toBeCloseTo(2, 9);
  expect(film(10, 8) / film(10, 1)).toBeCloseTo(2, 9);
  expect(film(0, 1)).toBe(0);
});

test('a film by hand: 50 mm/h at 20 degrees on a radius of half a metre (formula and viscosity of 1.00 mPa s from memory)', () => {
  // (3 * 1.00e-3 Pa s * 0.5 m * 1.3889e-5 m/s / (2 * 1000 kg/m3 * 9.80665 m/s2))^(1/3) = 1.0205e-4 m.
  expect(filmThicknessMm({ rainRateMmPerH: 50, radiusM: 0.5, temperatureK: 293.15 })).toBeCloseTo(
    0.102,
    3,
  );
});

/** Heights of stations go in and out in metres, also where the recommendation's formula takes kilometres. */

import { climateAt } from 'slantpath/climate';
import {
  beamSpreadingLoss,
  gasSlantAttenuation,
  groundAltitude,
  lowElevationFade,
  rainAttenuation,
  rainAttenuationBatch,
  rainAttenuationProbability,
  waterVapour,
} from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';

const rain = {
  latitudeDeg: 46.4,
  heightM: 1900,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 35,
  frequencyGHz: 12,
  elevationDeg: 30,
  tiltDeg: 45,
  exceededPercent: 0.01,
};
const air = { frequencyGHz: 20, elevationDeg: 30 };
const low = {
  latitudeDeg: 46,
  heightM: 200,
  apparentElevationDeg: 1,
  frequencyGHz: 12,
  exceededPercent: 0.1,
  period: 'worst-month',
  steepGradientPercent: 10,
} as const;
const flat = (value: number) => ({ rows: 2, columns: 2, values: [value, value, value, value] });
const vapour = (heightM: number) =>
  waterVapour({
    latitudeDeg: 46.4,
    longitudeDeg: 9.6,
    heightM,
    exceededPercent: 5,
    mapAltitude: flat(0),
    maps: [
      { exceededPercent: 5, surfaceDensity: flat(10), totalColumn: flat(25), scaleHeight: flat(2) },
    ],
  });

describe('heights in metres', () => {
  test('rain: a kilometre below the rain height under 30 degrees is two kilometres of path', () => {
    // P.618-14, equation (1): (2.9 - 1.9) / sin 30 degrees.
    expect(rainAttenuation(rain).slantPathKm).toBeCloseTo(2, 12);
    expect(rainAttenuation({ ...rain, heightM: 2900 }).attenuationDb).toBe(0);
    expect(rainAttenuationBatch(rain).attenuationDb[0]).toBe(rainAttenuation(rain).attenuationDb);
    expect(
      rainAttenuationProbability({
        heightM: 1900,
        rainHeightKm: 2.9,
        elevationDeg: 30,
        rainProbabilityPercent: 5,
      }).horizontalProjectionKm,
    ).toBeCloseTo(2 * Math.cos(Math.PI / 6), 12);
  });

  test('fades at low elevation: high ground begins at 700 m', () => {
    // P.618-14, section 2.4.1: 76 dB below 700 m above mean sea level over land, 70 dB from there up.
    const at = (heightM: number) => lowElevationFade({ ...low, heightM }).geoclimaticFactorDb;
    expect(at(0) - at(700)).toBeCloseTo(6, 12);
    expect(at(699.9)).toBe(at(0));
  });

  test('beam spreading: stated up to 3 km', () => {
    // P.834-9, section 1: stations up to 3 km.
    const at = (heightM: number) => beamSpreadingLoss({ elevationDeg: 1, heightM });
    expect(at(3000).outsideStatedRange).toEqual([]);
    expect(at(3001).outsideStatedRange).toEqual(['heightM']);
  });

  test('vapour: one scale height of 2 km up, 1/e is left', () => {
    expect(vapour(2000).waterVapourContentKgPerM2).toBeCloseTo(25 / Math.E, 12);
    expect(vapour(0).waterVapourDensityGPerM3).toBeCloseTo(10, 12);
  });

  test('gases: each kilometre takes air away, a metre next to nothing', () => {
    const at = (heightM: number) => gasSlantAttenuation({ ...air, heightM }).attenuationDb;
    expect(at(1) / at(0)).toBeCloseTo(1, 3);
    expect(at(1000) / at(0)).toBeLessThan(0.8);
  });

  test('the ground in a map of kilometres comes out in metres', () => {
    const map = { rows: 3, columns: 3, values: [0, 0, 0, 2, 2, 2, 0, 0, 0] };
    expect(groundAltitude(map, { latitudeDeg: 0, longitudeDeg: 0 }).groundHeightM).toBe(2000);
  });

  test('the climate hands on the height it was given', () => {
    const place = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
    const climate = climateAt(place);
    expect(climate.heightM).toBe(1900);
    // In the Alps the smoothed ground lies between one and three thousand metres.
    expect(climate.groundHeightM).toBeGreaterThan(1000);
    expect(climate.groundHeightM).toBeLessThan(3000);
  });

  test.each([
    ['rain', () => rainAttenuation({ ...rain, heightM: 10_001 })],
    ['rain below the sea', () => rainAttenuation({ ...rain, heightM: -501 })],
    ['gases', () => gasSlantAttenuation({ ...air, heightM: 10_001 })],
    ['low elevation', () => lowElevationFade({ ...low, heightM: 29_000 })],
    ['spreading', () => beamSpreadingLoss({ elevationDeg: 1, heightM: 10_001 })],
    ['vapour', () => vapour(100_001)],
  ])('a height in feet is refused: %s', (_, call) => {
    expect(call).toThrow(
      expect.objectContaining({ parameter: 'heightM', slip: expect.stringMatching(/feet/) }),
    );
  });
});

import {
  approximateGasAttenuation,
  gasSlantAttenuation,
  gasSlantAttenuationBatch,
  REFERENCE_ATMOSPHERES,
  referenceAtmosphere,
  specificGasAttenuation,
} from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { allFinite } from '../support/finite.js';

describe('gases', () => {
  test('every atmosphere is continuous up to 79 km, falls in pressure, and stays finite', () => {
    for (const atmosphere of REFERENCE_ATMOSPHERES) {
      let before = referenceAtmosphere(0, atmosphere);
      const faults: string[] = [];
      for (let height = 0.05; height <= 100; height += 0.05) {
        const here = referenceAtmosphere(Math.min(100, height), atmosphere);
        if (!allFinite(here)) faults.push(`${height} km: not finite`);
        if (!(here.pressureHpa < before.pressureHpa)) faults.push(`${height} km: pressure rises`);
        // The printed summer profile of the middle latitudes jumps by 19 K at 80 km.
        const jump = Math.abs(here.temperatureK / before.temperatureK - 1);
        if (height < 79 && !(jump < 0.015)) faults.push(`${height} km: temperature jumps`);
        if (!(here.waterVapourDensityGPerM3 >= 0)) faults.push(`${height} km: less than no vapour`);
        before = here;
      }
      expect(faults, atmosphere).toEqual([]);
    }
    expect(() => referenceAtmosphere(5000)).toThrow(/metres/);
    expect(() => referenceAtmosphere(5, 'arctic' as never)).toThrow(
      expect.objectContaining({ code: 'not-an-option' }),
    );
  });

  test('dry air has no vapour term', () => {
    const dry = specificGasAttenuation({
      frequencyGHz: 22.2,
      dryPressureHpa: 1013,
      temperatureK: 288,
      waterVapourDensityGPerM3: 0,
    });
    expect(dry.waterVapourDbPerKm).toBe(0);
    expect(dry.oxygenDbPerKm).toBeGreaterThan(0);
  });

  test('the batch equals the single call bit for bit', () => {
    const frequencyGHz = [4, 12, 20, 60, 340];
    const elevationDeg = [0, 3, 36, 80, 90];
    const air = { heightM: 1900, atmosphere: 'mid-latitude-winter' } as const;
    const batch = gasSlantAttenuationBatch({ ...air, frequencyGHz, elevationDeg });
    frequencyGHz.forEach((frequency, row) => {
      const single = gasSlantAttenuation({
        ...air,
        frequencyGHz: frequency,
        elevationDeg: elevationDeg[row] as number,
      });
      expect(batch.attenuationDb[row]).toBe(single.attenuationDb);
      expect(batch.oxygenDb[row]).toBe(single.oxygenDb);
      expect(batch.waterVapourDb[row]).toBe(single.waterVapourDb);
    });
    expect(() =>
      gasSlantAttenuationBatch({ frequencyGHz: [12, 12_000], elevationDeg: 30 }),
    ).toThrow(expect.objectContaining({ parameter: 'frequencyGHz', index: 1 }));
  });

  test('the zenith is shortest, a high station has less air, and the horizon stays finite', () => {
    const at = (elevationDeg: number, heightM: number) =>
      gasSlantAttenuation({ frequencyGHz: 20, elevationDeg, heightM });
    expect(at(90, 0).attenuationDb).toBeLessThan(at(30, 0).attenuationDb);
    expect(at(30, 2000).attenuationDb).toBeLessThan(at(30, 0).attenuationDb);
    expect(allFinite(at(0, 0))).toBe(true);
    expect(at(90, 0).bendingDeg).toBeCloseTo(0, 12);
    // Twice the air under 30 degrees of elevation, within the Earth's curvature.
    expect(at(30, 0).attenuationDb / at(90, 0).attenuationDb).toBeCloseTo(2, 1);
  });

  test('the surface method keeps within 8 % of the layers from 4 to 45 GHz, 11 % about the vapour line', () => {
    const { pressureHpa, temperatureK } = referenceAtmosphere(0);
    for (const frequencyGHz of [4, 7.3, 12, 17.1, 20, 22.2, 25, 30, 38.6, 45]) {
      const layers = gasSlantAttenuation({ frequencyGHz, elevationDeg: 35 }).attenuationDb;
      const surface = approximateGasAttenuation({
        frequencyGHz,
        elevationDeg: 35,
        pressureHpa,
        temperatureK,
        waterVapourDensityGPerM3: 7.5,
      }).attenuationDb;
      expect(Math.abs(surface / layers - 1), `${frequencyGHz} GHz`).toBeLessThan(
        Math.abs(frequencyGHz - 22.3) < 2.5 ? 0.11 : 0.08,
      );
    }
  });

  test('between the rows of Annex 2 each coefficient runs straight, so height and absorption do', () => {
    const air = {
      elevationDeg: 35,
      pressureHpa: 985,
      temperatureK: 291,
      waterVapourDensityGPerM3: 9.4,
    };
    const at = (frequencyGHz: number) => {
      const gas = approximateGasAttenuation({
        ...air,
        frequencyGHz,
        waterVapourContentKgPerM2: 21,
      });
      return [gas.oxygenHeightKm, gas.waterVapourZenithDb / 21] as const;
    };
    let compared = 0;
    for (let row = 1; row <= 69.5; row += 0.5) {
      const low = at(row);
      const high = at(row + 0.5);
      for (const share of [0.12, 0.5, 0.86])
        at(row + share / 2).forEach((value, index) => {
          const [a, b] = [low[index] ?? Number.NaN, high[index] ?? Number.NaN];
          // Neighbours differ, so that a value from another row shows.
          expect(a).not.toBe(b);
          expect(Math.abs(value - (a + (b - a) * share))).toBeLessThanOrEqual(1e-12 * Math.abs(b));
          compared++;
        });
    }
    expect(compared).toBe(139 * 3 * 2 - 6);
  });

  test('both ways to the vapour agree where the content matches the density', () => {
    const air = {
      frequencyGHz: 20,
      elevationDeg: 35,
      pressureHpa: 1013.25,
      temperatureK: 288.15,
      waterVapourDensityGPerM3: 7.5,
    };
    const density = approximateGasAttenuation(air);
    // 7.5 g/m3 with a scale height of 2 km are 15 kg/m2.
    const content = approximateGasAttenuation({ ...air, waterVapourContentKgPerM2: 15 });
    expect(density.waterVapourFrom).toBe('surface-density');
    expect(content.waterVapourFrom).toBe('content');
    expect(content.waterVapourDb / density.waterVapourDb).toBeGreaterThan(0.9);
    expect(content.waterVapourDb / density.waterVapourDb).toBeLessThan(1.1);
    expect(() => approximateGasAttenuation({ ...air, pressureHpa: 101_325 })).toThrow(/pascal/);
    expect(() => approximateGasAttenuation({ ...air, frequencyGHz: 94 })).toThrow(/from 1 to 70/);
  });
});

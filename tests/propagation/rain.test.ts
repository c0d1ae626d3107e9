import fc from 'fast-check';
import {
  polarizationScaledRain,
  type RainAttenuationInput,
  rainAttenuation,
  rainAttenuationBatch,
  rainAttenuationProbability,
  rainExceedance,
  specificRainAttenuation,
  totalAttenuation,
  totalAttenuationBatch,
  totalExceedance,
} from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const path = fc.record({
  latitudeDeg: between(-90, 90),
  heightM: between(-400, 5000),
  rainHeightKm: between(0, 6),
  rainRate001MmPerH: between(0, 200),
  frequencyGHz: between(1, 55),
  elevationDeg: between(0, 90),
  tiltDeg: between(-180, 180),
});

const huts: RainAttenuationInput = {
  latitudeDeg: 46.4,
  heightM: 1900,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 35,
  frequencyGHz: 20,
  elevationDeg: 36,
  tiltDeg: 45,
  exceededPercent: 0.01,
};

/** Every number in a result, nested ones too. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersOf) : [];
}

describe('rain attenuation', () => {
  test('is finite and not negative anywhere in its domain, with every term', () => {
    fc.assert(
      fc.property(path, between(1e-6, 100), (where, exceededPercent) => {
        const rain = rainAttenuation({ ...where, exceededPercent });
        for (const value of numbersOf(rain))
          expect(Number.isFinite(value) && !Object.is(value, -0)).toBe(true);
        expect(rain.attenuationDb).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: runs(1000) },
    );
  });

  test('is mirror-symmetric in latitude and repeats with half a turn of tilt', () => {
    fc.assert(
      fc.property(path, between(0.001, 5), (where, exceededPercent) => {
        const here = rainAttenuation({ ...where, exceededPercent }).attenuationDb;
        const mirrored = rainAttenuation({
          ...where,
          latitudeDeg: -where.latitudeDeg,
          exceededPercent,
        }).attenuationDb;
        expect(mirrored).toBe(here);
        const turned = rainAttenuation({
          ...where,
          tiltDeg: where.tiltDeg + 180,
          exceededPercent,
        }).attenuationDb;
        expect(Math.abs(turned - here)).toBeLessThanOrEqual(1e-9 * here);
      }),
    );
  });

  test('grows with the rain rate and is zero without rain or above it', () => {
    const rates = [0, 0.01, 1, 10, 35, 100, 200];
    const values = rates.map(
      (rainRate001MmPerH) => rainAttenuation({ ...huts, rainRate001MmPerH }).attenuationDb,
    );
    expect(values[0]).toBe(0);
    for (let i = 1; i < values.length; i++)
      expect(values[i]).toBeGreaterThan(values[i - 1] as number);
    expect(rainAttenuation({ ...huts, heightM: 2900 }).attenuationDb).toBe(0);
    expect(rainAttenuation({ ...huts, heightM: 4000 }).slantPathKm).toBe(0);
  });

  test('the slant path is continuous where the curved Earth comes in, at 5 degrees', () => {
    const below = rainAttenuation({ ...huts, elevationDeg: 5 - 1e-9 }).slantPathKm;
    const at = rainAttenuation({ ...huts, elevationDeg: 5 }).slantPathKm;
    expect(Math.abs(below / at - 1)).toBeLessThan(0.01);
  });

  test('attenuation at 0.01 % is the value carried to 0.01 %, whatever the latitude', () => {
    for (const latitudeDeg of [-80, -30, 0, 20, 36, 60]) {
      const rain = rainAttenuation({ ...huts, latitudeDeg });
      expect(rain.attenuationDb).toBeCloseTo(rain.attenuation001Db, 12);
    }
  });

  test('says what lies outside the stated range, and only there', () => {
    expect(rainAttenuation(huts).outsideStatedRange).toEqual([]);
    expect(
      rainAttenuation({ ...huts, frequencyGHz: 70, exceededPercent: 10 }).outsideStatedRange,
    ).toEqual(['frequencyGHz', 'exceededPercent']);
    expect(rainAttenuation({ ...huts, exceededPercent: 0.001 }).outsideStatedRange).toEqual([]);
    expect(rainAttenuation({ ...huts, exceededPercent: 5 }).outsideStatedRange).toEqual([]);
  });

  test.each([
    ['latitudeDeg', { latitudeDeg: 102 }, 'out-of-range'],
    ['heightM', { heightM: 1900000 }, 'out-of-range'],
    ['rainHeightKm', { rainHeightKm: 2900 }, 'out-of-range'],
    ['rainRate001MmPerH', { rainRate001MmPerH: -1 }, 'out-of-range'],
    ['frequencyGHz', { frequencyGHz: 12_000 }, 'out-of-range'],
    ['elevationDeg', { elevationDeg: -1 }, 'out-of-range'],
    ['tiltDeg', { tiltDeg: Number.POSITIVE_INFINITY }, 'not-finite'],
    ['exceededPercent', { exceededPercent: 0 }, 'out-of-range'],
    ['exceededPercent', { exceededPercent: Number.NaN }, 'not-finite'],
    ['elevationDeg', { elevationDeg: '36' as never }, 'not-a-number'],
    ['tiltDeg', { tiltDeg: undefined as never }, 'missing'],
  ])('refuses a bad %s', (parameter, change, code) => {
    const refusal = expect.objectContaining({ parameter, code });
    expect(() => rainAttenuation({ ...huts, ...change })).toThrow(refusal);
    if (code !== 'missing' && code !== 'not-a-number')
      expect(() => rainAttenuationBatch({ ...huts, ...change })).toThrow(refusal);
  });

  test('the slip of a frequency in MHz is named', () => {
    expect(() =>
      specificRainAttenuation({ ...huts, frequencyGHz: 11_700, rainRateMmPerH: 1 }),
    ).toThrow(/MHz/);
  });
});

describe('batch', () => {
  const columns = (rows: readonly RainAttenuationInput[]) =>
    Object.fromEntries(
      Object.keys(huts).map((field) => [
        field,
        Float64Array.from(rows, (row) => row[field as keyof RainAttenuationInput]),
      ]),
    ) as unknown as Parameters<typeof rainAttenuationBatch>[0];

  test('equals the single call bit for bit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(path, between(1e-6, 100)), { minLength: 1, maxLength: 20 }),
        (stations) => {
          const rows = stations.map(([where, exceededPercent]) => ({ ...where, exceededPercent }));
          expect([...rainAttenuationBatch(columns(rows)).attenuationDb]).toEqual(
            rows.map((row) => rainAttenuation(row).attenuationDb),
          );
        },
      ),
    );
  });

  const clear = {
    diameterM: 0.9,
    efficiencyRatio: 0.65,
    wetRefractivityNUnits: 45,
    gasDb: 0.4,
    cloudDb: 0.6,
  };

  test('the total equals the single call bit for bit, above 5 % too', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(path, between(0.001, 50)), { minLength: 1, maxLength: 10 }),
        (stations) => {
          const rows = stations.map(([where, exceededPercent]) => ({
            ...where,
            elevationDeg: Math.max(1, where.elevationDeg),
            exceededPercent,
          }));
          const totals = totalAttenuationBatch({ ...columns(rows), ...clear });
          const single = rows.map((row) => totalAttenuation({ ...row, ...clear }));
          expect([...totals.attenuationDb]).toEqual(single.map((row) => row.attenuationDb));
          expect([...totals.rainDb]).toEqual(single.map((row) => row.rainDb));
          expect([...totals.scintillationDb]).toEqual(single.map((row) => row.scintillationDb));
        },
      ),
    );
  });

  test('reuses the column given and names the row of a bad value', () => {
    const out = new Float64Array(2);
    expect(
      rainAttenuationBatch({ ...huts, latitudeDeg: [46, 47] }, { attenuationDb: out })
        .attenuationDb,
    ).toBe(out);
    expect(() => rainAttenuationBatch({ ...huts, latitudeDeg: [46, 91] })).toThrow(
      expect.objectContaining({ parameter: 'latitudeDeg', index: 1 }),
    );
    expect(() =>
      rainAttenuationBatch({ ...huts, latitudeDeg: [46], elevationDeg: [1, 2] }),
    ).toThrow(expect.objectContaining({ code: 'length-mismatch' }));
    expect(() => totalAttenuationBatch({ ...huts, ...clear, diameterM: [0.9, 90_000] })).toThrow(
      expect.objectContaining({ parameter: 'diameterM', index: 1 }),
    );
  });
});

describe('for how much of the year', () => {
  test('turns the rain curve round: the attenuation of the percentage found is the one asked for', () => {
    fc.assert(
      fc.property(path, between(0, 300), (where, level) => {
        const found = rainExceedance(where, level);
        if (found.kind === 'exceeded') {
          const back = rainAttenuation({ ...where, exceededPercent: found.exceededPercent });
          expect(Math.abs(back.attenuationDb - level)).toBeLessThanOrEqual(1e-9 * (1 + level));
          expect(found.exceededPercent).toBeGreaterThanOrEqual(0.001 * (1 - 1e-12));
          expect(found.exceededPercent).toBeLessThanOrEqual(5 * (1 + 1e-12));
        } else if (found.kind === 'rarer') expect(level).toBeGreaterThan(found.limitAttenuationDb);
        else expect(level).toBeLessThanOrEqual(found.limitAttenuationDb);
      }),
      { numRuns: runs(500) },
    );
  });

  test('more attenuation is never exceeded for more time, even where the published curve turns back', () => {
    const tropics = {
      latitudeDeg: 2,
      heightM: 0,
      rainHeightKm: 5,
      rainRate001MmPerH: 120,
      frequencyGHz: 30,
      elevationDeg: 10,
      tiltDeg: 0,
    };
    const curve = (exceededPercent: number) =>
      rainAttenuation({ ...tropics, exceededPercent }).attenuationDb;
    expect(curve(0.001)).toBeLessThan(curve(0.005));
    let before = Number.POSITIVE_INFINITY;
    for (let level = 9; level < 190; level += 1) {
      const found = rainExceedance(tropics, level);
      const percent =
        found.kind === 'exceeded' ? found.exceededPercent : found.kind === 'rarer' ? 0 : 100;
      expect(percent).toBeLessThanOrEqual(before);
      before = percent;
    }
    expect(rainExceedance(tropics, 190).kind).toBe('rarer');
  });

  test('turns the total round', () => {
    const whole = {
      ...huts,
      diameterM: 0.9,
      wetRefractivityNUnits: 45,
      gasDb: 0.4,
      cloudDb: 0.6,
    };
    for (const exceededPercent of [0.002, 0.01, 0.3, 1, 4.9]) {
      const { attenuationDb } = totalAttenuation({ ...whole, exceededPercent });
      const found = totalExceedance(whole, attenuationDb);
      expect(found.kind === 'exceeded' && found.exceededPercent).toBeCloseTo(exceededPercent, 9);
    }
    expect(totalExceedance(whole, 0.5).kind).toBe('more-often');
    expect(totalExceedance(whole, 500).kind).toBe('rarer');
  });

  test('without rain on the path every attenuation is rarer', () => {
    expect(rainExceedance({ ...huts, heightM: 4000 }, 0.1)).toEqual(
      expect.objectContaining({ kind: 'rarer', limitAttenuationDb: 0 }),
    );
  });
});

describe('total', () => {
  const whole = {
    ...huts,
    diameterM: 0.9,
    wetRefractivityNUnits: 45,
    gasDb: 0.4,
    cloudDb: 0.6,
  };

  test('is the gas plus the root of squares, and leaves rain out above 5 %', () => {
    const at = totalAttenuation({ ...whole, exceededPercent: 5 });
    expect(at.attenuationDb).toBeCloseTo(
      at.gasDb + Math.hypot(at.rainDb + at.cloudDb, at.scintillationDb),
      14,
    );
    expect(at.rainDb).toBeGreaterThan(0);
    expect(totalAttenuation({ ...whole, exceededPercent: 5.001 })).toEqual(
      expect.objectContaining({ rainDb: 0, heldPercent: 5.001 }),
    );
  });

  test('changes nothing that it is given', () => {
    const frozen = Object.freeze({ ...whole });
    expect(() => totalAttenuation(frozen)).not.toThrow();
  });
});

test('rain on the path is at least as likely as rain at the station', () => {
  fc.assert(
    fc.property(between(0.01, 60), between(0.5, 90), between(0.1, 6), (percent, elevation, top) => {
      const rain = rainAttenuationProbability({
        heightM: 0,
        rainHeightKm: top,
        elevationDeg: elevation,
        rainProbabilityPercent: percent,
      });
      expect(rain.attenuationProbabilityPercent).toBeGreaterThanOrEqual(percent - 1e-9);
      expect(rain.attenuationProbabilityPercent).toBeLessThanOrEqual(100);
    }),
  );
});

test('another polarization and back gives the measured attenuation again', () => {
  const there = polarizationScaledRain({ ...huts, tiltDeg: 0, attenuationDb: 8, toTiltDeg: 90 });
  const back = polarizationScaledRain({
    ...huts,
    tiltDeg: 90,
    attenuationDb: there.attenuationDb,
    toTiltDeg: 0,
  });
  expect(back.attenuationDb).toBeCloseTo(8, 12);
  // Flattened drops take more from the horizontal polarization.
  expect(there.attenuationDb).toBeLessThan(8);
});

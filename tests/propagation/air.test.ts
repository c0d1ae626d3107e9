import fc from 'fast-check';
import {
  annualPercent,
  apparentElevation,
  beamSpreadingLoss,
  cloudAttenuation,
  cloudAttenuationLognormal,
  cloudSpecificCoefficient,
  crossPolarDiscrimination,
  diversityGain,
  fadeDuration,
  frequencyScaledRain,
  lowElevationFade,
  scaledCrossPolarDiscrimination,
  scintillationFade,
  skyNoise,
  specificGasAttenuation,
  worstMonthPercent,
} from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { allFinite } from '../support/finite.js';
import { runs } from '../support/runs.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('clouds', () => {
  test('no water, no loss; half the elevation sine, twice the loss', () => {
    const at = (elevationDeg: number, liquidWaterKgPerM2: number) =>
      cloudAttenuation({ frequencyGHz: 20, elevationDeg, liquidWaterKgPerM2 }).attenuationDb;
    expect(at(30, 0)).toBe(0);
    expect(at(30, 1)).toBeCloseTo(2 * at(90, 1), 12);
    expect(cloudSpecificCoefficient({ frequencyGHz: 20, temperatureK: 273.15 })).toBeGreaterThan(
      cloudSpecificCoefficient({ frequencyGHz: 20, temperatureK: 293.15 }),
    );
    expect(() => cloudSpecificCoefficient({ frequencyGHz: 20, temperatureK: 10 })).toThrow(
      /Celsius/,
    );
  });

  test('the lognormal spread gives the median at half the probability of cloud, and nothing beyond it', () => {
    const at = (exceededPercent: number, cloudProbabilityPercent: number) =>
      cloudAttenuationLognormal({
        frequencyGHz: 20,
        elevationDeg: 90,
        exceededPercent,
        logMean: -2,
        logDeviation: 1,
        cloudProbabilityPercent,
      });
    expect(at(20, 40).liquidWaterKgPerM2).toBeCloseTo(Math.exp(-2), 12);
    expect(at(40, 40).attenuationDb).toBe(0);
    expect(at(0.001, 0.02).attenuationDb).toBe(0);
  });
});

describe('scintillation', () => {
  const hut = {
    frequencyGHz: 12,
    elevationDeg: 30,
    diameterM: 0.9,
    wetRefractivityNUnits: 45,
  };

  test('falls with the percentage, the elevation and the aperture', () => {
    fc.assert(
      fc.property(between(0.01, 49), between(5, 89), between(0.3, 10), (p, elevation, diameter) => {
        const at = (change: Partial<typeof hut>, exceededPercent = p) =>
          scintillationFade({
            ...hut,
            elevationDeg: elevation,
            diameterM: diameter,
            ...change,
            exceededPercent,
          }).attenuationDb;
        expect(at({}, p * 1.02)).toBeLessThan(at({}) + 1e-12);
        expect(at({ elevationDeg: elevation + 1 })).toBeLessThan(at({}));
        expect(at({ diameterM: diameter * 1.1 })).toBeLessThan(at({}));
      }),
    );
  });

  test('a huge aperture leaves nothing, and half efficiency is the cautious default', () => {
    expect(scintillationFade({ ...hut, diameterM: 80, exceededPercent: 1 }).attenuationDb).toBe(0);
    expect(scintillationFade({ ...hut, exceededPercent: 1 })).toEqual(
      scintillationFade({ ...hut, efficiencyRatio: 0.5, exceededPercent: 1 }),
    );
  });

  test('deep fades: ten times rarer is ten decibels deeper, the year is milder than its worst month', () => {
    const low = {
      latitudeDeg: 46,
      heightM: 200,
      apparentElevationDeg: 1,
      frequencyGHz: 12,
      exceededPercent: 0.1,
      period: 'worst-month',
      steepGradientPercent: 10,
    } as const;
    const worst = lowElevationFade(low);
    expect(lowElevationFade({ ...low, exceededPercent: 0.01 }).attenuationDb).toBeCloseTo(
      worst.attenuationDb + 10,
      10,
    );
    expect(lowElevationFade({ ...low, period: 'average-year' }).attenuationDb).toBeLessThan(
      worst.attenuationDb,
    );
    // By hand: 76 + 15 log 10 + 9 log 12 - 55 log 18.4533 + 10.
    expect(worst.attenuationDb).toBeCloseTo(
      76 + 15 + 9 * Math.log10(12) - 55 * Math.log10(1 + 1000 * (Math.PI / 180)) + 10,
      10,
    );
    expect(lowElevationFade({ ...low, exceededPercent: 50 }).outsideStatedRange).toContain(
      'attenuationDb',
    );
    expect(() => lowElevationFade({ ...low, apparentElevationDeg: 8 })).toThrow(/below 5 degrees/);
  });
});

describe('cross-polarization', () => {
  const rain = {
    frequencyGHz: 12,
    elevationDeg: 36,
    tiltDeg: 0,
    copolarAttenuationDb: 5,
    exceededPercent: 0.01,
  };

  test('circular polarization is worst, and the pieces add up', () => {
    const linear = crossPolarDiscrimination(rain);
    const circular = crossPolarDiscrimination({ ...rain, tiltDeg: 45 });
    expect(circular.discriminationDb).toBeLessThan(linear.discriminationDb);
    expect(circular.tiltTermDb).toBeCloseTo(0, 12);
    expect(linear.tiltTermDb).toBeCloseTo(-10 * Math.log10(0.032), 10);
    expect(linear.discriminationDb).toBeCloseTo(
      linear.rainDiscriminationDb - linear.iceTermDb + linear.scalingTermDb,
      12,
    );
  });

  test('below 6 GHz the value at 6 GHz is scaled by the frequency', () => {
    const six = crossPolarDiscrimination({ ...rain, frequencyGHz: 6 }).discriminationDb;
    const four = crossPolarDiscrimination({ ...rain, frequencyGHz: 4 }).discriminationDb;
    expect(four - six).toBeCloseTo(20 * Math.log10(1.5), 12);
    expect(
      scaledCrossPolarDiscrimination({
        discriminationDb: six,
        fromGHz: 6,
        fromTiltDeg: 0,
        toGHz: 4,
        toTiltDeg: 0,
      }).discriminationDb,
    ).toBeCloseTo(four, 12);
  });

  test('straight overhead has no end and is refused; other percentages are marked', () => {
    expect(() => crossPolarDiscrimination({ ...rain, elevationDeg: 90 })).toThrow(/overhead/);
    expect(crossPolarDiscrimination({ ...rain, exceededPercent: 0.03 }).outsideStatedRange).toEqual(
      ['exceededPercent'],
    );
  });
});

describe('worst month', () => {
  test('there and back again', () => {
    fc.assert(
      fc.property(between(1e-5, 100), between(1, 12), between(0, 0.4), (percent, q1, beta) => {
        const there = worstMonthPercent(percent, { q1, beta });
        // A worst month that is faded all the time has no way back.
        fc.pre(there.worstMonthPercent < 99.999);
        const back = annualPercent(there.worstMonthPercent, { q1, beta });
        expect(there.ratio).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(there.ratio).toBeLessThanOrEqual(12 + 1e-12);
        expect(Math.abs(back.annualPercent / percent - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  test('planning anywhere: the printed short form p = 0.30 pw^1.15 within a hundredth', () => {
    for (const worst of [0.01, 0.1, 0.5, 2, 7])
      expect(annualPercent(worst).annualPercent / (0.3 * worst ** 1.15)).toBeCloseTo(1, 2);
  });
});

describe('fades', () => {
  const fade = { frequencyGHz: 20, elevationDeg: 36, attenuationDb: 5, totalFadeTimeS: 30_000 };

  test('longer fades are fewer, and no time is made', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const durationS of [1, 3, 10, 30, 100, 300, 1000, 3600, 20_000]) {
      const found = fadeDuration({ ...fade, durationS });
      expect(allFinite(found)).toBe(true);
      expect(found.fades).toBeLessThan(before);
      expect(found.timeInFadesS).toBeLessThanOrEqual(fade.totalFadeTimeS);
      before = found.fades;
    }
  });

  test('both laws meet at the boundary between short and long fades', () => {
    const { boundaryS } = fadeDuration({ ...fade, durationS: 10 });
    const below = fadeDuration({ ...fade, durationS: boundaryS * (1 - 1e-12) });
    const above = fadeDuration({ ...fade, durationS: boundaryS * (1 + 1e-12) });
    expect(above.longerProbabilityRatio).toBeCloseTo(below.longerProbabilityRatio, 9);
    expect(above.longerTimeRatio).toBeCloseTo(below.longerTimeRatio, 9);
  });
});

test('the beam spreads by the change of refraction with elevation', () => {
  const step = 1e-4;
  for (const heightKm of [0, 1, 3])
    for (const elevationDeg of [0.5, 1, 2, 5, 9]) {
      const apparent = (e: number) => apparentElevation(e, heightKm * 1000).apparentElevationDeg;
      const spread = (apparent(elevationDeg + step) - apparent(elevationDeg - step)) / (2 * step);
      const loss = beamSpreadingLoss({ elevationDeg, heightM: heightKm * 1000 });
      expect(loss.spreadRatio).toBeCloseTo(spread, 7);
      expect(loss.attenuationDb).toBeCloseTo(-10 * Math.log10(spread), 6);
    }
  expect(beamSpreadingLoss({ elevationDeg: 3, heightM: 0 }).attenuationDb).toBeLessThan(0.3);
});

test('nothing is gained by no distance, and never more than the attenuation', () => {
  const gain = (attenuationDb: number, distanceKm: number) =>
    diversityGain({
      attenuationDb,
      distanceKm,
      frequencyGHz: 12,
      elevationDeg: 36,
      baselineAngleDeg: 90,
    }).gainDb;
  expect(gain(10, 0)).toBe(0);
  expect(gain(10, 20)).toBeGreaterThan(gain(10, 5));
  for (const attenuationDb of [0, 1, 10, 100])
    expect(gain(attenuationDb, 50)).toBeLessThanOrEqual(attenuationDb);
});

test('scaling to the same frequency changes nothing', () => {
  expect(frequencyScaledRain({ attenuationDb: 7, fromGHz: 20, toGHz: 20 }).attenuationDb).toBe(7);
});

test('a deep fade radiates like its medium, a clear sky like the background', () => {
  expect(skyNoise(0).skyNoiseK).toBeCloseTo(2.7, 12);
  expect(skyNoise(60).skyNoiseK).toBeCloseTo(275, 3);
  expect(skyNoise(60, 260).skyNoiseK).toBeCloseTo(260, 3);
});

test('fuzzed calls give finite numbers or one clear refusal', () => {
  const any = fc.oneof(
    between(-1e3, 1e3),
    fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e300, 90, 5),
  );
  fc.assert(
    fc.property(any, any, any, any, any, (a, b, c, d, e) => {
      const calls = [
        () =>
          specificGasAttenuation({
            frequencyGHz: a,
            dryPressureHpa: b,
            temperatureK: c,
            waterVapourDensityGPerM3: d,
          }),
        () => cloudAttenuation({ frequencyGHz: a, elevationDeg: b, liquidWaterKgPerM2: c }),
        () =>
          scintillationFade({
            frequencyGHz: a,
            elevationDeg: b,
            diameterM: c,
            wetRefractivityNUnits: d,
            exceededPercent: e,
          }),
        () =>
          crossPolarDiscrimination({
            frequencyGHz: a,
            elevationDeg: b,
            tiltDeg: c,
            copolarAttenuationDb: d,
            exceededPercent: e,
          }),
        () =>
          fadeDuration({
            frequencyGHz: a,
            elevationDeg: b,
            attenuationDb: c,
            durationS: d,
            totalFadeTimeS: e,
          }),
        () => worstMonthPercent(a),
        () => annualPercent(b),
        () => skyNoise(a),
        () => frequencyScaledRain({ attenuationDb: a, fromGHz: b, toGHz: c }),
      ];
      for (const call of calls) {
        let result: unknown;
        try {
          result = call();
        } catch (error) {
          expect(error).toHaveProperty('name', 'DomainError');
          continue;
        }
        expect(allFinite(result), JSON.stringify([a, b, c, d, e, result])).toBe(true);
      }
    }),
    { numRuns: runs(2000) },
  );
});

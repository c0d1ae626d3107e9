import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import {
  type Adjuster,
  adjusterAngle,
  adjusterTurns,
  alternatingSearch,
  azimuthOnSkyDeg,
  bandLoss,
  coarseRaster,
  fitCoupledPeak,
} from '../../src/peaking/index.js';

const push = { kind: 'push', threadPitchM: 0.00175, leverArmM: 0.12 } as const;
const strut = {
  kind: 'strut',
  threadPitchM: 0.0015,
  leverArmM: 0.15,
  baseArmM: 0.4,
  strutLengthM: 0.42,
} as const;

describe('adjuster', () => {
  test('agrees with plane trigonometry (numpy)', () => {
    expect(adjusterAngle(push, 1).angleDeg).toBeCloseTo(0.8355042246909917, 12);
    expect(adjusterAngle(strut, 8).angleDeg).toBeCloseTo(4.883244026760693, 10);
    expect(adjusterAngle(strut, 8).degPerTurn).toBeCloseTo(0.61916016, 6);
  });

  test.each<[string, Adjuster]>([
    ['push', push],
    ['strut', strut],
  ])('%s: turns and angle are inverse, and the rate is the slope', (_name, adjuster) => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (turns) => {
        const { angleDeg, degPerTurn } = adjusterAngle(adjuster, turns);
        expect(adjusterTurns(adjuster, angleDeg)).toBeCloseTo(turns, 8);
        const slope =
          (adjusterAngle(adjuster, turns + 1e-4).angleDeg -
            adjusterAngle(adjuster, turns - 1e-4).angleDeg) /
          2e-4;
        expect(degPerTurn).toBeCloseTo(slope, 6);
      }),
    );
  });

  test('azimuth moves the beam by the cosine of the elevation', () => {
    // Spherical law of cosines with numpy: 4 degrees of azimuth at 55 degrees.
    expect(azimuthOnSkyDeg({ azimuthDeg: 4, elevationDeg: 55 })).toBeCloseTo(2.2939930685854786, 9);
    expect(azimuthOnSkyDeg({ azimuthDeg: 3, elevationDeg: 90 })).toBeCloseTo(0, 12);
  });

  test.each([
    ['threadPitchM', () => adjusterAngle({ ...push, threadPitchM: 1.75 }, 1)],
    ['leverArmM', () => adjusterAngle({ ...push, leverArmM: 120 }, 1)],
    ['strutLengthM', () => adjusterAngle({ ...strut, strutLengthM: 1 }, 1)],
    ['turns', () => adjusterAngle(strut, 500)],
    ['angleDeg', () => adjusterTurns(push, 90)],
    ['kind', () => adjusterAngle({ ...push, kind: 'cam' as 'push' }, 1)],
    ['elevationDeg', () => azimuthOnSkyDeg({ azimuthDeg: 1, elevationDeg: 100 })],
  ])('refuses a bad %s', (parameter, call) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter }));
  });
});

describe('two axes', () => {
  const places = [-1, -0.3, 0.4, 1].flatMap((y) => [-1, 0, 1].map((x) => [x, y] as const));
  const samples = {
    firstDeg: places.map(([x]) => x),
    secondDeg: places.map(([, y]) => y),
    levelDbm: [
      -50.7, -43.22, -43.82, -46.43, -40.82, -42.4, -45.5, -40.53, -43.92, -46.47, -43.2, -47.96,
    ],
  };

  test('the surface agrees with numpy: vertex, its covariance by differences, the axes of the lobe', () => {
    const fit = fitCoupledPeak({ ...samples, lobe: 'parabola' });
    if (fit.kind !== 'peak') throw new Error(fit.kind);
    expect(fit.positionDeg[0]).toBeCloseTo(0.19614796, 7);
    expect(fit.positionDeg[1]).toBeCloseTo(-0.06152272, 7);
    expect(fit.standardUncertaintyDeg[0]).toBeCloseTo(0.01260796, 6);
    expect(fit.standardUncertaintyDeg[1]).toBeCloseTo(0.01542366, 6);
    expect(fit.correlationRatio).toBeCloseTo(-0.56326575, 6);
    expect(fit.beamwidthDeg[0]).toBeCloseTo(1.61336109, 7);
    expect(fit.beamwidthDeg[1]).toBeCloseTo(2.2620121, 6);
    expect(fit.narrowAxisDeg).toBeCloseTo(180 - 147.53293290867654, 6);
    expect(fit.couplingRatio).toBeCloseTo(0.29781267826922525, 8);
    expect(fit.standardDeviationDb).toBeCloseTo(0.20037083939098566, 8);
  });

  test('exact readings give the exact peak and the loss where the antenna stands', () => {
    const fit = fitCoupledPeak({
      lobe: 'parabola',
      ...samples,
      levelDbm: places.map(
        ([x, y]) => -40 - 12 * ((x - 0.3) / 2) ** 2 - 12 * ((y + 0.2) / 1.5) ** 2,
      ),
      standardDeviationDb: 0.1,
      currentDeg: [1.3, -0.2],
    });
    if (fit.kind !== 'peak') throw new Error(fit.kind);
    expect(fit.positionDeg[0]).toBeCloseTo(0.3, 10);
    expect(fit.positionDeg[1]).toBeCloseTo(-0.2, 10);
    expect(fit.beamwidthDeg[0]).toBeCloseTo(1.5, 9);
    expect(Math.abs(fit.narrowAxisDeg)).toBeCloseTo(90, 6);
    expect(fit.lossNowDb).toBeCloseTo(3, 9);
    expect(fit.couplingRatio).toBeCloseTo(0, 9);
    expect(fit.peakLevelDbm).toBeCloseTo(-40, 9);
  });

  test('saddle, flat, outside, too few', () => {
    const shaped = (level: (x: number, y: number) => number) =>
      fitCoupledPeak({
        ...samples,
        levelDbm: places.map(([x, y]) => level(x, y)),
        standardDeviationDb: 0.1,
      });
    expect(shaped((x, y) => -40 - 4 * x * x + 4 * y * y).kind).toBe('saddle');
    expect(shaped((x, y) => -40 + x + y).kind).toBe('flat');
    expect(shaped((x, y) => -40 - (x - 3) ** 2 - y * y)).toMatchObject({ kind: 'outside' });
    expect(fitCoupledPeak({ firstDeg: [0], secondDeg: [0], levelDbm: [0] }).kind).toBe('too-few');
    expect(
      fitCoupledPeak({
        firstDeg: [-2, -1, 0, 1, 2, 3, 4],
        secondDeg: [0, 0, 0, 0, 0, 0, 0],
        levelDbm: [0, 1, 2, 3, 2, 1, 0],
      }).kind,
    ).toBe('too-few');
    expect(() => fitCoupledPeak({ ...samples, firstDeg: [1] })).toThrow(DomainError);
  });

  test('alternating: the loss falls by the coupling squared with each axis, and always ends', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: 40, max: 140, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (narrow, stretch, narrowAxisDeg, betweenAxesDeg, x, y) => {
          const search = alternatingSearch({
            beamwidthDeg: [narrow, narrow * stretch],
            narrowAxisDeg,
            betweenAxesDeg,
            startDeg: [x, y],
            targetLossDb: 1e-3,
          });
          expect(Math.abs(search.couplingRatio)).toBeLessThan(1);
          const { steps, lossRatioPerStep } = search;
          for (let k = 1; k < steps.length; k++)
            expect((steps[k]?.lossDb ?? 0) / (steps[k - 1]?.lossDb ?? 1)).toBeCloseTo(
              lossRatioPerStep,
              4,
            );
          const last = steps.at(-1)?.lossDb ?? search.startLossDb;
          expect(last <= 1e-3 || steps.length === 200).toBe(true);
        },
      ),
    );
  });

  test('independent axes need one peaking each', () => {
    const search = alternatingSearch({ beamwidthDeg: [2, 2], startDeg: [0.5, 0.7] });
    expect(search.steps.map(({ axis }) => axis)).toEqual(['first', 'second']);
    expect(search.steps.at(-1)?.lossDb).toBeCloseTo(0, 12);
  });

  test('a coarse raster misses no place within its bounds', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (width, within, elevationDeg, visibleDropDb, dwellS, share) => {
          const raster = coarseRaster({
            beamwidthDeg: width,
            azimuthWithinDeg: 5,
            elevationWithinDeg: within,
            elevationDeg: elevationDeg + 10,
            visibleDropDb,
            sweepDegPerS: 0.3,
            dwellS,
          });
          if (raster.kind !== 'raster') {
            expect(raster.sweepAtMostDegPerS).toBeLessThan(0.3);
            return;
          }
          const satellite = elevationDeg + 10 + share * within;
          const nearest = Math.min(
            ...raster.sweeps.map((sweep) => Math.abs(sweep.elevationDeg - satellite)),
          );
          const radius = width * Math.sqrt(visibleDropDb / 12);
          // In view along a chord that lasts the dwell.
          expect((2 * Math.sqrt(Math.max(0, radius ** 2 - nearest ** 2))) / 0.3).toBeGreaterThan(
            dwellS - 1e-6,
          );
          expect(12 * (nearest / width) ** 2).toBeLessThan(raster.worstDropDb + 1e-9);
        },
      ),
    );
  });

  test('duration of a raster by hand', () => {
    const raster = coarseRaster({
      beamwidthDeg: 2,
      azimuthWithinDeg: 10,
      elevationWithinDeg: 0.5,
      elevationDeg: 60,
      visibleDropDb: 3,
      sweepDegPerS: 0.5,
      dwellS: 0,
    });
    // One sweep: 20 degrees of azimuth at 59 degrees (its lower rim), half a degree each second.
    expect(raster.kind === 'raster' && raster.sweeps.length).toBe(1);
    expect(raster.kind === 'raster' && raster.worstDurationS).toBeCloseTo(
      (20 * Math.cos((59 * Math.PI) / 180)) / 0.5,
      9,
    );
    expect(() => coarseRaster({} as never)).toThrow(DomainError);
  });
});

describe('bands', () => {
  test('the loss grows with the frequency squared', () => {
    const other = bandLoss({
      lossDb: 0.1,
      beamwidthDeg: 2,
      frequencyGHz: 10,
      otherFrequencyGHz: 20,
    });
    expect(other.otherLossDb).toBeCloseTo(0.4, 12);
    expect(other.otherLossAtLeastDb).toBeCloseTo(0.4, 12);
    expect(other.offsetDeg).toBeCloseTo(2 * Math.sqrt(0.1 / 12), 12);
  });

  test('the bound lies above the parabola, and there is none beyond the main lobe', () => {
    const at = (lossDb: number) =>
      bandLoss({ lossDb, beamwidthDeg: 1, frequencyGHz: 10, otherFrequencyGHz: 12 });
    const { otherLossDb, otherLossUpper95Db } = at(1);
    expect(otherLossUpper95Db).toBeGreaterThan(otherLossDb);
    expect(otherLossUpper95Db).toBeLessThan(1.5 * otherLossDb);
    expect(at(0).otherLossUpper95Db).toBe(0);
    expect(at(9).otherLossUpper95Db).toBeNull();
  });

  test('a squint adds to the offset, or takes from it', () => {
    const other = bandLoss({
      lossDb: 12 * 0.1 ** 2,
      beamwidthDeg: 1,
      frequencyGHz: 10,
      otherFrequencyGHz: 10,
      squintDeg: 0.1,
    });
    expect(other.otherLossDb).toBeCloseTo(12 * 0.2 ** 2, 10);
    expect(other.otherLossAtLeastDb).toBeCloseTo(0, 10);
  });

  test('refuses megahertz', () => {
    const call = () =>
      bandLoss({
        lossDb: 0.1,
        beamwidthDeg: 2,
        frequencyGHz: 11700,
        otherFrequencyGHz: 20,
      });
    expect(call).toThrow('is the frequency in GHz?');
  });
});

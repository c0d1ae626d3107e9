/** The plan's figures against a hand calculation from the job file: that each part got the right input. */

import { type JobFile, parseJob, planJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';

const job: JobFile = parseJob({
  format: 'slantpath-job',
  version: 1,
  title: 'One slot by hand',
  date: '2026-07-14',
  station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
  antenna: { diameterM: 0.9, apertureEfficiencyRatio: 0.65, offsetAngleDeg: 24.6 },
  receiver: { noiseFigureDb: 0.7, gainDb: 56, feedLossDb: 0.2 },
  slots: [
    {
      name: 'middle',
      orbitalLongitudeDeg: 16.4,
      carriers: [
        {
          name: 'Ku',
          frequencyGHz: 12.5,
          polarization: 'horizontal',
          eirpDbw: 51,
          symbolRateMBd: 27.5,
          mode: 'QPSK 3/4',
          intermediateFrequencyMHz: 1900,
        },
      ],
    },
  ],
  horizon: {
    north: 'magnetic',
    samples: [
      { azimuthDeg: 150, elevationDeg: 20 },
      { azimuthDeg: 190, elevationDeg: 20 },
    ],
  },
  rain: { source: 'measured', rainRate001MmPerH: 30, years: 10, isothermHeightKm: 2.64 },
  target: { exceededPercent: 0.1, pointingLossDb: 0.3 },
  distribution: { kind: 'attenuator', lossDb: 12, to: { kind: 'outlet', name: 'desk', lossDb: 1 } },
  peaking: [],
  readings: [],
  limits: [{ testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 }],
});
const plan = planJob(job);
const { horizon } = job;
const [direction] = plan.directions;
const [signal] = plan.signals;
const [outlet] = plan.outlets;
const [mount] = plan.mounts;
if (!direction || !signal || !outlet || !horizon) throw new Error('the slot is visible');

describe('one slot by hand', () => {
  test('the compass shows the true azimuth less the declination', () => {
    const declinationDeg = plan.north?.declinationDeg ?? 0;
    expect(declinationDeg).toBeGreaterThan(1);
    expect(direction.magneticBearingDeg).toBeCloseTo(
      (direction.azimuthDeg ?? 0) - declinationDeg,
      10,
    );
    expect(mount).toMatchObject({ magneticBearingDeg: direction.magneticBearingDeg });
  });

  test('the face stands at the elevation of the beam less offset angle', () => {
    expect(mount?.kind === 'one-slot' && mount.preset?.faceLeanDeg).toBeCloseTo(
      direction.apparentElevationDeg - 24.6,
      10,
    );
  });

  test('the skyline was sighted from magnetic north', () => {
    const shifted = planJob({
      ...job,
      horizon: {
        north: 'true',
        samples: horizon.samples.map((sample) => ({
          ...sample,
          azimuthDeg: sample.azimuthDeg + (plan.north?.declinationDeg ?? 0),
        })),
      },
    });
    expect(plan.views[0]?.kind).toBe('clear');
    expect(plan.views[0]?.clearanceDeg).toBeCloseTo(shifted.views[0]?.clearanceDeg ?? 0, 10);
    const unshifted = planJob({ ...job, horizon: { ...horizon, north: 'true' } });
    expect(unshifted.views[0]?.clearanceDeg).not.toBeCloseTo(plan.views[0]?.clearanceDeg ?? 0, 3);
  });

  test('the level is the sum of its decibels', () => {
    // 92.44778 dB at 1 GHz and 1 km; 20.40 dB of gain at 1 m, 1 GHz and efficiency 1; 75 ohm: 108.750613.
    const freeSpaceDb = 92.44778 + 20 * Math.log10(12.5) + 20 * Math.log10(direction.slantRangeKm);
    const gainDbi = 20.4066 + 10 * Math.log10(0.65) + 20 * Math.log10(0.9 * 12.5);
    const carrierDbw = 51 - freeSpaceDb - (signal.promise?.fade.gasDb ?? 0) + gainDbi - 0.2;
    const levelDbuv = carrierDbw + 30 + 56 + 108.750613;
    expect(signal.levelDbuv).toBeCloseTo(levelDbuv, 3);
    expect(outlet.levelDbuv).toBeCloseTo(levelDbuv - 13, 3);
    expect(outlet.lossDb).toBeCloseTo(13, 9);
  });

  test('margin is the ratio less the threshold of EN 302 307-1 Table 13 and 0.8 dB', () => {
    expect(signal.requiredDb).toBeCloseTo(4.03 + 0.8, 9);
    expect(signal.clearMarginDb).toBeCloseTo(signal.carrierToNoiseDb - 4.83, 9);
    expect(signal.promise?.fadedMarginDb).toBeLessThan(signal.clearMarginDb ?? 0);
  });

  test('the rain is the measured one, its height 0.36 km over the isotherm (P.839-4)', () => {
    expect(plan.rain).toMatchObject({ source: 'measured', rainRate001MmPerH: 30 });
    expect(plan.rain?.rainHeightKm).toBeCloseTo(3, 12);
  });
});

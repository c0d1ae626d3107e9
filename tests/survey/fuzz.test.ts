/** 100,000 calls, a fifth of them in the short run, of earth, magnetic, geodesic, gridref, sun and survey with good and bad numbers: a JSON-safe result or a DomainError. */

import * as earth from 'slantpath/earth';
import * as geodesic from 'slantpath/geodesic';
import * as gridref from 'slantpath/gridref';
import * as magnetic from 'slantpath/magnetic';
import * as sun from 'slantpath/sun';
import * as survey from 'slantpath/survey';
import { expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { runs } from '../support/runs.js';

const { uniform, integer } = randomStream(20260310);
const ODD = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -0,
  0,
  1e-300,
  1e300,
  -1e9,
  undefined,
] as number[];
/** A number of the interval, now and then one of the odd ones. */
const n = (from: number, to: number): number =>
  uniform() < 0.03 ? (ODD[integer(ODD.length)] as number) : from + uniform() * (to - from);
const station = () => ({
  latitudeDeg: n(-92, 92),
  longitudeDeg: n(-400, 400),
  heightM: n(-1000, 100000),
});
const instant = () => Math.round(n(Date.UTC(1899, 0, 1), Date.UTC(2101, 0, 1)));
const point = () => ({ eastM: n(-30, 30), northM: n(-30, 30), upM: n(-10, 30) });
const obstacles = () =>
  Array.from({ length: integer(3) }, () => ({
    corners: Array.from({ length: 1 + integer(3) }, point),
  }));
const sightings = () =>
  Array.from({ length: 1 + integer(6) }, () =>
    uniform() < 0.7
      ? { azimuthDeg: n(-400, 400), elevationDeg: n(-89, 89) }
      : { magneticBearingDeg: n(0, 360), distanceM: n(0, 100), heightAboveEyeM: n(-9, 50) },
  );
const profile = () =>
  survey.horizonProfile({
    sightings: sightings(),
    declinationDeg: n(-40, 40),
    widestGapDeg: n(0.01, 179),
  });
const outage = () => ({
  station: station(),
  orbitalLongitudeDeg: n(-200, 200),
  diameterM: n(0.05, 30),
  frequencyGHz: n(0.5, 60),
  systemNoiseK: n(20, 500),
});

const CALLS: readonly (readonly [number, () => unknown])[] = [
  [8000, () => earth.ecefToStation({ xKm: n(-5e4, 5e4), yKm: n(-5e4, 5e4), zKm: n(-5e4, 5e4) })],
  [8000, () => earth.ecefToEnu(station(), earth.stationToEcef(station()))],
  [5000, () => earth.enuToDirection({ eastKm: n(-9, 9), northKm: n(-9, 9), upKm: n(-9, 9) })],
  [5000, () => earth.stationToGeocentric(station())],
  [4000, () => earth.textToCoordinates(earth.coordinatesToText(station()))],
  [4000, () => earth.maidenheadToCoordinates(earth.coordinatesToMaidenhead(station()))],
  [6000, () => magnetic.magneticField(station(), n(1989, 2101))],
  [
    5000,
    () =>
      magnetic.trueToMagneticBearing({ azimuthDeg: n(-1e4, 1e4), declinationDeg: n(-180, 180) }),
  ],
  [6000, () => geodesic.geodesicBetween(station(), station())],
  [
    6000,
    () => geodesic.geodesicEnd(station(), { azimuthDeg: n(-400, 400), distanceKm: n(0, 4e4) }),
  ],
  [4000, () => gridref.plusCodeToCoordinates(gridref.coordinatesToPlusCode(station()))],
  [4000, () => gridref.mgrsToCoordinates(gridref.coordinatesToMgrs(station()))],
  [5000, () => sun.sunDirection(station(), { instant: instant() })],
  [1000, () => sun.solarTime(station(), instant())],
  [
    3000,
    () =>
      sun.sunNoise({
        separationDeg: n(0, 180),
        beamwidthDeg: n(0.03, 90),
        brightnessTemperatureK: n(1, 1e6),
        systemNoiseK: n(1, 1e3),
      }),
  ],
  [2000, () => sun.solarBrightness({ frequencyGHz: n(0.4, 110), activity: 'active' })],
  [
    150,
    () => sun.shadowInstants({ station: station(), azimuthDeg: n(-400, 400), day: '2027-05-06' }),
  ],
  [60, () => sun.sunOutages({ ...outage(), from: '2027-02-01', to: '2027-05-01' })],
  [300, () => sun.sunOutageCourse({ ...outage(), near: instant() })],
  [6000, () => survey.horizonAt(profile(), n(-400, 400))],
  [
    6000,
    () => survey.viewClearance(profile(), { azimuthDeg: n(0, 360), elevationDeg: n(-90, 90) }),
  ],
  [
    3000,
    () =>
      survey.slotViews({
        station: station(),
        profile: profile(),
        orbitalLongitudesDeg: [n(-200, 200)],
      }),
  ],
  [
    50,
    () =>
      survey.clearArc({ station: station(), profile: profile(), requiredClearanceDeg: n(0, 9) }),
  ],
  [
    6000,
    () =>
      survey.obstructionClearance({
        distanceM: n(0.1, 90),
        topHeightM: n(-9, 40),
        centreHeightM: n(0, 9),
        elevationDeg: n(0, 90),
        diameterM: n(0, 5),
        growthMPerYear: n(0, 2),
        years: n(0, 9),
      }),
  ],
  [
    4000,
    () =>
      survey.beamClearance({
        obstacles: obstacles(),
        azimuthDeg: n(-400, 400),
        elevationDeg: n(0, 90),
        diameterM: n(0, 5),
      }),
  ],
  [
    500,
    () =>
      survey.clearPlaces({
        station: station(),
        obstacles: obstacles(),
        orbitalLongitudesDeg: [n(-180, 180)],
        diameterM: n(0, 3),
        places: [point()],
      }),
  ],
  [
    3000,
    () =>
      survey.rowSpacing({
        diameterM: n(0, 9),
        directions: [{ azimuthDeg: n(0, 360), elevationDeg: n(0, 90) }],
        rowAzimuthDeg: n(0, 360),
      }),
  ],
];

/** Path of a number that JSON cannot hold, or `undefined`. */
function unsafe(value: unknown, path = 'result'): string | undefined {
  if (typeof value === 'number')
    return Number.isFinite(value) && !Object.is(value, -0) ? undefined : `${path} = ${value}`;
  if (typeof value !== 'object' || value === null)
    return value === undefined ? `${path} undefined` : undefined;
  for (const [name, inner] of Object.entries(value)) {
    const found = unsafe(inner, `${path}.${name}`);
    if (found) return found;
  }
  return undefined;
}

test(`${runs(100_000, 20_000)} calls: every result is JSON-safe, every refusal a DomainError`, () => {
  let calls = 0;
  let answers = 0;
  for (const [times, call] of CALLS)
    for (let time = 0; time < runs(times, times / 5); time++) {
      calls++;
      let result: unknown;
      try {
        result = call();
        answers++;
      } catch (error) {
        if ((error as Error).name !== 'DomainError') throw error;
        continue;
      }
      const found = unsafe(result);
      if (found) throw new Error(`${String(call)}: ${found}`);
    }
  console.log(`fuzz: ${calls} calls, ${answers} answers, the others refused`);
  expect(calls).toBeGreaterThanOrEqual(runs(100_000, 20_000));
  expect(answers).toBeGreaterThan(runs(50_000, 10_000));
});

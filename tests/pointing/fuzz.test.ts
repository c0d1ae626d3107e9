/** 100,000 calls, a fifth of them in the short run, with good, extreme and bad input: a result without NaN, or a DomainError, nothing else. */

import { DomainError } from 'slantpath';
import * as pointing from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { runs } from '../support/runs.js';

const random = randomStream(20261125);
const NASTY = [
  0,
  -0,
  90,
  -90,
  180,
  -180,
  360,
  1e-300,
  1e300,
  -1e300,
  5e-324,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  undefined,
  null,
  '12',
  {},
  [],
  1e9,
  -45,
  0.5,
];

/** Mostly a plausible number, now and then something nasty. */
function value(from: number, to: number): number {
  const draw = random.uniform();
  if (draw < 0.06) return NASTY[random.integer(NASTY.length)] as number;
  if (draw < 0.12) return random.uniform() < 0.5 ? from : to;
  return from + (to - from) * random.uniform();
}

function sometimes<T>(share: number, make: () => T): T | undefined {
  return random.uniform() < share ? make() : undefined;
}

const station = () =>
  random.uniform() < 0.01
    ? (undefined as never)
    : { latitudeDeg: value(-90, 90), longitudeDeg: value(-400, 400), heightM: value(-1000, 9000) };
const sky = () => ({ azimuthDeg: value(-360, 360), elevationDeg: value(-5, 90) });
const slot = () => value(-540, 540);
const defined = <T extends object>(fields: T): T =>
  Object.fromEntries(Object.entries(fields).filter(([, field]) => field !== undefined)) as T;

const CALLS: readonly (readonly [weight: number, call: () => unknown])[] = [
  [20000, () => pointing.lookAngles(station(), slot())],
  [
    8000,
    () =>
      pointing.polarizationSkew(
        defined({
          station: station(),
          orbitalLongitudeDeg: slot(),
          polarization: sometimes(0.5, () => ({
            kind: 'linear' as const,
            tiltDeg: value(-180, 180),
          })),
        }) as never,
      ),
  ],
  [
    8000,
    () =>
      pointing.sphericalLookAngles({
        latitudeDeg: value(-90, 90),
        longitudeDeg: slot(),
        orbitalLongitudeDeg: slot(),
      }),
  ],
  [4000, () => pointing.sphericalSlantRange({ elevationDeg: value(0, 90) })],
  [
    4000,
    () =>
      pointing.slotSeparation({
        station: station(),
        fromLongitudeDeg: slot(),
        toLongitudeDeg: slot(),
      }),
  ],
  [
    4000,
    () =>
      pointing.separationFromRanges({
        firstRangeKm: value(35000, 43000),
        secondRangeKm: value(35000, 43000),
        longitudeDifferenceDeg: value(0, 180),
      }),
  ],
  [
    4000,
    () =>
      pointing.longitudeDifferenceFromRanges({
        firstRangeKm: value(35000, 43000),
        secondRangeKm: value(35000, 43000),
        topocentricDeg: value(0, 120),
      }),
  ],
  [6000, () => pointing.apparentElevation(value(-2, 90), value(-500, 9000))],
  [6000, () => pointing.geometricElevation(value(-1.5, 90), value(-500, 9000))],
  [
    4000,
    () =>
      pointing.offsetReflectorPreset(
        defined({
          elevationDeg: value(-5, 90),
          offsetAngleDeg: value(0, 60),
          scaleOffsetDeg: sometimes(0.3, () => value(-90, 90)),
        }) as never,
      ),
  ],
  [3000, () => pointing.offsetAngleFromRim({ widthM: value(0, 3), heightM: value(0, 3) })],
  [
    3000,
    () =>
      pointing.reflectorFromRim({
        widthM: value(0.3, 3),
        heightM: value(0.3, 3.5),
        depthM: value(0, 0.5),
      }),
  ],
  [3000, () => pointing.beamDeviationFactor({ focalRatio: value(0.25, 3) })],
  [
    2000,
    () =>
      pointing.feedStepAside({
        beamOffsetDeg: value(-40, 40),
        focusToMiddleM: value(0.01, 5),
        beamDeviationFactorRatio: value(0.5, 1),
      }),
  ],
  [
    6000,
    () =>
      pointing.mastLeanError({ leanDeg: value(0, 20), leanAzimuthDeg: value(0, 360), ...sky() }),
  ],
  [
    4000,
    () =>
      pointing.mastLeanAfterPeaking({
        leanDeg: value(0, 20),
        leanAzimuthDeg: value(0, 360),
        peaked: sky(),
        target: sky(),
      }),
  ],
  [
    300,
    () =>
      pointing.mastLeanCircle({
        leanDeg: value(0, 20),
        leanAzimuthDeg: value(0, 360),
        elevationDeg: value(-5, 90),
        stepDeg: value(5, 90),
      }),
  ],
  [
    60,
    () =>
      pointing.allowedMastLean(
        defined({
          lossDb: value(0, 10),
          beamwidthDeg: value(0, 90),
          ...(random.uniform() < 0.2 ? { peaked: sky(), target: sky() } : {}),
        }) as never,
      ),
  ],
  [3000, () => pointing.visibleArc({ station: station(), minimumElevationDeg: value(-5, 90) })],
  [3000, () => pointing.slotAtAzimuth({ station: station(), azimuthDeg: value(-720, 720) })],
  [
    400,
    () =>
      pointing.slotFromBearing({
        station: station(),
        ...sky(),
        orbitalLongitudesDeg: [slot(), slot()],
      }),
  ],
  [
    200,
    () =>
      pointing.arcOverHorizon({
        station: station(),
        horizon:
          random.uniform() < 0.5
            ? [0, 1, 2].map((k) => ({
                azimuthDeg: value(120 * k, 120 * k + 119),
                elevationDeg: value(-10, 60),
              }))
            : (azimuth: number) => 20 * Math.sin(azimuth),
      }),
  ],
  [
    100,
    () =>
      pointing.polarMount({
        station: station(),
        minimumElevationDeg: value(0, 60),
        orbitalLongitudesDeg: [slot()],
      }),
  ],
  [2000, () => pointing.stationKeepingBox({ station: station(), orbitalLongitudeDeg: slot() })],
  [
    600,
    () =>
      pointing.dailyFigure({
        station: station(),
        orbitalLongitudeDeg: slot(),
        inclinationDeg: value(0, 20),
        eccentricityRatio: value(0, 0.1),
        argumentOfPerigeeDeg: value(0, 360),
        count: value(8, 24),
      }),
  ],
  [
    100,
    () =>
      pointing.fixedAntennaLoss({
        track: Array.from({ length: 1 + random.integer(6) }, sky),
        beamwidthDeg: value(0, 90),
      }),
  ],
  [
    1000,
    () =>
      pointing.lookAnglesToPoint(station(), {
        xKm: value(-5e4, 5e4),
        yKm: value(-5e4, 5e4),
        zKm: value(-5e4, 5e4),
      }),
  ],
  [
    40,
    () =>
      pointing.severalSlots(
        defined({
          station: station(),
          slots: Array.from({ length: 1 + random.integer(3) }, () => ({
            orbitalLongitudeDeg: value(-20, 20),
            frequenciesGHz: [value(0.5, 100)],
          })),
          reflector: {
            diameterM: value(0.1, 3),
            focalLengthM: value(0.1, 3),
            offsetAngleDeg: value(0, 45),
          },
          feeds: sometimes(0.4, () => ({
            kind: 'rigid' as const,
            placesM: [value(-0.1, 0.1), value(-0.1, 0.1)],
          })),
        }) as never,
      ),
  ],
  [
    300,
    () =>
      pointing.lookAnglesBatch({
        latitudeDeg: [value(-90, 90), value(-90, 90)],
        longitudeDeg: slot(),
        heightM: 0,
        orbitalLongitudeDeg: [slot(), slot()],
      }),
  ],
  [
    300,
    () =>
      pointing.polarizationSkewBatch({
        latitudeDeg: [value(-90, 90), value(-90, 90)],
        longitudeDeg: slot(),
        heightM: 0,
        orbitalLongitudeDeg: [slot(), slot()],
      }),
  ],
];

/** The first number of a result that is not finite or is minus zero, by path. */
function flaw(result: unknown, path = ''): string | undefined {
  if (typeof result === 'number')
    return Number.isFinite(result) && !Object.is(result, -0)
      ? undefined
      : `${path} = ${Object.is(result, -0) ? '-0' : result}`;
  if (typeof result !== 'object' || result === null) return undefined;
  for (const [key, inner] of Object.entries(result)) {
    const found = flaw(inner, `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

test(`${runs(100_000, 20_000)} calls give numbers or a DomainError`, () => {
  let calls = 0;
  let refused = 0;
  const flaws: string[] = [];
  for (const [weight, call] of CALLS)
    for (let i = 0; i < runs(weight, weight / 5); i++) {
      calls++;
      try {
        const found = flaw(call());
        if (found !== undefined) flaws.push(`${call}: ${found}`);
      } catch (error) {
        refused++;
        if (!(error instanceof DomainError)) flaws.push(`${call}: ${error}`);
      }
    }
  expect([...new Set(flaws)].slice(0, 5)).toEqual([]);
  expect(calls).toBeGreaterThanOrEqual(runs(100_000, 20_000));
  expect(refused / calls).toBeGreaterThan(0.02);
  expect(refused / calls).toBeLessThan(0.5);
});

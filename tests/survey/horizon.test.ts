import fc from 'fast-check';
import {
  clearArc,
  horizonAt,
  horizonProfile,
  type Sighting,
  slotViews,
  viewClearance,
} from 'slantpath/survey';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const elevationAt = (sightings: readonly Sighting[], azimuthDeg: number) => {
  const at = horizonAt(horizonProfile({ sightings, widestGapDeg: 179 }), azimuthDeg);
  return at.kind === 'sighted' ? at.elevationDeg : Number.NaN;
};

describe('horizon profile', () => {
  test('angle, or distance and height; true, or magnetic bearing', () => {
    const profile = horizonProfile({
      sightings: [
        { azimuthDeg: 200, elevationDeg: 10 },
        { magneticBearingDeg: 358, distanceM: 10, heightAboveEyeM: 10 },
        { azimuthDeg: -90, elevationDeg: -1 },
      ],
      declinationDeg: 4,
    });
    expect(profile.points.map((point) => point.azimuthDeg)).toEqual([2, 200, 270]);
    expect(profile.points[0]?.elevationDeg).toBeCloseTo(45, 12);
    expect(profile.widestGapDeg).toBe(45);
  });

  test('between two corners of a straight wall the skyline is the wall', () => {
    // Corners at A and B in metres east, north and up; a point between them is seen where the profile says.
    const metres = fc.double({ min: 2, max: 80, noNaN: true });
    fc.assert(
      fc.property(
        metres,
        metres,
        metres,
        fc.double({ min: -5, max: 60, noNaN: true }),
        fc.double({ min: -5, max: 60, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (northA, eastB, northB, upA, upB, share) => {
          const a = { east: -3, north: northA, up: upA };
          const b = { east: eastB, north: northB, up: upB };
          const azimuth = (p: typeof a) => (Math.atan2(p.east, p.north) * 180) / Math.PI;
          const elevation = (p: typeof a) =>
            (Math.atan2(p.up, Math.hypot(p.east, p.north)) * 180) / Math.PI;
          const middle = {
            east: a.east + share * (b.east - a.east),
            north: a.north + share * (b.north - a.north),
            up: a.up + share * (b.up - a.up),
          };
          const got = elevationAt(
            [a, b].map((p) => ({ azimuthDeg: azimuth(p), elevationDeg: elevation(p) })),
            azimuth(middle),
          );
          expect(got).toBeCloseTo(elevation(middle), 8);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  test('a wall sighted at 20 degrees at corners 90 degrees apart is 7 degrees higher in the middle', () => {
    // By hand: tan e = tan 20 / cos 45, e = 27.24.
    const wall = [
      { azimuthDeg: 315, elevationDeg: 20 },
      { azimuthDeg: 45, elevationDeg: 20 },
    ];
    expect(elevationAt(wall, 0)).toBeCloseTo(27.24, 2);
  });

  test('vertical edges: the higher side counts at the edge, each side keeps its own', () => {
    const house = [
      { azimuthDeg: 170, elevationDeg: 5 },
      { azimuthDeg: 180, elevationDeg: 5 },
      { azimuthDeg: 180, elevationDeg: 30 },
      { azimuthDeg: 200, elevationDeg: 30 },
    ];
    expect(elevationAt(house, 180)).toBe(30);
    expect(elevationAt(house, 179.999)).toBeCloseTo(5, 2);
    expect(elevationAt(house, 180.001)).toBeCloseTo(30, 2);
  });

  test('a gap wider than widestGapDeg is not sighted, also through north', () => {
    const profile = horizonProfile({
      sightings: [
        { azimuthDeg: 150, elevationDeg: 5 },
        { azimuthDeg: 190, elevationDeg: 5 },
      ],
    });
    expect(horizonAt(profile, 10)).toEqual({
      kind: 'not-sighted',
      gapFromDeg: 190,
      gapToDeg: 150,
    });
    expect(horizonAt(profile, 190).kind).toBe('sighted');
    const single = horizonProfile({ sightings: [{ azimuthDeg: 10, elevationDeg: 5 }] });
    expect(horizonAt(single, 11).kind).toBe('not-sighted');
    expect(horizonAt(single, 370)).toEqual({ kind: 'sighted', elevationDeg: 5 });
    const around = horizonProfile({
      sightings: [
        { azimuthDeg: 350, elevationDeg: 8 },
        { azimuthDeg: 10, elevationDeg: 8 },
      ],
    });
    expect(horizonAt(around, 0).kind).toBe('sighted');
  });

  test.each([
    [{ sightings: [] }, 'sightings', 'empty'],
    [{}, 'sightings', 'missing'],
    [undefined, 'input', 'missing'],
    [{ sightings: [undefined] }, 'sightings[0]', 'missing'],
    [{ sightings: [{ azimuthDeg: 1 }] }, 'sightings[0].elevationDeg', 'missing'],
    [
      { sightings: [{ azimuthDeg: 1, elevationDeg: 95 }] },
      'sightings[0].elevationDeg',
      'out-of-range',
    ],
    [{ sightings: [{ elevationDeg: 5 }] }, 'sightings[0].azimuthDeg', 'missing'],
    [{ sightings: [{ magneticBearingDeg: 1, elevationDeg: 5 }] }, 'declinationDeg', 'missing'],
    [
      { sightings: [{ azimuthDeg: 1, distanceM: 0, heightAboveEyeM: 3 }] },
      'sightings[0].distanceM',
      'out-of-range',
    ],
    [{ sightings: [{ azimuthDeg: 1, distanceM: 4 }] }, 'sightings[0].heightAboveEyeM', 'missing'],
    [
      { sightings: [{ azimuthDeg: 1, elevationDeg: 1 }], widestGapDeg: 200 },
      'widestGapDeg',
      'out-of-range',
    ],
  ])('refuses %j', (input, parameter, code) => {
    expect(() => horizonProfile(input as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});

const ridge = horizonProfile({
  sightings: [
    { azimuthDeg: 140, elevationDeg: 42 },
    { azimuthDeg: 165, elevationDeg: 38 },
    { azimuthDeg: 170, elevationDeg: 12 },
    { azimuthDeg: 190, elevationDeg: 12 },
  ],
});
const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

describe('views', () => {
  test('clear, tight, blocked and not sighted', () => {
    const view = (elevationDeg: number, azimuthDeg = 170) =>
      viewClearance(ridge, { azimuthDeg, elevationDeg, requiredClearanceDeg: 2 });
    expect(view(20)).toEqual({
      kind: 'clear',
      horizonElevationDeg: 12,
      clearanceDeg: 8,
      spareDeg: 6,
    });
    expect(view(13).kind).toBe('tight');
    expect(view(12).kind).toBe('blocked');
    expect(view(50, 20).kind).toBe('not-sighted');
  });

  test('slots: hidden by the Earth, overhead, blocked', () => {
    const views = slotViews({
      station: hut,
      profile: ridge,
      orbitalLongitudesDeg: [7.2, 16.4, 21.8, 150],
    });
    expect(views.map((view) => view.kind)).toEqual(['clear', 'clear', 'blocked', 'below-horizon']);
    const [overhead] = slotViews({
      station: { latitudeDeg: 0, longitudeDeg: 102, heightM: 0 },
      profile: ridge,
      orbitalLongitudesDeg: [102],
    });
    expect(overhead?.kind).toBe('overhead');
  });

  test('the clear arc agrees with the views slot by slot and leaves no gap', () => {
    const stretches = clearArc({ station: hut, profile: ridge, requiredClearanceDeg: 3 });
    expect(stretches.map((stretch) => stretch.kind)).toEqual([
      'not-sighted',
      'clear',
      'tight',
      'blocked',
      'not-sighted',
    ]);
    stretches.slice(1).forEach((stretch, index) => {
      expect(stretch.westLongitudeDeg).toBe(stretches[index]?.eastLongitudeDeg);
    });
    for (const { kind, westLongitudeDeg, longitudeSpanDeg } of stretches) {
      const inside = [0.001, 0.5, 0.999].map(
        (share) => westLongitudeDeg + share * longitudeSpanDeg,
      );
      for (const view of slotViews({
        station: hut,
        profile: ridge,
        orbitalLongitudesDeg: inside,
        requiredClearanceDeg: 3,
      }))
        expect(view.kind).toBe(kind);
    }
  });

  test('the clear arc over the date line; none at the pole', () => {
    const open = horizonProfile({
      sightings: [0, 90, 180, 270].map((azimuthDeg) => ({ azimuthDeg, elevationDeg: 1 })),
      widestGapDeg: 90,
    });
    const station = { latitudeDeg: 20, longitudeDeg: 179, heightM: 0 };
    const stretches = clearArc({ station, profile: open, minimumElevationDeg: 5 });
    expect(stretches.length).toBe(1);
    expect(stretches[0]?.kind).toBe('clear');
    expect(stretches[0]?.eastLongitudeDeg).toBeLessThan(0);
    const pole = { latitudeDeg: 90, longitudeDeg: 0, heightM: 0 };
    expect(clearArc({ station: pole, profile: open })).toEqual([]);
  });

  test.each([
    [
      () => slotViews({ station: hut, profile: ridge, orbitalLongitudesDeg: [] }),
      'orbitalLongitudesDeg',
    ],
    [() => slotViews({ station: hut, orbitalLongitudesDeg: [1] } as never), 'profile'],
    [() => slotViews({ station: hut, profile: ridge } as never), 'orbitalLongitudesDeg'],
    [() => viewClearance(ridge, { azimuthDeg: 1, elevationDeg: 99 }), 'elevationDeg'],
    [
      () => viewClearance(ridge, { azimuthDeg: 1, elevationDeg: 9, requiredClearanceDeg: -1 }),
      'requiredClearanceDeg',
    ],
    [
      () => viewClearance({ points: 3 } as never, { azimuthDeg: 1, elevationDeg: 9 }),
      'profile.points',
    ],
    [
      () => viewClearance({ points: [] } as never, { azimuthDeg: 1, elevationDeg: 9 }),
      'profile.points',
    ],
    [
      () => clearArc({ station: hut, profile: ridge, minimumElevationDeg: 95 }),
      'minimumElevationDeg',
    ],
  ])('refuses bad input %#', (call, parameter) => {
    expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
  });
});

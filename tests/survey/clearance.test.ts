import fc from 'fast-check';
import {
  beamClearance,
  clearPlaces,
  type LocalPointM,
  type Obstacle,
  obstacleCorner,
  obstructionClearance,
  obstructionClearanceBatch,
  rowSpacing,
  yearsClear,
} from 'slantpath/survey';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const tree = { distanceM: 12, topHeightM: 9, centreHeightM: 2, elevationDeg: 36.2, diameterM: 0.9 };
const radians = Math.PI / 180;

describe('obstruction', () => {
  test('by hand: 12 m away, 7 m above the centre, 36.2 degrees', () => {
    const clearance = obstructionClearance(tree);
    // 12 sin 36.2 - 7 cos 36.2 = 7.0873 - 5.6487 = 1.4386; atan(7/12) = 30.256.
    expect(clearance.axisClearanceM).toBeCloseTo(1.4386, 3);
    expect(clearance.edgeClearanceM).toBeCloseTo(0.9886, 3);
    expect(clearance.obstructionElevationDeg).toBeCloseTo(30.256, 3);
    expect(clearance.clearanceDeg).toBeCloseTo(5.944, 3);
    expect(clearance.kind).toBe('clear');
  });

  test('the height and the distance it asks for leave exactly the clearance wanted', () => {
    const height = fc.double({ min: -20, max: 40, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        height,
        height,
        fc.double({ min: 1, max: 88, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (distanceM, topHeightM, centreHeightM, elevationDeg, requiredClearanceM) => {
          const input = {
            distanceM,
            topHeightM,
            centreHeightM,
            elevationDeg,
            diameterM: 1.2,
            requiredClearanceM,
          };
          const first = obstructionClearance(input);
          if (Math.abs(first.neededCentreHeightM) < 9000) {
            const raised = obstructionClearance({
              ...input,
              centreHeightM: first.neededCentreHeightM,
            });
            expect(raised.edgeClearanceM).toBeCloseTo(requiredClearanceM, 8);
          }
          if (first.neededDistanceM >= 0.1) {
            const moved = obstructionClearance({ ...input, distanceM: first.neededDistanceM });
            expect(moved.edgeClearanceM).toBeCloseTo(requiredClearanceM, 8);
          }
          expect(first.kind === 'blocked').toBe(first.axisClearanceM <= 0);
          expect(first.clearanceDeg > 0).toBe(first.axisClearanceM > 0);
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  test('a wall across the view gives the same clearance among obstacles', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 100, noNaN: true }),
        fc.double({ min: -10, max: 40, noNaN: true }),
        fc.double({ min: 5, max: 85, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        (distanceM, topHeightM, elevationDeg, azimuthDeg) => {
          const single = obstructionClearance({
            distanceM,
            topHeightM,
            centreHeightM: 0,
            elevationDeg,
            diameterM: 0.9,
          });
          const ahead = distanceM * elevationAhead(topHeightM, distanceM, elevationDeg);
          if (ahead <= 0) return;
          const sine = Math.sin(azimuthDeg * radians);
          const cosine = Math.cos(azimuthDeg * radians);
          const corner = (side: number): LocalPointM => ({
            eastM: distanceM * sine + side * cosine,
            northM: distanceM * cosine - side * sine,
            upM: topHeightM,
          });
          const wall = { corners: [corner(-5000), corner(5000)] };
          const beam = beamClearance({
            obstacles: [wall],
            azimuthDeg,
            elevationDeg,
            diameterM: 0.9,
          });
          if (beam.kind === 'open') throw new Error('open');
          expect(beam.edgeClearanceM).toBeCloseTo(single.edgeClearanceM, 7);
        },
      ),
    );
  });

  test('growth', () => {
    const growing = { ...tree, growthMPerYear: 0.5 };
    expect(obstructionClearance({ ...growing, years: 3 }).kind).toBe('partly-blocked');
    expect(obstructionClearance({ ...growing, years: 5 }).kind).toBe('blocked');
    const left = yearsClear(growing);
    if (left.kind !== 'until') throw new Error(left.kind);
    // By hand: 0.9886 / (0.5 cos 36.2) = 2.450.
    expect(left.years).toBeCloseTo(2.45, 3);
    const then = obstructionClearance({ ...growing, years: left.years });
    expect(then.edgeClearanceM).toBeCloseTo(0, 10);
    expect(yearsClear(tree)).toEqual({ kind: 'never' });
    expect(yearsClear({ ...growing, topHeightM: 30 })).toEqual({ kind: 'already' });
    expect(obstructionClearance({ ...tree, requiredClearanceM: 1 }).kind).toBe('tight');
  });

  test('straight up every number stays finite', () => {
    for (const distanceM of [0.1, 0.45, 5]) {
      const clearance = obstructionClearance({ ...tree, distanceM, elevationDeg: 90 });
      for (const value of Object.values(clearance))
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    }
    expect(yearsClear({ ...tree, elevationDeg: 90, growthMPerYear: 1 })).toEqual({ kind: 'never' });
  });

  test('each batch row equals the scalar bit for bit', () => {
    const distanceM = Array.from({ length: 500 }, (_, row) => 0.5 + row * 0.37);
    const elevationDeg = Array.from({ length: 500 }, (_, row) => 5 + ((row * 7) % 80));
    const out = { clearanceDeg: new Float64Array(500) };
    const columns = obstructionClearanceBatch(
      { ...tree, distanceM, elevationDeg, growthMPerYear: 0.2, years: 4 },
      out,
    );
    expect(columns.clearanceDeg).toBe(out.clearanceDeg);
    distanceM.forEach((distance, row) => {
      const single = obstructionClearance({
        ...tree,
        distanceM: distance,
        elevationDeg: elevationDeg[row] ?? 0,
        growthMPerYear: 0.2,
        years: 4,
      });
      expect(columns.clearanceDeg[row]).toBe(single.clearanceDeg);
      expect(columns.edgeClearanceM[row]).toBe(single.edgeClearanceM);
      expect(columns.neededCentreHeightM[row]).toBe(single.neededCentreHeightM);
    });
    expect(() => obstructionClearanceBatch({ ...tree, distanceM: [1, -1] })).toThrow(
      expect.objectContaining({ parameter: 'distanceM', index: 1 }),
    );
  });

  test.each(['distanceM', 'topHeightM', 'centreHeightM', 'elevationDeg', 'diameterM'])(
    'refuses a bad %s',
    (parameter) => {
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, undefined, null, '5', 1e9])
        expect(() => obstructionClearance({ ...tree, [parameter]: bad } as never)).toThrow(
          expect.objectContaining({ name: 'DomainError', parameter }),
        );
    },
  );
});

/** How far ahead along the beam a top lies, over its distance. */
function elevationAhead(topM: number, distanceM: number, elevationDeg: number): number {
  return Math.cos(elevationDeg * radians) + (topM / distanceM) * Math.sin(elevationDeg * radians);
}

/**
 * Brute force: least distance from the axis of 251 places along each edge and of all that lies below them, in front of
 * the reflector. On the vertical through a place, |p|^2 - (p b)^2 is least at z (1 - bz^2) = (x bx + y by) bz.
 */
function leastDistance(obstacles: readonly Obstacle[], azimuthDeg: number, elevationDeg: number) {
  const b = [
    Math.sin(azimuthDeg * radians) * Math.cos(elevationDeg * radians),
    Math.cos(azimuthDeg * radians) * Math.cos(elevationDeg * radians),
    Math.sin(elevationDeg * radians),
  ] as const;
  let least = Number.POSITIVE_INFINITY;
  for (const { corners } of obstacles)
    for (let i = 0; i + 1 < corners.length; i++)
      for (let step = 0; step <= 250; step++) {
        const [p, q] = [corners[i], corners[i + 1]] as [LocalPointM, LocalPointM];
        const share = step / 250;
        const x = p.eastM + share * (q.eastM - p.eastM);
        const y = p.northM + share * (q.northM - p.northM);
        const top = p.upM + share * (q.upM - p.upM);
        const level = ((x * b[0] + y * b[1]) * b[2]) / (1 - b[2] ** 2);
        for (const z of [top, Math.min(top, level)]) {
          if (x * b[0] + y * b[1] + z * b[2] <= 0) continue;
          const across = Math.hypot(y * b[2] - z * b[1], z * b[0] - x * b[2], x * b[1] - y * b[0]);
          least = Math.min(least, across);
        }
      }
  return least;
}

describe('beam among obstacles', () => {
  test('brute force in space finds the same distance', () => {
    const metres = fc.double({ min: -15, max: 15, noNaN: true });
    const corner = fc.record({
      eastM: metres,
      northM: fc.double({ min: 4, max: 15, noNaN: true }),
      upM: fc.double({ min: 0, max: 12, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(fc.record({ corners: fc.array(corner, { minLength: 2, maxLength: 3 }) }), {
          minLength: 1,
          maxLength: 2,
        }),
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 15, max: 75, noNaN: true }),
        (obstacles, azimuthDeg, elevationDeg) => {
          const beam = beamClearance({ obstacles, azimuthDeg, elevationDeg, diameterM: 0.9 });
          if (beam.kind === 'open' || beam.kind === 'blocked') return;
          const brute = leastDistance(obstacles, azimuthDeg, elevationDeg);
          expect(beam.axisClearanceM).toBeLessThanOrEqual(brute + 1e-9);
          // Half a step along the longest edge: 34 m / 500.
          expect(brute - beam.axisClearanceM).toBeLessThan(0.07);
          expect(beam.edgeClearanceM).toBeCloseTo(beam.axisClearanceM - 0.45, 12);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  test('a pole beside the beam cuts its edge only', () => {
    const pole = { corners: [{ eastM: 0.3, northM: 10, upM: 20 }] };
    const view = { azimuthDeg: 0, elevationDeg: 36.2, diameterM: 0.9 };
    expect(beamClearance({ obstacles: [pole], ...view })).toMatchObject({
      kind: 'partly-blocked',
      axisClearanceM: 0.3,
      obstacle: 0,
    });
    const place = { eastM: -1, northM: 0, upM: 0 };
    expect(beamClearance({ obstacles: [pole], ...view, place }).kind).toBe('clear');
    expect(beamClearance({ obstacles: [pole], ...view, azimuthDeg: 180 }).kind).toBe('clear');
    const low = { corners: [{ eastM: 0.3, northM: 10, upM: 5 }] };
    expect(beamClearance({ obstacles: [low], ...view, azimuthDeg: 180 }).kind).toBe('open');
    expect(beamClearance({ obstacles: [], ...view }).kind).toBe('open');
  });

  test('corner from a compass sighting', () => {
    const corner = obstacleCorner({
      magneticBearingDeg: 86,
      declinationDeg: 4,
      distanceM: 40,
      heightAboveEyeM: 8,
    });
    expect(corner).toEqual({ eastM: 40, northM: 0, upM: 8 });
  });

  test('each place is judged by its worst slot, and raised no more than needed', () => {
    const ridge = {
      corners: [
        { eastM: -6, northM: -8, upM: 7 },
        { eastM: 6, northM: -8, upM: 7 },
      ],
    };
    const input = {
      station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
      obstacles: [ridge],
      orbitalLongitudesDeg: [7.2, 16.4, 21.8],
      diameterM: 0.9,
      requiredClearanceM: 0.2,
    };
    const places = [
      { eastM: 0, northM: 0, upM: 0 },
      { eastM: 0, northM: 5, upM: 0 },
      { eastM: 0, northM: -9, upM: 0 },
    ];
    const [near, far, beyond] = clearPlaces({ ...input, places });
    if (near?.kind !== 'blocked') throw new Error('not blocked');
    expect(far?.kind).toBe('clear');
    expect(beyond?.kind).toBe('clear');
    const [raised] = clearPlaces({ ...input, places: [{ eastM: 0, northM: 0, upM: near.raiseM }] });
    expect(raised?.kind === 'open' ? 0 : raised?.edgeClearanceM).toBeCloseTo(0.2, 3);
    // By hand for 21.8 E, 163.365 and 35.316 degrees: 8 / cos 16.635 ahead, (0.45 + 0.2) / cos e across.
    const ahead = 8 / Math.cos(16.635 * radians);
    const tangent = Math.tan(35.316 * radians);
    const hand = 7 - ahead * tangent + 0.65 / Math.cos(35.316 * radians);
    expect(near.raiseM).toBeCloseTo(hand, 1);
    expect(near.governingSlot).toBe(2);
  });

  test.each([
    [{ obstacles: undefined }, 'obstacles'],
    [{ obstacles: [{ corners: [] }] }, 'obstacles[0].corners'],
    [{ obstacles: [{ corners: [{ eastM: 0, northM: 1 }] }] }, 'obstacles[0].corners[0].upM'],
    [{ diameterM: -1 }, 'diameterM'],
    [{ place: { eastM: Number.NaN, northM: 0, upM: 0 } }, 'place.eastM'],
  ])('refuses %j', (change, parameter) => {
    const good = { obstacles: [], azimuthDeg: 0, elevationDeg: 30, diameterM: 0.9 };
    expect(() => beamClearance({ ...good, ...change } as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    );
  });

  test('refuses a slot below the horizon and empty lists', () => {
    const good = {
      station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
      obstacles: [],
      orbitalLongitudesDeg: [7.2],
      diameterM: 0.9,
      places: [{ eastM: 0, northM: 0, upM: 0 }],
    };
    expect(() => clearPlaces({ ...good, orbitalLongitudesDeg: [7.2, 150] })).toThrow(
      expect.objectContaining({ parameter: 'orbitalLongitudesDeg[1]' }),
    );
    expect(() => clearPlaces({ ...good, places: [] })).toThrow(
      expect.objectContaining({ parameter: 'places', code: 'empty' }),
    );
  });
});

describe('rows on a roof', () => {
  test('straight ahead: (D + margin) / sin e', () => {
    const spacing = rowSpacing({
      diameterM: 0.9,
      directions: [{ azimuthDeg: 180, elevationDeg: 30 }],
      rowAzimuthDeg: 0,
      marginM: 0.1,
    });
    expect(spacing.spacingM).toBeCloseTo(2, 12);
    expect(spacing.angleToRowDeg).toBeCloseTo(30, 12);
  });

  test('the two cylinders then pass at the diameter plus margin', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: 1, max: 89, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        (azimuthDeg, elevationDeg, rowAzimuthDeg) => {
          const { spacingM } = rowSpacing({
            diameterM: 1.2,
            directions: [{ azimuthDeg, elevationDeg }],
            rowAzimuthDeg,
            marginM: 0.3,
          });
          const v = [
            spacingM * Math.sin(rowAzimuthDeg * radians),
            spacingM * Math.cos(rowAzimuthDeg * radians),
          ] as const;
          const b = [
            Math.sin(azimuthDeg * radians) * Math.cos(elevationDeg * radians),
            Math.cos(azimuthDeg * radians) * Math.cos(elevationDeg * radians),
            Math.sin(elevationDeg * radians),
          ] as const;
          const apart = Math.hypot(v[1] * b[2], -v[0] * b[2], v[0] * b[1] - v[1] * b[0]);
          expect(apart).toBeCloseTo(1.5, 9);
        },
      ),
    );
  });

  test('the worst direction governs; bad input is refused', () => {
    const good = {
      diameterM: 0.9,
      directions: [
        { azimuthDeg: 183, elevationDeg: 36 },
        { azimuthDeg: 178, elevationDeg: 20 },
      ],
      rowAzimuthDeg: 180,
    };
    expect(rowSpacing(good).governingDirection).toBe(1);
    for (const [change, parameter] of [
      [{ directions: [] }, 'directions'],
      [{ directions: [{ azimuthDeg: 1, elevationDeg: 0 }] }, 'directions[0].elevationDeg'],
      [{ diameterM: 0 }, 'diameterM'],
      [{ rowAzimuthDeg: undefined }, 'rowAzimuthDeg'],
      [{ marginM: -1 }, 'marginM'],
    ] as const)
      expect(() => rowSpacing({ ...good, ...change } as never)).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter }),
      );
  });
});

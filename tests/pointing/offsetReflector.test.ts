import fc from 'fast-check';
import { offsetAngleFromRim, offsetReflectorPreset, reflectorFromRim } from 'slantpath/pointing';
import { expect, test } from 'vitest';

// cos 60 degrees is 1/2: a rim twice as high as wide. A round rim has no offset.
test('offset angle of plain rims', () => {
  expect(offsetAngleFromRim({ widthM: 0.5, heightM: 1 }).offsetAngleDeg).toBeCloseTo(60, 12);
  expect(offsetAngleFromRim({ widthM: 0.9, heightM: 0.9 }).offsetAngleDeg).toBe(0);
});

test('a millimetre more of height changes the angle by the slope of the arccosine', () => {
  const { changePerMmOfHeightDeg } = offsetAngleFromRim({ widthM: 0.9, heightM: 0.99 });
  const slope = ((0.9 / 0.99 ** 2 / Math.sqrt(1 - (0.9 / 0.99) ** 2)) * 180) / Math.PI;
  expect(changePerMmOfHeightDeg).toBeCloseTo(slope * 0.001, 3);
});

test('upright the face stands more steeply than the beam by the offset, inverted it leans over by it', () => {
  const up = offsetReflectorPreset({ elevationDeg: 36.2, offsetAngleDeg: 24.6 });
  expect(up).toMatchObject({ faceElevationDeg: expect.closeTo(11.6, 12), facesDown: false });
  const inverted = offsetReflectorPreset({
    elevationDeg: 36.2,
    offsetAngleDeg: 24.6,
    mounting: 'inverted',
  });
  expect(inverted.faceElevationDeg).toBeCloseTo(60.8, 12);
  const low = offsetReflectorPreset({ elevationDeg: 10, offsetAngleDeg: 24 });
  expect(low).toMatchObject({ faceLeanDeg: -14, facesDown: true });
});

test('a scale marked in true elevation reads it upright, and two offsets more when inverted', () => {
  const scale = { elevationDeg: 36, offsetAngleDeg: 24, scaleOffsetDeg: 24 };
  expect(offsetReflectorPreset(scale).scaleReadingDeg).toBe(36);
  expect(offsetReflectorPreset({ ...scale, mounting: 'inverted' }).scaleReadingDeg).toBe(84);
});

test('shape from the rim leads back to the paraboloid it was cut from', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.4, max: 3, noNaN: true }),
      fc.double({ min: 0.4, max: 1.5, noNaN: true }),
      fc.double({ min: 1, max: 35, noNaN: true }),
      (width, focalRatio, offsetDeg) => {
        const focal = focalRatio * width;
        const tangent = Math.tan((offsetDeg * Math.PI) / 180);
        const middle = 2 * focal * tangent;
        const height = width / Math.cos((offsetDeg * Math.PI) / 180);
        // Depth: the distance of the paraboloid's point below the chord, square to it, at its deepest.
        const below = (width / 2) ** 2 / (4 * focal);
        const shape = reflectorFromRim({
          widthM: width,
          heightM: height,
          depthM: below * Math.cos((offsetDeg * Math.PI) / 180),
        });
        expect(shape.focalLengthM).toBeCloseTo(focal, 9);
        expect(shape.offsetAngleDeg).toBeCloseTo(offsetDeg, 8);
        expect(shape.clearanceM).toBeCloseTo(middle - width / 2, 8);
        // Strings: from the ends of the rim to the focus, measured in the plane of symmetry.
        const end = (y: number) => Math.hypot(y, y ** 2 / (4 * focal) - focal);
        expect(shape.lowerEndToFocusM).toBeCloseTo(end(middle - width / 2), 9);
        expect(shape.upperEndToFocusM).toBeCloseTo(end(middle + width / 2), 9);
        const angle = (y: number) => Math.atan2(y, focal - y ** 2 / (4 * focal));
        const half =
          ((angle(middle + width / 2) - angle(middle - width / 2)) / 2) * (180 / Math.PI);
        expect(shape.halfSubtendedDeg).toBeCloseTo(half, 7);
      },
    ),
  );
});

test.each([
  ['heightM', () => offsetAngleFromRim({ widthM: 0.99, heightM: 0.9 }), 'inconsistent'],
  ['widthM', () => offsetAngleFromRim({ widthM: 0, heightM: 0.9 }), 'out-of-range'],
  ['depthM', () => reflectorFromRim({ widthM: 0.9, heightM: 0.99, depthM: 86 }), 'out-of-range'],
  [
    'elevationDeg',
    () => offsetReflectorPreset({ elevationDeg: 100, offsetAngleDeg: 24 }),
    'out-of-range',
  ],
  [
    'mounting',
    () =>
      offsetReflectorPreset({ elevationDeg: 10, offsetAngleDeg: 24, mounting: 'side' as never }),
    'not-an-option',
  ],
])('refuses a bad %s', (parameter, call, code) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter, code }));
});

import fc from 'fast-check';
import { magneticToTrueBearing, trueToMagneticBearing } from 'slantpath/magnetic';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

test('east declination: the compass shows less', () => {
  expect(trueToMagneticBearing(180, 10)).toBe(170);
  expect(trueToMagneticBearing(180, -10)).toBe(190);
  expect(magneticToTrueBearing(355, 10)).toBe(5);
  expect(trueToMagneticBearing(5, 10)).toBe(355);
});

test('there and back, always within [0, 360)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: -180, max: 180, noNaN: true }),
      (bearing, declination) => {
        const magnetic = trueToMagneticBearing(bearing, declination);
        expect(magnetic >= 0 && magnetic < 360).toBe(true);
        const back = magneticToTrueBearing(magnetic, declination);
        expect(back >= 0 && back < 360 && !Object.is(back, -0)).toBe(true);
        expect(Math.cos(((back - bearing) * Math.PI) / 180)).toBeCloseTo(1, 9);
      },
    ),
    { numRuns: runs(2000) },
  );
});

test('refuses what is no angle', () => {
  expect(() => trueToMagneticBearing(Number.NaN, 0)).toThrow(
    expect.objectContaining({ parameter: 'azimuthDeg', code: 'not-finite' }),
  );
  expect(() => magneticToTrueBearing(0, 190)).toThrow(
    expect.objectContaining({ parameter: 'declinationDeg', code: 'out-of-range' }),
  );
});

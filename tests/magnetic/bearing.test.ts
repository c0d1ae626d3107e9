import fc from 'fast-check';
import { magneticToTrueBearing, trueToMagneticBearing } from 'slantpath/magnetic';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

test('east declination: the compass shows less', () => {
  expect(trueToMagneticBearing({ azimuthDeg: 180, declinationDeg: 10 })).toBe(170);
  expect(trueToMagneticBearing({ azimuthDeg: 180, declinationDeg: -10 })).toBe(190);
  expect(magneticToTrueBearing({ magneticBearingDeg: 355, declinationDeg: 10 })).toBe(5);
  expect(trueToMagneticBearing({ azimuthDeg: 5, declinationDeg: 10 })).toBe(355);
});

test('there and back, always within [0, 360)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: -180, max: 180, noNaN: true }),
      (bearing, declination) => {
        const magnetic = trueToMagneticBearing({
          azimuthDeg: bearing,
          declinationDeg: declination,
        });
        expect(magnetic >= 0 && magnetic < 360).toBe(true);
        const back = magneticToTrueBearing({
          magneticBearingDeg: magnetic,
          declinationDeg: declination,
        });
        expect(back >= 0 && back < 360 && !Object.is(back, -0)).toBe(true);
        expect(Math.cos(((back - bearing) * Math.PI) / 180)).toBeCloseTo(1, 9);
      },
    ),
    { numRuns: runs(2000) },
  );
});

test('refuses what is no angle', () => {
  expect(() => trueToMagneticBearing({ azimuthDeg: Number.NaN, declinationDeg: 0 })).toThrow(
    expect.objectContaining({ parameter: 'azimuthDeg', code: 'not-finite' }),
  );
  expect(() => magneticToTrueBearing({ magneticBearingDeg: 0, declinationDeg: 190 })).toThrow(
    expect.objectContaining({ parameter: 'declinationDeg', code: 'out-of-range' }),
  );
});

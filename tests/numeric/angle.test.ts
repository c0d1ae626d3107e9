import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acosDeg,
  asinDeg,
  atan2Deg,
  cosDeg,
  sinDeg,
  turnDeg,
  wrapAzimuthDeg,
  wrapLongitudeDeg,
} from '../../src/numeric/angle.js';
import { runs } from '../support/runs.js';

const angle = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('reduction', () => {
  test.each([
    [180, -180],
    [-180, -180],
    [183, -177],
    [540, -180],
    [-540, -180],
    [359, -1],
    [-0, 0],
    [360, 0],
    [-360, 0],
  ])('longitude %d is %d', (given, wanted) => {
    expect(wrapLongitudeDeg(given)).toBe(wanted);
  });

  test.each([
    [360, 0],
    [-0, 0],
    [-90, 270],
    [725, 5],
    [-1e-20, 0],
  ])('azimuth %d is %d', (given, wanted) => {
    expect(wrapAzimuthDeg(given)).toBe(wanted);
  });

  test('stays in its range and on the same direction', () => {
    fc.assert(
      fc.property(angle, (given) => {
        const longitude = wrapLongitudeDeg(given);
        const azimuth = wrapAzimuthDeg(given);
        expect(longitude >= -180 && longitude < 180).toBe(true);
        expect(azimuth >= 0 && azimuth < 360).toBe(true);
        expect(Math.abs(Math.sin(((azimuth - longitude) * Math.PI) / 360))).toBeLessThan(1e-15);
      }),
      { numRuns: runs(2000) },
    );
  });

  test('the shortest turn crosses north', () => {
    expect(turnDeg(350, 10)).toBe(20);
    expect(turnDeg(10, 350)).toBe(-20);
  });
});

describe('trigonometry in degrees', () => {
  test('is exact at the cardinal angles', () => {
    for (const turn of [-720, -360, 0, 360, 720]) {
      expect([0, 90, 180, 270].map((a) => sinDeg(a + turn))).toEqual([0, 1, 0, -1]);
      expect([0, 90, 180, 270].map((a) => cosDeg(a + turn) + 0)).toEqual([1, 0, -1, 0]);
    }
    expect(cosDeg(60)).toBeCloseTo(0.5, 15);
  });

  test('agrees with the radian functions', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (a) => {
        expect(sinDeg(a)).toBeCloseTo(Math.sin((a * Math.PI) / 180), 14);
        expect(cosDeg(a)).toBeCloseTo(Math.cos((a * Math.PI) / 180), 14);
      }),
    );
  });

  test('inverse functions clamp a hair beyond one', () => {
    expect(asinDeg(1 + 1e-15)).toBe(90);
    expect(acosDeg(-1 - 1e-15)).toBe(180);
    expect(atan2Deg(-1, 0)).toBe(-90);
  });
});

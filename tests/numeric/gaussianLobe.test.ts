import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gaussianLobeLossDb, gaussianLobeOffsetDeg } from '../../src/numeric/gaussianLobe.js';

test('half the half-power width costs 3 dB, the whole width 12 dB, either side', () => {
  expect(gaussianLobeLossDb(0.5, 1)).toBe(3);
  expect(gaussianLobeLossDb(-0.97, 1.94)).toBe(3);
  expect(gaussianLobeLossDb(2, 2)).toBe(12);
  expect(gaussianLobeLossDb(0, 2)).toBe(0);
});

// Computed by hand: 12 (0.2 / 1.94)^2 = 0.48 / 3.7636 = 0.12753746 dB.
test('a worked value', () => {
  expect(gaussianLobeLossDb(0.2, 1.94)).toBeCloseTo(0.12753746, 8);
});

test('the inverse leads back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 60, noNaN: true }),
      fc.double({ min: 0.01, max: 20, noNaN: true }),
      (lossDb, width) => {
        expect(gaussianLobeLossDb(gaussianLobeOffsetDeg(lossDb, width), width)).toBeCloseTo(
          lossDb,
          9,
        );
      },
    ),
  );
});

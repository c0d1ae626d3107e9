/** Inputs beyond an end by a rounding alone. */

import { polarizationSkew, polarizationSkewBatch } from 'slantpath/pointing';
import { expect, test } from 'vitest';

test('what lies a rounding beyond an end is brought back to it, in a batch as in a call', () => {
  // The first doubles beyond 90 and 180.
  const [latitudeDeg, tiltDeg] = [90 + 2 ** -46, 180 + 2 ** -45];
  const station = { latitudeDeg, longitudeDeg: 9.6, heightM: 0 };
  const polarization = { kind: 'linear', tiltDeg } as const;
  const at = (latitude: number, tilt: number) =>
    polarizationSkewBatch({
      latitudeDeg: latitude,
      longitudeDeg: 9.6,
      heightM: 0,
      orbitalLongitudeDeg: 16.4,
      tiltDeg: tilt,
    }).skewDeg[0];
  expect(at(latitudeDeg, tiltDeg)).toBe(at(90, 180));
  const one = polarizationSkew({ station, orbitalLongitudeDeg: 16.4, polarization });
  expect(at(latitudeDeg, tiltDeg)).toBe('skewDeg' in one ? one.skewDeg : 0);
});

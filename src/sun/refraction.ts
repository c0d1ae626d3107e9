/** Refraction of sunlight near the ground. */

import { RADIANS_PER_DEGREE } from '../numeric/angle.js';

/**
 * How much the air lifts the Sun, in degrees, by geometric elevation.
 *
 * (P / 1010) (283 / (273 + t)) 1.02 / (60 tan(e + 10.3 / (e + 5.11))), t in degrees Celsius; nothing once the
 * Sun is well below the horizon.
 */
export function opticalRefractionDeg(
  elevationDeg: number,
  air: { readonly pressureHpa: number; readonly temperatureK: number },
): number {
  // Below about -0.83 degree not even the upper limb is in sight.
  if (elevationDeg < -0.83337) return 0;
  const liftedDeg = elevationDeg + 10.3 / (elevationDeg + 5.11);
  const standard = 1.02 / (60 * Math.tan(liftedDeg * RADIANS_PER_DEGREE));
  return Math.max(0, (air.pressureHpa / 1010) * (283 / (air.temperatureK - 0.15)) * standard);
}

/** Pressure of the standard atmosphere at a height, hPa; Source: ISO 2533, troposphere; held beyond -1 to 11 km. */
export function standardPressureHpa(heightM: number): number {
  return 1013.25 * (1 - 2.25577e-5 * Math.max(-1000, Math.min(11000, heightM))) ** 5.25588;
}

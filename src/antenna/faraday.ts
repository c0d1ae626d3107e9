/** Faraday rotation: how far the ionosphere turns a linear wave, and what that costs. */

import { inRange, positive } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { DEGREES_PER_RADIAN } from '../numeric/angle.js';
import { ratioToDb } from '../numeric/decibel.js';

/** e^3 / (8 pi^2 eps0 m^2 c) in SI units, from the constants of CODATA 2018. */
const FARADAY_CONSTANT = 23647.97866;

/** Rotation and its cost. */
export interface FaradayRotation {
  /** Rotation in degrees, 0 or more; it may pass a full turn in L band. */
  readonly rotationDeg: number;
  /** Cross-polar level below the wanted one in dB where the feed is not turned after it; below 0 where most is crossed; held to 200. */
  readonly crossPolarDb: number;
  /** Loss of the wanted signal in dB for a linear feed that is not turned after it, held to 200. */
  readonly lossDb: number;
}

const FARADAY_ROTATION_PATH_KEYS = {
  magneticFieldT: true,
  electronsPerM2: true,
  frequencyGHz: true,
} satisfies Keys<Parameters<typeof faradayRotation>[0]>;

/**
 * Faraday rotation of a linear wave. Circular waves are not turned: they lose nothing by it.
 *
 * @param path  Magnetic field along the path in teslas, 0 to 1e-4 (5e-5 is usual); electron content along the path in electrons per square
 *   metre, 0 to 1e20 (1e16 at night to 1e18 by day near the equator); frequency in GHz, above 0 to 100.
 * @throws {@link DomainError} naming the field.
 * Source: rotation = K B N / f^2 with K from the constants of nature; ITU-R P.531 has K rounded to 2.36e4 (from memory). Accuracy: of field and
 * electron content, which change by the hour: a factor of 2 is usual.
 * @example
 * ```ts
 * import { faradayRotation } from 'slantpath/antenna';
 * const path = { magneticFieldT: 5e-5, electronsPerM2: 1e18, frequencyGHz: 4 };
 * faradayRotation(path).rotationDeg.toFixed(1); // => '4.2'
 * ```
 */
export function faradayRotation(path: {
  readonly magneticFieldT: number;
  readonly electronsPerM2: number;
  readonly frequencyGHz: number;
}): FaradayRotation {
  const given = known('path', path, FARADAY_ROTATION_PATH_KEYS);
  const field = inRange('magneticFieldT', given.magneticFieldT, 0, 1e-4, 'is it in nT?');
  const electrons = inRange('electronsPerM2', given.electronsPerM2, 0, 1e20);
  const frequency = inRange(
    'frequencyGHz',
    positive('frequencyGHz', given.frequencyGHz),
    0,
    100,
    'is it in MHz?',
  );
  const radians = (FARADAY_CONSTANT * field * electrons) / (frequency * 1e9) ** 2;
  const across = Math.abs(Math.sin(radians));
  const along = Math.abs(Math.cos(radians));
  const held = (fieldRatio: number): number => Math.min(1e10, Math.max(fieldRatio, 1e-10));
  return {
    rotationDeg: radians * DEGREES_PER_RADIAN,
    crossPolarDb: 2 * ratioToDb(held(along / Math.max(across, 1e-12))) + 0,
    lossDb: -2 * ratioToDb(held(along)) + 0,
  };
}

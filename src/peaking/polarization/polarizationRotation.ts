/** Rotation of a linear feed against the wave, to isolation and back. */

import { inRange } from '../../errors.js';
import { atan2Deg, cosDeg, sinDeg } from '../../numeric/angle.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';

/** Isolation of an antenna taken as ideal, in dB. */
const IDEAL_DB = 100;

/** Rotation that an isolation amounts to; read `kind` first. */
export type RotationFromIsolation =
  | {
      readonly kind: 'rotation';
      /** Rotation error in degrees, 0 to 45; its sense cannot be told from one level. */
      readonly rotationErrorDeg: number;
    }
  | {
      /** The isolation is at or beyond that of antenna and wave themselves: the rotation is not seen. */
      readonly kind: 'not-seen';
      /** Greatest rotation in degrees that would still lower the isolation by less than 1 dB. */
      readonly rotationWithinDeg: number;
    };

/**
 * Cross-polar isolation in dB of a linear feed turned by an error, on top of what antenna and wave leak.
 *
 * Wanted power cos^2, cross power sin^2 plus the leak: isolation = 10 log10((cos^2 + leak sin^2) / (sin^2 + leak cos^2)).
 *
 * @param rotationErrorDeg  Either sign, within 45 degrees.
 * @param ownIsolationDb  Isolation without rotation error in dB, 0 to 100; default 100.
 * @throws {@link DomainError} naming `rotationErrorDeg` or `ownIsolationDb`.
 *
 * Source: projection of a linear field; leaks added as powers.
 * @example
 * ```ts
 * import { rotationIsolationDb } from 'slantpath/peaking';
 * rotationIsolationDb(2).toFixed(1); // => '29.1'
 * rotationIsolationDb(2, 30).toFixed(1); // => '26.5'
 * ```
 */
export function rotationIsolationDb(rotationErrorDeg: number, ownIsolationDb = IDEAL_DB): number {
  const angle = inRange('rotationErrorDeg', rotationErrorDeg, -45, 45);
  const leak = dbToRatio(-inRange('ownIsolationDb', ownIsolationDb, 0, IDEAL_DB));
  const cross = sinDeg(angle) ** 2;
  const wanted = cosDeg(angle) ** 2;
  return ratioToDb((wanted + leak * cross) / (cross + leak * wanted)) + 0;
}

/**
 * Rotation error that a measured isolation amounts to: the inverse of {@link rotationIsolationDb}.
 *
 * @param isolationDb  Measured cross-polar isolation in dB, 0 to 100.
 * @param ownIsolationDb  Isolation of antenna and wave themselves in dB, 0.01 to 100; default 100.
 * @throws {@link DomainError} naming `isolationDb` or `ownIsolationDb`.
 * @example
 * ```ts
 * import { rotationFromIsolation } from 'slantpath/peaking';
 * const rotation = rotationFromIsolation(26.5, 30);
 * rotation.kind === 'rotation' && rotation.rotationErrorDeg.toFixed(1); // => '2.0'
 * ```
 */
export function rotationFromIsolation(
  isolationDb: number,
  ownIsolationDb = IDEAL_DB,
): RotationFromIsolation {
  const measured = dbToRatio(-inRange('isolationDb', isolationDb, 0, IDEAL_DB));
  const leak = dbToRatio(-inRange('ownIsolationDb', ownIsolationDb, 0.01, IDEAL_DB));
  // measured = (t + leak) / (1 + leak t) with t the squared tangent of the rotation.
  const angleOf = (ratio: number) => atan2Deg(Math.sqrt((ratio - leak) / (1 - leak * ratio)), 1);
  if (measured <= leak)
    return {
      kind: 'not-seen',
      rotationWithinDeg: angleOf(Math.min(1, leak * dbToRatio(1))),
    };
  return { kind: 'rotation', rotationErrorDeg: Math.min(45, angleOf(measured)) };
}
